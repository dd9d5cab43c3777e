/** Answers about the process: capability, delivered, gauge-study list, gauge-study show. */
import { z } from 'zod';
import type { ProcessGroup, ProcessSeries, Series } from '../../audit/capability.ts';
import type { Delivered } from '../../audit/delivered.ts';
import { isAsTaken, type LoggedStudy } from '../../audit/gauge-log.ts';
import { averageRange } from '../../statistics/average-range.ts';
import type { GaugeResult } from '../../statistics/gauge-study.ts';
import { gaugeVariance } from '../../statistics/gauge-variance.ts';
import type { Proportion } from '../../statistics/proportion.ts';
import { answer, count, quantity, reason, reasonOf, time, unit, unitOf } from './answer.ts';

const proportion = z.strictObject({
  count,
  n: count,
  /** Null of nothing. */
  share: z.number().nullable(),
  from: z.number(),
  to: z.number(),
  confidence: z.number(),
});
const proportionOf = ({ count: some, n, share, from, to, confidence }: Proportion) => ({
  count: some,
  n,
  share,
  from,
  to,
  confidence,
});

const estimate = z.strictObject({ value: z.number(), from: z.number(), to: z.number() });
const series = z.strictObject({
  n: count,
  mean: z.number().nullable(),
  standardDeviation: z.number().nullable(),
  capability: z
    .strictObject({
      n: count,
      confidence: z.number(),
      sigmaWithin: z.number(),
      sigmaOverall: z.number(),
      cp: estimate.nullable(),
      cpk: estimate,
      pp: estimate.nullable(),
      ppk: estimate,
      /** Fewer readings than the hundred that are usual. */
      fewerThanUsual: z.boolean(),
      /** The readings are in steps that are wide against their spread. */
      coarse: z.boolean(),
    })
    .nullable(),
  noCapability: reason.nullable(),
});

export const capabilityAnswer = answer('capability', {
  groups: z.array(
    z.strictObject({
      quantity,
      unit,
      specificationKey: z.string(),
      engine: z.string().nullable(),
      lowerLimit: z.number(),
      upperLimit: z.number(),
      /** Tool, technician or cylinder; null where attempts are grouped by specification alone. */
      member: z.string().nullable(),
      simulated: z.boolean(),
      process: series.extend({
        stability: z
          .strictObject({ readings: count, signals: count, byChance: z.number(), unstable: z.boolean() })
          .nullable(),
      }),
      product: series,
      notProven: proportion,
      notOkFirst: proportion,
      notOkAtWorst: proportion,
      notDecidableFirst: proportion,
      leftOut: z.strictObject({ cut: count, saturated: count, undecided: count, bounded: count }),
    }),
  ),
});

export const groupsAnswered = (groups: readonly ProcessGroup[]): z.infer<typeof capabilityAnswer> => ({
  form: 'plugmark/capability/1',
  groups: groups.map((one) => ({
    quantity: one.quantity,
    unit: unitOf(one.quantity),
    specificationKey: one.specificationKey,
    engine: one.engine,
    lowerLimit: one.lowerLimit,
    upperLimit: one.upperLimit,
    member: one.member === '' ? null : one.member,
    simulated: one.simulated,
    process: { ...seriesOf(one.process), stability: stabilityOf(one.process) },
    product: seriesOf(one.product),
    notProven: proportionOf(one.notProven),
    notOkFirst: proportionOf(one.notOkFirst),
    notOkAtWorst: proportionOf(one.notOkAtWorst),
    notDecidableFirst: proportionOf(one.notDecidableFirst),
    leftOut: { ...one.leftOut },
  })),
});

function seriesOf({ n, mean, standardDeviation, capability: found }: Series): z.infer<typeof series> {
  const common = { n, mean, standardDeviation };
  if ('code' in found) return { ...common, capability: null, noCapability: reasonOf(found) };
  const { confidence, sigmaWithin, sigmaOverall, cp, cpk, pp, ppk, fewerThanUsual, coarse } = found;
  const figures = { n: found.n, confidence, sigmaWithin, sigmaOverall, cp, cpk, pp, ppk, fewerThanUsual };
  return { ...common, capability: { ...figures, coarse: coarse !== null }, noCapability: null };
}

const stabilityOf = ({ stability }: ProcessSeries) =>
  stability && {
    readings: stability.readings,
    signals: stability.signals,
    byChance: stability.byChance,
    unstable: stability.unstable,
  };

export const deliveredAnswer = answer('delivered', {
  simulated: z.boolean(),
  simulatedLeftOut: count,
  limits: z.array(
    z.strictObject({
      lowerLimitMm: z.number(),
      upperLimitMm: z.number(),
      lots: z.array(
        z.strictObject({
          part: z.string(),
          lot: z.string().nullable(),
          plugs: count,
          measured: count,
          meanMm: z.number().nullable(),
          standardDeviationMm: z.number().nullable(),
          smallestMm: z.number().nullable(),
          largestMm: z.number().nullable(),
          outside: proportion,
          outsideAtWorst: proportion,
        }),
      ),
    }),
  ),
});

export const deliveredAnswered = ({
  under,
  simulated,
  simulatedLeftOut,
}: Delivered): z.infer<typeof deliveredAnswer> => ({
  form: 'plugmark/delivered/1',
  simulated,
  simulatedLeftOut,
  limits: under.map(({ lowerLimit, upperLimit, lots }) => ({
    lowerLimitMm: lowerLimit,
    upperLimitMm: upperLimit,
    lots: lots.map(({ counts: _counts, n, outside, outsideAtWorst, ...lot }) => ({
      ...lot,
      plugs: n,
      outside: proportionOf(outside),
      outsideAtWorst: proportionOf(outsideAtWorst),
    })),
  })),
});

const studyHead = {
  study: z.string(),
  state: z.enum(['finished', 'open', 'dropped']),
  tool: z.string(),
  serial: z.string().nullable(),
  appraisers: z.array(z.string()),
  parts: z.array(z.string()),
  trials: count,
  /** Null where the log holds the study as a whole only. */
  taken: count.nullable(),
  planned: count.nullable(),
  endedAt: time.nullable(),
  because: z.string().nullable(),
};

export const gaugeStudyListAnswer = answer('gauge-study-list', {
  studies: z.array(z.strictObject(studyHead)),
});

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

/** As a standard deviation in the unit of the study, and in per cent of the total one. */
const variation = z.strictObject({ sigma: z.number(), percent: z.number() });
const result = z.strictObject({
  repeatability: variation,
  reproducibility: variation,
  interaction: variation.nullable(),
  gauge: variation,
  parts: variation,
  totalSigma: z.number(),
  categories: count.nullable(),
});

export const gaugeStudyShowAnswer = answer('gauge-study-show', {
  ...studyHead,
  /** Null of a study that is open or given up, as everything below. */
  unit: unit.nullable(),
  averageAndRange: result.nullable(),
  analysisOfVariance: result
    .extend({
      interactionPooled: z.boolean(),
      interactionTest: z.strictObject({ f: z.number(), p: z.number() }).nullable(),
    })
    .nullable(),
  /** Why a method says nothing. */
  notComputed: z.array(reason),
  typedByHand: count.nullable(),
  takenBack: count.nullable(),
  /** False where these are not the readings that the log took one by one. */
  asTaken: z.boolean().nullable(),
});

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
    typedByHand:
      finished === null || taking === null ? null : taking.from.filter((from) => from === 'hand').length,
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
