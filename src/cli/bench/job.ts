import { Subject } from 'rxjs';
import { openTools, type TypedLine } from '../../../drivers/index.ts';
import { type ImpactAssessment, impactsOf } from '../../audit/impact-state.ts';
import { withFindings } from '../../audit/out-of-tolerance.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import { offBy, unitOf } from '../../instrument/unfit.ts';
import { type Bench, createBench } from '../../job/bench.ts';
import { writerOf } from '../../job/command-event.ts';
import { foldAll } from '../../job/fold.ts';
import { type NotOpened, type Opening, type Override, openJob } from '../../job/open.ts';
import type { WorkOrder } from '../../job/order.ts';
import { replay } from '../../job/replay.ts';
import { isSingleFigure } from '../../plug/tightening.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { USUAL_CSV } from '../../report/csv-style.ts';
import { noteLines } from '../../report/words/index.ts';
import { orThrow } from '../../result.ts';
import type { TypedUnits } from '../../ui/typed-figure.ts';
import { type Language, w } from '../../words/catalogue.ts';
import { linesOnVehicle } from '../audit/impact-on-vehicle.ts';
import { jobsSince, sinceLines } from '../audit/impact-since.ts';
import { recordsOf } from '../audit/records.ts';
import { clock, stamp, utcOffsetMinAt } from '../station/clock.ts';
import { refuseTurned } from '../station/one-history.ts';
import { ownLanguage } from '../station/reader-language.ts';
import { showFor } from '../station/reads.ts';
import { sendInBackground } from '../station/send.ts';
import { openInLog, openStation, type Station, stateOf } from '../station/station.ts';
import { noteStationUsed, USUAL_FILE } from '../station/station-at-hand.ts';
import { keepSingleFigure, type LoadedStation, readStationFile } from '../station/station-file.ts';
import { commandLine } from '../terminal/command-line.ts';
import { openDialogue } from '../terminal/dialogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { stationHistory } from './earlier-orders.ts';
import { afterwards, finish } from './finish.ts';
import { NOBODY, openFollower } from './follower.ts';
import { newOrder } from './new-order.ts';
import { keepOrder, type ReadOrder, readOrder } from './order-file.ts';
import { hasScreen, runWork } from './run.ts';
import { readLibrary } from './specification-files.ts';
import { keep } from './specifications.ts';

export interface JobOptions {
  readonly order?: string;
  /** The job to go on with; true where none is named. */
  readonly resume?: string | true;
  readonly station: string;
  readonly plain?: true;
  readonly quiet?: true;
  /** Of the screen; the station's own unless given. */
  readonly language?: Language;
  /** Where a shop's own system follows the job: a file, a named pipe, or `-`. */
  readonly events?: string;
  /** A supervisor answers for this tool, with name and reason. */
  readonly override?: string;
  readonly by?: string;
  readonly because?: string;
}

interface Started {
  readonly stream: string;
  readonly bench: Bench;
}

