/** Answers about the process: capability, delivered. */
import { z } from 'zod';
import type { ProcessGroup, ProcessSeries, Series } from '../../audit/capability.ts';
import type { Delivered } from '../../audit/delivered.ts';
import type { Proportion } from '../../statistics/proportion.ts';
import { answer, count, markSchema, quantity, reason, reasonOf, unit, unitOf } from './answer.ts';

const proportion = z.strictObject({
  count: count.describe('How many.'),
  n: count.describe('Of how many.'),
  share: z.number().nullable().describe('The share, 0 to 1; null of nothing.'),
  from: z.number().describe('Lower end of its confidence interval.'),
  to: z.number().describe('Upper end of its confidence interval.'),
  confidence: z.number().describe('Confidence of the interval, 0 to 1.'),
});
const proportionOf = ({ count: some, n, share, from, to, confidence }: Proportion) => ({
  count: some,
  n,
  share,
  from,
  to,
  confidence,
});

const estimate = z.strictObject({
  value: z.number().describe('The index.'),
  from: z.number().describe('Lower end of its confidence interval.'),
  to: z.number().describe('Upper end of its confidence interval.'),
});
const series = z.strictObject({
  n: count.describe('How many values there are.'),
  mean: z.number().nullable().describe('Their mean; null without any.'),
  standardDeviation: z.number().nullable().describe('Their standard deviation; null of fewer than two.'),
  capability: z
    .strictObject({
      n: count.describe('How many values the indices come from.'),
      confidence: z.number().describe('Confidence of the intervals, 0 to 1.'),
      sigmaWithin: z.number().describe('Standard deviation from one value to the next, by moving ranges.'),
      sigmaOverall: z.number().describe('Standard deviation of all values.'),
      cp: estimate.nullable().describe('Cp; null with one limit only.'),
      cpk: estimate.describe('Cpk.'),
      pp: estimate.nullable().describe('Pp; null with one limit only.'),
      ppk: estimate.describe('Ppk.'),
      fewerThanUsual: z.boolean().describe('There are fewer readings than the hundred that are usual.'),
      coarse: z.boolean().describe('The readings are in steps that are wide against their spread.'),
      notNormal: z
        .boolean()
        .describe('The readings are not from one normal distribution, so that the indices do not hold.'),
    })
    .nullable()
    .describe('The capability indices; null where there are none.'),
  noCapability: reason.nullable().describe('Why there are no indices; null where there are.'),
});

export const capabilityAnswer = answer('capability', {
  groups: z
    .array(
      z.strictObject({
        quantity,
        unit,
        specificationKey: z
          .string()
          .describe('The same for the same engine, thread, seat and specification.'),
        engine: z.string().nullable().describe('The engine; null where none was given.'),
        lowerLimit: z.number().describe('Lower limit of the specification.'),
        upperLimit: z.number().describe('Upper limit of the specification.'),
        member: z
          .string()
          .nullable()
          .describe(
            'The tool, technician or cylinder; null where attempts are grouped by specification alone.',
          ),
        mark: markSchema
          .nullable()
          .describe('Its figures were simulated or replayed, and prove nothing; null for all others.'),
        process: series
          .extend({
            stability: z
              .strictObject({
                readings: count.describe('How many readings were looked at.'),
                signals: count.describe('How many of them complete a run rule.'),
                byChance: z.number().describe('How many signals chance brings in so many readings.'),
                unstable: z.boolean().describe('There are more signals than chance explains.'),
              })
              .nullable()
              .describe('How stable the process is; null where there are too few readings.'),
          })
          .describe('The first attempt on each plug.'),
        product: series.describe(
          'The attempt that counts on each plug of closed jobs: what was left after doing again what was not right.',
        ),
        notProven: proportion.describe('Plugs of closed jobs without an OK.'),
        notOkFirst: proportion.describe('NOT OK among first attempts with a verdict.'),
        notOkAtWorst: proportion.describe(
          'NOT OK among all first attempts, if those without a verdict were NOT OK.',
        ),
        notDecidableFirst: proportion.describe('UNDECIDED among first attempts with a verdict.'),
        leftOut: z
          .strictObject({
            cut: count.describe('Their samples broke off.'),
            saturated: count.describe("They were at the end of the tool's scale."),
            undecided: count.describe('Nobody said what they were.'),
            bounded: count.describe('Wires gave bounds and no figure.'),
          })
          .describe('First attempts without a value for mean and indices, by reason.'),
      }),
    )
    .describe('Attempts of one specification and its limits, those with most first attempts first.'),
}).describe('What "plugmark capability --json" prints.');

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
    mark: one.mark,
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
  const { confidence, sigmaWithin, sigmaOverall, cp, cpk, pp, ppk, fewerThanUsual, coarse, normality } =
    found;
  const figures = { n: found.n, confidence, sigmaWithin, sigmaOverall, cp, cpk, pp, ppk, fewerThanUsual };
  const doubts = { coarse: coarse !== null, notNormal: normality.excluded };
  return { ...common, capability: { ...figures, ...doubts }, noCapability: null };
}

const stabilityOf = ({ stability }: ProcessSeries) =>
  stability && {
    readings: stability.readings,
    signals: stability.signals,
    byChance: stability.byChance,
    unstable: stability.unstable,
  };

export const deliveredAnswer = answer('delivered', {
  marks: z
    .array(markSchema)
    .describe('All gaps were simulated or replayed, and prove nothing; empty where they are real.'),
  markedLeftOut: count.describe(
    'Simulated and replayed gaps that were left out, because there are real ones.',
  ),
  limits: z
    .array(
      z.strictObject({
        lowerLimitMm: z.number().describe('Lower limit of the gap, in mm.'),
        upperLimitMm: z.number().describe('Upper limit of the gap, in mm.'),
        lots: z
          .array(
            z.strictObject({
              part: z.string().describe('Part number of the plugs.'),
              lot: z.string().nullable().describe('Their lot; null where none was given.'),
              plugs: count.describe('How many plugs there are.'),
              measured: count.describe('How many of them were measured; the others were tried with wires.'),
              meanMm: z.number().nullable().describe('Mean gap in mm; null where none was measured.'),
              standardDeviationMm: z
                .number()
                .nullable()
                .describe('Standard deviation of the gaps in mm; null of fewer than two.'),
              smallestMm: z.number().nullable().describe('Smallest gap in mm; null where none was measured.'),
              largestMm: z.number().nullable().describe('Largest gap in mm; null where none was measured.'),
              outside: proportion.describe('Plugs outside the limits, among those of which it is known.'),
              outsideAtWorst: proportion.describe(
                'Plugs outside the limits among all, if those that the wires could not decide were outside.',
              ),
            }),
          )
          .describe('The plugs by part and lot.'),
      }),
    )
    .describe('New plugs by the limits of their gap.'),
}).describe('What "plugmark delivered --json" prints.');

export const deliveredAnswered = ({
  under,
  marks,
  markedLeftOut,
}: Delivered): z.infer<typeof deliveredAnswer> => ({
  form: 'plugmark/delivered/1',
  marks: [...marks],
  markedLeftOut,
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
