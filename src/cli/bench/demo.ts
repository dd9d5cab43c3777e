import { Observable, Subject } from 'rxjs';
import type { Tool } from '../../../drivers/driver.ts';
import { Random } from '../../../sim/random.ts';
import { pacedScheduler, realScheduler, type Scheduler, virtualScheduler } from '../../../sim/scheduler.ts';
import {
  SIMULATED_INSTRUMENTS,
  SIMULATED_TOOLS,
  type SimulatedStation,
  simulatedStation,
} from '../../../sim/station.ts';
import { isPerson, PEOPLE } from '../../../sim/technician/people.ts';
import { NotUnderstood, scripted } from '../../../sim/technician/scripted.ts';
import { withChecklist } from '../../../sim/technician/with-checklist.ts';
import { work } from '../../../sim/work.ts';
import type { Stamp } from '../../evidence/log.ts';
import { exampleFile } from '../../files/input.ts';
import { USUAL_DECISION } from '../../job/basis.ts';
import { createBench } from '../../job/bench.ts';
import type { Command } from '../../job/command.ts';
import { writerOf } from '../../job/command-event.ts';
import { fold } from '../../job/fold.ts';
import { openJob } from '../../job/open.ts';
import { type WorkOrder, workOrderSchema } from '../../job/order.ts';
import { replay } from '../../job/replay.ts';
import { USUAL_ROUTINE } from '../../job/routine.ts';
import type { Shop } from '../../job/shop.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { USUAL_CSV } from '../../report/csv-style.ts';
import { orThrow } from '../../result.ts';
import { LANGUAGES, type Language, spokenLanguage, w } from '../../words/catalogue.ts';
import { utcOffsetMinAt } from '../station/clock.ts';
import { readJson } from '../station/json-file.ts';
import { refuseTurned } from '../station/one-history.ts';
import { showFor, UNITS } from '../station/reads.ts';
import { openInLog, openStation, type Station, stateOf } from '../station/station.ts';
import { commandLine } from '../terminal/command-line.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { finish } from './finish.ts';
import { growingLines } from './growing-file.ts';
import { hasScreen, runWork } from './run.ts';

export interface DemoOptions {
  readonly cylinders: string;
  readonly seed: number;
  readonly fast?: true;
  readonly technician: string;
  readonly out: string;
  readonly direct?: true;
  /** The wrench sends its angle too; on the air it is then a device with a profile. */
  readonly sendsAngle?: true;
  readonly plain?: true;
  readonly quiet?: true;
  /** Of the screen; that of the reader unless given. */
  readonly language?: Language;
  /** Of the screen. */
  readonly units: keyof typeof UNITS;
  /** The simulated wrench sends the highest torque of each pull and nothing else. */
  readonly peaks?: true;
  readonly speed: string;
  /** A file of what the simulated technician is to do, a line each; every key is then the person's. */
  readonly moves?: string;
  /** Go on with the job that was left open in the folder. */
  readonly resume?: true;
}

/** A whole job with simulated tools and a simulated technician, through the same stack as a real one. */
export async function demo(options: DemoOptions): Promise<ExitCode> {
  const person = options.technician;
  if (!isPerson(person)) throw new ProblemError(unknownPerson(person));
  const language = options.language ?? LANGUAGES.find((language) => language === spokenLanguage()) ?? 'en';
  await showFor(language, UNITS[options.units], !speaksUtf8());
  const virtual = options.fast === true && options.moves === undefined ? virtualScheduler() : null;
  const scheduler =
    virtual ?? (options.speed === '1' ? realScheduler() : pacedScheduler(Number(options.speed)));
  const stamp = stampBy(scheduler);
  const station = await openStation('Demo station', options.out, stamp);
  try {
    const { stream, bench } =
      options.resume === true ? takeUp(station) : await begin(options, station, stamp);
    const { order, torqueWindow, gapWindow } = bench.state();
    const simulated = simulatedStation({
      seed: options.seed,
      order,
      torqueWindow,
      gapWindow,
      person,
      scheduler,
      sendsPeaks: options.peaks === true,
      angle: options.sendsAngle === true,
    });
    const job = workThrough({
      options,
      station,
      stream,
      stamp,
      scheduler,
      simulated,
      bench,
    });
    const outcome = await (virtual === null ? job : virtual.runUntil(job));
    if (outcome === 'closed') {
      const { verdict, code } = await finish(station, stream, stamp, {
        folder: options.out,
        audience: { language, units: UNITS[options.units] },
        style: USUAL_CSV,
      });
      // Simulated tools prove nothing: of a demo that is no fault.
      return verdict === 'unproven' ? EXIT.done : code;
    }
    const again = commandLine('demo', '--resume', ...sameAgain(options));
    process.stdout.write(`${w`The job is still open. All readings are kept. Go on with:`}\n  ${again}\n`);
    return EXIT.leftOpen;
  } finally {
    station.log.close();
  }
}

