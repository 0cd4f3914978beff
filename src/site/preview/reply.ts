import type { IncomingHttpHeaders } from 'node:http';
import { mediaType } from '../media-type.ts';
import { askedFor, placeOf } from './place.ts';
import { previewPage } from './preview-page.ts';
import { RELOAD_SCRIPT } from './reload-script.ts';
import { type Found, lookUp, OWN_FOLDER, type Shelf } from './shelf.ts';
import { isOwnHost, isOwnOrigin } from './visitor.ts';

/** What a browser asks, and the port it came in by. */
export interface Asked {
  readonly method: string;
  readonly target: string;
  readonly headers: IncomingHttpHeaders;
  readonly port: number;
}

export interface Reply {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly content: string | Uint8Array;
  /** Name of the page whose changes are told from now on, in a stream that stays open; null for an ordinary answer. */
  readonly listensTo: string | null;
}

const ALWAYS = {
  'Cache-Control': 'no-store',
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Resource-Policy': 'same-origin',
} as const;

/** What the preview answers, all in memory. Status 421 follows RFC 9110, 15.5.20. */
export function replyTo({ method, target, headers, port }: Asked, shelf: Shelf): Reply {
  if (!isOwnHost(headers, port)) return refusal(421, 'This preview answers to this machine only.');
  if (method !== 'GET' && method !== 'HEAD') return refusal(405, 'A preview is only read.', { Allow: 'GET, HEAD' });
  const name = placeOf(target);
  if (name === null) return refusal(400, 'This address cannot be read.');
  if (name === `${OWN_FOLDER}reload.js`) return reply(200, RELOAD_SCRIPT, { 'Content-Type': mediaType(name) });
  if (name !== `${OWN_FOLDER}changes`) return fileReply(lookUp(shelf, name));
  if (!isOwnOrigin(headers, port)) return refusal(403, 'Only the pages of this preview may listen to it.');
  const page = placeOf(askedFor(target, 'page') ?? '/');
  if (page === null) return refusal(400, 'This address cannot be read.');
  return { ...reply(200, '', { 'Content-Type': 'text/event-stream; charset=utf-8' }), listensTo: page };
}

function fileReply(found: Found): Reply {
  if (found.status === 307) return reply(307, '', { Location: found.location });
  const { status, name, content } = found;
  const type = { 'Content-Type': mediaType(name) };
  if (!name.endsWith('.html')) return reply(status, content, type);
  const { html, policy } = previewPage(String(content));
  return reply(status, html, { ...type, 'Content-Security-Policy': policy });
}

const refusal = (status: number, words: string, headers: Reply['headers'] = {}): Reply =>
  reply(status, `${words}\n`, { 'Content-Type': mediaType('.txt'), ...headers });

const reply = (status: number, content: string | Uint8Array, headers: Reply['headers']): Reply => ({
  status,
  content,
  headers: { ...ALWAYS, ...headers },
  listensTo: null,
});
