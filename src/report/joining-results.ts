import type { LogEntry } from '../evidence/log.ts';
import { foldAll } from '../job/fold.ts';
import { torqueWindowBefore } from '../job/stage.ts';
import type { CylinderState, GapAttempt, JobState, TorqueAttempt } from '../job/state.ts';
import type { Judgement, Window } from '../metrology/judgement.ts';
import { shopPercent } from '../plug/tightening.ts';
import type { FigureSource, ToolId } from '../reading.ts';
import {
  ASSET,
  EVALUATION,
  FINAL,
  JOB_RESULT,
  type JoiningResult,
  PROGRAM_LIMITS,
  QUANTITY,
  type ResultValue,
  SINGLE_RESULT,
  UNITS,
} from './joining-form.ts';
import type { Trace } from './plots.ts';
import { tracesOf } from './traces.ts';

/** One judged attempt, and what makes its result. */
export interface Judged {
  readonly attempt: GapAttempt | TorqueAttempt;
  /** `at`: when it was placed. */
  readonly result: (at: string, trace?: Trace) => JoiningResult;
}

/** How a job ended, or stands. */
export type JobOutcome = 'complete' | 'incomplete' | 'left-open' | 'void';

/** Every pull and gap reading that was judged, in the order of the plugs. */
export const judgedIn = (state: JobState): readonly Judged[] =>
  state.cylinders.flatMap((cylinder) => [
    ...cylinder.gaps.map((attempt) => ({
      attempt,
      result: (at: string) => gapResult(state, cylinder, attempt, at),
    })),
    ...cylinder.pulls.flatMap((attempt) =>
      attempt.judgement === null
        ? []
        : [
            {
              attempt,
              result: (at: string, trace?: Trace) =>
                pullResult(state, cylinder, {
                  attempt,
                  judgement: attempt.judgement as Judgement,
                  at,
                  trace,
                }),
            },
          ],
    ),
  ]);

/** All results of a closed job with their torque curves, that of the job itself last. */
export function resultsOf(entries: readonly LogEntry[]): readonly JoiningResult[] {
  const events = entries.map(({ event }) => event);
  const state = foldAll(events);
  if (state === null) return [];
  const traces = tracesOf(events);
  const last = entries.at(-1)?.at ?? '';
  const results = judgedIn(state).map(({ attempt, result }) => {
    const placed = entries.findLast(({ event }) =>
      'pull' in attempt
        ? event.type === 'pull-placed' && event.pull === attempt.pull.pull
        : event.type === 'gap-measured' && event.tool === attempt.tool && event.reading === attempt.reading,
    );
    return result(placed?.at ?? last, 'pull' in attempt ? traces.get(attempt.pull.pull) : undefined);
  });
  return [...results, jobResult(state, outcomeOf(state), last)];
}

/** How a job ended, or stands. */
export function outcomeOf({ voided, closed }: JobState): JobOutcome {
  if (voided !== null) return 'void';
  if (closed === null) return 'left-open';
  return closed.complete ? 'complete' : 'incomplete';
}

export function jobResult({ order, sources }: JobState, outcome: JobOutcome, at: string): JoiningResult {
  const { job } = order;
  return {
    ResultMetaData: {
      ResultId: job,
      Name: `job ${job}`,
      Classification: JOB_RESULT,
      JobId: job,
      IsSimulated: sources.includes('simulated'),
      ...(sources.includes('replayed') && { IsGeneratedOffline: true }),
      CreationTime: at,
      ResultEvaluation:
        outcome === 'complete' ? EVALUATION.OK : outcome === 'incomplete' ? EVALUATION.NotOK : 0,
      ExtendedMetaData: [{ Key: 'outcome', Value: outcome }],
    },
    ResultContent: [],
  };
}

function gapResult(state: JobState, { cylinder }: CylinderState, gap: GapAttempt, at: string): JoiningResult {
  const { judgement, tool, reading, source } = gap;
  const values =
    state.gapWindow === null ? [] : [judged('gap', QUANTITY.distance, judgement, state.gapWindow, tool)];
  return {
    ResultMetaData: metaData(state, {
      id: `gap ${cylinder} ${tool} ${reading}`,
      name: `gap of plug ${cylinder}`,
      at,
      source,
      judgement,
      tool,
      more: [
        { Key: 'cylinder', Value: cylinder },
        { Key: 'counts', Value: gap.takenBack !== true },
      ],
    }),
    ResultContent: [{ OverallResultValues: values, ...failure(judgement) }],
  };
}

interface PullToTell {
  readonly attempt: TorqueAttempt;
  readonly judgement: Judgement;
  readonly at: string;
  readonly trace: Trace | undefined;
}

