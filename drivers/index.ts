/**
 * The drivers, by the name that the station file uses (`use`, config.ts), and how a station's tools are opened with
 * them. Nothing of a driver is loaded before it is chosen, so that a machine without Bluetooth runs all the others.
 *
 * To add a driver:
 * 1. Make a folder named after it, and in its `tool.ts` a function that returns a `Tool` (driver.ts).
 * 2. State its `source`: only what an instrument sends over its own link is `linked`.
 * 3. Keep bytes in pure functions that return a `Result`; what they cannot read stays a `raw` reading.
 * 4. Take the clock, the timer (after.ts), the radio or the file from the options; open nothing yourself.
 * 5. Give its configuration a form in config.ts, and add an entry to `drivers` below.
 * 6. Test it in tests/drivers/<name>/ in virtual time; a Bluetooth one also over sim/controller, as imds does.
 */

import { join, resolve } from 'node:path';
import { filter, map, NEVER, type Observable } from 'rxjs';
import { type Problem, ProblemError } from '../src/problem.ts';
import type { Quantity, ToolId } from '../src/reading.ts';
import { orThrow } from '../src/result.ts';
import { w } from '../src/words/catalogue.ts';
import type { Language } from './bluetooth/language.ts';
import type { DriverConfig } from './config.ts';
import type { Clock, Tool } from './driver.ts';
import type { Radio } from './radio/radio.ts';
import type { SerialLanguage } from './serial/language.ts';

/** A tool as the station file names it. */
export interface ToolEntry {
  readonly id: ToolId;
  readonly quantity: Quantity;
  readonly serial?: string | undefined;
  readonly driver: DriverConfig;
}

/** What the tools of one station share. */
interface Context {
  /** Paths in the station file are seen from here. */
  readonly base: string;
  readonly clock: Clock;
  /** The one adapter, opened when it is first asked for. */
  readonly radio: () => Promise<Radio>;
  /** Lines that come from the keyboard and are no commands. */
  readonly typed$: Observable<TypedLine>;
}

/** `quantity`: which tool it is for, where several of a station are typed; null for whichever there is. */
export interface TypedLine {
  readonly line: string;
  readonly quantity: Quantity | null;
}

type Use = DriverConfig['use'];
type ConfigOf<U extends Use> = Extract<DriverConfig, { readonly use: U }>;

interface Driver<U extends Use> {
  readonly title: string;
  readonly quantities: readonly Quantity[];
  /** The tool, not yet connected; throws a {@link ProblemError}. */
  readonly open: (tool: ToolEntry, config: ConfigOf<U>, context: Context) => Promise<Tool>;
}

const drivers: { readonly [U in Use]: Driver<U> } = {
  imds: {
    title: 'Bluetooth LE tools that speak the Industrial Measurement Device Service',
    quantities: ['torque', 'length'],
    open: async (tool, config, context) => {
      const { imds } = await import('./imds/language.ts');
      return onAir(tool, config, context, imds(tool.quantity));
    },
  },
  profile: {
    title: 'Bluetooth LE tools that a profile describes',
    quantities: ['torque', 'length'],
    open: async (tool, config, context) => {
      const [{ readProfile, bluetoothProfile }, { described }] = await Promise.all([
        import('./profile/file.ts'),
        import('./profile/language.ts'),
      ]);
      const profile = orThrow(await readProfile(resolve(context.base, config.profile)));
      return onAir(tool, config, context, described(orThrow(bluetoothProfile(profile, config.profile))));
    },
  },
  serial: {
    title: 'Tools on a serial port that a profile describes',
    quantities: ['torque', 'length'],
    open: async ({ id }, { port, profile: file }, { base, clock }) => {
      const [{ readProfile, serialProfile }, { described }] = await Promise.all([
        import('./profile/file.ts'),
        import('./serial/language.ts'),
      ]);
      const read = orThrow(await readProfile(resolve(base, file)));
      return onPort(id, port, clock, described(orThrow(serialProfile(read, file))));
    },
  },
  package: {
    title: 'Tools that a driver in a package of its own reads, with the rights of whoever started plugmark',
    quantities: ['torque', 'length'],
    open: async (tool, config, context) => {
      const [{ loadDriver }, { packagedBluetooth, packagedSerial }] = await Promise.all([
        import('./package/load.ts'),
        import('./package/language.ts'),
      ]);
      const loaded = await loadDriver(config.package, context.base);
      const way = loaded.driver.link;
      if (way.kind === 'bluetooth-le') return onAir(tool, config, context, packagedBluetooth(loaded, way));
      if (config.port === undefined) throw new ProblemError(noPort(tool.id, config.package));
      return onPort(tool.id, config.port, context.clock, packagedSerial(loaded, way));
    },
  },
  typed: {
    title: 'Gauges that type their figure as a keyboard does, and figures typed by hand',
    quantities: ['torque', 'length'],
    open: async ({ id, quantity }, { unit }, { clock, typed$ }) => {
      const { typedTool } = await import('./typed/tool.ts');
      const lines$ = typed$.pipe(
        filter((typed) => typed.quantity === null || typed.quantity === quantity),
        map(({ line }) => line),
      );
      return typedTool({ id, quantity, unit, clock, lines$ });
    },
  },
  replay: {
    title: 'Recorded readings, played back',
    quantities: ['torque', 'length'],
    open: async ({ id, quantity }, { file, profile, speed }, { base, clock }) => {
      const [{ readRecording }, { replayTool }] = await Promise.all([
        import('./replay/file.ts'),
        import('./replay/tool.ts'),
      ]);
      const meaning = {
        tool: id,
        quantity,
        ...(profile !== undefined && { profile: resolve(base, profile) }),
      };
      const recording = orThrow(await readRecording(resolve(base, file), meaning));
      return replayTool({ id, recording, pace: { speed }, clock });
    },
  },
};

