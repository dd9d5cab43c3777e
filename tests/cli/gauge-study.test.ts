import { appendFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { ReplaySubject, Subject } from 'rxjs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { LinkState, Tool } from '../../drivers/driver.ts';
import { Gauge } from '../../sim/physics/gauge.ts';
import { Random } from '../../sim/random.ts';
import { newExercise, planFrom } from '../../src/audit/gauge-exercise.ts';
import { type SittingInput, sittingWith } from '../../src/audit/gauge-sitting.ts';
import { runStudy, type StudyOptions } from '../../src/cli/gauge-study.ts';
import { listStudies, showStudy } from '../../src/cli/study-list.ts';
import { createStudyRun } from '../../src/cli/study-run.ts';
import { studyValues } from '../../src/cli/study-values.ts';
import { studyViewOf } from '../../src/cli/study-view.ts';
import { ProblemError } from '../../src/problem.ts';
import type { Reading, ToolDescription } from '../../src/reading.ts';
import { err, ok, orThrow } from '../../src/result.ts';
import { clickPull, drawn } from '../pull/shapes.ts';
import { problemOf, said } from './said.ts';

const GAUGE = {
  id: 'gauge',
  quantity: 'length',
  serial: 'EXAMPLE-G-01',
  resolution: 0.001,
  basis: 'data sheet',
  permissibleDeviation: { kind: 'absolute', amount: 0.01 },
  driver: { use: 'typed', unit: 'mm' },
};
const SIZE = { tool: 'gauge', appraisers: 'Ann,Ben', parts: '3', trials: 2 };

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'study-'));
  stationWith(GAUGE);
});
afterEach(() => rmSync(folder, { recursive: true }));

const stationFile = () => join(folder, 'station.json');
const journal = (study = 'GS-1') => join(folder, 'data', 'studies', `${study}.jsonl`);
function stationWith(tool: object): void {
  const station = { form: 'plugmark/station/1', station: 'Example garage', data: 'data', tools: [tool] };
  writeFileSync(stationFile(), JSON.stringify(station));
}

/** Presses the button of the simulated gauge on the part that a line asks for. */
function gauging() {
  const gauge = new Gauge({ biasMm: 0, repeatabilityMm: 0.004, resolutionMm: 0.001 }, new Random(3));
  return (part: string) => String(gauge.measure(0.5 + 0.1 * Number(part)) / 10_000);
}

/** Somebody who sits down in plain lines, and answers the lines that ask for a part; null ends the input. */
async function sitting(
  answer: (part: string, asked: number) => string | null,
  more: Partial<StudyOptions> = SIZE,
) {
  const input = new PassThrough();
  let asked = 0;
  let text = '';
  const hear = (line: string) => {
    const part = /measure part (\S+)/.exec(line)?.[1];
    const typed = part === undefined ? '' : answer(part, ++asked);
    if (typed === null) input.end();
    else if (part !== undefined || line.startsWith('All is measured')) input.write(`${typed}\n`);
  };
  const spy = vi.spyOn(process.stdout, 'write').mockImplementation((chunk) => {
    text += String(chunk);
    for (const line of String(chunk).split('\n')) hear(line);
    return true;
  });
  const options = { station: stationFile(), parts: '10', trials: 3, plain: true, ...more } as const;
  const code = await runStudy(options, input).finally(() => spy.mockRestore());
  return { code, text };
}

const show = (study: string) => said(() => showStudy(study, { station: stationFile() }));