function pullResult(
  state: JobState,
  c: CylinderState,
  { attempt, judgement, at, trace }: PullToTell,
): JoiningResult {
  const { pull, kind, turn } = attempt;
  const window = torqueWindowBefore(state, c, pull.pull);
  const limits = state.basis.turn;
  const id = `pull ${pull.pull}`;
  const torque = judged('torque', QUANTITY.torque, judgement, window, pull.tool);
  // Where a turn is judged too, the verdict is of both, and no word on the torque alone.
  const { ResultEvaluation: _of, ...figures } = torque;
  const values: ResultValue[] = [turn === undefined ? torque : figures];
  if (turn !== undefined && turn !== null && limits !== undefined)
    values.push({
      MeasuredValue: turn.value,
      Name: 'turn from contact',
      ResultEvaluation: EVALUATION[turn.result],
      SensorId: pull.tool,
      LowLimit: limits.lowerDeg,
      HighLimit: limits.upperDeg,
      PhysicalQuantity: QUANTITY.angle,
      EngineeringUnits: UNITS.deg,
    });
  return {
    ResultMetaData: metaData(state, {
      id,
      sequence: pull.pull,
      name: `torque of plug ${c.cylinder}`,
      at,
      source: pull.source,
      judgement,
      tool: pull.tool,
      more: [
        { Key: 'cylinder', Value: c.cylinder },
        { Key: 'kind', Value: kind },
        ...limitsFrom(state),
        { Key: 'counts', Value: pull.pull > (c.restartedAfter ?? 0) },
      ],
    }),
    ResultContent: [
      {
        OverallResultValues: values,
        ...failure(judgement),
        ...(trace !== undefined &&
          trace.tMs.length > 0 && { Trace: traceOf(state.order.job, id, pull.tool, trace) }),
      },
    ],
  };
}

/** Whose the limits are: a figure that its source prints alone, or for dry threads, has the shop's own. */
function limitsFrom({
  order: { specification },
}: JobState): JoiningResult['ResultMetaData']['ExtendedMetaData'] {
  const tolerance = shopPercent(specification);
  const { reduction } = specification;
  return [
    { Key: 'limitsFrom', Value: tolerance === null && reduction === undefined ? 'source' : 'shop-rule' },
    ...(tolerance === null ? [] : [{ Key: 'shopTolerancePercent', Value: tolerance }]),
    ...(reduction === undefined ? [] : [{ Key: 'shopReductionPercent', Value: reduction.percent }]),
  ];
}

function traceOf(job: string, id: string, tool: ToolId, { tMs, nm }: Trace) {
  const ResultId = `${job} ${id}`;
  return {
    TraceId: `${ResultId} trace`,
    ResultId,
    StepTraces: [
      {
        StepTraceId: `${ResultId} trace 1`,
        StepResultId: ResultId,
        NumberOfTracePoints: tMs.length,
        StepTraceContent: [
          { Values: [...tMs], Name: 'time', PhysicalQuantity: QUANTITY.time, EngineeringUnits: UNITS.ms },
          {
            Values: [...nm],
            Name: 'torque',
            SensorId: tool,
            PhysicalQuantity: QUANTITY.torque,
            EngineeringUnits: UNITS['N.m'],
          },
        ],
      },
    ],
  };
}

interface About {
  readonly id: string;
  readonly sequence?: number;
  readonly name: string;
  readonly at: string;
  readonly source: FigureSource;
  readonly judgement: Judgement;
  readonly tool: ToolId;
  readonly more: JoiningResult['ResultMetaData']['ExtendedMetaData'];
}

function metaData({ order, instruments }: JobState, about: About): JoiningResult['ResultMetaData'] {
  const { id, sequence, name, at, source, judgement, tool, more } = about;
  const serial = instruments.find((one) => one.id === tool)?.serial;
  return {
    ResultId: `${order.job} ${id}`,
    ...(sequence !== undefined && { SequenceNumber: String(sequence) }),
    Name: name,
    Classification: SINGLE_RESULT,
    JobId: order.job,
    IsSimulated: source === 'simulated',
    ...(source === 'replayed' && { IsGeneratedOffline: true }),
    CreationTime: at,
    ResultEvaluation: EVALUATION[judgement.result],
    AssociatedEntities: [{ Name: tool, EntityId: serial ?? tool, EntityType: ASSET }],
    ExtendedMetaData: [
      ...more,
      { Key: 'source', Value: source },
      { Key: 'side', Value: judgement.side },
      { Key: 'expandedUncertainty', Value: judgement.expandedUncertainty },
      { Key: 'conformanceProbability', Value: judgement.conformanceProbability },
    ],
  };
}

const judged = (
  name: string,
  quantity: ResultValue['PhysicalQuantity'],
  { value, result }: Judgement,
  { lowerLimit, upperLimit, unit }: Window,
  tool: ToolId,
): ResultValue => ({
  MeasuredValue: value,
  Name: name,
  ResultEvaluation: EVALUATION[result],
  ValueTag: FINAL,
  SensorId: tool,
  LowLimit: lowerLimit,
  HighLimit: upperLimit,
  PhysicalQuantity: quantity,
  EngineeringUnits: UNITS[unit],
});

const failure = ({ result }: Judgement) =>
  result === 'NotOK' ? ({ FailureReason: PROGRAM_LIMITS } as const) : {};
