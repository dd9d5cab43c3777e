import { describe, expect, it } from 'vitest';
import { averageRange } from '../../src/statistics/average-range.ts';
import { gaugeVariance } from '../../src/statistics/gauge-variance.ts';
import { accepted } from '../statistics/outcome.ts';
import { REFERENCE_STUDY } from '../statistics/reference-study.ts';
import { agrees } from './published.ts';

const SOURCE = 'AIAG, Measurement Systems Analysis, reference study of 10 parts, 3 appraisers, 3 trials';
const check = (what: string, value: number, within: number, got: number | null | undefined) =>
  agrees({ what, value, within, source: SOURCE, confirmed: 'second-hand' }, () => got ?? Number.NaN);

describe('reference gauge study by average and range', () => {
  const study = accepted(averageRange(REFERENCE_STUDY));
  for (const [i, value] of [0.184, 0.513, 0.328].entries())
    check(`mean range, appraiser ${'ABC'[i]}`, value, 5.1e-4, study.ranges[i]);
  check('mean range', 0.3417, 5e-5, study.meanRange);
  // The form carries rounded figures on, so the last printed digit of what follows from them is not met exactly.
  check('limit of a range', 0.88, 6e-4, study.rangeLimit);
  check('range of appraisers', 0.4446, 1.5e-4, study.appraiserRange);
  check('range of parts', 3.5111, 5e-5, study.partRange);
  check('EV', 0.20188, 5e-5, study.ev.sigma);
  check('AV', 0.22963, 5e-5, study.av.sigma);
  check('GRR', 0.30575, 5e-5, study.grr.sigma);
  check('PV', 1.10456, 5e-5, study.pv.sigma);
  check('TV', 1.1461, 5e-5, study.tv);
  check('%EV', 17.62, 0.01, study.ev.percent);
  check('%AV', 20.04, 0.01, study.av.percent);
  check('%GRR', 26.68, 0.01, study.grr.percent);
  check('%PV', 96.38, 0.01, study.pv.percent);
  check('ndc', 5, 0, study.ndc);

  it('names the cells with a range above the limit', () => {
    expect(study.wideCells).toEqual(['appraiser B, part 4']);
  });
});

describe('reference gauge study by analysis of variance', () => {
  const study = accepted(gaugeVariance(REFERENCE_STUDY));
  check('sum of squares, parts', 88.36193, 5.1e-6, study.part.squares);
  check('sum of squares, appraisers', 3.16726, 5.1e-6, study.appraiser.squares);
  check('sum of squares, interaction', 0.35898, 5.1e-6, study.interaction.squares);
  check('sum of squares, repeatability', 2.75893, 5.1e-6, study.repeatability.squares);
  check('sum of squares, total', 94.64711, 5.1e-6, study.total.squares);
  check('mean square, parts', 9.81799, 5.1e-6, study.part.meanSquare);
  check('mean square, appraisers', 1.58363, 5.1e-6, study.appraiser.meanSquare);
  check('mean square, interaction', 0.01994, 5.1e-6, study.interaction.meanSquare);
  check('mean square, repeatability', 0.04598, 5.1e-6, study.repeatability.meanSquare);
  // The ratio of the printed mean squares; printed itself as 0.434.
  check('F of the interaction', 0.43367, 1e-4, study.interactionTest?.f);
  check('its p', 0.974, 5e-4, study.interactionTest?.p);
  check('pooled mean square', 0.03997, 5.1e-6, study.pooledError.meanSquare);
  const { ev, av, pv, grr, tv, ndc } = study.pooled;
  check('variance, repeatability', 0.03997, 5.1e-6, ev.sigma ** 2);
  check('variance, reproducibility', 0.05146, 5.1e-6, av.sigma ** 2);
  check('variance, parts', 1.08645, 5.1e-6, pv.sigma ** 2);
  check('variance, total', 1.17788, 5.1e-6, tv ** 2);
  check('%GRR', 27.86, 0.005, grr.percent);
  check('ndc', 4, 0, ndc);

  it('speaks for pooling', () => {
    expect(study.advised).toBe('pooled');
  });
});
