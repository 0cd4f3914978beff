import { request } from 'node:http';
import { connect } from 'node:net';
import { onTestFinished } from 'vitest';
import { type PreviewServer, startServer } from '../../../src/site/preview/server.ts';
import type { Shelf } from '../../../src/site/preview/shelf.ts';

export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
}

/** A server on any free port that ends with the test. */
export async function served(shelf: Shelf): Promise<PreviewServer> {
  const server = await startServer(shelf, { first: 0, tries: 1 });
  onTestFinished(server.close);
  return server;
}

const portOf = (address: string): number => Number(new URL(address).port);

/** Asks for a target exactly as written, without the tidying that URL and fetch do. */
export function ask(
  address: string,
  target: string,
  { method = 'GET', headers = {} }: { method?: string; headers?: Record<string, string> } = {},
): Promise<Answer> {
  return new Promise((done, fail) => {
    const asked = request(
      { host: '127.0.0.1', port: portOf(address), path: target, method, headers, agent: false },
      (answer) => {
        let text = '';
        answer.setEncoding('utf8');
        answer.on('data', (piece: string) => {
          text += piece;
        });
        answer.on('end', () => done({ status: answer.statusCode ?? 0, headers: answer.headers, text }));
      },
    );
    asked.on('error', fail);
    asked.end();
  });
}

/** Sends bytes as they are and gives all that comes back until the other side ends. */
export function sendRaw(address: string, text: string): Promise<string> {
  return new Promise((done) => {
    let back = '';
    const socket = connect(portOf(address), '127.0.0.1', () => socket.write(text, 'latin1'));
    socket.setEncoding('latin1');
    socket.on('data', (piece: string) => {
      back += piece;
    });
    socket.on('error', () => done(back));
    socket.on('close', () => done(back));
  });
}

export interface Listening {
  readonly status: number;
  readonly headers: Answer['headers'];
  /** The next message of the stream, or null when it has ended. */
  readonly next: () => Promise<string | null>;
}

/** Listens to the stream of changes for a page. */
export function listenTo(address: string, page: string, headers: Record<string, string> = {}): Promise<Listening> {
  const target = `/-/changes?page=${encodeURIComponent(page)}`;
  return new Promise((done, fail) => {
    const asked = request(
      { host: '127.0.0.1', port: portOf(address), path: target, headers, agent: false },
      (answer) => {
        const ready: string[] = [];
        const waiting: ((message: string | null) => void)[] = [];
        let hasEnded = false;
        answer.setEncoding('utf8');
        answer.on('data', (piece: string) => {
          for (const [, data = ''] of piece.matchAll(/^data: (.*)$/gm)) {
            const first = waiting.shift();
            if (first) first(data);
            else ready.push(data);
          }
        });
        const end = (): void => {
          hasEnded = true;
          for (const one of waiting.splice(0)) one(null);
        };
        answer.on('end', end).on('error', end);
        const next = (): Promise<string | null> => {
          const message = ready.shift();
          if (message !== undefined || hasEnded) return Promise.resolve(message ?? null);
          return new Promise((wake) => waiting.push(wake));
        };
        done({ status: answer.statusCode ?? 0, headers: answer.headers, next });
      },
    );
    asked.on('error', fail);
    asked.end();
  });
}
