import { describe, expect, it } from 'vitest';
import { runStudy } from '../../../src/cli/study/gauge-study.ts';
import type { StationEvent } from '../../../src/evidence/station-event.ts';
import { startedStudy } from '../../audit/study-entries.ts';
import { problemOf, said } from '../answers.ts';
import { ended, SIZE, studyStation } from './study-station.ts';

const { stationFile, studyEvents, otherProgram, sitting } = studyStation();

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
