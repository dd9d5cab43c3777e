import { describe } from 'vitest';
import { normalDensity, normalQuantile } from '../../src/metrology/normal.ts';
import { type GlobalRisk, globalRisk, guardBandFor, specificRisk } from '../../src/metrology/risk.ts';
import { agrees } from './published.ts';

const SOURCE = 'sandialabs/suncal, test/test_risk.py and API manual';
const read = (what: string, value: number, within: number, ours: () => number) =>
  agrees({ what, value, within, source: SOURCE, confirmed: 'read' }, ours);

describe('suncal: risk of one reading', () => {
  const limits = { lowerLimit: 9, upperLimit: 10 };
  read('N(9.8, 0.1) within 9-10, total', 0.02275013194818, 5e-15, () => specificRisk(9.8, 0.1, limits).total);
  read('the same, above', 0.02275013194818, 5e-15, () => specificRisk(9.8, 0.1, limits).high);
  read('the same, below', 6.22e-16, 5e-19, () => specificRisk(9.8, 0.1, limits).low);
  const wide = { lowerLimit: 9, upperLimit: 11 };
  read('N(10, 0.4) within 9-11, total', 0.01242, 5e-6, () => specificRisk(10, 0.4, wide).total);
  read('N(10, 0.4) within 9-11, each side', 0.00621, 5e-6, () => specificRisk(10, 0.4, wide).low);
  read('N(10.5, 0.4) within 9-11, total', 0.10574, 5e-6, () => specificRisk(10.5, 0.4, wide).total);
  read('N(10.5, 0.4) within 9-11, below', 0.00009, 5e-6, () => specificRisk(10.5, 0.4, wide).low);
  read('N(10.5, 0.4) within 9-11, above', 0.10565, 5e-6, () => specificRisk(10.5, 0.4, wide).high);
  read('N(12, 0.4) within 9-11, total', 0.99379, 5e-6, () => specificRisk(12, 0.4, wide).total);
});

describe('suncal: risk over a process N(9.5, 0.3) within 9-10, measured with u = 0.1', () => {
  const risk = (guardBand: number): GlobalRisk =>
    globalRisk({
      density: (x) => normalDensity((x - 9.5) / 0.3) / 0.3,
      from: 9.5 - 3,
      to: 9.5 + 3,
      standard: 0.1,
      limits: { lowerLimit: 9, upperLimit: 10 },
      accept: { lower: 9 + guardBand, upper: 10 - guardBand },
    });
  read('out of tolerance', 0.0955807045456, 5e-13, () => risk(0).outOfTolerance);
  read('false accept', 0.01894, 5e-6, () => risk(0).consumer);
  read('false reject', 0.037208, 5e-7, () => risk(0).producer);
  read(
    'guard band for a false accept of 0.5 %',
    0.092066,
    5e-7,
    () => guardBandFor((g) => risk(g).consumer, 0.005, 0.5) ?? Number.NaN,
  );
  const finer = (what: string, value: number, ours: () => number) =>
    agrees(
      { what, value, within: 1e-10, source: 'scipy 1.17.1, integrate.quad', confirmed: 'computed' },
      ours,
    );
  finer('false accept', 0.018942206717, () => risk(0).consumer);
  finer('false reject', 0.037207800178, () => risk(0).producer);
  finer('false accept at the published guard band', 0.00500000403, () => risk(0.092066).consumer);
});

/** A process around the middle of the limits ±1 with the share `itp` of its items within them. */
const process = (itp: number, standardFor: (spread: number) => number, acceptance = 1): GlobalRisk => {
  const spread = 1 / normalQuantile((1 + itp) / 2);
  return globalRisk({
    density: (x) => normalDensity(x / spread) / spread,
    from: -10 * spread,
    to: 10 * spread,
    standard: standardFor(spread),
    limits: { lowerLimit: -1, upperLimit: 1 },
    accept: { lower: -acceptance, upper: acceptance },
  });
};

describe('suncal: probability of false accept, test uncertainty ratio = limit / (2u)', () => {
  const ratio = (tur: number) => () => 1 / (2 * tur);
  read('in tolerance 0.9, TUR 3', 0.0171415, 5e-8, () => process(0.9, ratio(3)).consumer);
  read(
    'in tolerance 0.9, TUR 3, acceptance factor 0.9',
    0.0076132,
    5e-8,
    () => process(0.9, ratio(3), 0.9).consumer,
  );
});

describe('suncal: the table of RP-19, process four times as wide as the measurement', () => {
  // The copy that was read says "TUR 4" only. Solving each row's two figures for both widths gives σ(process) = 4u.
  const quarter = (spread: number) => spread / 4;
  const ofAccepted = ({ consumer, producer, outOfTolerance }: GlobalRisk) =>
    consumer / (1 - outOfTolerance - producer + consumer);
  for (const [itp, percent, percentOfAccepted] of [
    [0.6, 4.83860326, 8.26008199],
    [0.7, 3.92234109, 5.72322042],
    [0.8, 2.85583037, 3.63227145],
    [0.9, 1.59995312, 1.7988043],
    [0.95, 0.87100925, 0.92389664],
    [0.99, 0.19991684, 0.20243866],
  ] as const) {
    read(`in tolerance ${itp}, %`, percent, 2e-6, () => 100 * process(itp, quarter).consumer);
    read(
      `in tolerance ${itp}, % of those accepted`,
      percentOfAccepted,
      2e-6,
      () => 100 * ofAccepted(process(itp, quarter)),
    );
  }
});
