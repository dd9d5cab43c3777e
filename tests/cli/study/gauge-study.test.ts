import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { ReplaySubject, Subject } from 'rxjs';
import { afterEach, beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { openStationLog } from '../../../db/log.ts';
import type { LinkState, Tool } from '../../../drivers/driver.ts';
import { Gauge } from '../../../sim/physics/gauge.ts';
import { Random } from '../../../sim/random.ts';
import { believableOf } from '../../../src/audit/gauge-doubt.ts';
import { newExercise, planFrom } from '../../../src/audit/gauge-exercise.ts';
import { openStudyOf } from '../../../src/audit/gauge-log.ts';
import { type SittingInput, sittingWith } from '../../../src/audit/gauge-sitting.ts';
import { backUp } from '../../../src/cli/station/backup.ts';
import { runStudy, type StudyOptions } from '../../../src/cli/study/gauge-study.ts';
import { dropStudy, listStudies, showStudy } from '../../../src/cli/study/study-list.ts';
import { studyViewOf } from '../../../src/cli/study/study-view.ts';
import type { StationEvent } from '../../../src/evidence/station-event.ts';
import { createStudyRun } from '../../../src/pipeline/run-study.ts';
import { studyInputs } from '../../../src/pipeline/study-inputs.ts';
import { ProblemError } from '../../../src/problem.ts';
import type { Reading, ToolDescription } from '../../../src/reading.ts';
import { err, ok, orThrow } from '../../../src/result.ts';
import { startedStudy } from '../../audit/study-entries.ts';
import { clickPull, drawn } from '../../pull/shapes.ts';
import { problemOf, said } from '../answers.ts';

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
const logFile = () => join(folder, 'data', 'station.db');
/** What the log holds of studies. */
async function studyEvents() {
  const log = await openStationLog(logFile());
  try {
    return log.stationEntries().flatMap(({ event }) => ('study' in event ? [event] : []));
  } finally {
    log.close();
  }
}
/** Another program at the same station, as it stands there: it has read the log, and adds to it. */
async function otherProgram() {
  const log = await openStationLog(logFile());
  onTestFinished(() => log.close());
  return (event: StationEvent) => {
    log.stationEntries();
    log.appendStation([{ by: 'station', event }], { at: '2026-11-25T16:00:00.000Z', monoUs: 0 });
  };
}
function stationWith(tool: object): void {
  const station = { form: 'plugmark/station/1', station: 'Example garage', data: 'data', tools: [tool] };
  writeFileSync(stationFile(), JSON.stringify(station));
}

/** Presses the button of the simulated gauge on the part that a line asks for. */
function gauging() {
  const gauge = new Gauge({ biasMm: 0, repeatabilityMm: 0.004, resolutionMm: 0.001 }, new Random(3));
  return (part: string) => String(gauge.measure(0.5 + 0.1 * Number(part)) / 10_000);
}

function ended(): PassThrough {
  const input = new PassThrough();
  input.end();
  return input;
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
    const { text } = await sitting((part) => `1.${part}77`);
    expect(text.slice(0, text.indexOf('Recorded'))).not.toMatch(/1\.\d77/);
    expect(text).toContain('taken, 11 left');
  });

  it('takes a reading back, pauses, and says so of what is no figure', async () => {
    const answers = ['0.5', 'back', 'about a millimetre\n0.601', 'pause\n0.9\npause', '0.602'];
    const { text } = await sitting((part, n) => answers[n - 1] ?? `0.6${part}${n % 10}`);
    expect(text).toMatch(/taken back: Ann, part \d, trial 1/);
    expect(text).toContain('This is not a figure.');
    expect(text).toContain('Paused: no reading is taken.');
    expect(text).toContain('A reading came and was not taken.');
    expect(text).toContain('Readings typed: 12. Taken back: 1.');
    expect((await studyEvents()).slice(1, 5)).toMatchObject([
      { type: 'gauge-study-read', turn: 1, value: 0.5, source: 'typed' },
      { type: 'gauge-study-taken-back', turn: 1 },
      { type: 'gauge-study-read', turn: 1, value: 0.601 },
      { type: 'gauge-study-read', turn: 2, value: 0.602 },
    ]);
  });

  it('is left without a trace before its first reading, and with the way on after it', async () => {
    const nothing = await sitting(() => 'quit');
    expect(nothing.code).toBe(1);
    expect(nothing.text).toContain('Nothing was kept');
    expect(await studyEvents()).toEqual([]);
    const left = await sitting((_, n) => (n < 5 ? '0.7' : null));
    expect(left.code).toBe(5);
    expect(left.text).toContain('GS-1: open, 4 of 12 readings are kept.');
    expect(left.text).toContain('--resume GS-1');
  });
});

