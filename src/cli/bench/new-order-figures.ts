/** The figures of a new order: chosen from the shop's library, taken from the vehicle's last job, or typed from a source. */
import { type Figures, type LibraryEntry, libraryEntrySchema, matchingEntries } from '../../job/library.ts';
import { specifiedBy } from '../../job/open.ts';
import type { WorkOrder } from '../../job/order.ts';
import { gapLimitsOf } from '../../plug/gap.ts';
import { SOURCE_WORDS } from '../../plug/precedence.ts';
import {
  plugSchema,
  type SingleFigure,
  type Specification,
  singleFigureSchema,
  specificationSchema,
} from '../../plug/specification.ts';
import { isSingleFigure } from '../../plug/tightening.ts';
import type { Problem } from '../../problem.ts';
import { parseAngleRange, parseLength, parseLengthRange, parseTorqueRange } from '../../quantity/range.ts';
import { err, ok, type Result } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import type { Dialogue } from '../terminal/dialogue.ts';
import { safeLine } from '../terminal/exit.ts';
import {
  askMaybe,
  askObject,
  askText,
  askUntil,
  isNumber,
  noNumber,
  parse,
  promptFor,
  refuse,
  type SoFar,
  type Wordings,
} from '../terminal/questions.ts';
import { askEngine, engineWords } from './new-order-engine.ts';
import { type Library, nameTaken } from './specification-files.ts';

/** Figures, and where the order has them from, in words. */
export interface Chosen extends Figures {
  readonly from: string;
}

/** How many entries of a library are listed unasked. */
const LISTED = 9;

/** Fields that a work order file can hold and that are not asked for. */
const LATER: ReadonlySet<string> = new Set([
  'plug.alsoParts',
  'plug.parts',
  'plug.groundElectrodes',
  'specification.also',
  'specification.checkedBy',
  'specification.singleFigure',
]);

/** One entry of the library by its number or by words of its name; null where the figures are to be typed. */
export function askFigures(
  dialogue: Dialogue,
  usual: Chosen | null,
  library: Library,
): Promise<Chosen | null> {
  const { kept, faults } = library;
  const listed = kept.slice(0, LISTED);
  if (kept.length > 0) dialogue.say(w`Engine and figures, from the library of this shop:`);
  for (const [i, { entry }] of listed.entries()) dialogue.say(`  ${i + 1}  ${entryWords(entry)}`);
  if (kept.length > LISTED)
    dialogue.say(w`     and ${kept.length - LISTED} more; type words of the name to find them`);
  if (faults.length > 0)
    dialogue.say(w`  ${faults.length} not readable; see "plugmark specifications check"`);
  if (usual !== null) dialogue.say(w`  Enter: ${usual.from}, ${figuresWords(usual)}`);
  const ways =
    kept.length > 0
      ? w`Number, words of the name, or "new" to type them`
      : w`Type "new" to enter the figures`;
  const otherwise = usual?.from ?? (kept.length === 0 ? 'new' : undefined);
  return askUntil<Chosen | null>(dialogue, promptFor(ways, otherwise), (answer) => {
    if (answer === '' && usual !== null) return ok(usual);
    if (answer.toLowerCase() === 'new' || (answer === '' && kept.length === 0)) return ok(null);
    const one = chosenOf(
      listed.map(({ entry }) => entry),
      kept.map(({ entry }) => entry),
      answer,
    );
    return one.ok ? ok(fromEntry(one.value)) : one;
  });
}

function chosenOf(
  listed: readonly LibraryEntry[],
  all: readonly LibraryEntry[],
  answer: string,
): Result<LibraryEntry, string> {
  const byNumber = /^\d$/.test(answer) ? listed[Number(answer) - 1] : undefined;
  if (byNumber !== undefined) return ok(byNumber);
  const [one, ...others] = answer === '' ? [] : matchingEntries(all, answer);
  if (one === undefined) return err(w`the library has no specification of this name`);
  if (others.length === 0) return ok(one);
  const names = [one, ...others].slice(0, 5).map(({ name }) => `"${safeLine(name)}"`);
  return err(w`${others.length + 1} match: ${names.join(', ')}${others.length > 4 ? ' …' : ''}`);
}

export function fromEntry({ engine, plug, specification, name }: LibraryEntry): Chosen {
  return { engine, plug, specification, from: name };
}

