import { crowfootOf, leverage } from '../plug/geometry.ts';
import type { PullDetector } from '../pull/pull-detector.ts';
import type { Samples } from '../pull/trace.ts';
import type { DeviceRefusal, LinkState, Reading, ToolId } from '../reading.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { BenchState } from './bench-state.ts';
import type { Command } from './command.ts';
import { eventOf } from './command-event.ts';
import type { JobEvent } from './event.ts';
import type { Feed } from './feed.ts';
import { forecastOf } from './feed.ts';
import { follow } from './following.ts';
import type { Forecast } from './forecast.ts';
import { refused } from './refusal.ts';
import type { JobState } from './state.ts';
import { type Session, startSession, type ToolAtBench, takeLink } from './take-link.ts';
import { takeReading, takeSilence, takeWritten, waitsFor } from './take-reading.ts';

/** What comes to the bench from outside: the tools, and people. */
export type BenchInput =
  | ({ readonly kind: 'session' } & Session)
  | ({ readonly kind: 'link'; readonly link: LinkState } & ToolAtBench)
  | { readonly kind: 'reading'; readonly tool: ToolId; readonly reading: Reading }
  /** Readings that the log holds already: of a job that is played back. */
  | { readonly kind: 'written'; readonly tool: ToolId; readonly first: number; readonly samples: Samples }
  /** Nothing came from the tool up to then; only worth saying when the bench waits for it. */
  | { readonly kind: 'silence'; readonly tool: ToolId; readonly atUs: number }
  /** A device looked like the tool and was not taken for it. */
  | { readonly kind: 'refusal'; readonly tool: ToolId; readonly refusal: DeviceRefusal }
  | { readonly kind: 'command'; readonly command: Command }
  /** Nothing came, but time went on; also sent before the program ends. */
  | { readonly kind: 'flush' };

export interface Bench {
  /** The events that the input leads to, in order; `state` has already taken them in. Refused commands say why. */
  accept(input: BenchInput): Result<readonly JobEvent[]>;
  readonly state: () => JobState;
  /** What the wrench can prove, before the first pull; null until it has rested for some seconds, and once a plug was pulled. */
  readonly forecast: () => Forecast | null;
  /** The tool whose silence up to a time would tell something; null while none does. */
  readonly waitsFor: () => { readonly tool: ToolId; readonly untilUs: number } | null;
  /** Torque as the plug sees it now, by the lever alone; null until a linked wrench has read. */
  readonly live: () => ReturnType<PullDetector['live']> | null;
}

/**
 * One job on the bench: readings, links and commands in, events out. It keeps samples until they are worth writing,
 * finds pulls, gives them to cylinders and judges them. Deterministic: the same inputs give the same events.
 */
export function createBench(opened: JobState): Bench {
  const bench = new BenchState(opened);
  return {
    accept(input) {
      const refusal =
        input.kind === 'command' ? refused(bench.state(), input.command, bench.pulling()) : null;
      if (refusal !== null)
        return err({
          code: 'command-refused',
          message: refusal,
          next: w`Look at the screen and choose again.`,
        });
      return ok(bench.eventsOf(() => take(bench, input)));
    },
    state: bench.state,
    forecast: () => forecastNow(bench),
    waitsFor: () => waitsFor(bench),
    live: () => live(bench),
  };
}

function take(bench: BenchState, input: BenchInput): void {
  switch (input.kind) {
    case 'session':
      startSession(bench, input);
      break;
    case 'link':
      takeLink(bench, input, input.link);
      break;
    case 'reading':
      takeReading(bench, input.tool, input.reading);
      break;
    case 'written':
      takeWritten(bench, input.tool, input.first, input.samples);
      break;
    case 'silence':
      takeSilence(bench, input.tool, input.atUs);
      break;
    case 'refusal':
      bench.emit({ type: 'device-refused', tool: input.tool, ...input.refusal });
      break;
    case 'command':
      takeCommand(bench, input.command);
      break;
    case 'flush':
      bench.flushAll();
  }
}

function takeCommand(bench: BenchState, command: Command): void {
  bench.flushAll();
  const event = eventOf(command);
  if (event !== null) bench.emit(event);
  else follow(bench, command);
}

function live({ feeds, state }: BenchState): ReturnType<Bench['live']> {
  const isWrench = ({ quantity, source, arrived }: Feed) =>
    quantity === 'torque' && source !== 'typed' && arrived.values > 0;
  const read = [...feeds].filter(([, feed]) => isWrench(feed));
  // The one that is pulled, else the one in use.
  const [, shown] =
    read.find(([, { detector }]) => detector.pulling) ??
    read.find(([tool]) => tool === state().inUse.torque) ??
    read[0] ??
    [];
  const seen = shown?.detector.live() ?? null;
  const gain = leverage(crowfootOf(state().order.adapter));
  return (
    seen && { ...seen, nowNm: seen.nowNm === null ? null : gain * seen.nowNm, peakNm: gain * seen.peakNm }
  );
}

function forecastNow({ feeds, state }: BenchState): Forecast | null {
  if (state().cylinders.some(({ pulls }) => pulls.length > 0)) return null;
  for (const [tool, feed] of feeds) {
    const known = forecastOf(tool, feed, state());
    if (known !== null) return known;
  }
  return null;
}