describe('a gauge study with the simulated gauge, in plain lines', () => {
  it('asks for every part, takes what the gauge gives, and finds the gauge as it is', async () => {
    const gauge = gauging();
    const { code, text } = await sitting(gauge, {
      ...SIZE,
      appraisers: 'Ann,Ben,Cem',
      parts: '5',
      trials: 3,
    });
    expect(code).toBe(0);
    expect(text.match(/measure part/g)).toHaveLength(45);
    expect(text).toMatch(/\[1 of 45\] trial 1: Ann, measure part \d/);
    expect(text).toContain('Recorded as GS-1.');
    const ev = [...text.matchAll(/\(EV\)\s+(\S+)/g)].map(([, sigma]) => Number(sigma));
    expect(ev).toHaveLength(2);
    // The simulated gauge repeats with 0.004 mm.
    for (const sigma of ev) expect(sigma > 0.002 && sigma < 0.007).toBe(true);
    expect((await show('GS-1')).text).toContain('(EV)');
  });

  it('says no figure that was taken: the lines stay in sight', async () => {
    const { text } = await sitting((part) => `0.${part}77`);
    expect(text.slice(0, text.indexOf('Recorded'))).not.toMatch(/0\.\d77/);
    expect(text).toContain('taken, 11 left');
  });

  it('takes a reading back, pauses, and says so of what is no figure', async () => {
    const answers = ['0.5', 'back', 'about a millimetre\n0.601', 'pause\n0.9\npause', '0.602'];
    const { text } = await sitting((part, n) => answers[n - 1] ?? `0.6${part}${n % 10}`);
    expect(text).toMatch(/taken back: Ann, part \d, trial 1/);
    expect(text).toContain('That is no figure that can be read.');
    expect(text).toContain('Paused: nothing is taken.');
    expect(text).toContain('A reading came and was not taken.');
    expect(text).toContain('typed by hand 0, taken back on the way 1.');
    const took = readFileSync(journal(), 'utf8').match(/"took":0\.\d+/g);
    expect(took?.slice(0, 3)).toEqual(['"took":0.5', '"took":0.601', '"took":0.602']);
  });

  it('is left without a trace before its first reading, and with the way on after it', async () => {
    const nothing = await sitting(() => 'quit');
    expect(nothing.code).toBe(1);
    expect(nothing.text).toContain('nothing was kept');
    expect(existsSync(journal())).toBe(false);
    const left = await sitting((_, n) => (n < 5 ? '0.7' : null));
    expect(left.code).toBe(0);
    expect(left.text).toContain('GS-1 was left open: 4 of 12 readings are kept.');
    expect(left.text).toContain('--resume GS-1');
  });
});

describe('a study that was broken off', () => {
  const gauge = gauging();
  const breaksOff = (after: number) => sitting((part, n) => (n <= after ? gauge(part) : null));
  const resumed = (study = 'GS-1') => sitting(gauge, { resume: study });

  it('goes on in the order that was drawn with nothing lost, and is then whole', async () => {
    await breaksOff(5);
    const before = readFileSync(journal(), 'utf8');
    const listed = await said(() => listStudies({ station: stationFile() }));
    expect(listed.text).toMatch(/GS-1 +open, 5 of 12 +EXAMPLE-G-01 +2 x 3 x 2/);
    const { text } = await resumed();
    expect(text).toContain('[6 of 12]');
    expect(text).toContain('Recorded as GS-1.');
    expect(readFileSync(journal(), 'utf8').startsWith(before)).toBe(true);
    expect((await said(() => listStudies({ station: stationFile() }))).text).toMatch(/GS-1 +20\d\d-/);
    expect(await problemOf(() => resumed())).toMatchObject({ code: 'study-made' });
  });

  it('loses no more than the reading that a power cut left half written', async () => {
    await breaksOff(5);
    appendFileSync(journal(), '{"at":"2026-11-25T16:0');
    expect((await resumed()).text).toContain('[6 of 12]');
  });

  it('lets a new one be begun beside it under a number of its own', async () => {
    await breaksOff(1);
    expect((await sitting(gauge)).text).toContain('Recorded as GS-2.');
    expect((await resumed()).text).toContain('Recorded as GS-1.');
  });

  it('stays whole if it is left before it is recorded, and its last reading can still be taken back', async () => {
    const input = new PassThrough();
    for (let i = 0; i < 12; i++) input.write('0.7\n');
    input.write('back\n0.8\nquit\n');
    const { text } = await said(() =>
      runStudy({ station: stationFile(), plain: true, ...SIZE, parts: '3' }, input),
    );
    expect(text).toContain('12 of 12 readings are kept');
    const end = new PassThrough();
    end.end('\n');
    const recorded = await said(() =>
      runStudy({ station: stationFile(), plain: true, parts: '10', trials: 3, resume: 'GS-1' }, end),
    );
    expect(recorded.text).toContain('Recorded as GS-1.');
  });

  it('is not gone on with by another tool, and not where its file was changed', async () => {
    await breaksOff(2);
    stationWith({ ...GAUGE, serial: 'EXAMPLE-G-02' });
    expect(await problemOf(() => resumed())).toMatchObject({ code: 'study-other-tool' });
    stationWith(GAUGE);
    appendFileSync(journal(), '{"took":"much"}\n');
    expect(await problemOf(() => resumed())).toMatchObject({
      code: 'study-file',
      where: expect.stringContaining('line 4'),
    });
    for (const study of ['GS-7', '../../station'])
      expect(await problemOf(() => resumed(study))).toMatchObject({ code: 'study-unknown' });
  });

  it('is refused to a second program at the same time', async () => {
    await breaksOff(2);
    const meddling = sitting(
      (part, n) => {
        if (n === 2) appendFileSync(journal(), '{"at":"2026-11-25T16:00:00.000Z","took":0.7,"by":"tool"}\n');
        return gauge(part);
      },
      { resume: 'GS-1' },
    );
    expect(await problemOf(() => meddling)).toMatchObject({ code: 'study-other-writer' });
  });

  it.each([
    [{ parts: '3', trials: 2 }, 'option-not-valid'],
    [{ ...SIZE, tool: 'wrench' }, 'tool-unknown'],
    [{ ...SIZE, appraisers: 'Ann' }, 'gauge-study-plan'],
  ])('cannot be begun with %o', async (options, code) => {
    expect(await problemOf(() => sitting(gauge, options))).toMatchObject({ code });
  });
});