/** A real job: opened from a work order, or taken up again where it was left. */
export async function job(options: JobOptions): Promise<ExitCode> {
  const read = await readStationFile(options.station);
  await showFor(options.language ?? ownLanguage() ?? read.reads.screen, read.reads.units, !speaksUtf8());
  // Opened first: with `-`, what is meant for people goes elsewhere from here on.
  const follower = options.events === undefined ? NOBODY : openFollower(options.events);
  const order = options.order === undefined ? null : await readOrder(options.order);
  const station = await openStation(read.station, read.folder, stamp, read.domain);
  noteStationUsed(read.file);
  try {
    if (typeof options.resume === 'string' && isVoid(station, options.resume)) return EXIT.void;
    // Nothing of a new job could be signed in the end. One that is under way goes on all the same.
    if (options.resume === undefined) refuseTurned(station, stateOf(station));
    // The file says how a tool was calibrated; that it was out of tolerance since, only the log knows.
    const impacts = impactsOf(station.log.stationEntries());
    const file = { ...read, instruments: withFindings(read.instruments, impacts) };
    const typed$ = new Subject<TypedLine>();
    // What is wrong with an order is told before any tool is looked for.
    if (order !== null && options.resume === undefined)
      openingFrom(order, station, file, overridesOf(options));
    // A job without its tools must not get into the log.
    const tools = await openTools(file.tools, { base: file.base, clock, typed$ });
    const typedUnits: TypedUnits = Object.fromEntries(
      file.tools.flatMap(({ quantity, driver }) => (driver.use === 'typed' ? [[quantity, driver.unit]] : [])),
    );
    const plain = options.plain === true || options.events === '-' || !hasScreen();
    try {
      const started =
        options.resume === undefined
          ? await begin(station, file, order, options)
          : takeUp(station, file, options.resume === true ? undefined : options.resume);
      if (started === null) {
        process.stdout.write(`${w`No job opened.`}\n`);
        return EXIT.failed;
      }
      if (options.resume !== undefined) noteFindings(started, impacts);
      follower.started(station.name, started.bench.state(), options.resume !== undefined);
      const used = started.bench.state().instruments;
      for (const line of leftOutLines(file, used)) process.stdout.write(`${w`Note: ${line}`}\n`);
      const outcome = await runWork({
        station,
        ...started,
        tools: tools.tools.filter((tool) => used.some(({ id }) => id === tool.id)),
        plain,
        quiet: options.quiet === true,
        ...(file.sound === undefined ? {} : { sound: file.sound }),
        typedUnits,
        typed$,
        stamp,
        onStep: follower.step,
      });
      if (outcome === 'closed') {
        const { code, papers } = await finish(station, started.stream, stamp, {
          folder: file.folder,
          audience: { language: file.reads.papers, units: file.reads.units },
          style: USUAL_CSV,
        });
        sendInBackground(options.station, read);
        follower.ended(code, papers.record);
        if (!plain) await afterwards(station, started.stream, papers);
        return code;
      }
      process.stdout.write(leftOpenLine(file.file, started.stream));
      follower.ended(EXIT.leftOpen);
      return EXIT.leftOpen;
    } finally {
      await tools.close();
    }
  } finally {
    station.log.close();
    await follower.close();
  }
}

/** Whose tools they are, where the station file says so. */
function toolsOfIn({ tools }: LoadedStation): Pick<Opening, 'toolsOf'> {
  const toolsOf = tools.flatMap(({ id, technician }) =>
    technician === undefined ? [] : [{ tool: id, technician }],
  );
  return toolsOf.length === 0 ? {} : { toolsOf };
}

/** Tools of the station that this job does without. */
const leftOutLines = ({ instruments }: LoadedStation, used: readonly Instrument[]): readonly string[] =>
  instruments.flatMap(({ id, serial }) =>
    used.some((one) => one.id === id)
      ? []
      : [
          w`${safeLine(id)}${serial === undefined ? '' : ` (${safeLine(serial)})`} is left out of this job: it is not fit for its window, or the job was opened without it. "plugmark calendar" says how its calibration is.`,
        ],
  );

/** How to go on, on a line of its own that can be typed as it stands. */
function leftOpenLine(file: string, stream: string): string {
  const at = file === USUAL_FILE ? [] : ['--station', file];
  const again = commandLine('job', '--resume', stream.slice('job:'.length), ...at);
  return `${w`The job is still open. All readings are kept. Go on with:`}\n  ${again}\n`;
}

/** A void job is not taken up again; a script is to know that from any other number. */
function isVoid(station: Station, number: string): boolean {
  const voided = foldAll(station.log.entries(`job:${number}`).map(({ event }) => event))?.voided ?? null;
  if (voided === null) return false;
  process.stdout.write(
    `${w`Job ${safeLine(number)} was declared void by ${safeLine(voided.by)}: ${safeLine(voided.reason)}`}\n`,
  );
  return true;
}

