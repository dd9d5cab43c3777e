import { describe, expect, it } from 'vitest';
import { gaugeStudiesOf, isAsTaken, nextStudy, openStudyOf } from '../../src/audit/gauge-log.ts';
import { type StationEvent, stationEventSchema } from '../../src/evidence/station-event.ts';
import { WITHHELD } from '../../src/personal.ts';
import type { FigureSource } from '../../src/reading.ts';
import { orThrow } from '../../src/result.ts';
import { finishedStudy, logged, startedStudy } from './study-entries.ts';

const ORDER = [
  [2, 0, 1],
  [0, 1, 2],
  [1, 2, 0],
  [0, 2, 1],
];
const STARTED = startedStudy(ORDER);
const read = (turn: number, value = 0.7, source: FigureSource = 'linked'): StationEvent => ({
  type: 'gauge-study-read',
  study: 'GS-1',
  turn,
  value,
  source,
});
const back = (turn: number): StationEvent => ({ type: 'gauge-study-taken-back', study: 'GS-1', turn });
const DROPPED: StationEvent = { type: 'gauge-study-dropped', study: 'GS-1', because: 'the wrong parts' };
/** Turn `n` gives `0.5 + n/100`. */
const ALL = Array.from({ length: 12 }, (_, i) => read(i + 1, (50 + i + 1) / 100));
const READINGS = [
  [
    [0.52, 0.59],
    [0.53, 0.57],
    [0.51, 0.58],
  ],
  [
    [0.54, 0.6],
    [0.55, 0.62],
    [0.56, 0.61],
  ],
];

const open = (...events: readonly StationEvent[]) => openStudyOf(logged(events), 'GS-1');
const readings = (...events: readonly StationEvent[]) => orThrow(open(...events)).exercise.readings;

describe('an open study in the log', () => {
  it('has the readings that stand, in the order that was drawn, and how each was had', () => {
    const taking = orThrow(open(STARTED, read(1, 0.7), read(2, 0.8), back(2), read(2, 0.9, 'typed')));
    expect(taking).toMatchObject({
      exercise: { readings: [0.7, 0.9], plan: { appraisers: ['Ann', 'Ben'], trials: 2 } },
      sources: ['linked', 'typed'],
      takenBack: 1,
      started: { serial: 'EXAMPLE-G-01' },
    });
    expect(taking.exercise.order.map(({ part }) => part)).toEqual(ORDER.flat());
  });

  it('outlives the names of its appraisers: two that were forgotten are two', () => {
    const nobody = startedStudy(ORDER, { appraisers: [WITHHELD, WITHHELD] });
    expect(orThrow(open(nobody, ...ALL)).exercise.readings).toEqual(readings(STARTED, ...ALL));
    const [study] = gaugeStudiesOf(
      logged([nobody, ...ALL, finishedStudy(READINGS, { appraisers: [WITHHELD, WITHHELD] })]),
    );
    expect(study?.taking).not.toBeNull();
    expect(study && isAsTaken(study)).toBe(true);
    const twice = startedStudy(ORDER, { appraisers: ['Ann', 'Ann'] });
    expect(gaugeStudiesOf(logged([twice]))).toEqual([]);
  });

  it('is not changed by what does not fit it', () => {
    expect(readings(STARTED, read(1, 0.7), read(1, 0.8))).toEqual([0.7]);
    expect(readings(STARTED, read(1, 0.7), read(3, 0.8))).toEqual([0.7]);
    expect(readings(STARTED, back(1), read(1, 0.7), read(2, 0.8), back(1))).toEqual([0.7, 0.8]);
    expect(readings(STARTED, ...ALL, read(13))).toHaveLength(12);
    expect(readings(STARTED, read(1, 0.7), startedStudy(ORDER, { tool: 'other' }), read(2, 0.8))).toEqual([
      0.7, 0.8,
    ]);
    expect(gaugeStudiesOf(logged([read(1), back(1), DROPPED]))).toEqual([]);
  });

  it('is unknown where it was never started, or in an order that was not drawn for its plan', () => {
    expect(open(read(1))).toMatchObject({ error: { code: 'study-unknown' } });
    expect(open(startedStudy([[0, 0, 1], ...ORDER.slice(1)]))).toMatchObject({
      error: { code: 'study-unknown' },
    });
  });
});

describe('the end of a study in the log', () => {
  it('is its record or that it was given up, and nothing after that counts', () => {
    expect(open(STARTED, read(1), DROPPED)).toMatchObject({
      error: { code: 'study-dropped', message: 'this study was given up: the wrong parts' },
    });
    expect(open(STARTED, ...ALL, finishedStudy(READINGS))).toMatchObject({
      error: { code: 'study-finished' },
    });
    const [late] = gaugeStudiesOf(logged([STARTED, read(1), DROPPED, read(2), finishedStudy(READINGS)]));
    expect(late).toMatchObject({ end: { kind: 'dropped' }, taking: { exercise: { readings: [0.7] } } });
  });

  it('is held against the readings that were taken', () => {
    const one = (...events: readonly StationEvent[]) => gaugeStudiesOf(logged(events)).map(isAsTaken);
    expect(one(STARTED, ...ALL, finishedStudy(READINGS))).toEqual([true]);
    expect(one(STARTED, ...ALL, back(12), read(12, 0.99), finishedStudy(READINGS))).toEqual([false]);
    expect(one(STARTED, ...ALL.slice(1), finishedStudy(READINGS))).toEqual([false]);
  });

  it('is all that the log has of a study which was recorded as a whole', () => {
    const studies = gaugeStudiesOf(logged([finishedStudy(READINGS)]));
    expect(studies).toMatchObject([
      { study: 'GS-1', plan: { parts: ['1', '2', '3'], trials: 2 }, taking: null, end: { kind: 'finished' } },
    ]);
    expect(studies.map(isAsTaken)).toEqual([true]);
  });
});

describe('the number of the next study', () => {
  it('is one more than any that the log names', () => {
    expect(nextStudy([])).toBe('GS-1');
    expect(nextStudy(logged([finishedStudy(READINGS, { study: 'GS-11' }), STARTED, DROPPED]))).toBe('GS-12');
  });
});

describe('an event of a study', () => {
  it.each([
    ['a reading beyond all bounds', { ...read(1), value: 1e7 }],
    ['a reading that is no number', { ...read(1), value: null }],
    ['a turn before the first', read(0)],
    ['a study without a number', { ...back(1), study: 'GS-0' }],
    ['a reading from nowhere', { ...read(1), from: 'elsewhere' }],
    ['more than it has', { ...read(1), appraiser: 'Ann' }],
    ['a gap in N·m', { ...STARTED, measures: { quantity: 'length', unit: 'N.m' } }],
    ['a wrench whose torque nobody named', { ...STARTED, measures: { quantity: 'torque', unit: 'N.m' } }],
    ['no reason', { ...DROPPED, because: '' }],
  ])('is refused with %s', (_, event) => {
    expect(stationEventSchema.safeParse(event).success).toBe(false);
  });

  it('is taken as it is written', () => {
    for (const event of [STARTED, read(1, -1e6), back(3000), DROPPED, finishedStudy(READINGS)])
      expect(stationEventSchema.parse(event)).toEqual(event);
  });
});
