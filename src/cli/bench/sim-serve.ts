import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, rmSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { readProfile, serialProfile } from '../../../drivers/profile/file.ts';
import { realScheduler } from '../../../sim/scheduler.ts';
import { type Port, play, type Served } from '../../../sim/serve/player.ts';
import { type ScenarioStep, scenarioSchema } from '../../../sim/serve/scenario.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { readJson } from '../station/json-file.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';

/** Plays the tools of a scenario, each on a pseudo-terminal that any program can open as a serial port. */
export async function serve(file: string): Promise<ExitCode> {
  const scenario = await readJson(file, scenarioSchema, w`scenario`, '"plugmark manual simulator"');
  const served: (Served & { readonly close: () => void })[] = [];
  try {
    for (const { id, profile, port, noiseNm } of scenario.tools) {
      const path = resolve(dirname(file), profile);
      const described = orThrow(serialProfile(orThrow(await readProfile(path)), path));
      const terminal = pseudoTerminal(port);
      await terminal.plug();
      served.push({ id, profile: described, noiseNm, port: terminal, close: terminal.close });
      process.stdout.write(`${safeLine(id)}: ${safeLine(described.title)} on ${safeLine(port)}\n`);
    }
    const played = play(scenario, served, realScheduler(), (step) =>
      process.stdout.write(`${new Date().toISOString().slice(11, 19)}  ${safeLine(wordsOf(step))}\n`),
    );
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, played.stop);
    await played.done;
    return EXIT.done;
  } finally {
    for (const { close } of served) close();
  }
}

function wordsOf(step: ScenarioStep): string {
  switch (step.do) {
    case 'wait':
      return w`wait ${step.ms} ms`;
    case 'pull':
      return w`${step.tool}: pull to ${step.peakNm} N·m${step.clicks ? '' : w`, no click`}`;
    case 'measure':
      return w`${step.tool}: gap ${step.gapMm} mm`;
    case 'no-value':
      return w`${step.tool}: no value`;
    case 'bytes':
      return w`${step.tool}: bytes ${step.hex.slice(0, 60)}`;
    case 'silence':
      return w`${step.tool}: silent for ${step.ms} ms`;
    case 'unplug':
      return w`${step.tool}: unplugged for ${step.ms} ms`;
  }
}

/** A pseudo-terminal of socat: Node makes none by itself. */
function pseudoTerminal(path: string): Port & { readonly close: () => void } {
  let socat: ChildProcess | null = null;
  let listener: (bytes: Uint8Array) => void = () => {};
  const unplug = async () => {
    const running = socat;
    socat = null;
    if (running === null) return;
    const gone = new Promise((done) => running.once('exit', done));
    running.kill();
    await gone;
    rmSync(path, { force: true });
  };
  return {
    send: (bytes) => void socat?.stdin?.write(bytes),
    heard(hear) {
      listener = hear;
    },
    unplug,
    async plug() {
      if (existsSync(path)) throw new ProblemError(taken(path));
      const started = spawn('socat', [`PTY,link=${path},raw,echo=0`, 'STDIO'], {
        stdio: ['pipe', 'pipe', 'ignore'],
      });
      const failed = new Promise<never>((_, reject) => {
        started.once('error', () => reject(new ProblemError(noSocat())));
        started.once('exit', () => reject(new ProblemError(noPort(path))));
      });
      failed.catch(() => {});
      started.stdin.on('error', () => {});
      started.stdout.on('data', (bytes: Buffer) => listener(bytes));
      while (!existsSync(path)) await Promise.race([failed, new Promise((later) => setTimeout(later, 20))]);
      socat = started;
    },
    close: () => {
      socat?.kill();
      socat = null;
      rmSync(path, { force: true });
    },
  };
}

const taken = (where: string): Problem => ({
  code: 'file-exists',
  where,
  message: w`something lies here already, and is not overwritten by a pseudo-terminal`,
  next: w`Name another port in the scenario, or remove it.`,
});

const noPort = (where: string): Problem => ({
  code: 'port-failed',
  where,
  message: w`no pseudo-terminal can be made here`,
  next: w`Name a port in a folder that you may write to, such as /tmp.`,
});

const noSocat = (): Problem => ({
  code: 'port-failed',
  where: 'socat',
  message: w`socat is not installed; it makes the pseudo-terminals`,
  next: w`Install it: apt-get install socat.`,
});
