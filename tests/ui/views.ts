/** Every state of the screen that a technician can meet. */
import type { BenchView } from '../../src/ui/view.ts';
import {
  attemptOf,
  cylinderIn,
  jobWith,
  judged,
  linked,
  lost,
  okTorque,
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
    { simulated: true },
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
      questions: [
        questionOn(
          2,
          'over-window',
          'Cylinder 2 went above the window. Back the plug out and look at its threads.',
          ['refit', 'replace'],
        ),
      ],
    },
    { nowNm: 0, peakNm: 31.22, trace: TRACE },
  ),
  unsure: viewOf(
    {
      ...asking,
      lastVerdict: { quantity: 'torque', cylinder: 7, judgement: okTorque() },
      questions: [
        questionOn(2, 'unsure', 'What was this pull? (It rose as fast as on a plug that is already tight.)', [
          'fresh',
          'rehit',
          'handling',
        ]),
      ],
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
      jobWith(4, { tools: { wrench: lost('wrench', 'out of range'), gauge: linked('gauge') } }),
      cylinderIn(2, 'done', 'todo'),
    ),
    { nowNm: null },
  ),
  proven: viewOf(jobWith(8, { lastVerdict: { quantity: 'torque', cylinder: 8, judgement: okTorque(26.9) } })),
  closed: viewOf(jobWith(8, { closed: { complete: true, open: [] } })),
  closedOpen: viewOf(
    jobWith(6, { closed: { complete: false, open: ['cylinder 6 torque', 'cylinder 8 gap'] } }),
  ),
};