describe('a reading outside the usual, in plain lines', () => {
  it('does not count until Enter takes it, and no line says its figure', async () => {
    const answers = ['99\n0.7', '99\nback\n0.701', '98.5\n'];
    const { code, text } = await sitting((part, n) => answers[n - 1] ?? `0.7${part}${n % 10}`);
    expect(code).toBe(0);
    expect(text).toContain('outside the usual 0.2 to 3 mm and does not count yet');
    expect(text).toContain('  set aside');
    expect(text.slice(0, text.indexOf('Recorded'))).not.toMatch(/\b99|98\.5/);
    expect(text).toContain('Taken back: 2.');
    const values = (await studyEvents()).flatMap((event) =>
      event.type === 'gauge-study-read' ? [event.value] : [],
    );
    expect(values.slice(0, 5)).toEqual([99, 0.7, 99, 0.701, 98.5]);
    expect(values).toHaveLength(14);
  });

  it('is set aside by who leaves without an answer', async () => {
    const { text } = await sitting((_, n) => (n === 1 ? '0.7' : '99\nquit'));
    expect(text).toContain('GS-1: open, 1 of 12 readings are kept.');
    expect((await studyEvents()).map(({ type }) => type.slice(12))).toEqual([
      'started',
      'read',
      'read',
      'taken-back',
    ]);
  });
});

describe('a study that was broken off', () => {
  const gauge = gauging();
  const breaksOff = (after: number) => sitting((part, n) => (n <= after ? gauge(part) : null));
  const resumed = (study = 'GS-1') => sitting(gauge, { resume: study });

  it('goes on in the order that was drawn with nothing lost, and is then whole', async () => {
    await breaksOff(5);
    const before = await studyEvents();
    const listed = await said(() => listStudies({ station: stationFile() }));
    expect(listed.text).toMatch(/GS-1 +open, 5 of 12 +EXAMPLE-G-01 +2 x 3 x 2/);
    const { text } = await resumed();
    expect(text).toContain('[6 of 12]');
    expect(text).toContain('Recorded as GS-1.');
    expect((await studyEvents()).slice(0, before.length)).toEqual(before);
    expect((await said(() => listStudies({ station: stationFile() }))).text).toMatch(/GS-1 +20\d\d-/);
    expect(await problemOf(() => resumed())).toMatchObject({ code: 'study-finished' });
  });

  it('shows nothing of its readings while it is open', async () => {
    await sitting((_, n) => (n <= 5 ? '0.7123' : null));
    const { text } = await show('GS-1');
    expect(text).toBe('GS-1: open, 5 of 12 readings\n');
  });

  it('is in a backup of the log', async () => {
    await breaksOff(5);
    const copy = join(folder, 'copy.db');
    await said(() => backUp(copy, { station: stationFile() }));
    const log = await openStationLog(copy);
    const taking = orThrow(openStudyOf(log.stationEntries(), 'GS-1'));
    log.close();
    expect(taking.exercise.readings).toHaveLength(5);
  });

  it('lets a new one be started beside it under a number of its own', async () => {
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
    expect(text).toContain('GS-1: open, 12 of 12 readings are kept');
    const end = new PassThrough();
    end.end('\n');
    const recorded = await said(() =>
      runStudy({ station: stationFile(), plain: true, parts: '10', trials: 3, resume: 'GS-1' }, end),
    );
    expect(recorded.text).toContain('Recorded as GS-1.');
  });

  it('is not gone on with by another tool, and not where nobody began it', async () => {
    await breaksOff(2);
    stationWith({ ...GAUGE, serial: 'EXAMPLE-G-02' });
    expect(await problemOf(() => resumed())).toMatchObject({ code: 'study-other-tool' });
    stationWith(GAUGE);
    for (const study of ['GS-7', '../../station'])
      expect(await problemOf(() => resumed(study))).toMatchObject({ code: 'study-unknown' });
  });

  it.each([
    [{ parts: '3', trials: 2 }, 'option-not-valid'],
    [{ ...SIZE, tool: 'wrench' }, 'tool-unknown'],
    [{ ...SIZE, appraisers: 'Ann' }, 'gauge-study-plan'],
  ])('cannot be started with %o', async (options, code) => {
    expect(await problemOf(() => sitting(gauge, options))).toMatchObject({ code });
  });
});

