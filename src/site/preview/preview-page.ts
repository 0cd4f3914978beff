import { createHash } from 'node:crypto';
import { type DefaultTreeAdapterTypes, parse } from 'parse5';
import { OWN_FOLDER } from './shelf.ts';

type Element = DefaultTreeAdapterTypes.Element;

/** A page as the preview shows it. */
export interface PreviewPage {
  readonly html: string;
  /** Content-Security-Policy of the header. */
  readonly policy: string;
}

/** For a page that brings no policy of its own. */
const CLOSED =
  "default-src 'none'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; script-src 'self'; base-uri 'none'; form-action 'none'";

/**
 * Moves a page's own policy from its head to the header and adds the one thing more a preview needs, the stream of
 * changes; puts the script in that listens to it. A policy in the head would forbid the stream whatever the header says.
 */
export function previewPage(html: string): PreviewPage {
  const head = headOf(html);
  const meta = head.find((one) => attribute(one, 'http-equiv')?.toLowerCase() === 'content-security-policy');
  const place = meta?.sourceCodeLocation;
  // The empty icon keeps a browser from asking for one.
  const added = `<link rel="icon" href="data:,">\n<script src="/${OWN_FOLDER}reload.js" data-mark="${markOf(html)}" defer></script>`;
  const policy = `${(meta && attribute(meta, 'content')) ?? CLOSED}; connect-src 'self'; frame-ancestors 'none'`;
  if (place) return { policy, html: `${html.slice(0, place.startOffset)}${added}${html.slice(place.endOffset)}` };
  const end = html.search(/<\/head>/i);
  return { policy, html: end < 0 ? html : `${html.slice(0, end)}${added}\n${html.slice(end)}` };
}

/** What tells one state of a file from another. */
export const markOf = (content: string | Uint8Array): string =>
  createHash('sha256').update(content).digest('hex').slice(0, 16);

function headOf(html: string): Element[] {
  const root = parse(html.split(/<body[\s>]/i, 1)[0] ?? '', { sourceCodeLocationInfo: true });
  const whole = root.childNodes.find((node): node is Element => node.nodeName === 'html');
  const head = whole?.childNodes.find((node): node is Element => node.nodeName === 'head');
  return (head?.childNodes ?? []).filter((node): node is Element => node.nodeName === 'meta');
}

const attribute = (element: Element, name: string): string | null =>
  element.attrs.find((one) => one.name === name)?.value ?? null;
