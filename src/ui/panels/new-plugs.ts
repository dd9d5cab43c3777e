/** The new plugs held against the order and the old ones, before any is fitted: part, lot, and what must agree. */

import type { JobState } from '../../job/state.ts';
import { type PlugFeature, plugFeatureSchema } from '../../plug/feature.ts';
import { hasOwnParts, partsFor } from '../../plug/parts.ts';
import { FEATURE_WORDS } from '../../report/words/index.ts';
import { w } from '../../words/catalogue.ts';
import { newForm } from '../form.ts';
import type { Glyphs } from '../glyphs.ts';
import { type KeyPress, printed } from '../key-press.ts';
import { KEY, letterOf } from '../key-table.ts';
import type { Line } from '../line.ts';
import { columnsOf, fill, printable } from '../printable.ts';
import { upDown } from '../words.ts';
import { outlier } from './outlier.ts';
import { type Move, moved, type NewPlugsDraft, type Room, scrolled } from './panel.ts';

const FEATURES = plugFeatureSchema.options;

/** A lot that was asked for on the way: once it is typed, Enter goes on. */
export const THEN_AGREED = 'then-agreed';

/** Cylinders whose new plug is not found right yet, in the order of the work. */
const unchecked = (job: JobState): number[] =>
  job.cylinders.map((c) => c.cylinder).filter((cylinder) => job.newPlugs[cylinder]?.differs.length !== 0);

export function beginNewPlugs(job: JobState): NewPlugsDraft {
  return { about: 'new-plugs', at: 0, differs: [], part: partDue(job), lot: null, one: null };
}

/** The part for the first plug that is to be checked. */
const partDue = (job: JobState, done: readonly number[] = []): string =>
  partsFor(job.order.plug, unchecked(job).find((cylinder) => !done.includes(cylinder)) ?? 0)[0] ??
  job.order.plug.part;

/** Of an engine with two different plugs those that take this part: each part comes in its own box. */
function spokenOf({ one, part }: NewPlugsDraft, job: JobState): number[] {
  if (one !== null) return [one];
  const { plug } = job.order;
  const left = unchecked(job);
  const takes = left.filter((cylinder) => partsFor(plug, cylinder).includes(part));
  return hasOwnParts(plug) && takes.length > 0 ? takes : left;
}

/** The check as a command; the lot is asked for first. */
function checked(draft: NewPlugsDraft, job: JobState): Move {
  if (draft.lot === null) return { form: newForm('lot', THEN_AGREED) };
  const { part, lot, differs } = draft;
  const cylinders = spokenOf(draft, job);
  const left = unchecked(job).filter((cylinder) => !cylinders.includes(cylinder));
  return {
    command: { do: 'check-new-plugs', cylinders, part, lot: lot === '' ? null : lot, differs: [...differs] },
    draft: {
      ...draft,
      ...(hasOwnParts(job.order.plug) ? { part: partDue(job, cylinders), lot: null } : {}),
      at: 0,
      differs: [],
      one: draft.one === null ? null : (left[0] ?? draft.one),
    },
  };
}

function oneBeside({ one }: NewPlugsDraft, job: JobState, step: 1 | -1): number | null {
  const order = job.cylinders.map(({ cylinder }) => cylinder);
  return one === null ? null : (order[order.indexOf(one) + step] ?? one);
}

export function pressedNewPlugs(draft: NewPlugsDraft, press: KeyPress, job: JobState): Move {
  const at = moved(draft.at, press.key, FEATURES.length);
  if (at !== null) return { draft: { ...draft, at } };
  if (press.key === 'enter') return checked(draft, job);
  if (press.key === 'left' || press.key === 'right') {
    const one = oneBeside(draft, job, press.key === 'left' ? -1 : 1);
    return one === null ? null : { draft: { ...draft, one } };
  }
  const feature = FEATURES[draft.at];
  switch (printed(press)?.toLowerCase()) {
    case KEY.not:
      return feature === undefined ? null : { draft: { ...draft, differs: toggled(draft.differs, feature) } };
    case KEY.part:
      return { form: newForm('part') };
    case KEY.lot:
      return { form: newForm('lot') };
    case KEY.oneByOne:
      return { draft: { ...draft, one: draft.one === null ? (unchecked(job)[0] ?? null) : null } };
    default:
      return null;
  }
}

const toggled = (differs: readonly PlugFeature[], one: PlugFeature): PlugFeature[] =>
  FEATURES.filter((other) => differs.includes(other) !== (other === one));