const plan = orThrow(planFrom({ appraisers: ['Ann', 'Ben'], parts: ['1', '2'], trials: 2 }));
const inOrder = (n: number) => Array.from({ length: n }, (_, i) => i);

describe('a study at work', () => {
  const set = (keep: () => void = () => {}) =>
    createStudyRun({
      sitting: sittingWith(newExercise(plan, inOrder), 'gauge'),
      keep,
      record: () => Promise.reject(new Error('not now')),
      typed: (line) => (line === '0.7' ? ok(0.7) : err({ code: 'x', message: 'x', next: 'x' })),
    });

  it('shows a reading only once it is on disk', async () => {
    const shown: number[] = [];
    const run = set(() => {
      throw new ProblemError({ code: 'study-disk', message: 'full', next: 'make room' });
    });
    const failed = new Promise((resolve) =>
      run.state$.subscribe({
        next: ({ sitting }) => shown.push(sitting.exercise.readings.length),
        error: resolve,
      }),
    );
    run.hear({ kind: 'value', value: 0.7, by: 'tool' });
    expect(await failed).toBeInstanceOf(ProblemError);
    expect(shown).toEqual([0]);
  });

  it('takes what somebody typed for a tool that does not type, and says so of what is no figure', () => {
    const run = set();
    run.command({ typed: '0.7' });
    run.command({ typed: 'seven' });
    expect(run.state().sitting).toMatchObject({
      exercise: { readings: [0.7] },
      notice: { words: 'That is no figure that can be read.' },
    });
  });

  it('records nothing that is not whole', async () => {
    const run = set();
    const seen: unknown[] = [];
    run.state$.subscribe({ error: (error) => seen.push(error) });
    run.command('record');
    await new Promise((resolve) => setImmediate(resolve));
    expect(seen).toEqual([]);
    for (let i = 0; i < 8; i++) run.command({ typed: '0.7' });
    run.command('record');
    await new Promise((resolve) => setImmediate(resolve));
    expect(seen).toEqual([new Error('not now')]);
  });

  it('gives the screen the reading before last to nobody, and the last one only within its turn', () => {
    const run = set();
    const instrument = {
      id: 'gauge',
      quantity: 'length',
      resolution: 0.001,
      basis: 'data sheet',
      permissibleDeviation: { kind: 'absolute', amount: 0.01 },
    } as const;
    const about = { study: 'GS-1', station: 'Example garage', instrument, types: false, on: '2026-11-25' };
    const told = (value: number) => {
      run.hear({ kind: 'value', value, by: 'tool' });
      return JSON.stringify(studyViewOf(run.state(), about));
    };
    expect(told(0.4711)).toContain('0.4711');
    const second = told(0.4712);
    expect(second).not.toMatch(/0\.471/);
    expect(second).toContain('"handOver":true');
    expect(told(0.4713)).not.toMatch(/0\.471[12]/);
  });
});

