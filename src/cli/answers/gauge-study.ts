/** Answers about gauge studies: gauge-study list, gauge-study show. */
import { z } from 'zod';
import { isAsTaken, type LoggedStudy } from '../../audit/gauge-log.ts';
import { marksOf } from '../../job/proof.ts';
import { averageRange } from '../../statistics/average-range.ts';
import type { GaugeResult } from '../../statistics/gauge-study.ts';
import { gaugeVariance } from '../../statistics/gauge-variance.ts';
import { answer, count, markSchema, reason, reasonOf, time, unit } from './answer.ts';

const studyHead = {
  study: z.string().describe('Number of the study.'),
  state: z.enum(['finished', 'open', 'dropped']).describe('Finished, open, or given up.'),
  tool: z.string().describe('Name of the tool.'),
  serial: z.string().nullable().describe('Serial number of the tool; null where it has none.'),
  appraisers: z.array(z.string()).describe('Who measures, by name.'),
  parts: z.array(z.string()).describe('What is measured, by name.'),
  trials: count.describe('How many times each of them measures each part.'),
  taken: count
    .nullable()
    .describe('Readings that were taken; null where the log has the study as a whole only.'),
  planned: count
    .nullable()
    .describe('Readings that are planned; null where the log has the study as a whole only.'),
  endedAt: time.nullable().describe('When it was finished or given up; null while it is open.'),
  because: z.string().nullable().describe('Why it was given up; null where it was not.'),
};

export const gaugeStudyListAnswer = answer('gauge-study-list', {
  studies: z.array(z.strictObject(studyHead)).describe('The gauge studies.'),
}).describe('What "plugmark gauge-study list --json" prints.');

const headOf = ({ study, tool, serial, plan, taking, end }: LoggedStudy) => ({
  study,
  state: end?.kind ?? ('open' as const),
  tool,
  serial,
  appraisers: [...plan.appraisers],
  parts: [...plan.parts],
  trials: plan.trials,
  taken: taking === null ? null : taking.exercise.readings.length,
  planned: taking === null ? null : taking.exercise.order.length,
  endedAt: end?.at ?? null,
  because: end?.kind === 'dropped' ? end.because : null,
});

export const listedStudies = (all: readonly LoggedStudy[]): z.infer<typeof gaugeStudyListAnswer> => ({
  form: 'plugmark/gauge-study-list/1',
  studies: all.map(headOf),
});

const variation = z.strictObject({
  sigma: z.number().describe('As a standard deviation, in the unit of the study.'),
  percent: z.number().describe('In per cent of the total one.'),
});
const result = z.strictObject({
  repeatability: variation.describe('EV: the same appraiser, the same part.'),
  reproducibility: variation.describe('AV: from appraiser to appraiser.'),
  interaction: variation
    .nullable()
    .describe('Appraisers that differ on some parts only; null where it was not computed or was pooled.'),
  gauge: variation.describe('GRR: the gauge as used, all of the above together.'),
  parts: variation.describe('PV: from part to part.'),
  totalSigma: z.number().describe('TV: the total standard deviation, in the unit of the study.'),
  categories: count
    .nullable()
    .describe('How many categories of parts the gauge tells apart (ndc); null where it showed no variation.'),
});

export const gaugeStudyShowAnswer = answer('gauge-study-show', {
  ...studyHead,
  unit: unit
    .nullable()
    .describe('Unit of the figures, as UCUM writes it; null of a study that is open or given up.'),
  averageAndRange: result.nullable().describe('By average and range; null where it was not computed.'),
  analysisOfVariance: result
    .extend({
      interactionPooled: z.boolean().describe('The interaction was pooled with the repeatability.'),
      interactionTest: z
        .strictObject({
          f: z.number().describe('The ratio F.'),
          p: z.number().describe('Its probability p by chance alone, 0 to 1.'),
        })
        .nullable()
        .describe('The F test of the interaction; null where it cannot be made.'),
    })
    .nullable()
    .describe('By analysis of variance; null where it was not computed.'),
  notComputed: z.array(reason).describe('Why a method gives no result.'),
  typed: count
    .nullable()
    .describe('Readings that were typed; null where the log does not have them one by one.'),
  marks: z
    .array(markSchema)
    .describe('Some of its readings were simulated or replayed, and say nothing about the tool.'),
  takenBack: count
    .nullable()
    .describe('Readings that were taken back; null where the log does not have them one by one.'),
  asTaken: z
    .boolean()
    .nullable()
    .describe(
      'False where these are not the readings that the log took one by one; null of a study that is open or given up.',
    ),
}).describe('What "plugmark gauge-study show --json" prints.');

export function shownStudy(one: LoggedStudy): z.infer<typeof gaugeStudyShowAnswer> {
  const { taking, end } = one;
  const finished = end?.kind === 'finished' ? end.finished : null;
  const ranges = finished === null ? null : averageRange(finished);
  const variance = finished === null ? null : gaugeVariance(finished);
  return {
    form: 'plugmark/gauge-study-show/1',
    ...headOf(one),
    unit: finished?.unit ?? null,
    averageAndRange: ranges?.ok === true ? resultOf(ranges.value) : null,
    analysisOfVariance:
      variance?.ok === true
        ? {
            ...resultOf(
              variance.value.advised === 'pooled' ? variance.value.pooled : variance.value.withInteraction,
            ),
            interactionPooled: variance.value.advised === 'pooled',
            interactionTest:
              variance.value.interactionTest === null
                ? null
                : { f: variance.value.interactionTest.f, p: variance.value.interactionTest.p },
          }
        : null,
    notComputed: [ranges, variance].flatMap((method) =>
      method === null || method.ok ? [] : [reasonOf(method.error)],
    ),
    typed:
      finished === null || taking === null
        ? null
        : taking.sources.filter((source) => source === 'typed').length,
    marks: finished === null || taking === null ? [] : [...marksOf(taking.sources)],
    takenBack: finished === null || taking === null ? null : taking.takenBack,
    asTaken: finished === null ? null : isAsTaken(one),
  };
}

const resultOf = ({ ev, av, interaction, grr, pv, tv, ndc }: GaugeResult): z.infer<typeof result> => ({
  repeatability: ev,
  reproducibility: av,
  interaction,
  gauge: grr,
  parts: pv,
  totalSigma: tv,
  categories: ndc,
});