export function newPlugsSentence(draft: NewPlugsDraft, job: JobState): string {
  const { one } = draft;
  if (draft.differs.length > 0) {
    const features = draft.differs.map((feature) => FEATURE_WORDS[feature]).join(', ');
    return one === null
      ? w`Enter: the new plugs differ in ${features}. Then take the right ones.`
      : w`Enter: the new plug for cylinder ${one} differs in ${features}. Then take the right ones.`;
  }
  const before = job.cylinders.find(({ cylinder }) => (job.newPlugs[cylinder]?.differs.length ?? 0) > 0);
  const again = before === undefined ? '' : `${w`Do not fit the plugs that differ.`} `;
  if (hasOwnParts(job.order.plug))
    return (
      again +
      w`This engine has two different plugs. Compare ${printable(draft.part, 40)} for cylinder ${spokenOf(draft, job).join(', ')} with the old ones there. Enter: everything agrees. Mixed up, they fit and run too hot or foul.`
    );
  return (
    again +
    (one === null
      ? w`Compare the new plugs with the old ones and the order. Enter: everything agrees.`
      : w`Compare the new plug for cylinder ${one} with the old ones and the order. Enter: everything agrees.`)
  );
}

/** What the order says of a feature; nothing said means: like the plug that came out. */
function figureOf(feature: PlugFeature, { order }: JobState): string {
  const asOld = w`as the old one`;
  const { thread, seat, gasket, reachMm, hexMm, heatRange, resistor } = order.plug;
  const [diameter, pitch] = thread.split('x');
  switch (feature) {
    case 'thread':
      return diameter ?? thread;
    case 'pitch':
      return `${pitch ?? ''} mm`;
    case 'reach':
      return reachMm === undefined ? asOld : `${reachMm} mm`;
    case 'seat':
      if (seat === 'conical') return w`conical, no gasket`;
      return gasket === 'used' ? w`flat, used gasket` : w`flat, new gasket`;
    case 'hex':
      return hexMm === undefined ? asOld : `${hexMm} mm`;
    case 'heat-range':
      return heatRange ?? asOld;
    case 'resistor':
      return resistor === undefined ? asOld : resistor ? w`yes` : w`no`;
  }
}

/** The longest name of a feature and a space. */
const nameColumns = (): number =>
  Math.max(12, ...Object.values(FEATURE_WORDS).map((word) => columnsOf(word) + 1));

function featureLine(
  feature: PlugFeature,
  i: number,
  draft: NewPlugsDraft,
  job: JobState,
  glyphs: Glyphs,
): Line {
  const differs = draft.differs.includes(feature);
  const here = i === draft.at;
  const mark = differs ? w`${glyphs.bad} differs` : w`${glyphs.done} agrees`;
  return [
    { text: ` ${here ? glyphs.pointer : ' '}${fill(FEATURE_WORDS[feature], nameColumns(), '')}`, bold: here },
    { text: fill(printable(figureOf(feature, job), 24, glyphs.ascii), 26, glyphs.cutMark), bold: true },
    { text: mark, inverse: here, ...(differs ? { tone: 'bad' as const } : {}) },
  ];
}

function checkedLine(job: JobState): Line[] {
  const right = job.cylinders.filter(({ cylinder }) => job.newPlugs[cylinder]?.differs.length === 0);
  return right.length === 0
    ? []
    : [[{ text: w` Checked: ${right.map(({ cylinder }) => cylinder).join(', ')}`, dim: true }]];
}

export function newPlugsLines(
  draft: NewPlugsDraft,
  job: JobState,
  { columns, rows }: Room,
  glyphs: Glyphs,
): Line[] {
  const clean = (text: string) => printable(text, 60, glyphs.ascii);
  const cylinders = spokenOf(draft, job).join(', ');
  const lot = draft.lot === null ? w`asked for on Enter` : draft.lot === '' ? w`none` : clean(draft.lot);
  const outlierText = outlier(job);
  const head: Line[] = [
    [
      { text: w` For cylinder ${cylinders}`, bold: true },
      {
        text: `   ${draft.one === null ? w`[${letterOf(KEY.oneByOne)}] one at a time` : w`[${letterOf(KEY.oneByOne)}] all`}`,
      },
    ],
    [
      { text: w` [p] part ` },
      { text: clean(draft.part), bold: true },
      { text: w`   [l] lot ` },
      { text: lot, bold: true },
    ],
  ];
  const foot: Line[] = [
    ...checkedLine(job),
    ...(outlierText === null ? [] : [[{ text: ` ${outlierText}`, tone: 'attention' as const }]]),
  ];
  const features = FEATURES.map((feature, i) => featureLine(feature, i, draft, job, glyphs));
  const space: Line[] = rows > head.length + foot.length + features.length + 1 ? [[]] : [];
  const room = Math.max(3, rows - head.length - foot.length - 2 * space.length);
  return [...head, ...space, ...scrolled(features, draft.at, room, glyphs), ...space, ...foot].map((line) =>
    line.slice(0, columns),
  );
}

export const newPlugsKeys = (): readonly string[] => [
  w`[Enter] agrees`,
  w`[x] differs`,
  w`[p] part`,
  w`[l] lot`,
  w`[${upDown()}] feature`,
];
