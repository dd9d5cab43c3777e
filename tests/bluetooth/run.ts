/**
 * `npm run test:bluetooth`: plugmark on the Bluetooth stack of a real Linux kernel, without a radio. A Debian kernel in
 * qemu, BlueZ's virtual controllers, bluetoothd as a peer that plays a wrench and a gauge, and a whole job.
 */
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { boot } from './boot.ts';
import { missingPackages, preparePieces } from './pieces.ts';

const SECONDS = 600;
const project = resolve(import.meta.dirname, '../..');
const started = performance.now();
const say = (text: string) =>
  process.stdout.write(`[${((performance.now() - started) / 1_000).toFixed(0).padStart(3)} s] ${text}\n`);

const missing = missingPackages();
if (missing.length > 0) {
  process.stderr.write(
    `This test needs a Debian or Ubuntu machine with more packages. Install them with:\n  apt-get install --no-install-recommends ${missing.join(' ')}\n`,
  );
  process.exit(2);
}
say('preparing the guest');
const pieces = preparePieces(join(import.meta.dirname, 'guest', 'init'));
const out = mkdtempSync(join(tmpdir(), 'plugmark-bluetooth-'));
say(`booting ${pieces.kernelVersion}`);
const status = await boot({ pieces, project, out, seconds: SECONDS, only: process.argv[2] ?? '' });
const log = join(out, 'guest.log');
process.stdout.write(
  existsSync(log) ? readFileSync(log, 'utf8') : readFileSync(join(out, 'console.log'), 'utf8'),
);
say(
  status === 0
    ? 'all checks passed'
    : `failed (${status ?? 'the guest did not finish'}); its logs are in ${out}`,
);
if (status === 0) rmSync(out, { recursive: true });
process.exitCode = status === 0 ? 0 : 1;
