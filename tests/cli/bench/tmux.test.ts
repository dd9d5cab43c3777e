import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { typed } from '../answers.ts';
import { type Driven, driven, whyNoTmux } from './tmux.ts';

if (whyNoTmux !== null) process.stderr.write(`${whyNoTmux}\n`);

const ORDER = [1, 3, 5, 7, 2, 4, 6, 8] as const;

/** Fits a plug and pulls it, and waits for its verdict. */
async function pulled(
  bench: Driven,
  cylinder: number,
  verdict: string | RegExp = `Cylinder ${cylinder} torque OK`,
  how = 'careful',
) {
  bench.hands(`fit ${cylinder}`, `pull ${cylinder} ${how}`);
  await bench.shows(verdict);
}

/** Every gap measured, and bent until it is right. */
async function gapped(bench: Driven) {
  for (const cylinder of ORDER) {
    bench.hands(`measure ${cylinder}`);
    await bench.shows(`Cylinder ${cylinder} gap OK`);
  }
}

async function toTheTorque(bench: Driven) {
  await bench.shows('Compare these windows');
  bench.press('Enter');
  await bench.shows('Before the first plug is turned');
  await tickedAll(bench);
  await bench.shows('old plug of cylinder 1');
}

/** A list is ticked as a whole only once it was there to be read. */
async function tickedAll(bench: Driven) {
  await new Promise((resolve) => setTimeout(resolve, READING_MS));
  bench.press('a');
}
const READING_MS = 2500;

/** The seal and the papers are there, and a stranger finds the record in order. */
async function verified(bench: Driven): Promise<string> {
  await bench.shows(/papers .*\.pdf/s);
  const record = join(bench.out, 'EX-8001-1.record.json');
  expect(existsSync(record)).toBe(true);
  const said = await typed(['verify', record, '--trust', join(bench.out, 'trusted-keys.json'), '--json']);
  // Authentic; but simulated tools prove nothing.
  expect([said.code, JSON.parse(said.stdout).verdict]).toEqual([1, 'unproven']);
  return said.stdout;
}