/** A tool on the air, whatever it speaks; only one that was adopted is listened to. */
async function onAir(
  { id, serial }: ToolEntry,
  { address, name }: { readonly address?: string; readonly name?: string },
  { clock, radio }: Context,
  language: Language,
): Promise<Tool> {
  if (serial === undefined || address === undefined) throw new ProblemError(notAdopted(id));
  const { bluetoothTool } = await import('./bluetooth/tool.ts');
  const adopted = { address, serial, ...(name !== undefined && { name }) };
  return bluetoothTool({ id, language, adopted, clock, radio: await radio() });
}

async function onPort(id: ToolId, port: string, clock: Clock, language: SerialLanguage): Promise<Tool> {
  const [{ serialTool }, { openSerial }] = await Promise.all([
    import('./serial/tool.ts'),
    import('./serial/open.ts'),
  ]);
  return serialTool({ id, language, port, clock, open: openSerial });
}

const noPort = (where: ToolId, name: string): Problem => ({
  code: 'port-missing',
  where,
  message: w`the driver ${name} reads a serial port, and the station file names none`,
  next: w`Add "port" to the driver of this tool.`,
});

function notAdopted(id: ToolId): Problem {
  return {
    code: 'tool-not-adopted',
    where: id,
    message: w`the tool ${id} is not adopted: the station file names no device for it`,
    next: w`Adopt it with plugmark devices adopt ADDRESS --tool ${id}.`,
  };
}

export interface OpenTools {
  /** In the order of the station file, not yet connected. */
  readonly tools: readonly Tool[];
  /** Closes the tools and gives the adapter back. */
  close(): Promise<void>;
}

/** Opens all tools or none; throws the first {@link ProblemError}, and then nothing stays open. */
export async function openTools(
  entries: readonly ToolEntry[],
  { base, clock, typed$ = NEVER }: Omit<Context, 'radio' | 'typed$'> & Partial<Pick<Context, 'typed$'>>,
): Promise<OpenTools> {
  const tools: Tool[] = [];
  let opening: Promise<Radio> | undefined;
  const radio = () => {
    opening ??= openAdapter(base);
    return opening;
  };
  const close = async () => {
    await Promise.all(tools.map((tool) => tool.close()));
    const adapter = await opening?.catch(() => undefined); // its problem has been thrown to whoever asked for it
    await adapter?.close();
  };
  try {
    for (const entry of entries)
      tools.push(await open(entry.driver.use, entry, entry.driver, { base, clock, radio, typed$ }));
  } catch (error) {
    await close();
    throw error;
  }
  return { tools, close };
}

async function open<U extends Use>(
  use: U,
  entry: ToolEntry,
  config: ConfigOf<U>,
  context: Context,
): Promise<Tool> {
  const tool = await drivers[use].open(entry, config, context);
  if (tool.quantity !== entry.quantity) throw new ProblemError(wrongQuantity(entry, tool.quantity));
  return tool;
}

async function openAdapter(base: string): Promise<Radio> {
  const [{ openRadio }, { bondsIn }] = await Promise.all([
    import('./radio/open.ts'),
    import('./radio/bonds.ts'),
  ]);
  return orThrow(await openRadio({ bonds: bondsIn(join(base, 'bluetooth-bonds.json')) }));
}

function wrongQuantity({ id, quantity }: ToolEntry, actual: Quantity): Problem {
  return {
    code: 'tool-other-quantity',
    where: id,
    message: w`the tool ${id} should measure ${quantity}, but its driver measures ${actual}`,
    next: w`Correct the quantity or the driver of the tool in the station file.`,
  };
}
