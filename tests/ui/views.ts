/** Every state of the screen that a technician can meet. */
import { type RoutineItem, USUAL_ROUTINE } from '../../src/job/routine.ts';
import type { JobState, OldPlug } from '../../src/job/state.ts';
import type { Condition, Damage } from '../../src/plug/condition.ts';
import type { BenchView } from '../../src/ui/view.ts';
import {
  attemptOf,
  cylinderIn,
  jobWith,
  judged,
  linked,
  lost,
  okTorque,
  pullOf,
  questionOn,
  seeking,
  viewOf,
  withCylinder,
} from './fixtures.ts';

/** Two seconds of a pull: a rise, a click, a fall back to rest. */
export const TRACE: readonly number[] = [
  ...Array.from({ length: 40 }, () => 0),
  ...Array.from({ length: 60 }, (_, at) => at * 0.44),
];

const overWindow = judged('NotOK', 'high', 31.22, 'N.m');
const unsure = judged('NotDecidable', 'high', 29.6, 'N.m');

/** The fifth cylinder in service order is 2. */
const asking = withCylinder(jobWith(4), {
  ...cylinderIn(2, 'done', 'ask'),
  pulls: [attemptOf(5, overWindow)],
});

const read = (condition: Condition, damage: readonly Damage[] = []): OldPlug => ({
  read: { condition, damage: [...damage], thread: 'sound' },
  gap: null,
  removal: null,
});

const said = (...lists: readonly (readonly RoutineItem[])[]): JobState['attested'] =>
  Object.fromEntries(lists.flat().map(({ id, choices }) => [id, { as: choices?.[0]?.id ?? 'done' }]));

const checked = Object.fromEntries(
  [1, 2, 3, 4, 5, 6, 7, 8].map((cylinder) => [cylinder, { part: 'EX-1234', lot: null, differs: [] }]),
);

const beforeRemoval = { routine: USUAL_ROUTINE, windowsConfirmed: true };
const atOldPlugs = { ...beforeRemoval, attested: said(USUAL_ROUTINE.beforeRemoval) };

/** A job with the usual routine, come as far as the name says. */
export const ROUTINE_JOBS = {
  windows: jobWith(0, { routine: USUAL_ROUTINE }),
  list: jobWith(0, beforeRemoval),
  oldPlugs: jobWith(0, {
    ...atOldPlugs,
    oldPlugTarget: 7,
    oldPlugs: { 1: read('normal'), 3: read('normal'), 5: read('overheated', ['bent-electrode']) },
  }),
  newPlugs: jobWith(0, atOldPlugs),
  afterwards: jobWith(8, {
    ...atOldPlugs,
    attested: said(USUAL_ROUTINE.beforeRemoval, USUAL_ROUTINE.fitting),
    newPlugs: checked,
  }),
} as const;

const loosened = attemptOf(1, null, { kind: 'loosening', pull: pullOf(1, -22.4) });

/** Every state of the screen that a technician can meet, by name. */
export const VIEWS: Readonly<Record<string, BenchView>> = {
  start: viewOf(
    jobWith(0, { tools: { wrench: seeking('wrench'), gauge: seeking('gauge') } }),
    { nowNm: null },
    { logEntries: 2 },
  ),
  gap: viewOf(jobWith(3)),
  pulling: viewOf(
    withCylinder(jobWith(4), cylinderIn(2, 'done', 'todo')),
    { nowNm: 26.42, pulling: true, peakNm: 26.42, trace: TRACE },
    { sources: ['simulated'] },
  ),
  ok: viewOf(jobWith(5, { lastVerdict: { quantity: 'torque', cylinder: 2, judgement: okTorque() } }), {
    nowNm: 0,
    peakNm: 27.41,
    trace: TRACE,
  }),
  notOk: viewOf(
    {
      ...asking,
      lastVerdict: { quantity: 'torque', cylinder: 2, judgement: overWindow },
      questions: [questionOn(2, 'over-window', ['refit', 'replace'])],
    },
    { nowNm: 0, peakNm: 31.22, trace: TRACE },
  ),
  unsure: viewOf(
    {
      ...asking,
      lastVerdict: { quantity: 'torque', cylinder: 7, judgement: okTorque() },
      questions: [questionOn(2, 'unsure', ['fresh', 'rehit', 'handling'])],
    },
    { nowNm: 0, peakNm: 26.1, trace: TRACE },
  ),
  undecided: viewOf(
    withCylinder(jobWith(4, { lastVerdict: { quantity: 'torque', cylinder: 2, judgement: unsure } }), {
      ...cylinderIn(2, 'done', 'again'),
      pulls: [attemptOf(5, unsure)],
    }),
    { nowNm: 0, peakNm: 29.6, trace: TRACE },
  ),
  lost: viewOf(
    withCylinder(
      jobWith(4, { tools: { wrench: lost('wrench', 'no-answer'), gauge: linked('gauge') } }),
      cylinderIn(2, 'done', 'todo'),
    ),
    { nowNm: null },
  ),
  proven: viewOf(jobWith(8, { lastVerdict: { quantity: 'torque', cylinder: 8, judgement: okTorque(26.9) } })),
  closed: viewOf(jobWith(8, { closed: { complete: true, open: [] } })),
  closedOpen: viewOf(
    jobWith(6, {
      closed: {
        complete: false,
        open: [
          { kind: 'no-torque', cylinder: 6 },
          { kind: 'gap-not-proven', cylinder: 8 },
        ],
      },
    }),
  ),
  windows: viewOf(ROUTINE_JOBS.windows),
  list: viewOf(ROUTINE_JOBS.list),
  chosen: viewOf(ROUTINE_JOBS.afterwards),
  oldPlugs: viewOf(ROUTINE_JOBS.oldPlugs),
  removed: viewOf({
    ...ROUTINE_JOBS.oldPlugs,
    oldPlugTarget: 1,
    oldPlugs: { 1: { read: null, gap: { gapMm: 0.94, source: 'linked' }, removal: 1 } },
    strays: [loosened],
  }),
  newPlugs: viewOf(ROUTINE_JOBS.newPlugs),
  settled: viewOf(
    withCylinder(jobWith(4), {
      ...cylinderIn(2, 'done', 'settled'),
      settlement: { kind: 'by-angle', turn: '1/2 turn', why: 'no room' },
    }),
  ),
};
