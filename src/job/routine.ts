import { z } from 'zod';
import { ENGLISH, inLanguage, phrases, w } from '../words/catalogue.ts';
import { shopOrderSchema } from './order-of-work.ts';

/** Of an item, or of one of its choices. */
export const shortNameSchema = z.string().regex(/^[a-z][a-z0-9-]{0,39}$/, {
  error: () => w`expected small letters, digits and hyphens, at most 40, a letter first`,
});
const id = shortNameSchema.describe('Short name; on no list twice.');

/** Answers that every item takes; else it is answered by the id of one of its choices. */
export const DONE = 'done';
export const NOT_DONE = 'not-done';

const choiceSchema = z.strictObject({
  id: shortNameSchema.describe(
    'Short name, which the record keeps; once on each item, not `done` or `not-done`.',
  ),
  text: z.string().min(1).max(60).describe('What people read.'),
});

/** One thing to attest: said to be done, or answered by one of its choices. */
const routineItemSchema = z
  .strictObject({
    id,
    text: z.string().min(1).max(160).describe('What is attested.'),
    reason: z
      .string()
      .min(1)
      .max(160)
      .exactOptional()
      .describe('Why, in one line, for whoever asks; the screen shows it under the item.'),
    choices: z
      .array(choiceSchema)
      .min(2)
      .max(6)
      .exactOptional()
      .describe('Answers, one of which is given instead of "done".'),
    notable: z
      .array(shortNameSchema)
      .max(6)
      .exactOptional()
      .describe('Those of the choices, by their ids, that the papers list among the exceptions.'),
  })
  .superRefine(({ choices = [], notable = [] }, ctx) => {
    const wrong = (path: PropertyKey[], message: string) => ctx.addIssue({ code: 'custom', path, message });
    const ids = choices.map((choice) => choice.id);
    for (const [i, one] of ids.entries()) {
      if (one === DONE || one === NOT_DONE)
        wrong(['choices', i, 'id'], w`"${one}" is an answer to every item; expected another name`);
      if (ids.indexOf(one) < i) wrong(['choices', i, 'id'], w`"${one}" is there twice`);
    }
    for (const [i, one] of notable.entries())
      if (!ids.includes(one)) wrong(['notable', i], w`"${one}" is not one of the choices`);
  });
export type RoutineItem = z.infer<typeof routineItemSchema>;

const list = z.array(routineItemSchema).max(12);

/** The lists of a routine that are attested as a whole. */
export const listPhaseSchema = z.enum(['before-removal', 'fitting', 'afterwards']);
export type ListPhase = z.infer<typeof listPhaseSchema>;

/**
 * What a shop wants said around the torque itself: lists to attest before removal, before fitting and afterwards, and
 * whether the windows are confirmed, the old plugs read and the new ones checked. An empty list is no step.
 */
export const routineSchema = z
  .strictObject({
    form: z.literal('plugmark/routine/1'),
    confirmWindows: z.boolean().describe('Whether somebody confirms the windows before the first pull.'),
    beforeRemoval: list.describe('Attested before the old plugs come out. An empty list is no step.'),
    oldPlugs: z.boolean().describe('Whether the old plugs are read.'),
    newPlugs: z
      .boolean()
      .describe('Whether the new plugs are held against the old ones and the specification.'),
    fitting: list.describe('Attested before the plugs are fitted.'),
    trialClick: z
      .boolean()
      .exactOptional()
      .describe('Whether the click of the wrench is tried before the first plug; a key passes over it.'),
    afterwards: list.describe('Attested after the last plug.'),
    order: shopOrderSchema
      .exactOptional()
      .describe(
        'Which steps must keep their order. `binding` (unless given): what came too early is held and proves nothing by itself. `told`: it counts, and is an exception. `free`: nothing is said.',
      ),
  })
  .superRefine((routine, ctx) => {
    const seen = new Set<string>();
    for (const field of ['beforeRemoval', 'fitting', 'afterwards'] as const)
      for (const [i, item] of routine[field].entries()) {
        if (seen.has(item.id))
          ctx.addIssue({ code: 'custom', path: [field, i, 'id'], message: w`"${item.id}" is there twice` });
        seen.add(item.id);
      }
  });
export type Routine = z.infer<typeof routineSchema>;

/** The items of one list. */
export function itemsOf(routine: Routine, phase: ListPhase): readonly RoutineItem[] {
  switch (phase) {
    case 'before-removal':
      return routine.beforeRemoval;
    case 'fitting':
      return routine.fitting;
    case 'afterwards':
      return routine.afterwards;
  }
}

