import { z } from 'zod';
import type { TraceColumns } from '../../pull/columns.ts';
import { createPullDetector } from '../../pull/detector.ts';
import { type DetectedPull, detectedPullSchema } from '../../pull/pull.ts';
import { type Seating, seatingOf, seatingSchema } from '../../pull/seat.ts';
import { detectorSettings } from '../../pull/settings.ts';

/** What `plugmark pulls --json` prints. Torque in N·m, times in microseconds of the trace's own clock. */
export const pullsReportSchema = z.strictObject({
  form: z.literal('plugmark/pulls/1'),
  file: z.string().describe('The file that was read.'),
  samples: z.int().min(1).describe('How many samples it has.'),
  durationS: z.number().nonnegative().describe('From the first sample to the last.'),
  startNm: z
    .number()
    .positive()
    .describe('The torque from which on something was taken for a pull, before noise raised it.'),
  gaps: z
    .array(
      z.strictObject({
        row: z.int().min(2).describe('Number of the row.'),
        atUs: z.int().nonnegative().describe('Its time.'),
        why: z.string().describe('What is missing.'),
      }),
    )
    .describe('Rows of the file that hold no torque.'),
  pulls: z
    .array(
      detectedPullSchema.extend({
        pull: z.int().min(1).describe('Number of the pull.'),
        seating: seatingSchema
          .nullable()
          .describe(
            'What the plug came to sit on, by its angle: `hardly` tight already, `hard` used gasket or cone, `soft` new gasket, `doubled` two gaskets, `binding` thread that binds. Null where it cannot be said.',
          ),
      }),
    )
    .describe('The pulls, in order.'),
});
export type PullsReport = z.infer<typeof pullsReportSchema>;

export interface Looking {
  /** Lower limit of the window; null: half of the highest torque in the file stands in for it. */
  readonly lowerNm: number | null;
  readonly maxima: boolean;
}

/** Finds the pulls of a trace. */
export function reportOn(trace: TraceColumns, file: string, { lowerNm, maxima }: Looking): PullsReport {
  const { atUs, nm, angleDeg } = trace;
  const scaleNm = lowerNm ?? Math.max(1e-3, 0.5 * nm.reduce((most, x) => Math.max(most, Math.abs(x)), 0));
  const settings = detectorSettings(scaleNm, { stepNm: stepOf(nm), stream: maxima ? 'maxima' : 'samples' });
  const detector = createPullDetector(settings);
  const pulls = detector.pushBatch(atUs, nm, 0, atUs.length, angleDeg ?? undefined);
  const last = detector.cut('stopped');
  const all = last === null ? pulls : [...pulls, last];
  return {
    form: 'plugmark/pulls/1',
    file,
    samples: atUs.length,
    durationS: ((atUs.at(-1) ?? 0) - (atUs[0] ?? 0)) / 1e6,
    startNm: settings.startNm,
    gaps: [...trace.gaps],
    pulls: all.map((pull, i) => ({ ...pull, pull: i + 1, seating: seatingIn(pull, lowerNm) })),
  };
}

function seatingIn({ turn, peakNm, cut }: DetectedPull, lowerNm: number | null): Seating | null {
  return turn === null || cut !== null || peakNm < (lowerNm ?? 0) ? null : seatingOf(turn);
}

/** The step that the figures of the file are written in: the smallest difference between two that follow each other. */
function stepOf(nm: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < nm.length; i++) {
    const step = Math.abs((nm[i] ?? 0) - (nm[i - 1] ?? 0));
    if (step > 1e-9 && step < least) least = step;
  }
  return Number.isFinite(least) ? least : 0;
}