describe('another program at the same station', () => {
  const reading: StationEvent = {
    type: 'gauge-study-read',
    study: 'GS-1',
    turn: 3,
    value: 0.777,
    source: 'linked',
  };
  const PERSON: StationEvent = { type: 'person-recorded', person: 'Technician Two', key: null };
  /** A sitting of two readings, then one in whose second turn the other program does something. */
  async function meddled(event: StationEvent) {
    await sitting((_, n) => (n <= 2 ? '0.7' : null));
    const other = await otherProgram();
    return sitting(
      (_, n) => {
        if (n === 1) other(event);
        return n <= 3 ? '0.8' : null;
      },
      { resume: 'GS-1' },
    );
  }
  const values = async () =>
    (await studyEvents()).flatMap((event) => (event.type === 'gauge-study-read' ? [event.value] : []));

  it('may add what is none of the study: the reading is put behind it', async () => {
    expect((await meddled(PERSON)).text).toContain('GS-1: open, 5 of 12 readings are kept.');
    expect(await values()).toEqual([0.7, 0.7, 0.8, 0.8, 0.8]);
  });

  it('may do so when readings were taken back, too', async () => {
    await sitting(() => 'quit');
    const other = await otherProgram();
    const answers = ['0.7', '0.71', '0.72\nback', '0.73', '0.74'];
    const { text } = await sitting((_, n) => {
      if (n === 1 || n === 5) other(PERSON);
      return answers[n - 1] ?? null;
    });
    expect(text).toContain('GS-1: open, 4 of 12 readings are kept.');
    expect(await values()).toEqual([0.7, 0.71, 0.72, 0.73, 0.74]);
  });

  it('is noticed where it took the same turn: the second reading is refused, the first one stands', async () => {
    const problem = await problemOf(() => meddled(reading));
    expect(problem).toMatchObject({ code: 'study-other-writer', where: 'GS-1' });
    expect(problem.message).toContain('and has 3 readings');
    expect(await values()).toEqual([0.7, 0.7, 0.777]);
  });

  it.each<[string, StationEvent, string]>([
    ['took a reading back', { type: 'gauge-study-taken-back', study: 'GS-1', turn: 2 }, 'study-other-writer'],
    ['gave the study up', { type: 'gauge-study-dropped', study: 'GS-1', because: 'x' }, 'study-dropped'],
  ])('is noticed where it %s', async (_, event, code) => {
    expect(await problemOf(() => meddled(event))).toMatchObject({ code });
    expect(await values()).toEqual([0.7, 0.7]);
  });

  it('is noticed where it began a study of the same number, and that one is left alone', async () => {
    await said(() => runStudy({ station: stationFile(), plain: true, ...SIZE }, ended()));
    const other = await otherProgram();
    const started = startedStudy(
      [
        [0, 1, 2],
        [0, 1, 2],
        [0, 1, 2],
        [0, 1, 2],
      ],
      { tool: 'other' },
    );
    const second = sitting((_, n) => {
      if (n === 1) other(started);
      return '0.7';
    });
    expect(await problemOf(() => second)).toMatchObject({ code: 'study-other-writer' });
    expect(await studyEvents()).toEqual([started]);
  });
});

describe('a study that is given up', () => {
  const drop = (study: string, because = 'The wrong parts were laid out.') =>
    said(() => dropStudy(study, { station: stationFile(), because }));

  it('stays in the log with the reason, and is not gone on with', async () => {
    await sitting((_, n) => (n <= 2 ? '0.7' : null));
    expect((await drop('GS-1')).text).toContain('GS-1 is given up');
    expect((await studyEvents()).map(({ type }) => type.slice(12))).toEqual([
      'started',
      'read',
      'read',
      'dropped',
    ]);
    const resumed = await problemOf(() => sitting(() => '0.7', { resume: 'GS-1' }));
    expect(resumed).toMatchObject({ code: 'study-dropped' });
    expect(resumed.message).toContain('The wrong parts were laid out.');
    const list = await said(() => listStudies({ station: stationFile() }));
    expect(list.text).toMatch(/GS-1 +given up, 2 of 12 .* The wrong parts were laid out\./);
    expect((await show('GS-1')).text).toMatch(/GS-1: given up, 2 of 12 readings, on 20\d\d-.*wrong parts/);
    expect((await sitting(() => '0.7')).text).toContain('Recorded as GS-2.');
  });

  it('is open, of this station, and given up for a reason', async () => {
    await sitting(() => '0.7');
    expect(await problemOf(() => drop('GS-1'))).toMatchObject({ code: 'study-finished' });
    expect(await problemOf(() => drop('GS-2'))).toMatchObject({ code: 'study-unknown' });
    expect(await problemOf(() => drop('GS-1', '  '))).toMatchObject({ code: 'option-not-valid' });
  });
});

const plan = orThrow(planFrom({ appraisers: ['Ann', 'Ben'], parts: ['1', '2'], trials: 2 }));
const inOrder = (n: number) => Array.from({ length: n }, (_, i) => i);