type Started = Pick<DemoJob, 'stream' | 'bench'>;

async function begin(options: DemoOptions, station: Station, stamp: () => Stamp): Promise<Started> {
  refuseTurned(station, stateOf(station));
  const order = await demoOrder(options.cylinders, station);
  const now = stamp();
  const [opened] = orThrow(
    openJob(order, SIMULATED_INSTRUMENTS, {
      on: now.at.slice(0, 10),
      decision: USUAL_DECISION,
      overrides: [],
      routine: USUAL_ROUTINE,
      shop: DEMO_SHOP,
      utcOffsetMin: utcOffsetMinAt(now.at),
    }),
  );
  await openInLog(station, [{ by: writerOf(opened), event: opened }], now);
  return { stream: `job:${order.job}`, bench: createBench(fold(null, opened)) };
}

/** The newest job that was left open. The simulated engine is a fresh one: plugs that are not done yet are loose in it. */
function takeUp({ log, folder }: Station): Started {
  const row = log.lastJobs(1000).find(({ state }) => state === 'open');
  if (row === undefined)
    throw new ProblemError({
      code: 'no-open-job',
      where: folder,
      message: w`no demo job is open here`,
      next: w`Start one with "plugmark demo", or name the folder with --out.`,
    });
  const events = log.entries(row.stream).map(({ event }) => event);
  return { stream: row.stream, bench: orThrow(replay(events)) };
}

/** The options that make it the same demo. */
function sameAgain({ out, seed, technician, speed, ...flags }: DemoOptions): readonly string[] {
  return [
    '--out',
    out,
    ...(seed === 1 ? [] : ['--seed', String(seed)]),
    ...(technician === 'mixed' ? [] : ['--technician', technician]),
    ...(speed === '1' ? [] : ['--speed', speed]),
    ...(flags.moves === undefined ? [] : ['--moves', flags.moves]),
    ...(flags.peaks === true ? ['--peaks'] : []),
    ...(flags.sendsAngle === true ? ['--sends-angle'] : []),
    ...(flags.direct === true ? ['--direct'] : []),
    ...(flags.plain === true ? ['--plain'] : []),
    ...(flags.quiet === true ? ['--quiet'] : []),
    ...(flags.language === undefined ? [] : ['--language', flags.language]),
    ...(flags.units === 'N.m-mm' ? [] : ['--units', flags.units]),
    ...(flags.fast === true ? ['--fast'] : []),
  ];
}

interface DemoJob {
  readonly options: DemoOptions;
  readonly station: Station;
  readonly stream: string;
  readonly stamp: () => Stamp;
  readonly scheduler: Scheduler;
  readonly simulated: SimulatedStation;
  readonly bench: ReturnType<typeof createBench>;
}

