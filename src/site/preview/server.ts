import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Refusal } from '../../disk/refusal.ts';
import { markOf } from './preview-page.ts';
import { replyTo } from './reply.ts';
import { lookUp, type Shelf } from './shelf.ts';
import { createStreams, type Streams } from './streams.ts';

export interface PreviewServer {
  /** Where a browser opens it. */
  readonly address: string;
  /** Shows something else from now on, and tells every open page. */
  readonly show: (shelf: Shelf) => void;
  /** Ends every stream and connection. */
  readonly close: () => Promise<void>;
}

/** Ports to try: from the first on, so many. Port 0 takes any free one. */
export interface Ports {
  readonly first: number;
  readonly tries: number;
}

/** Only this machine: a garden's records are nobody else's to read. */
const LOOPBACK = '127.0.0.1';

/**
 * Serves what is on the shelf, from memory only: nothing a request names ever reaches the disk.
 * Throws Refusal `port-taken` when none of the ports is free.
 */
export async function startServer(first: Shelf, ports: Ports): Promise<PreviewServer> {
  let shelf = first;
  const streams = createStreams((name) => {
    const found = lookUp(shelf, name);
    return found.status === 307 ? found.location : markOf(found.content);
  });
  const server = createServer((request, answer) => {
    const { method = '', url = '', headers } = request;
    const reply = replyTo({ method, target: url, headers, port: portOf(server) }, shelf);
    write(request, answer, reply, streams);
  });
  const port = await listen(server, ports);
  return {
    address: `http://${LOOPBACK}:${port}/`,
    show: (next) => {
      shelf = next;
      streams.tell();
    },
    close: async () => {
      const closed = new Promise<void>((done) => server.close(() => done()));
      streams.end();
      server.closeAllConnections();
      await closed;
    },
  };
}

function write(
  { method }: IncomingMessage,
  answer: ServerResponse,
  { status, headers, content, listensTo }: ReturnType<typeof replyTo>,
  streams: Streams,
): void {
  const length = { 'Content-Length': Buffer.byteLength(content) };
  answer.writeHead(status, listensTo === null ? { ...headers, ...length } : headers);
  if (method === 'HEAD') answer.end();
  else if (listensTo === null) answer.end(content);
  else streams.add(answer, listensTo);
}

const portOf = (server: Server): number => (server.address() as AddressInfo).port;

async function listen(server: Server, { first, tries }: Ports): Promise<number> {
  for (let port = first; port < first + tries; port += 1) {
    if (await canListen(server, port)) return portOf(server);
  }
  const which = tries > 1 ? `the ports ${first} to ${first + tries - 1} are` : `port ${first} is`;
  throw new Refusal('port-taken', `${which} not free`, 'name another with --port, or 0 for any');
}

/** True once the server listens; false when another program has the port, or this one may not have it. */
function canListen(server: Server, port: number): Promise<boolean> {
  return new Promise((done, fail) => {
    const onError = (error: NodeJS.ErrnoException): void => {
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES') done(false);
      else fail(error);
    };
    server.once('error', onError);
    server.listen({ host: LOOPBACK, port }, () => {
      server.off('error', onError);
      done(true);
    });
  });
}
