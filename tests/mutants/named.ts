/** Faults that once stayed unseen by every published number: each is tried by name, and the test that sees it is printed. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Trials } from './trials.ts';

interface Named {
  readonly what: string;
  readonly file: string;
  readonly was: string;
  readonly by: string;
  /** Where it is to be seen. */
  readonly tests: readonly string[];
}

const [METROLOGY, STATISTICS] = ['src/metrology', 'src/statistics'];
const LINES = 'tests/published/lines-and-shares.test.ts';

const NAMED: readonly Named[] = [
  {
    what: 'a whole step for half of it',
    file: `${METROLOGY}/terms.ts`,
    was: 'step / 2',
    by: 'step',
    tests: ['tests/published/gum.test.ts'],
  },
  {
    what: 'a permissible deviation over 3 for √3',
    file: `${METROLOGY}/term.ts`,
    was: 'amount / Math.sqrt(3)',
    by: 'amount / 3',
    tests: ['tests/published/gum.test.ts'],
  },
  {
    what: 'half of an error that is not corrected',
    file: `${METROLOGY}/terms.ts`,
    was: 'Math.abs(error)',
    by: 'Math.abs(error) / 2',
    tests: ['tests/metrology/budget.test.ts', 'tests/job/measurement.test.ts'],
  },
  {
    what: 'the smaller uncertainty of two points of a certificate',
    file: `${METROLOGY}/calibration.ts`,
    was: 'Math.max(...points.map((point) => point.expanded / point.k))',
    by: 'Math.min(...points.map((point) => point.expanded / point.k))',
    tests: ['tests/metrology/budget.test.ts'],
  },
  {
    what: 'the error of a certificate read from its other point',
    file: `${METROLOGY}/calibration.ts`,
    was: 'below.error + share * (above.error - below.error)',
    by: 'above.error + share * (below.error - above.error)',
    tests: ['tests/metrology/budget.test.ts'],
  },
  {
    what: 'no line for the angle of an adapter',
    file: `${METROLOGY}/terms.ts`,
    was: "term('adapter-angle', within.angleDeg, perDeg),",
    by: '',
    tests: ['tests/job/measurement.test.ts'],
  },
  {
    what: '1.5 for the 1.65 of ISO 14253-1',
    file: `${METROLOGY}/decision.ts`,
    was: 'ISO_14253_1_FACTOR = 1.65',
    by: 'ISO_14253_1_FACTOR = 1.5',
    tests: ['tests/published/ilac-g8.test.ts'],
  },
  {
    what: 'a conformance probability from U/3',
    file: `${METROLOGY}/window.ts`,
    was: 'conformanceProbability(value, spread.standard,',
    by: 'conformanceProbability(value, spread.expanded / 3,',
    tests: [LINES],
  },
  {
    what: 'a prediction without the scatter of the new finding',
    file: `${STATISTICS}/drift.ts`,
    was: 'drift.nextVariance + 1 / drift.weight',
    by: '1 / drift.weight',
    tests: [LINES],
  },
  {
    what: "1/3n for Bissell's 1/9n",
    file: `${STATISTICS}/capability.ts`,
    was: '1 / (9 * n)',
    by: '1 / (3 * n)',
    tests: ['tests/statistics/capability.test.ts'],
  },
  {
    what: 'an interval of Cp with twice the degrees of freedom',
    file: `${STATISTICS}/capability.ts`,
    was: 'chiSquareQuantile(p, degreesOfFreedom) / degreesOfFreedom',
    by: 'chiSquareQuantile(p, 2 * degreesOfFreedom) / (2 * degreesOfFreedom)',
    tests: ['tests/statistics/capability.test.ts'],
  },
  {
    what: "z²/n² for Wilson's z²/4n²",
    file: `${STATISTICS}/proportion.ts`,
    was: 'z2 / (4 * n * n)',
    by: 'z2 / (n * n)',
    tests: [LINES],
  },
  {
    what: 'a longer interval up to the whole of what is permitted',
    file: `${STATISTICS}/staircase.ts`,
    was: 'COMFORTABLE = 0.8',
    by: 'COMFORTABLE = 1',
    tests: ['tests/statistics/drift.test.ts'],
  },
  {
    what: 'a chart of weighted means that ignores how many values a day has',
    file: `${STATISTICS}/ewma.ts`,
    was: '1 / (spacing?.counts?.[index] ?? 1)',
    by: '1',
    tests: ['tests/statistics/control.test.ts'],
  },
];

/** A table of them all; false where one stays unseen. */
export async function tryNamed(running: Trials, root: string): Promise<boolean> {
  let seen = true;
  console.log('| fault | seen by |\n| --- | --- |');
  for (const { what, file, was, by, tests } of NAMED) {
    const text = readFileSync(join(root, file), 'utf8');
    const start = text.indexOf(was);
    if (start < 0 || text.indexOf(was, start + 1) >= 0)
      throw new Error(`${file} does not hold this once, so "${what}" cannot be tried: ${was}`);
    const whole = await running.try({ file, start, end: start, by: '' }, tests, 120_000);
    const answer = await running.try({ file, start, end: start + was.length, by }, tests, 120_000);
    const sound = whole !== 'no-end' && whole.killer === null;
    const killer = answer === 'no-end' ? 'no end' : answer.killer;
    seen &&= sound && killer !== null;
    console.log(`| ${what} | ${sound ? (killer ?? 'NOBODY') : 'its tests fail without it'} |`);
  }
  return seen;
}
