/** How a command listens to others: where, with which certificate, and until when. */
import { isIP } from 'node:net';
import { readBytes } from '../../files/input.ts';
import { type Problem, ProblemError } from '../../problem.ts';

export interface Listening {
  readonly listen: string;
  readonly certificate?: string;
  readonly key?: string;
  readonly withoutTls?: true;
}

/** No certificate or key of a server is larger. */
const MAX_PEM_BYTES = 1 << 20;

export const untilEnded = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });

export function addressIn(listen: string): { readonly host: string; readonly port: number } {
  const [, six, name, digits = ''] =
    /^(?:\[([0-9a-fA-F:]+)\]|([A-Za-z0-9.-]+)):(\d{1,5})$/.exec(listen) ?? [];
  const host = six ?? name;
  if (host === undefined || Number(digits) > 65_535 || (six !== undefined && isIP(six) !== 6))
    throw new ProblemError({
      code: 'option-not-valid',
      where: '--listen',
      message: 'this is not an address and a port',
      next: 'Name both, like 127.0.0.1:8017 or [::1]:8017.',
    });
  return { host, port: Number(digits) };
}

export const isLoopback = (host: string) =>
  host === 'localhost' || host === '::1' || (isIP(host) === 4 && host.startsWith('127.'));

export async function tlsOf({
  certificate,
  key,
}: Listening): Promise<{ readonly cert: string; readonly key: string } | null> {
  if (certificate === undefined && key === undefined) return null;
  if (certificate === undefined || key === undefined)
    throw new ProblemError({
      code: 'option-not-valid',
      where: certificate === undefined ? '--certificate' : '--key',
      message: 'a server with TLS needs its certificate and its key',
      next: 'Name both files with --certificate and --key.',
    });
  const text = async (file: string, what: string) =>
    Buffer.from(await readBytes(file, what, MAX_PEM_BYTES)).toString('utf8');
  return { cert: await text(certificate, 'certificate'), key: await text(key, 'key') };
}

export const noTls = (where: string): Problem => ({
  code: 'server-listens',
  where,
  message: 'other computers would reach this server without TLS',
  next: 'Name --certificate and --key. Where a proxy in front of it does TLS, say so with --without-tls.',
});

export function notListening(where: string, cause: unknown): unknown {
  const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
  const why: Readonly<Record<string, string>> = {
    EADDRINUSE: 'another program listens there',
    EACCES: 'this user may not listen there',
    EADDRNOTAVAIL: 'this computer does not have that address',
    ENOTFOUND: 'nobody knows that name',
  };
  const message = why[code];
  if (message === undefined) return cause;
  return new ProblemError(
    { code: 'server-listens', where, message, next: 'Name another address with --listen.' },
    { cause },
  );
}
