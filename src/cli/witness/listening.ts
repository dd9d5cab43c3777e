/** How a command listens to others: where, with which certificate, and until when. */

import { isIP } from 'node:net';
import { readBytes } from '../../files/input.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { now } from '../station/clock.ts';
import { safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';

/** As fastify gives it. */
interface Server {
  readonly listen: (at: { readonly host: string; readonly port: number }) => Promise<string>;
  readonly close: () => PromiseLike<unknown>;
}

export interface Listening {
  readonly listen: string;
  readonly certificate?: string;
  readonly key?: string;
  readonly withoutTls?: true;
}

/** Where a server is to listen; `tls` is null where other computers cannot reach it, or a proxy does TLS. */
export interface Endpoint {
  readonly host: string;
  readonly port: number;
  readonly tls: { readonly cert: string; readonly key: string } | null;
}

/** Refused where other computers would reach it without TLS. */
export async function endpointOf(options: Listening): Promise<Endpoint> {
  const { host, port } = addressIn(options.listen);
  const tls = await tlsOf(options);
  if (tls === null && options.withoutTls !== true && !isLoopback(host))
    throw new ProblemError(noTls(options.listen));
  return { host, port, tls };
}

/** What a server takes from this computer: the time, and somebody who hears what it reports. */
export const HERE = {
  nowS: () => Math.floor(Date.now() / 1000),
  heard: (line: string) => void process.stdout.write(`${now()} ${safeLine(line)}\n`),
};

/** Answers until somebody ends it; what was asked by then is answered. `greeting` is printed once it listens. */
export async function serveUntilEnded(
  server: Server,
  { listen, endpoint }: { readonly listen: string; readonly endpoint: Endpoint },
  greeting: (address: string) => string | Promise<string>,
): Promise<void> {
  const ended = untilEnded();
  try {
    const address = await server
      .listen({ host: endpoint.host, port: endpoint.port })
      .catch((cause: unknown) => {
        throw notListening(listen, cause);
      });
    print([await greeting(safeLine(address))]);
    await ended;
  } finally {
    await server.close();
  }
}

const untilEnded = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });

/** No certificate or key of a server is larger. */
const MAX_PEM_BYTES = 1 << 20;

function addressIn(listen: string): { readonly host: string; readonly port: number } {
  const [, six, name, digits = ''] =
    /^(?:\[([0-9a-fA-F:]+)\]|([A-Za-z0-9.-]+)):(\d{1,5})$/.exec(listen) ?? [];
  const host = six ?? name;
  if (host === undefined || Number(digits) > 65_535 || (six !== undefined && isIP(six) !== 6))
    throw new ProblemError({
      code: 'option-not-valid',
      where: '--listen',
      message: w`this is not an address and a port`,
      next: w`Name both, like 127.0.0.1:8017 or [::1]:8017.`,
    });
  return { host, port: Number(digits) };
}

export const isLoopback = (host: string) =>
  host === 'localhost' || host === '::1' || (isIP(host) === 4 && host.startsWith('127.'));

async function tlsOf({ certificate, key }: Listening): Promise<Endpoint['tls']> {
  if (certificate === undefined && key === undefined) return null;
  if (certificate === undefined || key === undefined)
    throw new ProblemError({
      code: 'option-not-valid',
      where: certificate === undefined ? '--certificate' : '--key',
      message: w`a server with TLS needs its certificate and its key`,
      next: w`Name both files with --certificate and --key.`,
    });
  const text = async (file: string, what: string) =>
    Buffer.from(await readBytes(file, what, MAX_PEM_BYTES)).toString('utf8');
  return { cert: await text(certificate, w`certificate`), key: await text(key, w`key`) };
}

const noTls = (where: string): Problem => ({
  code: 'server-listens',
  where,
  message: w`other computers would reach this server without TLS`,
  next: w`Name --certificate and --key. Where a proxy in front of it does TLS, say so with --without-tls.`,
});

function notListening(where: string, cause: unknown): unknown {
  const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
  const why: Readonly<Record<string, string>> = {
    EADDRINUSE: w`another program listens there`,
    EACCES: w`this user may not listen there`,
    EADDRNOTAVAIL: w`this computer does not have that address`,
    ENOTFOUND: w`nobody knows that name`,
  };
  const message = why[code];
  if (message === undefined) return cause;
  return new ProblemError(
    { code: 'server-listens', where, message, next: w`Name another address with --listen.` },
    { cause },
  );
}