/** A line of the library: name, engine, figures, who typed them when. */
export const entryWords = (entry: LibraryEntry): string =>
  safeLine(`${entry.name}: ${figuresWords(entry)}; ${entry.enteredBy}, ${entry.enteredOn}`);

export function figuresWords({ engine, plug, specification }: Figures): string {
  const { torque, gap, source } = specification;
  const figures = gap === undefined ? torque : w`${torque}, gap ${gap}`;
  return safeLine(`${engineWords(engine)}, ${plug.part}, ${figures} (${SOURCE_WORDS[source.kind]})`);
}

/** Types engine, plug and figures from the service information, until an order could be opened with them. */
export async function typeFigures(
  dialogue: Dialogue,
  order: (figures: Figures) => WorkOrder,
  on: string,
  rule: SingleFigure | undefined,
) {
  dialogue.say(w`Type the figures from the service information of the engine maker.`);
  const engine = await askEngine(dialogue);
  const asking = { dialogue, wordings: wordings(), later: LATER };
  let plug = await askObject(asking, plugSchema, ['plug']);
  for (;;) {
    const printed = await askObject(asking, specificationSchema, ['specification']);
    const typed = await withSingleFigure(dialogue, printed, rule);
    const checked = await checkedAgain(dialogue, { engine, plug, specification: typed }, order, on);
    if (typeof checked === 'object') return { ...checked, from: 'typed' };
    if (checked === 'plug again') plug = await askObject(asking, plugSchema, ['plug']);
  }
}

/** A single figure gets the shop's own tolerance: the one that is kept, or one that is asked for once. */
async function withSingleFigure(
  dialogue: Dialogue,
  printed: Specification,
  kept: SingleFigure | undefined,
): Promise<Specification> {
  if (![printed.torque, printed.tightenFirst ?? ''].some(isSingleFigure)) return printed;
  dialogue.say(
    w`  "${safeLine(printed.torque)}" is a single figure. A reading is compared with a range: the shop sets its own tolerance, which is shown as the shop's and not the maker's.`,
  );
  if (kept !== undefined) {
    dialogue.say(w`  The rule of this shop: plus/minus ${kept.percent} %, set by ${safeLine(kept.setBy)}.`);
    return { ...printed, singleFigure: kept };
  }
  const { percent, setBy, basis } = singleFigureSchema.shape;
  const singleFigure = {
    percent: await askUntil(dialogue, w`Tolerance of single figures in this shop, percent: `, (text) =>
      isNumber(text) ? parse(percent, Number(text.replace(',', '.'))) : err(noNumber()),
    ),
    setBy: await askText(dialogue, setBy, w`Who sets this rule`),
    basis: await askText(dialogue, basis, w`Basis of the rule`),
  };
  return { ...printed, singleFigure };
}

/** The figures as an order takes them, or which of them are to be typed once more. */
async function checkedAgain(
  dialogue: Dialogue,
  figures: Figures,
  order: (figures: Figures) => WorkOrder,
  on: string,
): Promise<Figures | 'plug again' | 'again'> {
  const gap = gapLimitsOf(figures.specification, figures.plug);
  const specified = gap.ok ? specifiedBy(order(figures), on) : gap;
  if (specified.ok) return figures;
  const { code, message, next, where } = specified.error;
  const again = where?.startsWith('plug.') ? 'plug again' : 'again';
  if (code !== 'figure-implausible') {
    refuse(dialogue, where ?? 'specification', `${message}. ${next}`);
    return again;
  }
  dialogue.say(`  ${message}`);
  const checkedBy = await askMaybe(dialogue, w`Who checked this figure against the source`, null, (text) =>
    parse(specificationSchema.shape.checkedBy.unwrap(), text),
  );
  if (checkedBy !== null) return { ...figures, specification: { ...figures.specification, checkedBy } };
  refuse(dialogue, where ?? 'specification', w`enter the figures again`);
  return again;
}

/** The name under which the shop keeps typed figures; null where it does not. */
export function askKeep(dialogue: Dialogue, library: Library): Promise<string | null> {
  return askMaybe(dialogue, w`Name to keep them under in the library`, null, (text) => {
    const name = parse(libraryEntrySchema.shape.name, text);
    const taken = name.ok ? nameTaken(library, name.value) : null;
    return taken === null ? name : err(taken.problem.message);
  });
}