/** A new job from its order, which is a file or is asked for; null where somebody thought better of it. */
async function begin(
  station: Station,
  file: LoadedStation,
  order: ReadOrder | null,
  options: JobOptions,
): Promise<Started | null> {
  if (order !== null) {
    const started = await openFrom(order, station, file, overridesOf(options));
    const state = started.bench.state();
    const impacts = impactsOf(station.log.stationEntries());
    const notes = [
      ...noteLines(state.order, state.basis.notes).map(safeLine),
      ...linesOnVehicle(impacts, state.order.vehicle),
      ...sinceLines(await jobsSince(recordsOf(station.log), impacts)),
    ];
    for (const note of notes) process.stdout.write(`${w`Note: ${note}`}\n`);
    return started;
  }
  const on = stamp().at.slice(0, 10);
  const dialogue = openDialogue();
  const asked = await newOrder(dialogue, {
    history: await stationHistory(station),
    library: await readLibrary(file.library),
    file,
    on,
    overrides: overridesOf(options),
  }).finally(dialogue.leave);
  if (asked.do === 'nothing') return null;
  if (asked.do === 'resume') return takeUp(station, file, asked.job);
  if (asked.singleFigure !== null) await keepSingleFigure(options.station, asked.singleFigure);
  if (asked.keep !== null) await keep(station, file.library, asked.keep, stamp());
  const where = keepOrder(file.folder, asked.order);
  const started = await openFrom({ where, order: asked.order }, station, file, asked.overrides);
  return confirmed(station, started);
}

/** A tool may have been out of tolerance while the job lay open: what is measured from here on is in no impact assessment yet. */
function noteFindings({ bench }: Started, impacts: readonly ImpactAssessment[]): void {
  for (const tool of bench.state().instruments) {
    const { outOfTolerance } = withFindings([tool], impacts)[0] ?? {};
    if (outOfTolerance === undefined) continue;
    const line = w`${tool.id} was out of tolerance on ${outOfTolerance.on} (${outOfTolerance.impact}): ${offBy(outOfTolerance, unitOf(tool))} and cannot be used.`;
    process.stdout.write(`${w`Note: ${safeLine(line)}`}\n`);
  }
}

/** The windows were shown before Enter opened the job, and are not asked about again. */
function confirmed(station: Station, started: Started): Started {
  const { bench, stream } = started;
  const state = bench.state();
  if (state.routine?.confirmWindows !== true) return started;
  const events = orThrow(bench.accept({ kind: 'command', command: { do: 'confirm-windows' } }));
  station.log.append(
    stream,
    events.map((event) => ({ by: writerOf(event), event })),
    stamp(),
  );
  return started;
}

/** What a job begins with, from its order; nothing is written yet. */
function openingFrom(
  { where, order: asked }: ReadOrder,
  station: Station,
  file: LoadedStation,
  overrides: readonly Override[],
) {
  const order = withShopRule(asked, file);
  const stream = `job:${order.job}`;
  if (station.log.streams().includes(stream))
    throw new ProblemError({
      code: 'job-exists',
      where,
      message: w`this station already has a job ${order.job}`,
      next: w`Resume it with --resume, or give the new order another number.`,
    });
  const now = stamp();
  const opened = openJob(order, file.instruments, {
    on: now.at.slice(0, 10),
    decision: file.decision,
    overrides,
    ...(file.routine === null ? {} : { routine: file.routine }),
    ...(file.shop === null ? {} : { shop: file.shop }),
    utcOffsetMin: utcOffsetMinAt(now.at),
    ...toolsOfIn(file),
  });
  if (!opened.ok) throw new ProblemError(notOpened(where, opened.error));
  const drafts = opened.value.map((event) => ({ by: writerOf(event), event }));
  return { stream, drafts, now };
}

/** A single figure of the order gets the rule of the shop, unless the order brings its own. */
function withShopRule(order: WorkOrder, { singleFigure }: LoadedStation): WorkOrder {
  const { specification } = order;
  const isSingle = [specification.torque, specification.tightenFirst ?? ''].some(isSingleFigure);
  if (!isSingle || singleFigure === undefined || specification.singleFigure !== undefined) return order;
  return { ...order, specification: { ...specification, singleFigure } };
}

