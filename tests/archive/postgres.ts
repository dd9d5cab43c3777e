/** A PostgreSQL of its own for a test: the server of the machine, in a folder that goes again. */
import { execFileSync, spawn } from 'node:child_process';
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

const VERSIONS = '/usr/lib/postgresql';

/** The folder of the server's programs; null where none is installed. */
export function postgresPrograms(): string | null {
  const versions = existsSync(VERSIONS) ? readdirSync(VERSIONS).sort((a, b) => Number(b) - Number(a)) : [];
  const bin = versions
    .map((version) => join(VERSIONS, version, 'bin'))
    .find((path) => existsSync(join(path, 'initdb')));
  return bin ?? null;
}

export interface TestPostgres {
  /** Address of a database that a role of no special rights owns. */
  readonly url: string;
  /** The same for the role that may do everything. */
  readonly superUrl: string;
  readonly stop: () => Promise<void>;
}

/** The server refuses to run as root. */
function asServer(): { readonly uid?: number; readonly gid?: number } {
  if (process.getuid?.() !== 0) return {};
  const id = (flag: string) => Number(execFileSync('id', [flag, 'postgres'], { encoding: 'utf8' }));
  return { uid: id('-u'), gid: id('-g') };
}

export async function startPostgres(bin: string): Promise<TestPostgres> {
  const folder = mkdtempSync(join(tmpdir(), 'plugmark-postgres-'));
  const user = asServer();
  if (user.uid !== undefined && user.gid !== undefined) chownSync(folder, user.uid, user.gid);
  const data = join(folder, 'data');
  const run = (program: string, args: readonly string[]) =>
    execFileSync(join(bin, program), args, {
      ...user,
      cwd: folder,
      stdio: 'pipe',
      env: { ...process.env, HOME: folder },
    });
  run('initdb', ['-D', data, '-U', 'chief', '-A', 'trust', '--no-sync', '-E', 'UTF8']);
  const server = spawn(
    join(bin, 'postgres'),
    ['-D', data, '-k', folder, '-c', 'listen_addresses=', '-c', 'fsync=off'],
    { ...user, cwd: folder, stdio: 'ignore' },
  );
  const stop = async () => {
    const ended = new Promise((resolve) => server.once('exit', resolve));
    server.kill('SIGINT');
    await ended;
    rmSync(folder, { recursive: true, force: true });
  };
  const psql = (sql: string) => run('psql', ['-h', folder, '-U', 'chief', '-d', 'postgres', '-c', sql]);
  for (let tries = 0; ; tries++) {
    try {
      psql('CREATE ROLE archive LOGIN');
      break;
    } catch (cause) {
      if (tries > 100) {
        await stop();
        throw cause;
      }
      await sleep(200);
    }
  }
  psql('CREATE DATABASE archive OWNER archive');
  const at = (role: string) => `postgres://${role}@/archive?host=${encodeURIComponent(folder)}`;
  return { url: at('archive'), superUrl: at('chief'), stop };
}
