import type { AngleUnit } from './angle.ts';
import type { LengthUnit } from './length.ts';
import type { TorqueUnit } from './torque.ts';

/** What a unit found in a text measures; only the first three are ever accepted, the rest make a clear refusal. */
type Measured = 'torque' | 'length' | 'angle' | 'energy' | 'stiffness' | 'force or mass';

export interface Spelling {
  readonly measured: Measured;
  /** Null for a unit that is recognised in order to refuse it. */
  readonly unit: TorqueUnit | LengthUnit | AngleUnit | null;
}

/** What may stand between the two parts of a product: nothing, spaces, a dot of any kind, a hyphen of any kind. */
const JOIN = String.raw`[\t\p{Zs}.·⋅•∙‧*×_\-\u2010-\u2015\u2212]{0,3}`;
const product = (left: string, right: string): string => `(?:${left})${JOIN}(?:${right})`;
const eitherWay = (left: string, right: string): string => `${product(left, right)}|${product(right, left)}`;

const NEWTON = 'newtons?|n';
const METRE = 'met(?:re|er)s?|m';
const POUND = 'pounds?(?:-force)?|lbf|lbs?';
const FOOT = 'foot|feet|ft';
const INCH = 'inch(?:es)?|ins?';
const KILOGRAM_FORCE = 'kgf|kg|kp';

/** Tried in this order, products before their parts. */
const SPELLINGS: readonly (readonly [pattern: string, spelling: Spelling])[] = [
  [String.raw`\[ft_i\]\.\[lbf_av\]`, { measured: 'torque', unit: '[ft_i].[lbf_av]' }],
  [String.raw`\[in_i\]\.\[lbf_av\]`, { measured: 'torque', unit: '[in_i].[lbf_av]' }],
  [String.raw`\[in_i\]`, { measured: 'length', unit: '[in_i]' }],
  [String.raw`\[mil_i\]`, { measured: 'length', unit: '[mil_i]' }],
  [product(NEWTON, METRE), { measured: 'torque', unit: 'N.m' }],
  [eitherWay(POUND, FOOT), { measured: 'torque', unit: '[ft_i].[lbf_av]' }],
  [eitherWay(POUND, INCH), { measured: 'torque', unit: '[in_i].[lbf_av]' }],
  [eitherWay(KILOGRAM_FORCE, 'm'), { measured: 'torque', unit: 'kgf.m' }],
  [eitherWay(KILOGRAM_FORCE, 'cm'), { measured: 'torque', unit: 'kgf.cm' }],
  [String.raw`(?:n|lbf?|kgf?)\/(?:mm|m|ft|in)`, { measured: 'stiffness', unit: null }],
  ['joules?|k?j', { measured: 'energy', unit: null }],
  ['millimet(?:re|er)s?|mm', { measured: 'length', unit: 'mm' }],
  [`${INCH}|["″”“]|''|′′|’’`, { measured: 'length', unit: '[in_i]' }],
  ['mils?|thous?', { measured: 'length', unit: '[mil_i]' }],
  [`micromet(?:re|er)s?|[µμ]m|cm|${METRE}|${FOOT}`, { measured: 'length', unit: null }],
  ['degrees?|deg|°', { measured: 'angle', unit: 'deg' }],
  [
    '(?:(?:of (?:a|one)|de) )?(?:turns?|revolutions?|umdrehung(?:en)?|tours?|vueltas?)',
    { measured: 'angle', unit: 'circ' },
  ],
  [`${NEWTON}|${POUND}|${KILOGRAM_FORCE}|ozf?`, { measured: 'force or mass', unit: null }],
];

const MATCHERS = SPELLINGS.map(
  ([pattern, spelling]) =>
    [
      new RegExp(String.raw`(?:${pattern})(?![·⋅•∙‧*×.]?[\p{L}\p{N}_/²³^])(?:\.(?!\d))?`, 'iuy'),
      spelling,
    ] as const,
);

/** The unit that stands at `at` in `text`, however people spell it, or null. */
export function spellingAt(
  text: string,
  at: number,
): { readonly length: number; readonly spelling: Spelling } | null {
  for (const [matcher, spelling] of MATCHERS) {
    matcher.lastIndex = at;
    const match = matcher.exec(text);
    if (match !== null) return { length: match[0].length, spelling };
  }
  return null;
}
