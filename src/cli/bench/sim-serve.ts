import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { bluetoothProfile, readProfile, serialProfile } from '../../../drivers/profile/file.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { AIR } from '../../../drivers/radio/air.ts';
import { realScheduler, type Scheduler } from '../../../sim/scheduler.ts';
import { type Air, airOn } from '../../../sim/serve/air.ts';
import { onAir } from '../../../sim/serve/on-air.ts';
import { type Port, play, type Served } from '../../../sim/serve/player.ts';
import { type Scenario, type ScenarioStep, scenarioSchema } from '../../../sim/serve/scenario.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { readJson } from '../station/json-file.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { pseudoTerminal } from './pseudo-terminal.ts';

type ScenarioTool = Scenario['tools'][number];

/** Plays the tools of a scenario, each on a pseudo-terminal or on a virtual Bluetooth controller. */
export async function serve(file: string): Promise<ExitCode> {
  const scenario = await readJson(file, scenarioSchema, w`scenario`, '"plugmark manual simulator"');
  const scheduler = realScheduler();
  const closing: (() => void | Promise<void>)[] = [];
  try {
    const air = scenario.air === undefined ? null : await openAir(scenario.air, scheduler);
    if (air !== null) closing.push(air.close);
    const served: Served[] = [];
    for (const tool of scenario.tools) {
      const path = resolve(dirname(file), tool.profile);
      const described = orThrow(await readProfile(path));
      const { port, where, close } = await join(tool, described, path, air);
      closing.push(close);
      served.push({ id: tool.id, profile: described, noiseNm: tool.noiseNm, port });
      process.stdout.write(`${safeLine(tool.id)}: ${safeLine(described.title)} ${safeLine(where)}\n`);
    }
    if (scenario.air !== undefined)
      process.stdout.write(
        `${w`Reach the Bluetooth tools with ${`${AIR}=${safeLine(scenario.air)}`} in front of a command.`}\n`,
      );
    const played = play(scenario, served, scheduler, (step) =>
      process.stdout.write(`${new Date().toISOString().slice(11, 19)}  ${safeLine(wordsOf(step))}\n`),
    );
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, played.stop);
    await played.done;
    return EXIT.done;
  } finally {
    for (const close of closing.reverse()) await close();
  }
}

/** A virtual Bluetooth controller at a socket of this name. */
export async function openAir(path: string, scheduler: Scheduler): Promise<Air> {
  if (existsSync(path)) throw new ProblemError(taken(path));
  try {
    return await airOn(path, scheduler);
  } catch (cause) {
    throw new ProblemError(noSocket(path), { cause });
  }
}

async function join(
  { id, port, address, serial = id }: ScenarioTool,
  described: Profile,
  file: string,
  air: Air | null,
) {
  if (port !== undefined) {
    orThrow(serialProfile(described, file));
    const terminal = pseudoTerminal(port);
    await terminal.plug();
    return { port: terminal satisfies Port, where: w`on ${port}`, close: terminal.close };
  }
  if (address === undefined || air === null) throw new Error('a checked scenario says where its tools are');
  const profile = orThrow(bluetoothProfile(described, file));
  const presented = { address, name: described.title.slice(0, 24), serial };
  return { port: onAir(air.controller, profile, presented), where: w`at ${address}`, close: () => {} };
}

function wordsOf(step: ScenarioStep): string {
  switch (step.do) {
    case 'wait':
      return w`wait ${step.ms} ms`;
    case 'pull':
      return w`${step.tool}: pull to ${step.peakNm} N·m${step.clicks ? '' : w`, no click`}`;
    case 'measure':
      return w`${step.tool}: gap ${step.gapMm} mm`;
    case 'hands':
      return step.move;
    case 'no-value':
      return w`${step.tool}: no value`;
    case 'bytes':
      return w`${step.tool}: bytes ${step.hex.slice(0, 60)}`;
    case 'silence':
      return w`${step.tool}: silent for ${step.ms} ms`;
    case 'unplug':
      return w`${step.tool}: gone for ${step.ms} ms`;
  }
}

const taken = (where: string): Problem => ({
  code: 'file-exists',
  where,
  message: w`something lies here already, and is not overwritten by a socket`,
  next: w`Name another socket, or remove it.`,
});

const noSocket = (where: string): Problem => ({
  code: 'file-not-written',
  where,
  message: w`no socket can be made here`,
  next: w`Name a socket in a folder that you may write to, such as /tmp.`,
});
