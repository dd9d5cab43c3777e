import { spawn } from 'node:child_process';
import { createWriteStream, existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Pieces } from './pieces.ts';

export interface Boot {
  readonly pieces: Pieces;
  /** The project as the guest sees it: the same path as here. */
  readonly project: string;
  /** An empty folder for what the guest writes; `status` in it holds its exit code. */
  readonly out: string;
  readonly seconds: number;
}

/** How long the kernel may take before the accelerator counts as not working. */
const UP_SECONDS = { kvm: 20, tcg: 120 } as const;

/** Boots the guest and waits until it is done; gives the scenario's exit code, or `undefined` if it never got there. */
export async function boot(order: Boot): Promise<number | undefined> {
  // /dev/kvm is there on some machines and does not work all the same.
  const accelerators = existsSync('/dev/kvm') ? (['kvm', 'tcg'] as const) : (['tcg'] as const);
  for (const accelerator of accelerators) {
    const ran = await run(order, accelerator);
    if (ran === 'up') {
      const status = join(order.out, 'status');
      return existsSync(status) ? Number(readFileSync(status, 'utf8')) : undefined;
    }
    process.stdout.write(`  ${accelerator} did not boot\n`);
  }
  return undefined;
}

function run({ pieces, project, out, seconds }: Boot, accelerator: 'kvm' | 'tcg'): Promise<'up' | 'down'> {
  const words = { project, tools: pieces.tools, node: process.execPath };
  const line = Object.entries(words).map(([name, value]) => `${name}=${value}`);
  const share = (id: string, path: string, mode: string) => [
    '-fsdev',
    `local,id=${id},path=${path},security_model=none${mode}`,
    '-device',
    `virtio-9p-pci,fsdev=${id},mount_tag=${id}`,
  ];
  const qemu = spawn(
    'qemu-system-x86_64',
    [
      ...['-accel', accelerator, '-cpu', accelerator === 'kvm' ? 'host' : 'max', '-smp', '2', '-m', '2048'],
      ...['-nodefaults', '-no-reboot', '-display', 'none', '-serial', 'stdio', '-device', 'virtio-rng-pci'],
      ...['-kernel', pieces.kernel, '-initrd', pieces.initrd],
      ...['-append', `console=ttyS0 panic=-1 quiet ${line.join(' ')}`],
      ...share('host', '/', ',readonly=on,multidevs=remap'),
      ...share('out', out, ''),
    ],
    { stdio: ['ignore', 'pipe', 'pipe'] },
  );
  const console = createWriteStream(join(out, 'console.log'));
  qemu.stdout.pipe(console);
  qemu.stderr.pipe(console);
  const isUp = () => existsSync(join(out, 'guest.log'));
  const early = setTimeout(() => isUp() || qemu.kill(), UP_SECONDS[accelerator] * 1_000);
  const late = setTimeout(() => qemu.kill(), seconds * 1_000);
  return new Promise((resolve) => {
    const end = () => {
      clearTimeout(early);
      clearTimeout(late);
      console.end(() => resolve(isUp() ? 'up' : 'down'));
    };
    qemu.once('error', end);
    qemu.once('close', end);
  });
}
