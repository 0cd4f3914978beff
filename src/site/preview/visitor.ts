import type { IncomingHttpHeaders } from 'node:http';

/** Names under which a browser on this machine reaches the preview. */
const OWN_NAMES = ['127.0.0.1', 'localhost'];
const PLAIN_HTTP = 80;

const hostsAt = (port: number): string[] =>
  OWN_NAMES.flatMap((name) => [`${name}:${port}`, ...(port === PLAIN_HTTP ? [name] : [])]);

/** False for a foreign name that was made to point at this machine (DNS rebinding). */
export const isOwnHost = ({ host }: IncomingHttpHeaders, port: number): boolean =>
  host !== undefined && hostsAt(port).includes(host.toLowerCase());

/** False for a script of another origin; a browser names none when a page asks its own server. */
export function isOwnOrigin(headers: IncomingHttpHeaders, port: number): boolean {
  const { origin } = headers;
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return false;
  return origin === undefined || hostsAt(port).some((host) => origin === `http://${host}`);
}
