import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { typed } from '../answers.ts';
import { example, exampleJson, folder, type Running, start } from '../program.ts';

const whyNot = spawnSync('socat', ['-V']).status === 0 ? null : 'SKIPPED: socat is not installed';
if (whyNot !== null) process.stderr.write(`${whyNot}; no job was done with tools on pseudo-terminals\n`);

/** At the speed of this machine, whatever else it does: each wrench sends one figure a pull, which no hole can fall into. */
const peaks = ({ updateIntervalMs: _, ...profile }: Record<string, unknown>) => ({
  ...profile,
  samplingFunction: 'maximum',
});

/** A bay of two technicians: the small wrench is anybody's, the large one is the second's, and the first types what the gauge shows. */
function bay() {
  const dir = folder();
  const write = (name: string, value: unknown) => {
    writeFileSync(join(dir, name), JSON.stringify(value));
    return join(dir, name);
  };
  const profile = write('profile.json', peaks(exampleJson('profile-serial.json')));
  const port = (id: string) => join(dir, `port-${id}`);
  const wrench = (id: string) => ({
    ...exampleJson('station.json').tools[0],
    id,
    serial: id,
    driver: { use: 'serial', port: port(id), profile },
  });
  const gauge = exampleJson('station.json').tools[1];
  const station = write('station.json', {
    form: 'plugmark/station/1',
    station: 'Example bay',
    data: 'data',
    routine: 'none',
    tools: [
      wrench('small'),
      { ...wrench('large'), technician: 'Technician Two' },
      { ...gauge, technician: 'Technician One', driver: { use: 'typed', unit: 'mm' } },
    ],
  });
  /** Both wrenches at their ports; each pulls as it is told, with a rest between. */
  const served = (...pulls: readonly ['small' | 'large', number][]): Running => {
    const rest = (ms: number) => ({ do: 'wait', ms });
    const steps = pulls.flatMap(([tool, peakNm]) => [{ do: 'pull', tool, peakNm, riseMs: 900 }, rest(2_000)]);
    const scenario = write('scenario.json', {
      form: 'plugmark/scenario/1',
      title: 'two wrenches',
      tools: ['small', 'large'].map((id) => ({
        id,
        profile,
        port: port(id),
      })),
      steps: [rest(4_000), ...steps, rest(600_000)],
    });
    return start(['sim', 'serve', scenario]);
  };
  return { dir, station, served };
}

/** As the job says it; what it said last where it does not. */
const says = async (job: Running, words: string) => {
  const late = new Promise<never>((_, reject) =>
    setTimeout(() => reject(new Error(`"${words}" is not in:\n${job.output()}`)), 30_000).unref(),
  );
  await Promise.race([job.says(words), late]);
};

/** Of each row of the CSV file: what was measured where, with which tool and by whom. */
function whoDidWhat(csv: string): readonly string[] {
  const [head = [], ...rows] = csv
    .replace(/^\uFEFF/, '')
    .trim()
    .split('\r\n')
    .map((line) => line.replaceAll(/"[^"]*"/g, 'quoted').split(','));
  const at = (row: readonly string[], column: string) => row[head.indexOf(column)];
  return rows.map(
    (row) =>
      `${at(row, 'Quantity')} ${at(row, 'Cylinder')}, ${at(row, 'Instrument')}: ${at(row, 'Technician')}`,
  );
}

/** Chooses, of what a list offers, that which begins with these words. */
async function choose(job: Running, words: string) {
  await says(job, words);
  const key = job.output().match(new RegExp(`\\[?(\\d)\\]? +${words}`))?.[1];
  if (key === undefined) throw new Error(`no key for "${words}" in:\n${job.output()}`);
  job.type(key);
}

/** A wrench that sends one figure a pull does not say which plug was turned: one key does. */
async function confirmed(job: Running, cylinder: number) {
  await says(job, `Was that cylinder ${cylinder}?`);
  job.type('y');
  await says(job, `cylinder ${cylinder}  torque  OK`);
}

it.skipIf(whyNot !== null)(
  'two wrenches, a typed gauge and three technicians do one job, which is killed and gone on with: who did what is on the record',
  async () => {
    const { dir, station, served } = bay();
    const before = served(['small', 27.5], ['large', 27.4]);
    await says(before, 'large:');
    const job = start(['job', '--order', example('order-4.json'), '--station', station, '--plain']);
    await says(job, 'gauge  linked');
    for (const cylinder of [1, 2]) {
      job.type('0.75 mm');
      await says(job, `cylinder ${cylinder}  gap  OK`);
    }
    await confirmed(job, 1);
    await says(job, 'large in use  at work: Technician Two');
    await confirmed(job, 2);
    // The second is at work; the gauge stays the first's.
    job.type('0.76 mm');
    await says(job, 'gauge in use  at work: Technician One');
    await says(job, 'cylinder 3  gap  OK');
    job.child.kill('SIGKILL');
    before.child.kill('SIGTERM');
    expect((await job.ended).signal).toBe('SIGKILL');
    await before.ended;

    const again = start(['job', '--resume', '--station', station, '--plain']);
    await says(again, 'gauge  linked');
    again.type('0.74 mm');
    await says(again, 'cylinder 4  gap  OK');
    again.type('c');
    await choose(again, 'somebody else is at work now');
    await says(again, 'Who works on after Technician One');
    await choose(again, 'something else, typed');
    again.type('Technician Three');
    await says(again, 'Technician Three');
    served(['small', 27.6], ['large', 27.7]);
    await says(again, 'small in use');
    await confirmed(again, 3);
    await says(again, 'large in use  at work: Technician Two');
    await confirmed(again, 4);
    again.type('s');
    const ended = await again.ended;
    expect(ended.stderr).toBe('');
    expect(ended.stdout).toContain('4 gaps typed by Technician One, attested');

    const record = join(dir, 'data', 'EX-4001.record.json');
    const verdict = await typed([
      'verify',
      record,
      '--trust',
      join(dir, 'data', 'trusted-keys.json'),
      '--json',
    ]);
    expect(JSON.parse(verdict.stdout).verdict).toBe('unproven');
    const csv = readFileSync(join(dir, 'data', 'EX-4001.csv'), 'utf8');
    expect(whoDidWhat(csv)).toEqual([
      'gap 1, gauge: Technician One',
      'torque 1, small: Technician One',
      'gap 2, gauge: Technician One',
      'torque 2, large: Technician Two',
      'gap 3, gauge: Technician One',
      'torque 3, small: Technician Three',
      'gap 4, gauge: Technician One',
      'torque 4, large: Technician Two',
    ]);
  },
  120_000,
);