describe('a tool in a study', () => {
  const description = (quantity: 'torque' | 'length'): ToolDescription => ({
    quantity,
    unit: quantity === 'torque' ? 'N.m' : 'm',
    exponent: quantity === 'torque' ? -2 : -6,
    samplingFunction: 'instantaneous',
    link: { kind: 'direct', authenticated: false },
  });
  function tool(quantity: 'torque' | 'length') {
    const link$ = new ReplaySubject<LinkState>(1);
    const readings$ = new Subject<Reading>();
    const got: SittingInput[] = [];
    const joined: Tool = {
      id: quantity,
      driver: 'test',
      quantity,
      timing: { stamps: 'device' },
      link$,
      readings$,
      connect: () => Promise.resolve(ok(description(quantity))),
      close: () => Promise.resolve(),
    };
    studyValues(joined, 25).subscribe((one) => got.push(one));
    link$.next({ state: 'linked', description: description(quantity) });
    return {
      got,
      link$,
      readings$,
      values: () => got.flatMap((one) => (one.kind === 'value' ? [one.value] : [])),
      refused: () => got.flatMap((one) => (one.kind === 'refused' ? [one.words] : [])),
    };
  }

  it('gives the peak of each whole pull and the torque meanwhile, and why the rest is not taken', () => {
    const { got, link$, readings$, values, refused } = tool('torque');
    let n = 0;
    let at = 0;
    const draw = (corners: Parameters<typeof drawn>[0], sign = 1) => {
      for (const { nm } of drawn(corners)) {
        at += 10_000;
        readings$.next({ kind: 'value', n: ++n, atUs: at, counts: Math.round(sign * 100 * nm) });
      }
    };
    const rest = (ms: number) =>
      draw([
        { atMs: 0, nm: 0 },
        { atMs: ms, nm: 0 },
      ]);
    const pull = [{ atMs: 0, nm: 0 }, ...clickPull(400, 700, 26, 20, 20)];
    rest(3000);
    draw(pull);
    expect(values()).toHaveLength(1);
    expect(Math.abs((values()[0] ?? 0) - 26)).toBeLessThan(0.3);
    const live = got.flatMap((one) => (one.kind === 'live' && one.pulling ? [one.nowNm] : []));
    expect(Math.max(...live)).toBeGreaterThan(25);
    // A second click on the same part would be taken for the next part.
    draw(pull);
    expect(refused()).toEqual(['That came too soon after the reading before: not taken.']);
    rest(3000);
    draw(pull, -1);
    expect(refused().at(-1)).toBe('That pull loosened: not taken.');
    rest(3000);
    draw(pull);
    expect(values()).toHaveLength(2);
    link$.next({ state: 'lost', reason: 'battery' });
    expect(got.at(-1)).toEqual({ kind: 'link', link: { state: 'lost', reason: 'battery' } });
  });

  it('gives each reading of a gauge, but none that came too soon, from its memory, or without a value', () => {
    const { readings$, values, refused } = tool('length');
    const at = (ms: number, counts: number) =>
      readings$.next({ kind: 'value', n: 1, atUs: 1000 * ms, counts });
    at(0, 750);
    at(900, 751);
    at(1100, 752);
    readings$.next({ kind: 'stored', n: 4, atUs: 9_000_000, counts: 753 });
    readings$.next({ kind: 'not-known', n: 5, atUs: 9_100_000 });
    readings$.next({ kind: 'raw', n: 6, atUs: 9_200_000, source: 'x', hex: 'ff' });
    expect(values()).toEqual([0.75, 0.752]);
    expect(refused().map((words) => words.slice(0, 20))).toEqual([
      'That came too soon a',
      'A reading from the m',
      'The tool sent no val',
      'That is no figure th',
    ]);
  });
});
