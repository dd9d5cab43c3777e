/**
 * `npm run test:bluetooth`: plugmark on the Bluetooth stack of a real Linux kernel, without a radio. A Debian kernel in
 * qemu, BlueZ's virtual controllers, bluetoothd as a peer that plays a wrench and a gauge, and a whole job.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { boot } from './boot.ts';
import { arePiecesInReach, missingPackages, preparePieces, wrongMachine } from './pieces.ts';

/** What the guest may take; a boot that kvm refuses, and the rest here, stay within ten minutes with it. */
const SECONDS = 540;
const project = resolve(import.meta.dirname, '../..');
const started = performance.now();
const say = (text: string) =>
  process.stdout.write(`[${((performance.now() - started) / 1_000).toFixed(0).padStart(3)} s] ${text}\n`);

/** As in Automake: it was not run, which is neither a success nor a failure. */
const SKIPPED = 77;
function skip(why: string): never {
  process.stderr.write(`test:bluetooth is not run: ${why}\n`);
  process.exit(SKIPPED);
}
const unfit = wrongMachine();
if (unfit !== undefined) skip(unfit);
const missing = missingPackages();
if (missing.length > 0)
  skip(`it needs more packages.\n  apt-get install --no-install-recommends ${missing.join(' ')}`);
if (!arePiecesInReach()) skip('apt does not know what it can install.\n  apt-get update');
say('preparing the guest');
const pieces = preparePieces(join(import.meta.dirname, 'guest', 'init'));
const out = mkdtempSync(join(tmpdir(), 'plugmark-bluetooth-'));
say(`booting ${pieces.kernelVersion}`);
const status = await boot({ pieces, project, out, seconds: SECONDS });
const log = ['guest.log', 'console.log'].map((name) => join(out, name)).find((path) => existsSync(path));
process.stdout.write(log === undefined ? `nothing was left in ${out}\n` : readFileSync(log, 'utf8'));
say(`guest: ${status === 0 ? 'all checks passed' : `failed (${status ?? 'it did not finish'})`}`);
const verified = verifyHere();
say(`host: the record ${verified ? 'is verified' : 'is missing or does not verify'}`);
const good = status === 0 && verified;
if (good) rmSync(out, { recursive: true });
else say(`failed; the logs are in ${out}`);
process.exitCode = good ? 0 : 1;

/** Verifies what the guest sealed in a process of the host, against the keys that came with it. */
function verifyHere(): boolean {
  const records = readdirSync(out).filter((name) => name.endsWith('.record.json'));
  const args = ['verify', ...records, '--trust', 'trusted-keys.json'];
  const program = join(project, 'dist', 'src', 'cli', 'bin.js');
  return (
    records.length === 1 &&
    spawnSync(process.execPath, [program, ...args], { cwd: out, stdio: 'inherit' }).status === 0
  );
}
