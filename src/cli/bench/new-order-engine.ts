/** The engine of a new order, typed in a few words and shown as a drawing with its front marked. */
import {
  type Banks,
  type TypedEngine,
  typedEngine,
  typedNumbers,
  withTwoPlugs,
} from '../../job/engine-layout.ts';
import { type Engine, workOrderSchema } from '../../job/order.ts';
import { headMaterialSchema } from '../../plug/specification.ts';
import { err, ok, type Result } from '../../result.ts';
import { misnumbered } from '../../sequence/plan.ts';
import { type Glyphs, glyphsFor } from '../../ui/glyphs.ts';
import { phrases, plural, w } from '../../words/catalogue.ts';
import type { Dialogue } from '../terminal/dialogue.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import {
  askChoice,
  askMaybe,
  askUntil,
  askYes,
  messageOf,
  promptFor,
  refuse,
} from '../terminal/questions.ts';

const engineSchema = workOrderSchema.shape.engine;

/** Asks until the whole is an engine that an order can hold. */
export async function askEngine(dialogue: Dialogue): Promise<Engine> {
  for (;;) {
    const typed = await askUntil(
      dialogue,
      w`Engine (in-line 4, V8, flat 6, or banks from front to rear, 1 3 5 7 / 2 4 6 8): `,
      typedEngine,
    );
    const banks = await askBanks(dialogue, typed);
    if (banks === null) continue;
    const plugged = await askPlugs(dialogue, banks);
    const serviceOrder = await askOrder(dialogue, w`Order in which you work`, plugged.banks.flat());
    const firing = await askMaybe(dialogue, w`Firing order, for display only`, null, (text) =>
      orderOf(text, (firingOrder) => misnumbered({ ...plugged, serviceOrder, firingOrder })?.message),
    );
    const headMaterial = await askChoice(dialogue, headMaterialSchema, w`Cylinder head`);
    const engine = engineSchema.safeParse({
      ...plugged,
      serviceOrder,
      ...(firing === null ? {} : { firingOrder: firing }),
      headMaterial,
      ...(typed.name === null ? {} : { description: typed.name }),
    });
    if (engine.success) return engine.data;
    refuse(dialogue, 'engine', messageOf(engine.error.issues[0]));
  }
}

/** The numbering that the maker gives; null to type the engine again. */
async function askBanks(dialogue: Dialogue, { numberings }: TypedEngine): Promise<Banks | null> {
  const [only] = numberings;
  if (only === undefined) return null;
  if (numberings.length === 1) {
    engineDrawing(only, drawn()).forEach((line) => void dialogue.say(line));
    return (await askYes(dialogue, w`Seen from above: does the maker number it like this?`, 'yes'))
      ? only
      : null;
  }
  dialogue.say(w`How does the maker number it, seen from above?`);
  for (const [i, banks] of numberings.entries())
    for (const [row, line] of engineDrawing(banks, drawn()).entries())
      dialogue.say(`${row === 1 ? String(i + 1).padStart(3) : '   '}${line}`);
  return askUntil(dialogue, w`1 to ${numberings.length}, or the banks, 1 2 3 / 4 5 6: `, (answer) => {
    const chosen = /^\d$/.test(answer) ? numberings[Number(answer) - 1] : undefined;
    if (chosen !== undefined) return ok(chosen);
    const typed = typedEngine(answer);
    const banks = typed.ok && typed.value.name === null ? typed.value.numberings[0] : undefined;
    return banks === undefined ? err(w`expected 1 to ${numberings.length}, or the banks`) : ok(banks);
  });
}

async function askPlugs(dialogue: Dialogue, banks: Banks): Promise<Pick<Engine, 'banks' | 'plugs'>> {
  const each = await askUntil(dialogue, promptFor(w`Plugs per cylinder: 1, 2`, '1'), (answer) =>
    ['', '1', '2'].includes(answer) ? ok(answer || '1') : err(w`expected 1 or 2`),
  );
  if (each === '1') return { banks };
  const plugged = withTwoPlugs(banks);
  dialogue.say(w`Each plug has its own number. The second plugs come after their bank:`);
  engineDrawing(plugged.banks, drawn()).forEach((line) => void dialogue.say(line));
  return plugged;
}

function askOrder(dialogue: Dialogue, text: string, usual: readonly number[]): Promise<readonly number[]> {
  return askUntil(dialogue, promptFor(text, usual.join(' ')), (answer) =>
    answer === ''
      ? ok([...usual])
      : orderOf(answer, (serviceOrder) => misnumbered({ banks: [[...usual]], serviceOrder })?.message),
  );
}

function orderOf(text: string, fault: (numbers: number[]) => string | undefined): Result<number[], string> {
  const numbers = typedNumbers(text);
  const wrong = numbers.ok ? fault(numbers.value) : undefined;
  return wrong === undefined ? numbers : err(wrong);
}

const drawn = () => glyphsFor(!speaksUtf8());

/** The engine from above with its front to the left, a row a bank, the crankshaft between them. */
export function engineDrawing(banks: Banks, glyphs: Glyphs): string[] {
  const rows = banks.map((bank) => bank.map((number) => String(number).padStart(4)).join(''));
  const long = Math.max(...rows.map((row) => row.length));
  const crank = `  ${w`front`} ${glyphs.line.repeat(long)} ${w`rear`}`;
  const half = Math.ceil(rows.length / 2);
  const placed = (some: readonly string[]) => some.map((row) => `       ${row}`);
  return [...placed(rows.slice(0, half)), crank, ...placed(rows.slice(half))];
}

const HEAD: Readonly<Record<Engine['headMaterial'], string>> = phrases({
  aluminium: 'aluminium head',
  'cast-iron': 'cast-iron head',
});

/** An engine in a few words: `V8, aluminium head` or `2 banks, 6 cylinders, 12 plugs, cast-iron head`. */
export function engineWords({ description, banks, plugs, headMaterial }: Engine): string {
  const count = banks.flat().length;
  const shape =
    description ??
    `${plural(banks.length, { one: '# bank', other: '# banks' })}, ${plural((plugs ?? banks.flat()).length, { one: '# cylinder', other: '# cylinders' })}`;
  const counted =
    plugs === undefined ? shape : `${shape}, ${plural(count, { one: '# plug', other: '# plugs' })}`;
  return `${counted}, ${HEAD[headMaterial]}`;
}