function notOpened(path: string, { answerableFor, ...problem }: NotOpened): Problem {
  const { where = '', next } = problem;
  const answer =
    answerableFor === undefined
      ? ''
      : ` ${w`A supervisor can answer for it: --override ${answerableFor} --by NAME --because TEXT.`}`;
  return { ...problem, where: `${path}: ${where}`, next: next + answer };
}

async function openFrom(
  order: ReadOrder,
  station: Station,
  file: LoadedStation,
  overrides: readonly Override[],
): Promise<Started> {
  const { stream, drafts, now } = openingFrom(order, station, file, overrides);
  const state = foldAll(await openInLog(station, drafts, now));
  if (state === null) throw new Error('a job without an opening');
  return { stream, bench: createBench(state) };
}

function overridesOf({ override, by, because }: JobOptions): Override[] {
  if (override === undefined) return [];
  if (!(isText(by, 80) && isText(because, 200)))
    throw new ProblemError({
      code: 'override-incomplete',
      where: '--override',
      message: w`--override needs a person who answers for the tool, and a reason`,
      next: w`Add --by NAME (up to 80 characters) and --because TEXT (up to 200).`,
    });
  return [{ tool: override, by, reason: because }];
}

const isText = (text: string | undefined, most: number): text is string =>
  text !== undefined && text.trim() !== '' && text.length <= most;

/** The bench as it stood when the program stopped, however it stopped. */
function takeUp(station: Station, { instruments }: LoadedStation, wanted: string | undefined): Started {
  const open = station.log.lastJobs(1000).filter(({ state }) => state === 'open');
  const matching = wanted === undefined ? open : open.filter((row) => row.job === wanted);
  const [row, ...others] = matching;
  if (row === undefined || others.length > 0)
    throw new ProblemError(
      notOne(
        matching.map((one) => one.job),
        wanted,
      ),
    );
  const entries = station.log.entries(row.stream);
  const bench = orThrow(replay(entries.map(({ event }) => event)));
  const other = otherTool(bench.state().instruments, instruments);
  if (other !== null) throw new ProblemError(toolsDiffer(row.job, other));
  return { stream: row.stream, bench };
}

/** A reading is judged by what was frozen with the job of the tool of that name: another tool of that name is not to give any. */
function otherTool(frozen: readonly Instrument[], named: readonly Instrument[]): Instrument | null {
  const isOther = ({ id, serial }: Instrument) => {
    const own = frozen.find((tool) => tool.id === id);
    return own?.serial !== undefined && own.serial !== serial;
  };
  // A tool that came to the station since is left out; where none of a kind is left, the job cannot go on.
  const isUnknown = ({ quantity }: Instrument) =>
    frozen.some((tool) => tool.quantity === quantity) &&
    !named.some((tool) => tool.quantity === quantity && frozen.some(({ id }) => id === tool.id));
  return named.find((tool) => isOther(tool) || isUnknown(tool)) ?? null;
}

const toolsDiffer = (job: string, { id, serial }: Instrument): Problem => ({
  code: 'other-tools',
  where: w`job ${job}`,
  message: w`this station file has ${id}${serial === undefined ? '' : ` (${serial})`}, but the job was opened with another tool`,
  next: w`Use the station file that the job was opened with: --station FILE.`,
});

function notOne(jobs: readonly string[], wanted: string | undefined): Problem {
  if (jobs.length > 1)
    return {
      code: 'several-open-jobs',
      message: w`${jobs.length} jobs are open: ${jobs.join(', ')}`,
      next: w`Name one: plugmark job --resume JOB.`,
    };
  const message =
    wanted === undefined ? w`no job of this station is open` : w`no open job has the number ${wanted}`;
  return { code: 'no-open-job', message, next: w`Open a new one with "plugmark job".` };
}