describe.skipIf(whyNoTmux !== null)('a V8 on a real terminal of 80 by 24', () => {
  it('takes no more than two keys a cylinder where nothing goes wrong, and none during the torque', async () => {
    const bench = driven();
    await toTheTorque(bench);
    bench.press('a');
    await bench.shows('Compare the new plugs');
    bench.press('Enter');
    await bench.shows('lot or date code');
    bench.press('Enter');
    await bench.shows('Measure the gap of the plug for cylinder 1');
    bench.hands(...ORDER.map((cylinder) => `measure ${cylinder}`));
    await bench.shows('Threads and seats clean, in the head and on the plugs?');
    await tickedAll(bench);
    await bench.shows('Threads in the head chased?');
    bench.press('1', 'Enter');
    await bench.shows('Cylinder 1: fit the plug by hand');
    const before = bench.keys();
    for (const cylinder of ORDER) await pulled(bench, cylinder);
    expect(bench.keys()).toBe(before);
    await bench.shows('Compound in the boots');
    bench.press('1', 'Space', '1', '1', 'Enter');
    await bench.shows('Press s to sign');
    bench.press('s');
    await bench.shows(/COMPLETE\. 8 torques SIMULATED, no proof; 8 gaps SIMULATED, no proof\./);
    expect(bench.keys()).toBeLessThanOrEqual(2 * ORDER.length);
    await verified(bench);
  });

  it('is led through everything that goes wrong, each by one question at a time', async () => {
    const bench = driven();
    await toTheTorque(bench);

    // An old plug that differs from the others, with its gap, a note, and a key too many.
    bench.hands('measure 1');
    await bench.shows(/1 · to read, \d\.\d\d mm/);
    bench.press('Down', 'Down', 'x', '1', 't', 'w');
    await bench.shows('Note:');
    bench.type('süß & naß');
    bench.press('Enter');
    await bench.shows('note: süß & naß');
    bench.press('Enter');
    await bench.shows('old plug of cylinder 3');
    bench.press('a');
    const odd = await bench.shows('Compare the new plugs');
    expect(odd).toContain('Cylinder 1 differs from the others: dry soot, insulator cracked');

    // A part that the order does not name is refused.
    bench.press('p');
    await bench.shows('Which part number is on the box');
    bench.press('2');
    bench.type('OTHER-1');
    bench.press('Enter');
    await bench.shows('part OTHER-1');
    bench.press('Enter');
    await bench.shows('lot or date code');
    bench.type('L-77');
    bench.press('Enter');
    await bench.shows('not OTHER-1');
    bench.press('p', '1');
    await bench.shows('part EXAMPLE-14G');
    bench.press('Enter');
    await bench.shows('Measure the gap of the plug for cylinder 1');
    await gapped(bench);

    // A step that is not done, with its reason.
    await bench.shows('Threads and seats clean, in the head and on the plugs?');
    await tickedAll(bench);
    await bench.shows('Threads in the head chased?');
    bench.press('2', 'Down', 'x');
    await bench.shows('Why is this not done?');
    bench.press('1');
    await bench.shows('not done: does not apply');
    bench.press('Enter');
    await bench.shows('Cylinder 1: fit the plug by hand');

    // Over the window: it stays, by name; torque goes on being shown while the name is typed.
    await pulled(bench, 1, /Cylinder 1 torque NOT OK .*over the window/, 'lean');
    bench.press('k');
    await bench.shows('Cylinder 1 stays as it is, over the window: who answers for it');
    bench.type('Åsa Öst');
    expect(await bench.shows('Name: Åsa Öst')).toMatch(/Torque +-?\d+\.\d N·m/);
    bench.press('Enter', '1');
    await bench.shows('≈');

    // Stopped short, then gone on with.
    await pulled(bench, 3, /Cylinder 3 torque NOT OK .*under the window/, 'short');
    await bench.shows('Cylinder 3 is not proven: pull once more');
    bench.hands('pull 3 careful');
    await bench.shows('Cylinder 3 torque OK');

    // The wrong plug: the pull is given to where it was.
    await bench.shows('Cylinder 5: fit the plug by hand');
    bench.hands('fit 7', 'pull 7 careful');
    await bench.shows('Cylinder 5 torque OK');
    bench.press('c', '1');
    await bench.shows('Which pull was on another plug?');
    bench.press('Enter', '7', 'Enter');
    await bench.shows(/belong to\s+cylinder\s+7\?/);
    bench.press('1');
    await bench.shows('Cylinder 7 torque OK');
    await bench.shows('Cylinder 5: fit the plug by hand');

    // A tight plug pulled again: asked, and said to be a re-hit.
    bench.hands('wait 3000', 'pull 7 careful');
    await bench.shows('tight already');
    bench.press('r');
    // The due cylinder is another than the last one: the first pull on it is confirmed by one key.
    await bench.shows('BACK TO cylinder 5');
    await pulled(bench, 5, 'Was that cylinder 5?');
    bench.press('y');
    await bench.shows('Cylinder 5 torque OK');

    // The window made smaller and larger on the way.
    bench.resize(60, 20);
    expect(await bench.shows(/^.{1,60}$/m)).toContain('Cylinder 2');
    bench.resize(120, 40);
    await bench.shows('┌');
    bench.resize(80, 24);
    await bench.shows('Cylinder 2: fit the plug by hand');

    // A plug that no wrench reaches.
    bench.press('c', '3');
    await bench.shows('can no torque wrench reach');
    bench.press('Enter');
    await bench.shows('How far did you turn cylinder 2');
    bench.type('1/2 turn');
    bench.press('Enter', '1');
    await bench.shows('Cylinder 4: fit the plug by hand');

    // A plug that is proven comes out again.
    await pulled(bench, 4);
    bench.press('c', '2');
    await bench.shows('Which plug do you take out');
    bench.press('Enter', '1');
    await bench.shows('Why is cylinder 4 started again?');
    bench.press('2');
    await bench.shows('Cylinder 4: fit the plug by hand');
    bench.hands('loosen 4 ratchet');
    await pulled(bench, 4, 'Cylinder 6: fit the plug by hand');
    await pulled(bench, 6);
    await pulled(bench, 8);

    await bench.shows('Compound in the boots');
    bench.press('1', 'Space', '1', '1', 'Enter');
    await bench.shows('not all are proven by torque');
    bench.press('s');
    await bench.shows(/The\s+torque\s+of cylinder 1, 2 is NOT proven/);
    const said = await verified(bench);
    expect(said).toContain('Åsa Öst');
  });

  it('is left by Ctrl-C in the middle of a typed line without a question, and nothing is lost', async () => {
    const bench = driven();
    await bench.shows('Compare these windows');
    bench.press('Enter');
    await bench.shows('Before the first plug is turned');
    bench.press('x');
    await bench.shows('Why is this not done?');
    bench.press('4');
    bench.type('half a wo');
    await bench.shows('half a wo');
    bench.press('C-c');
    await bench.shows('The job is still open. All readings are kept.');
    const jobs = await typed(['jobs', '--data', bench.out]);
    expect(jobs.stdout).toContain('open');
  });
});