/** What the usual routine asks, by the ids of its items: the usual cautions of the trade; the maker's word goes first. */
const USUAL = phrases({
  'engine-cold': { text: 'The engine is cold, or has cooled as long as its maker asks' },
  'ignition-off': { text: 'Ignition off, key away' },
  boots: {
    text: 'Boots or coils twisted loose by half a turn, pulled at the boot, never by the wire, and marked',
  },
  'blown-clean': {
    text: 'Plug wells blown clean with dry air, goggles on, before turning the first plug',
  },
  'hand-tools': { text: 'Hand tools only; no power tool touches a plug' },
  'threads-clean': { text: 'Threads and seats clean, in the head and on the plugs' },
  chased: {
    text: 'Threads in the head chased',
    choices: {
      'not-needed': 'not needed',
      'chased-with-grease': 'with grease on the tap, piston and valves clear',
    },
  },
  lubricant: { text: 'Nothing on the threads but what the specification says' },
  'by-hand': {
    text: 'Each plug started by hand, deep ones with a piece of hose, and turned in to its seat by hand',
  },
  'boot-compound': {
    text: 'Compound in the boots: thin, inside only, none on threads or terminals',
    choices: { none: 'none', 'as-allowed': 'as the maker allows' },
  },
  'boots-seated': {
    text: 'Boots or coils pushed on until they seat, each on its own cylinder, wires in their places',
  },
  'engine-run': {
    text: 'Engine run',
    choices: { 'runs-well': 'runs without misfire', misfires: 'misfires', 'not-run': 'not run' },
  },
  'old-parts': {
    text: 'Old plugs',
    choices: {
      kept: 'kept in cylinder order',
      'given-to-customer': 'given to the customer',
      scrapped: 'scrapped',
    },
  },
});

interface UsualItem {
  readonly text: string;
  readonly choices?: Readonly<Record<string, string>>;
}

function usualItem(id: keyof typeof USUAL): RoutineItem {
  const { text, choices }: UsualItem = USUAL[id];
  if (choices === undefined) return { id, text };
  return {
    id,
    text,
    choices: Object.entries(choices).map(([choice, words]) => ({ id: choice, text: words })),
  };
}

/** What a shop works by that gives no routine of its own. A job signs these texts: they are English, whoever reads them. */
export const USUAL_ROUTINE: Routine = inLanguage(ENGLISH, () => ({
  form: 'plugmark/routine/1',
  confirmWindows: true,
  beforeRemoval: [
    usualItem('engine-cold'),
    usualItem('ignition-off'),
    usualItem('boots'),
    usualItem('blown-clean'),
    usualItem('hand-tools'),
  ],
  oldPlugs: true,
  newPlugs: true,
  fitting: [usualItem('threads-clean'), usualItem('chased'), usualItem('lubricant'), usualItem('by-hand')],
  afterwards: [
    usualItem('boot-compound'),
    usualItem('boots-seated'),
    { ...usualItem('engine-run'), notable: ['misfires', 'not-run'] },
    usualItem('old-parts'),
  ],
}));

const USUAL_ITEMS = new Map(
  [...USUAL_ROUTINE.beforeRemoval, ...USUAL_ROUTINE.fitting, ...USUAL_ROUTINE.afterwards].map((item) => [
    item.id,
    item,
  ]),
);

/** The item as the usual routine has it, in the reader's language; undefined for one of the shop's own. */
function usualFor({
  id,
}: RoutineItem): { readonly signed: RoutineItem; readonly spoken: RoutineItem } | undefined {
  const signed = USUAL_ITEMS.get(id);
  return signed === undefined || !isUsual(id) ? undefined : { signed, spoken: usualItem(id) };
}

const isUsual = (id: string): id is keyof typeof USUAL => Object.hasOwn(USUAL, id);

/** What is attested: in the reader's language where it is the text of the usual routine, else in the shop's own words. */
export function itemText(item: RoutineItem): string {
  const usual = usualFor(item);
  return usual?.signed.text === item.text ? usual.spoken.text : item.text;
}

/** The text of an answer, in the same way; undefined where the item has no such answer. */
export function choiceTextOf(item: RoutineItem, as: string): string | undefined {
  const textIn = (one: RoutineItem | undefined) => one?.choices?.find(({ id }) => id === as)?.text;
  const usual = usualFor(item);
  const text = textIn(item);
  return text !== undefined && textIn(usual?.signed) === text ? textIn(usual?.spoken) : text;
}
