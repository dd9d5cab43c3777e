import { concat, defer, filter, of, Subject } from 'rxjs';
import type { LinkState, Tool } from '../../../drivers/driver.ts';
import { parseRecording, type Recording } from '../../../drivers/replay/recording.ts';
import { FORM } from '../../../drivers/replay/schema.ts';
import { type Pace, replayTool } from '../../../drivers/replay/tool.ts';
import { exampleFile, readBytes } from '../../files/input.ts';
import { createBench } from '../../job/bench.ts';
import type { Command } from '../../job/command.ts';
import { writerOf } from '../../job/command-event.ts';
import { foldAll } from '../../job/fold.ts';
import { openJob } from '../../job/open.ts';
import { workOrderSchema } from '../../job/order.ts';
import { ProblemError } from '../../problem.ts';
import type { TraceColumns } from '../../pull/columns.ts';
import type { Reading } from '../../reading.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { clock, stamp, utcOffsetMinAt } from '../station/clock.ts';
import { readJson } from '../station/json-file.ts';
import { openInLog, openStation } from '../station/station.ts';
import { readStationFile } from '../station/station-file.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { type TraceOptions, traceIn } from './pulls.ts';
import { hasScreen, runWork } from './run.ts';

export interface ReplayOptions extends TraceOptions {
  readonly order?: string;
  readonly station?: string;
  readonly speed?: string;
  readonly out: string;
  readonly plain?: true;
}

const MAX_BYTES = 512 << 20;
/** Torques of a trace are played in steps of 0.0001 N·m: finer than any tool's own. */
const EXPONENT = -4;
/** And angles in steps of 0.01°. */
const ANGLE_EXPONENT = -2;

/**
 * Plays a recording or a trace through driver, bench, log and screen, as if the wrench were there. The job is closed when
 * it ends. What is replayed proves nothing about any engine today.
 */
export async function replay(file: string, options: ReplayOptions): Promise<ExitCode> {
  const pace = paceOf(options.speed);
  const recording = await readRecording(file, options);
  const { description } = recording.header;
  const stationFile = await readStationFile(options.station ?? exampleFile('station.json'));
  const stoodFor = stationFile.tools.find(({ quantity }) => quantity === description.quantity);
  if (stoodFor === undefined)
    throw new ProblemError({
      code: 'instrument-missing',
      where: file,
      message: w`the station has no tool that measures ${description.quantity}`,
      next: w`Name a station file that has one.`,
    });
  const station = await openStation('Replay', options.out, stamp);
  try {
    const path = options.order ?? exampleFile('order-4.json');
    const order = await readJson(path, workOrderSchema, w`work order`, '"plugmark manual work-order"');
    const job = `${order.job}-R${station.log.streams().length}`;
    const now = stamp();
    const opening = {
      on: now.at.slice(0, 10),
      decision: stationFile.decision,
      overrides: [],
      utcOffsetMin: utcOffsetMinAt(now.at),
    };
    const opened = orThrow(openJob({ ...order, job }, stationFile.instruments, opening));
    const drafts = opened.map((event) => ({ by: writerOf(event), event }));
    const state = foldAll(await openInLog(station, drafts, now));
    if (state === null) throw new Error('a job without an opening');
    const command$ = new Subject<Command>();
    const played = replayTool({ id: stoodFor.id, recording, pace, clock });
    const tool = untilEnd(played, () => setImmediate(() => command$.next({ do: 'close' })));
    const outcome = await runWork({
      station,
      bench: createBench(state),
      stream: `job:${job}`,
      tools: [tool],
      plain: options.plain === true || !hasScreen(),
      stamp,
      command$,
    });
    process.stdout.write(w`Saved in ${safeLine(options.out)} as job ${safeLine(job)}.\n`);
    return outcome === 'closed' ? EXIT.done : EXIT.leftOpen;
  } finally {
    station.log.close();
  }
}

/** The tool, whose link is lost when the recording ends: a pull that is under way then will never be whole. */
function untilEnd(tool: Tool, ended: () => void): Tool {
  const lost: LinkState = { state: 'lost', reason: 'recording-ended' };
  const links$ = tool.link$.pipe(filter(({ state }) => state !== 'closed'));
  const end$ = defer(() => {
    ended();
    return of(lost);
  });
  return {
    id: tool.id,
    driver: tool.driver,
    quantity: tool.quantity,
    source: tool.source,
    timing: tool.timing,
    readings$: tool.readings$,
    link$: concat(links$, end$),
    connect: () => tool.connect(),
    close: () => tool.close(),
  };
}

async function readRecording(file: string, options: TraceOptions): Promise<Recording> {
  const bytes = await readBytes(file, w`recording`, MAX_BYTES);
  const isRecording = bytes[0] === '{'.charCodeAt(0);
  if (isRecording) return orThrow(parseRecording(new TextDecoder().decode(bytes), file));
  return recordingOf(traceIn(bytes, file, options));
}

/** A trace as if a tool had sent it; rows without a torque become values that the tool did not know. */
export function recordingOf({ atUs, nm, angleDeg, gaps }: TraceColumns): Recording {
  const readings: Reading[] = [];
  let gap = 0;
  const unknownUntil = (us: number) => {
    for (; (gaps[gap]?.atUs ?? Number.POSITIVE_INFINITY) <= us; gap++)
      readings.push({ kind: 'not-known', n: readings.length + 1, atUs: gaps[gap]?.atUs ?? us });
  };
  for (let i = 0; i < atUs.length; i++) {
    const at = atUs[i] ?? 0;
    unknownUntil(at);
    const counts = Math.round((nm[i] ?? 0) * 10 ** -EXPONENT);
    const deg = angleDeg?.[i] ?? Number.NaN;
    const angle = Number.isFinite(deg) ? { angleCounts: Math.round(deg * 10 ** -ANGLE_EXPONENT) } : {};
    readings.push({ kind: 'value', n: readings.length + 1, atUs: at, counts, ...angle });
  }
  unknownUntil(Number.MAX_VALUE);
  return {
    header: {
      form: FORM,
      tool: 'trace',
      timing: { stamps: 'device' },
      description: {
        quantity: 'torque',
        unit: 'N.m',
        exponent: EXPONENT,
        samplingFunction: 'unspecified',
        ...(angleDeg !== null && { angle: { exponent: ANGLE_EXPONENT } }),
        link: { kind: 'file', authenticated: false },
      },
    },
    readings,
  };
}

function paceOf(text: string | undefined): Pace {
  if (text === undefined) return 'at-once';
  const speed = Number(text);
  if (Number.isFinite(speed) && speed > 0) return { speed };
  throw new ProblemError({
    code: 'option-not-valid',
    where: '--speed',
    message: w`expected a factor above 0, found "${text}"`,
    next: w`Give 1 for the speed of the recording. Leave it out to run as fast as possible.`,
  });
}
