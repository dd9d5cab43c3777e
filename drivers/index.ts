/**
 * The drivers, by the name that the station file uses (`use`, config.ts), and how a station's tools are opened with
 * them. Nothing of a driver is loaded before it is chosen, so that a machine without Bluetooth runs all the others.
 *
 * To add a driver:
 * 1. Make a folder named after it, and in its `tool.ts` a function that returns a `Tool` (driver.ts).
 * 2. Keep bytes in pure functions that return a `Result`; what they cannot read stays a `raw` reading.
 * 3. Take the clock, the timer (after.ts), the radio or the file from the options; open nothing yourself.
 * 4. Give its configuration a form in config.ts, and add an entry to `drivers` below.
 * 5. Test it in tests/drivers/<name>/ in virtual time; a Bluetooth one also over sim/controller, as imds does.
 */
import { resolve } from 'node:path';
import { type Problem, ProblemError } from '../src/problem.ts';
import type { Quantity, ToolId } from '../src/reading.ts';
import { orThrow } from '../src/result.ts';
import type { DriverConfig } from './config.ts';
import type { Clock, Tool } from './driver.ts';
import type { Radio } from './radio/radio.ts';

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
    open: async ({ id, quantity, serial }, { address, name }, { clock, radio }) => {
      const { imdsTool } = await import('./imds/tool.ts');
      const match = {
        ...(serial !== undefined && { serial }),
        ...(address !== undefined && { address }),
        ...(name !== undefined && { name }),
      };
      return imdsTool({ id, quantity, match, clock, radio: await radio() });
    },
  },
  replay: {
    title: 'Recorded readings, played back',
    quantities: ['torque', 'length'],
    open: async ({ id }, { file, speed }, { base, clock }) => {
      const [{ readRecording }, { replayTool }] = await Promise.all([
        import('./replay/file.ts'),
        import('./replay/tool.ts'),
      ]);
      const recording = orThrow(await readRecording(resolve(base, file)));
      return replayTool({ id, recording, pace: { speed }, clock });
    },
  },
};

export interface OpenTools {
  /** In the order of the station file, not yet connected. */
  readonly tools: readonly Tool[];
  /** Closes the tools and gives the adapter back. */
  close(): Promise<void>;
}

/** Opens all tools or none; throws the first {@link ProblemError}, and then nothing stays open. */
export async function openTools(
  entries: readonly ToolEntry[],
  { base, clock }: Omit<Context, 'radio'>,
): Promise<OpenTools> {
  const tools: Tool[] = [];
  let opening: Promise<Radio> | undefined;
  const radio = () => {
    opening ??= openAdapter();
    return opening;
  };
  const close = async () => {
    await Promise.all(tools.map((tool) => tool.close()));
    const adapter = await opening?.catch(() => undefined); // its problem has been thrown to whoever asked for it
    await adapter?.close();
  };
  try {
    for (const entry of entries)
      tools.push(await open(entry.driver.use, entry, entry.driver, { base, clock, radio }));
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

async function openAdapter(): Promise<Radio> {
  const { openRadio } = await import('./radio/open.ts');
  return orThrow(await openRadio());
}

function wrongQuantity({ id, quantity }: ToolEntry, found: Quantity): Problem {
  return {
    code: 'tool-other-quantity',
    where: id,
    message: `The tool ${id} is to measure ${quantity}, but its driver gives ${found}.`,
    next: 'Correct the quantity or the driver of the tool in the station file.',
  };
}
