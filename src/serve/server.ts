/** A server over HTTP with the limits that whoever listens to strangers needs. */
import { createServer } from 'node:http';
import { createServer as createTlsServer } from 'node:https';
import rateLimit from '@fastify/rate-limit';
import fastify, { type FastifyInstance } from 'fastify';

export interface ServeOptions {
  readonly tls: { readonly key: string; readonly cert: string } | null;
  /** How many requests one address may send in a minute. */
  readonly requestsAMinute: number;
  /** How long a request may take to arrive. */
  readonly patienceMs: number;
}

export const PLAIN = 'text/plain; charset=utf-8';

const WORDS: Readonly<Record<number, string>> = {
  408: 'the request took too long',
  413: 'the request is too large',
  415: 'this type of content is not taken',
  429: 'too many requests; try again in a minute',
  500: 'a fault of the server; nothing was changed',
};

/** Built and not listening yet. `close` lets the requests at hand be answered. `heard` hears of faults, never of contents. */
export async function limitedServer(
  { tls, requestsAMinute, patienceMs }: ServeOptions,
  bodyLimit: number,
  heard: (line: string) => void,
): Promise<FastifyInstance> {
  const limits = {
    requestTimeout: patienceMs,
    headersTimeout: patienceMs,
    keepAliveTimeout: 30_000,
    connectionsCheckingInterval: Math.min(1000, patienceMs),
    maxHeaderSize: 8192,
  };
  const server = fastify({
    bodyLimit,
    forceCloseConnections: 'idle',
    serverFactory: (handler) =>
      tls === null ? createServer(limits, handler) : createTlsServer({ ...limits, ...tls }, handler),
  });
  server.server.maxConnections = 1000;
  await server.register(rateLimit, { max: requestsAMinute, timeWindow: 60_000 });
  server.removeAllContentTypeParsers();
  server.setNotFoundHandler({ preHandler: server.rateLimit() }, (_request, reply) =>
    reply.code(404).type(PLAIN).send('not found\n'),
  );
  server.setErrorHandler((error, _request, reply) => {
    const status = statusOf(error);
    if (status >= 500) heard(`500 ${error instanceof Error ? error.name : 'fault'}`);
    return reply
      .code(status)
      .type(PLAIN)
      .send(`${WORDS[status] ?? 'refused'}\n`);
  });
  return server;
}

function statusOf(error: unknown): number {
  const code = error instanceof Error && 'statusCode' in error ? error.statusCode : 500;
  return typeof code === 'number' && code >= 400 && code < 600 ? code : 500;
}
