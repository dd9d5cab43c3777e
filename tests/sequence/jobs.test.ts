import { describe, expect, it } from 'vitest';
import { PEOPLE, type PersonName } from '../../sim/technician/people.ts';
import { replay } from '../../src/job/replay.ts';
import { workJob } from '../bench/kinds/jobs.ts';
import { JOINTS } from '../bench/kinds/joints.ts';
import { score } from '../bench/kinds/score.ts';

const job = (person: PersonName, joint: keyof typeof JOINTS, seed: string, cylinders = 4) =>
  workJob({ seed, plug: JOINTS[joint], cylinders, habits: PEOPLE[person], rateHz: 100, noiseShare: 0.001 });

describe('whole jobs with a simulated technician', () => {
  it.each<[PersonName, keyof typeof JOINTS]>([
    ['careful', 'M14 new gasket'],
    ['hurried', 'M14 conical'],
    ['clicks-twice', 'M10 used gasket'],
    ['stops-short', 'M18 conical'],
    ['overpulls', 'M14 used gasket'],
    ['skips', 'M14 conical'],
    ['mixed', 'M18 new gasket'],
    ['checks', 'M14 used gasket'],
    ['overlooks', 'M10 new gasket'],
    ['careless', 'M14 new gasket'],
  ])(
    '%s on %s: every cylinder called done is tight, by its own pull, and the record says so again',
    (person, joint) => {
      for (const seed of ['b', 'c']) {
        const done = job(person, joint, seed);
        const { wrongOk, wrongOkAsked, looseDone, pulls } = score(done);
        expect({ wrongOk, wrongOkAsked, looseDone }).toEqual({
          wrongOk: [],
          wrongOkAsked: [],
          looseDone: [],
        });
        expect(pulls.length).toBeGreaterThanOrEqual(4);
        expect(done.leaving.finished).toBe(true);
        const again = replay(done.events);
        expect(again.ok && again.value.state()).toEqual(done.state);
      }
    },
  );

  it('asks a careful technician at most three times in 100 pulls', () => {
    const asked = ['1', '2', '3', '4', '5'].flatMap(
      (seed) => score(job('careful', 'M14 conical', seed, 8)).asked,
    );
    expect(asked.length).toBeLessThanOrEqual(1);
  });

  it('asks one who left a cylinder out, and finds it', () => {
    const done = job('skips', 'M14 used gasket', 'left out', 8);
    expect(score(done).asked).toContain('already-tight');
    expect(done.events.some(({ type }) => type === 'cylinder-left-out')).toBe(true);
    expect(done.state.cylinders.every(({ torque }) => torque === 'done')).toBe(true);
  });
});

describe('a wrench that sends the highest torque of each pull and nothing else', () => {
  const withPeaks = (person: PersonName, seed: string) =>
    workJob({
      ...{ seed, plug: JOINTS['M14 new gasket'], cylinders: 4, habits: PEOPLE[person] },
      ...{ rateHz: 100, noiseShare: 0.001, sendsPeaks: true },
    });

  it.each<PersonName>(['careful', 'stops-short', 'clicks-twice', 'skips', 'overpulls'])(
    '%s: the job runs through on one key a pull, and the record says so again',
    (person) => {
      for (const seed of ['p', 'q']) {
        const done = withPeaks(person, seed);
        expect(done.leaving.finished).toBe(true);
        expect(done.state.cylinders.map(({ torque }) => torque)).toEqual(['done', 'done', 'done', 'done']);
        const { wrongOk, wrongOkAsked, looseDone } = score(done);
        expect({ wrongOk, wrongOkAsked, looseDone }).toEqual({
          wrongOk: [],
          wrongOkAsked: [],
          looseDone: [],
        });
        const again = replay(done.events);
        expect(again.ok && again.value.state()).toEqual(done.state);
      }
    },
  );

  it('asks a careful technician once a pull and nothing else, without a word on what turned', () => {
    const { events } = withPeaks('careful', 'r');
    const placed = events.flatMap((event) => (event.type === 'pull-placed' ? [event] : []));
    expect(placed.flatMap(({ ask }) => ask ?? [])).toEqual(['by-plan', 'by-plan', 'by-plan', 'by-plan']);
    expect(placed.flatMap(({ evidence }) => evidence ?? [])).toEqual([]);
  });
});
