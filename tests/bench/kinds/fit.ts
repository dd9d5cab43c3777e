/** Fits the model of src/sequence/shape.ts anew and says how they do on pulls that they were not fitted on. */
import type { PlugSpec } from '../../../sim/physics/bench.ts';
import { knockTerms, type ShapeFeatures, shapeFeatures } from '../../../src/sequence/shape.ts';
import type { Measurement } from '../measurement.ts';
import { JOINTS, OTHER_JOINTS } from './joints.ts';
import { fitLogistic } from './regression.ts';
import { type Example, scene } from './scenes.ts';

const DECIMALS = 4;

type Shape = Example['shape'];
type Seen = Example & { readonly plug: PlugSpec };

interface Model {
  readonly name: string;
  readonly means: string;
  readonly yes: readonly Shape[];
  readonly no: readonly Shape[];
  readonly terms: (features: ShapeFeatures) => readonly number[];
  readonly of: (seen: Seen) => boolean;
}

const low = ({ pull, plug }: Seen) => pull.peakNm >= 0.2 * plug.lowerNm && pull.peakNm < 0.9 * plug.lowerNm;

const MODELS: readonly Model[] = [
  {
    name: 'KNOCK',
    means: 'Log odds of a knock against a low stroke; terms of `knockTerms`.',
    yes: ['knock'],
    no: ['turned', 'wentOn', 'stood'],
    terms: knockTerms,
    of: low,
  },
];

/** Scenes `from` up to `to` of each joint. */
function seen(joints: Readonly<Record<string, PlugSpec>>, from: number, to: number): Seen[] {
  return Object.entries(joints).flatMap(([name, plug]) =>
    Array.from({ length: to - from }, (_, i) => scene(plug, `${name} ${from + i}`))
      .flat()
      .map((example) => ({ ...example, plug })),
  );
}

function samples({ yes, no, terms, of }: Model, all: readonly Seen[]) {
  return all
    .filter((one) => of(one) && [...yes, ...no].includes(one.shape))
    .map((one) => ({ terms: terms(shapeFeatures(one.pull)), yes: yes.includes(one.shape) }));
}

function fitted(model: Model, all: readonly Seen[]): readonly number[] {
  const from = samples(model, all);
  const [row = []] = fitLogistic(
    from.map(({ terms }) => terms),
    from.map(({ yes }) => (yes ? 0 : 1)),
    2,
  );
  return row.map((value) => Number(value.toFixed(DECIMALS)));
}

/** How many of each lie where, by the probability of yes. */
function spread(model: Model, coefficients: readonly number[], all: readonly Seen[]): string {
  const EDGES = [0.02, 0.5, 0.98] as const;
  const count = (yes: boolean) => {
    const p = samples(model, all)
      .filter((sample) => sample.yes === yes)
      .map(
        ({ terms }) => 1 / (1 + Math.exp(-terms.reduce((sum, x, i) => sum + x * (coefficients[i] ?? 0), 0))),
      );
    const bounds = [Number.NEGATIVE_INFINITY, ...EDGES, Number.POSITIVE_INFINITY];
    return bounds
      .slice(1)
      .map((upper, i) => p.filter((value) => value >= (bounds[i] ?? 0) && value < upper).length)
      .map((n) => String(n).padStart(8))
      .join('');
  };
  return [
    `${model.name}: p below ${EDGES.join(', below ')}, above`,
    `  ${model.yes.join(', ').padEnd(24)}${count(true)}`,
    `  ${model.no.join(', ').padEnd(24)}${count(false)}`,
  ].join('\n');
}

/** A new coefficients.ts, and how it does; writes nothing. */
export const fitKinds: Measurement = {
  name: 'fit-kinds',
  what: 'fits the model of src/sequence/shape.ts: coefficients.ts, and how they do elsewhere (scenes=600)',
  run: ({ number, progress }) => {
    const scenes = number('scenes', 600);
    const fit = seen(JOINTS, 0, scenes);
    progress(0.4, 'fitting');
    const rows = MODELS.map((model) => fitted(model, fit));
    const coefficients = MODELS.map(
      ({ name, means }, i) =>
        `/** ${means} */\nexport const ${name}: readonly number[] = [${rows[i]?.join(', ')}];`,
    );
    const joints = Object.keys(JOINTS)
      .map((name) => `'${name}'`)
      .join(', ');
    const counts = MODELS.map(({ name, ...model }) => `${name} ${samples({ name, ...model }, fit).length}`);
    const elsewhere = [
      ['other seeds', seen(JOINTS, 100_000, 100_000 + scenes)],
      ['other seeds and joints', seen(OTHER_JOINTS, 200_000, 200_000 + scenes)],
    ] as const;
    return [
      `/** Fitted by \`npm run bench -- fit-kinds scenes=${scenes}\`: see shape.ts. Not to be edited by hand. */`,
      '',
      `/* Scenes 0 to ${scenes - 1} of tests/bench/kinds/scenes.ts, each on ${joints}; pulls: ${counts.join(', ')}. */`,
      '',
      ...coefficients.flatMap((text) => [text, '']),
      ...elsewhere.flatMap(([what, all]) => [
        `// ${what}`,
        ...MODELS.map((model, i) => spread(model, rows[i] ?? [], all)),
      ]),
    ];
  },
};
