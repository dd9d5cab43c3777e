import { isIP } from 'node:net';
import { readBytes } from '../../files/input.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { USUAL_LIMITS, witnessServer } from '../../serve/witness.ts';
import { now } from '../station/clock.ts';
import { unlocked } from '../station/station-keys.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { keysOfWitness, storeOf, type WitnessScope, withWitness, witnessKeyPath } from './witness-folder.ts';

export interface ServeWitness extends WitnessScope {
  readonly listen: string;
  readonly certificate?: string;
  readonly key?: string;
  readonly withoutTls?: true;
}

/** No certificate or key of a server is larger. */
const MAX_PEM_BYTES = 1 << 20;

/** Answers logs until somebody ends it; what was asked by then is answered. */
export function serveWitness(options: ServeWitness): Promise<ExitCode> {
  return withWitness(options, async (file) => {
    const { host, port } = addressIn(options.listen);
    const tls = await tlsOf(options);
    if (tls === null && options.withoutTls !== true && !isLoopback(host))
      throw new ProblemError(noTls(options.listen));
    const { name, kid } = file.identity();
    const path = witnessKeyPath(options.data, kid);
    const key = await unlocked(path, 'passphrase', "Passphrase of the witness's key: ");
    const server = await witnessServer(
      {
        store: storeOf(file),
        keys: keysOfWitness(name, key),
        nowS: () => Math.floor(Date.now() / 1000),
        heard: (line) => void process.stdout.write(`${now()} ${safeLine(line)}\n`),
      },
      { ...USUAL_LIMITS, tls },
    );
    const ended = untilEnded();
    try {
      const address = await server.listen({ host, port }).catch((cause: unknown) => {
        throw notListening(options.listen, cause);
      });
      print([
        `Witness ${safeLine(name)} listens on ${safeLine(address)} and knows ${file.logs().length} logs. Ctrl-C ends it.`,
      ]);
      await ended;
    } finally {
      await server.close();
    }
    print(['Ended. All that was cosigned is on disk.']);
    return EXIT.done;
  });
}

const untilEnded = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });

function addressIn(listen: string): { readonly host: string; readonly port: number } {
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

const isLoopback = (host: string) =>
  host === 'localhost' || host === '::1' || (isIP(host) === 4 && host.startsWith('127.'));

async function tlsOf({
  certificate,
  key,
}: ServeWitness): Promise<{ readonly cert: string; readonly key: string } | null> {
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

const noTls = (where: string): Problem => ({
  code: 'witness-listens',
  where,
  message: 'other computers would reach this witness without TLS',
  next: 'Name --certificate and --key. Where a proxy in front of it does TLS, say so with --without-tls.',
});

function notListening(where: string, cause: unknown): unknown {
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
    { code: 'witness-listens', where, message, next: 'Name another address with --listen.' },
    { cause },
  );
}
