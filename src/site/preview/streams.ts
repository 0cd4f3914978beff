import type { ServerResponse } from 'node:http';

/** Open streams of changes, one for each page somebody looks at. */
export interface Streams {
  /** Keeps an answer open for the page at a name below the site, and tells it that page's mark at once. */
  add(answer: ServerResponse, name: string): void;
  /** Tells every page its mark now. */
  tell(): void;
  end(): void;
}

/** Streams in the form of server-sent events (WHATWG HTML, 9.2). `markAt` gives what tells a page's states apart. */
export function createStreams(markAt: (name: string) => string): Streams {
  const open = new Map<ServerResponse, string>();
  const send = (answer: ServerResponse, name: string): void => void answer.write(`data: ${markAt(name)}\n\n`);
  return {
    add: (answer, name) => {
      open.set(answer, name);
      answer.on('close', () => open.delete(answer));
      answer.on('error', () => open.delete(answer));
      send(answer, name);
    },
    tell: () => {
      for (const [answer, name] of open) send(answer, name);
    },
    end: () => {
      for (const answer of open.keys()) answer.end();
    },
  };
}