const readable = (read: (text: string) => Result<unknown>) => (value: unknown) => {
  const result = read(String(value));
  return Promise.resolve<Problem | null>(
    result.ok ? null : { ...result.error, message: placed(result.error) },
  );
};
/** Looked at, or not to be touched, a gap needs no figure. */
const isMeasured = ({ gapRules }: SoFar) => {
  const rules = specificationSchema.shape.gapRules.safeParse(gapRules);
  return !rules.success || !['visual-only', 'not-permitted'].includes(rules.data?.check ?? 'gauge');
};
const placed = ({ where, message, next }: Problem) =>
  `${where === undefined ? '' : `${where}: `}${message}. ${next}`;

const namesTorque = ({ torque }: SoFar) => !parseAngleRange(String(torque)).ok;

/** A range, or a single figure for which the shop has a rule. */
const torqueAsPrinted = (text: string): Result<unknown> =>
  isSingleFigure(text) ? ok(text) : parseTorqueRange(text);

const wordings = (): Wordings => ({
  'plug.part': { text: w`Part number of the plug` },
  'plug.thread': { text: w`Thread` },
  'plug.seat': { text: w`Seat` },
  'plug.reachMm': { text: w`Reach, mm` },
  'plug.hexMm': { text: w`Hex, mm` },
  'plug.heatRange': { text: w`Heat range` },
  'plug.resistor': { text: w`With a resistor` },
  'plug.gasket': { text: w`Gasket`, when: ({ seat }) => seat === 'gasket' },
  'plug.condition': { text: w`Plug`, usual: () => 'new' },
  'plug.tip': { text: w`Tip of the centre electrode` },
  'specification.torque': {
    text: w`Torque as printed, such as 25-30 N·m or 23 N·m, or an angle in its place, such as 1/2-2/3 turn`,
    check: readable((text) => (parseAngleRange(text).ok ? ok(text) : torqueAsPrinted(text))),
  },
  'specification.threads': { text: w`The figure is for threads that are`, usual: () => 'dry' },
  'specification.tightenFirst': {
    text: w`In two steps: first tighten to`,
    when: namesTorque,
    check: readable(torqueAsPrinted),
  },
  'specification.angle': {
    text: w`Angle advised, such as 1/2-2/3 turn`,
    when: namesTorque,
    check: readable(parseAngleRange),
  },
  'specification.reduction': {
    text: w`A torque reduced by the shop for lubricated threads`,
    when: ({ threads }) => threads === 'dry',
  },
  'specification.reduction.percent': { text: w`Reduced by, %` },
  'specification.reduction.lubricant': { text: w`On the threads` },
  'specification.reduction.setBy': { text: w`Who set this rule` },
  'specification.gapRules': {
    text: w`Rules for the gap: wires, only looked at, a service limit, how far it may be bent`,
  },
  'specification.gapRules.check': { text: w`The gap is checked by`, usual: () => 'gauge' },
  'specification.gapRules.wires': {
    text: w`Wires`,
    when: ({ check }) => check === 'wire',
    needed: ({ check }) => check === 'wire',
  },
  'specification.gapRules.wires.go': {
    text: w`The wire that must pass, such as 0.72 mm`,
    check: readable(parseLength),
  },
  'specification.gapRules.wires.noGo': {
    text: w`The wire that must not pass, such as 0.78 mm`,
    check: readable(parseLength),
  },
  'specification.gapRules.wires.within': {
    text: w`How far a wire may be off, such as 0.003 mm`,
    check: readable(parseLength),
  },
  'specification.gapRules.serviceLimit': {
    text: w`Widest gap at which a used plug may go on`,
    check: readable(parseLength),
  },
  'specification.gapRules.adjustable': { text: w`The gap may be set` },
  'specification.gapRules.bendMost': {
    text: w`Most that the electrode may be bent, 0.2 mm unless given`,
    check: readable(parseLength),
  },
  'specification.gap': {
    text: w`Gap as printed, such as 0.7-0.8 mm`,
    needed: isMeasured,
    check: readable(parseLengthRange),
  },
  'specification.change': { text: w`The source says when the plugs are changed again` },
  'specification.change.km': { text: w`After so many kilometres` },
  'specification.change.months': { text: w`After so many months` },
  'specification.source.kind': { text: w`Publisher` },
  'specification.source.title': { text: w`Title of the document` },
  'specification.source.edition': { text: w`Edition or page` },
  'specification.source.date': { text: w`Its date, as 2026-05-04` },
  'specification.turn': {
    text: w`Turn to be judged beside the torque, such as 180-240°`,
    when: namesTorque,
    check: readable(parseAngleRange),
  },
});