async function workThrough(demo: DemoJob) {
  const { options, simulated, scheduler, bench } = demo;
  const joined =
    options.direct === true
      ? { ...simulated.direct(), close: () => {} }
      : await throughRadio(simulated, scheduler);
  const command$ = new Subject<Command>();
  const leaving = new AbortController();
  const moves = options.moves === undefined ? null : growingLines(options.moves);
  const random = new Random(options.seed);
  const cylinders = bench.state().cylinders.map(({ cylinder }) => cylinder);
  let started = false;
  let stopped: unknown = null;
  const start = () => {
    started = true;
    const done = work({
      bench: simulated.bench,
      technician:
        moves === null
          ? withChecklist(simulated.technician, random)
          : scripted(moves.next, random, cylinders),
      scheduler,
      deliver: joined.deliver,
      look: () => bench.state(),
      press: (command) => command$.next(command),
      signal: leaving.signal,
    });
    // One who leaves with the job unfinished closes it as it is: the record then says what is missing.
    void done.then(
      ({ finished }) => finished || command$.next({ do: 'close' }),
      (fault) => {
        stopped = fault;
        command$.next({ do: 'close' });
      },
    );
  };
  try {
    const ended = await runWork({
      station: demo.station,
      bench,
      stream: demo.stream,
      tools: joined.tools,
      plain: options.plain === true || options.fast === true || !hasScreen(),
      quiet: options.quiet === true,
      stamp: demo.stamp,
      beat$: beats(scheduler),
      command$,
      onStep: ({ state }) => {
        if (!started && Object.values(state.tools).every(({ link }) => link === 'linked')) start();
      },
    });
    if (stopped instanceof NotUnderstood) throw new ProblemError(notAMove(stopped, options.moves ?? ''));
    if (stopped !== null) throw stopped;
    return ended;
  } finally {
    leaving.abort();
    moves?.close();
    joined.close();
  }
}

/** The pipeline looks about five times a second of the simulation's own time. */
/** Invented, like everything in the demo. */
const DEMO_SHOP: Shop = {
  name: 'Example Workshop',
  address: ['1 Example Street', 'Exampletown'],
};

const BEAT_US = 200_000;

const beats = (scheduler: Scheduler): Observable<void> =>
  new Observable((subscriber) => {
    let cancel = () => {};
    const beat = () => {
      subscriber.next();
      cancel = scheduler.after(BEAT_US, beat);
    };
    cancel = scheduler.after(BEAT_US, beat);
    return () => cancel();
  });

/** The simulated tools on the air, and the real driver over the real host stack at the other end. */
async function throughRadio(simulated: SimulatedStation, scheduler: Scheduler) {
  const { openRadio } = await import('../../../drivers/radio/open.ts');
  const { bluetoothTool } = await import('../../../drivers/bluetooth/tool.ts');
  const { imds } = await import('../../../drivers/imds/language.ts');
  const { described } = await import('../../../drivers/profile/language.ts');
  const { HciSocket, deliver, wrenchProfile, close } = simulated.onAir();
  const opened = await openRadio({ socket: HciSocket, deviceId: 0 });
  if (!opened.ok) {
    close();
    process.stdout.write(`${opened.error.message}. ${w`The simulated tools work without Bluetooth.`}\n`);
    return { ...simulated.direct(), close: () => {} };
  }
  const radio = opened.value;
  const tools: Tool[] = SIMULATED_TOOLS.map(({ id, quantity, ...adopted }) =>
    bluetoothTool({
      id,
      language: quantity === 'torque' && wrenchProfile !== null ? described(wrenchProfile) : imds(quantity),
      adopted,
      radio,
      clock: scheduler,
    }),
  );
  return {
    tools,
    deliver,
    close: () => {
      void radio.close().then(close);
    },
  };
}

/** Every run in the same folder is a job of its own. */
async function demoOrder(cylinders: string, station: Station): Promise<WorkOrder> {
  const file = exampleFile(`order-${cylinders}.json`);
  const order = await readJson(file, workOrderSchema, w`work order`, '"plugmark manual work-order"');
  const runs = station.log.streams().length;
  return { ...order, job: `${order.job}-${runs + 1}` };
}

/** Wall clock that follows the scheduler's clock, so that a run in virtual time has its own hours. */
function stampBy(scheduler: Scheduler): () => Stamp {
  const startMs = Date.now();
  const startUs = scheduler.nowUs();
  return () => {
    const monoUs = scheduler.nowUs();
    return { at: new Date(startMs + (monoUs - startUs) / 1000).toISOString(), monoUs };
  };
}

function notAMove({ line }: NotUnderstood, file: string): Problem {
  return {
    code: 'not-understood',
    where: file,
    message: w`the simulated technician does not understand "${safeLine(line)}"`,
    next: w`Write a line that "plugmark demo --help" names, for a cylinder of this engine.`,
  };
}

function unknownPerson(name: string): Problem {
  return {
    code: 'option-not-valid',
    where: '--technician',
    message: w`there is no simulated technician "${name}"`,
    next: w`Choose one of: ${Object.keys(PEOPLE).join(', ')}.`,
  };
}