const ABOUT = {
  study: 'GS-1',
  station: 'Example garage',
  instrument: {
    id: 'gauge',
    quantity: 'length',
    resolution: 0.001,
    basis: 'data sheet',
    permissibleDeviation: { kind: 'absolute', amount: 0.01 },
  },
  types: false,
  on: '2026-11-25',
} as const;

describe('a study at work', () => {
  const set = (keep: () => void = () => {}) =>
    createStudyRun({
      sitting: sittingWith(
        newExercise(plan, inOrder),
        believableOf({ quantity: 'length', unit: 'mm' }),
        'gauge',
      ),
      keep,
      record: () => {
        throw new Error('not now');
      },
      typed: (line) => (line === '0.7' ? ok(0.7) : err({ code: 'not-understood', message: 'x', next: 'x' })),
    });

  it('shows a reading only once it is on disk', async () => {
    const shown: number[] = [];
    const run = set(() => {
      throw new ProblemError({ code: 'log-disk', message: 'full', next: 'make room' });
    });
    const failed = new Promise((resolve) =>
      run.state$.subscribe({
        next: ({ sitting }) => shown.push(sitting.exercise.readings.length),
        error: resolve,
      }),
    );
    run.hear({ kind: 'value', value: 0.7, source: 'linked' });
    expect(await failed).toBeInstanceOf(ProblemError);
    expect(shown).toEqual([0]);
  });

  it('keeps nothing that comes once somebody left', () => {
    let kept = 0;
    const run = set(() => kept++);
    run.hear({ kind: 'value', value: 0.7, source: 'linked' });
    run.leave();
    run.hear({ kind: 'value', value: 0.7, source: 'linked' });
    expect(kept).toBe(1);
  });

  it('takes what somebody typed for a tool that does not type, and says so of what is no figure', () => {
    const run = set();
    run.command({ typed: '0.7' });
    run.command({ typed: 'seven' });
    expect(run.state().sitting).toMatchObject({
      exercise: { readings: [0.7] },
      notice: { words: 'This is not a figure.' },
    });
  });

  it('records nothing that is not whole', () => {
    const run = set();
    const seen: unknown[] = [];
    run.state$.subscribe({ error: (error) => seen.push(error) });
    run.command('record');
    expect(seen).toEqual([]);
    for (let i = 0; i < 8; i++) run.command({ typed: '0.7' });
    run.command('record');
    expect(seen).toEqual([new Error('not now')]);
  });

  it('gives the screen what is asked about as the same thing until it is answered, and takes it then', () => {
    const run = set();
    const asked = () => studyViewOf(run.state(), ABOUT).asked;
    run.hear({ kind: 'value', value: 99, source: 'linked' });
    const first = asked();
    expect(first).toMatchObject({ value: 99, lower: 0.2, upper: 3 });
    run.hear({ kind: 'refused', words: 'too soon' });
    expect(asked()).toBe(first);
    run.command('take');
    expect(asked()).toBeNull();
    expect(run.state().sitting.exercise.readings).toEqual([99]);
  });

  it('gives the screen the reading before last to nobody, and the last one only within its turn', () => {
    const run = set();
    const told = (value: number) => {
      run.hear({ kind: 'value', value, source: 'linked' });
      return JSON.stringify(studyViewOf(run.state(), ABOUT));
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
    link: { kind: 'bluetooth-le', authenticated: false },
  });
  function tool(quantity: 'torque' | 'length') {
    const link$ = new ReplaySubject<LinkState>(1);
    const readings$ = new Subject<Reading>();
    const got: SittingInput[] = [];
    const joined: Tool = {
      id: quantity,
      driver: 'test',
      quantity,
      source: 'linked',
      timing: { stamps: 'device' },
      link$,
      readings$,
      connect: () => Promise.resolve(ok(description(quantity))),
      close: () => Promise.resolve(),
    };
    studyInputs(joined, 25).subscribe((one) => got.push(one));
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
    expect(refused()).toEqual(['Too soon after the last reading: not taken.']);
    rest(3000);
    draw(pull, -1);
    expect(refused().at(-1)).toBe('That pull loosened: not taken.');
    rest(3000);
    draw(pull);
    expect(values()).toHaveLength(2);
    link$.next({ state: 'lost', reason: 'tool-switching-off' });
    expect(got.at(-1)).toEqual({ kind: 'link', link: { state: 'lost', reason: 'tool-switching-off' } });
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
      'Too soon after the l',
      'A reading from the m',
      'The tool sent no val',
      'This is not a figure',
    ]);
  });
});
