/** The disk fills up while a program writes: a small file system in memory. */
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Random } from '../../sim/random.ts';
import { acknowledgedIn, gapsIn, heldAgainst, isNoLog } from './log-facts.ts';
import { HERE, manners, type Outcome, type Part, ran, started, whole } from './part.ts';

export const fullDisk: Part = {
  name: 'full-disk',
  what: 'disks that fill up',
  cases: 100,
  short: 4,
  prepare: () => ({
    one: async (number, random, folder) => {
      const disk = join(folder, 'disk');
      mkdirSync(disk);
      const kb = number % 5 === 4 ? whole(random, 300, 4000) : whole(random, 200, 2500);
      if (!mounted(['-t', 'tmpfs', '-o', `size=${kb}k`, 'tmpfs', disk]))
        return { faults: [], skipped: 'a small file system cannot be mounted here (root is needed)' };
      try {
        return await (number % 5 === 4 ? demo(disk) : writing(disk, random));
      } finally {
        spawnSync('umount', ['-l', disk]);
      }
    },
  }),
};

const mounted = (args: readonly string[]) => spawnSync('mount', args).status === 0;
const enlarged = (disk: string) => mounted(['-o', 'remount,size=64m', disk]);

async function writing(disk: string, random: Random): Promise<Outcome> {
  const path = join(disk, 'station.db');
  const most = String(whole(random, 1, 40));
  const args = [join(HERE, 'writer.mjs'), path, 'F', '0', '1000000', most];
  const full = await started(process.execPath, args, { patienceMs: 60_000 }).ended;
  const acknowledged = acknowledgedIn(full.out);
  const faults = [...manners(full)];
  if (!/^problem (log-disk|file-system)$/m.test(full.out))
    faults.push(
      `it ends with "${full.out.trim().split('\n').at(-1)}" and not with a full disk: ${full.err.slice(0, 200)}`,
    );
  enlarged(disk);
  const after = await heldAgainst(path, 'F', acknowledged);
  // Before the first acknowledgement there need not be a log; a new one must come then.
  const isNoLogYet = acknowledged === 0 && isNoLog(path);
  const held = isNoLogYet ? 0 : after.held;
  const on = [join(HERE, 'writer.mjs'), path, 'F', String(held), '20', '4'];
  const goesOn = await started(process.execPath, on, { patienceMs: 60_000 }).ended;
  if (!goesOn.out.includes('closed')) faults.push(`it does not go on: ${goesOn.out}${goesOn.err}`);
  else faults.push(...(await heldAgainst(path, 'F', acknowledgedIn(goesOn.out))).faults);
  return {
    faults: isNoLogYet ? faults : [...faults, ...after.faults],
    counted: { acknowledged, 'no log yet': isNoLogYet ? 1 : 0 },
  };
}

async function demo(disk: string): Promise<Outcome> {
  const out = join(disk, 'demo');
  const full = await ran(['demo', '--fast', '--direct', '--cylinders', '4', '--out', out], {
    patienceMs: 60_000,
  });
  const faults = [...manners(full)];
  const shown = [...full.out.matchAll(/^[\d:]+ {2}cylinder \d {2}gap {2}/gm)].length;
  if (full.code === 0) return { faults, counted: { 'had room enough': 1 } };
  enlarged(disk);
  const check = await ran(['log', 'check', '--data', out]);
  faults.push(...manners(check));
  const log = join(out, 'station.db');
  if (shown === 0 && isNoLog(log)) return { faults, counted: { 'no log yet': 1 } };
  if (check.code !== 0) faults.push(`log check: ${check.out}${check.err}`);
  const held = await gapsIn(log);
  if (held < shown) faults.push(`${shown} verdicts were shown, ${held} are in the log`);
  return { faults, counted: { 'verdicts shown': shown } };
}
