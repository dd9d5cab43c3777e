import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { openStationLog } from '../../../db/log.ts';
import { openStudyOf } from '../../../src/audit/gauge-log.ts';
import { backUp } from '../../../src/cli/station/backup.ts';
import { runStudy } from '../../../src/cli/study/gauge-study.ts';
import { dropStudy, listStudies } from '../../../src/cli/study/study-list.ts';
import { orThrow } from '../../../src/result.ts';
import { problemOf, said } from '../answers.ts';
import { GAUGE, gauging, SIZE, studyStation } from './study-station.ts';

const { at, stationFile, stationWith, studyEvents, sitting, show } = studyStation();

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
    const copy = at('copy.db');
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
