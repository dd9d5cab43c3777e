import { describe, expect, it } from 'vitest';
import { foldAll } from '../../src/job/fold.ts';
import { joiningResultSchema } from '../../src/report/joining-form.ts';
import { jobResult, judgedIn, resultsOf } from '../../src/report/joining-results.ts';
import { recordOf } from '../evidence/forge.ts';
import { logOf, seal, wholeJob } from '../evidence/sample-job.ts';
import { madeJob, TROUBLED, V8_BY_HAND, V8_WITH_REDO } from './fixtures.ts';

const stateOf = (options: Parameters<typeof madeJob>[0]) => {
  const { entries } = madeJob(options).input;
  const state = foldAll(entries.map(({ event }) => event));
  if (state === null) throw new Error('no job');
  return { entries, state };
};
const more = (result: ReturnType<typeof jobResult>) =>
  Object.fromEntries(result.ResultMetaData.ExtendedMetaData.map(({ Key, Value }) => [Key, Value]));

describe('results in the names of OPC 40450-1', () => {
  it.each([
    ['a job with a pull done again', V8_WITH_REDO],
    ['a job by hand', V8_BY_HAND],
    ['a job with everything out of the ordinary', TROUBLED],
  ])('%s: one for each judged pull and gap, and one for the job, all of the form', (_, options) => {
    const { entries, state } = stateOf(options);
    const results = resultsOf(entries);
    const judged = state.cylinders.flatMap(({ gaps, pulls }) => [
      ...gaps.map(({ judgement }) => judgement),
      ...pulls.flatMap(({ judgement }) => judgement ?? []),
    ]);
    expect(results).toHaveLength(judged.length + 1);
    for (const result of results) expect(joiningResultSchema.parse(result)).toEqual(result);
    expect(new Set(results.map(({ ResultMetaData }) => ResultMetaData.ResultId)).size).toBe(results.length);
    const evaluations = { OK: 1, NotOK: 2, NotDecidable: 3 };
    expect(results.slice(0, -1).map(({ ResultMetaData }) => ResultMetaData.ResultEvaluation)).toEqual(
      judged.map(({ result }) => evaluations[result]),
    );
  });

  it('a pull over the window: torque in N·m with its limits, not OK because of the limits, no more counting once it was done again', () => {
    const { state } = stateOf(V8_WITH_REDO);
    const third = state.cylinders.find(({ cylinder }) => cylinder === 3);
    const [high] = third?.pulls.filter(({ judgement }) => judgement?.result === 'NotOK') ?? [];
    const result = judgedIn(state)
      .find(({ attempt }) => attempt === high)
      ?.result('2026-03-02T09:30:00.000Z');
    expect(result?.ResultContent).toEqual([
      {
        OverallResultValues: [
          expect.objectContaining({
            MeasuredValue: 31.42,
            LowLimit: 25,
            HighLimit: 30,
            PhysicalQuantity: 2,
            EngineeringUnits: expect.objectContaining({ UnitId: 20_053 }),
            ValueTag: 1,
            ResultEvaluation: 2,
          }),
        ],
        FailureReason: 1,
      },
    ]);
    expect(result && more(result)).toMatchObject({ cylinder: 3, kind: 'tightening' });
  });

  it('says whose the torque limits are: of the source, or a rule of the shop with its figure', () => {
    const { state } = stateOf(V8_WITH_REDO);
    const limitsWith = (change: Partial<typeof state.order.specification>) => {
      const specification = { ...state.order.specification, ...change };
      const [pull] = judgedIn({ ...state, order: { ...state.order, specification } }).filter(
        ({ attempt }) => 'pull' in attempt,
      );
      return pull && more(pull.result('2026-03-02T09:30:00.000Z'));
    };
    expect(limitsWith({})).toMatchObject({ limitsFrom: 'source' });
    const setBy = 'A. Example';
    const single = { torque: '27 N·m', singleFigure: { percent: 5, setBy, basis: 'bench' } };
    expect(limitsWith(single)).toMatchObject({ limitsFrom: 'shop-rule', shopTolerancePercent: 5 });
    const reduction = { percent: 10, lubricant: 'oiled', setBy } as const;
    expect(limitsWith({ reduction })).toMatchObject({ limitsFrom: 'shop-rule', shopReductionPercent: 10 });
  });

  it('a pull whose samples the record contains has its curve, with as many times as torques', () => {
    const { entries } = recordOf(seal(logOf(wholeJob())));
    const curves = resultsOf(entries).flatMap(({ ResultContent }) =>
      ResultContent.flatMap(({ Trace }) => Trace?.StepTraces ?? []),
    );
    expect(curves.length).toBeGreaterThan(0);
    for (const { NumberOfTracePoints, StepTraceContent } of curves)
      expect(StepTraceContent.map(({ Values }) => Values.length)).toEqual([
        NumberOfTracePoints,
        NumberOfTracePoints,
      ]);
  });

  it('a job that is void, or lies open, is neither OK nor not OK', () => {
    const { state } = stateOf({});
    const evaluation = (outcome: Parameters<typeof jobResult>[1]) =>
      jobResult(state, outcome, '2026-03-02T09:30:00.000Z').ResultMetaData.ResultEvaluation;
    expect(evaluation('complete')).toBe(1);
    expect(evaluation('incomplete')).toBe(2);
    expect(evaluation('void')).toBe(0);
    expect(evaluation('left-open')).toBe(0);
  });
});
