/** The wall clock jumps while a job runs, by seconds or by years, forward and back. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { HERE, manners, type Part, pick, ran, whole } from './part.ts';

const JUMPS_MS = [
  -86_400_000,
  -3_600_000,
  -1000,
  1000,
  3_600_000,
  86_400_000 * 400,
  -86_400_000 * 400,
  86_400_000 * 365 * 70,
];

export const clocks: Part = {
  name: 'clocks',
  what: 'jobs under a clock that jumps',
  cases: 60,
  short: 3,
  prepare: () => ({
    async one(number, random, folder) {
      const jumps = Array.from({ length: whole(random, 1, 4) }, () => [
        whole(random, 0, 2500),
        pick(random, JUMPS_MS),
      ]);
      const env = {
        NODE_OPTIONS: `--require ${join(HERE, 'clock.cjs')}`,
        FAULTS_CLOCK: JSON.stringify(jumps),
      };
      const out = join(folder, 'demo');
      const demo = await ran(
        ['demo', '--fast', '--direct', '--cylinders', '4', '--seed', String(number), '--out', out],
        {
          env,
          patienceMs: 60_000,
        },
      );
      const faults = [...manners(demo)];
      const check = await ran(['log', 'check', '--data', out]);
      faults.push(...manners(check));
      if (check.code !== 0) faults.push(`log check: ${check.out}${check.err}`);
      const record = readdirSync(out).find((name) => name.endsWith('.record.json'));
      if (record !== undefined) {
        const verified = await ran(['verify', join(out, record), '--trust', join(out, 'trusted-keys.json')]);
        faults.push(...manners(verified));
        if (/Not authentic|TAMPERED/i.test(verified.out))
          faults.push(`a true record: ${verified.out.slice(0, 200)}`);
      }
      return { faults, counted: { records: record === undefined ? 0 : 1 } };
    },
  }),
};
