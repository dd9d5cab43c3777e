import type { Pull } from '../pull/pull.ts';
import { encodeSamples } from '../pull/trace.ts';
import type { ToolId } from '../reading.ts';
import type { JobEvent } from './event.ts';
import type { Feed } from './feed.ts';
import { fold } from './fold.ts';
import type { BenchContext } from './placing.ts';
import type { JobState } from './state.ts';

/** What the bench holds from one input to the next, and the events that the present input has led to so far. */
export class BenchState implements BenchContext {
  readonly feeds = new Map<ToolId, Feed>();
  /** Pulls before this session: their times are on another clock. */
  pullsBefore = 0;
  /** A stroke that may be on the way, or the last one. */
  stroke: Pick<Pull, 'endUs' | 'stream' | 'pull' | 'tool'> | null = null;
  #job: JobState;
  #events: JobEvent[] = [];

  constructor(opened: JobState) {
    this.#job = opened;
  }

  readonly state = (): JobState => this.#job;

  readonly emit = (event: JobEvent): void => {
    const logged = asLogged(event);
    this.#events.push(logged);
    this.#job = fold(this.#job, logged);
  };

  /** Runs one input; gives the events that it led to, in order. */
  eventsOf(input: () => void): readonly JobEvent[] {
    this.#events = [];
    input();
    return this.#events;
  }

  /** Samples that wait in memory become an event. */
  flush(tool: ToolId, feed: Feed): void {
    if (feed.atUs.length === 0) return;
    const { atUs, counts, angles } = feed;
    const coded = encodeSamples({ atUs, counts, ...(angles.length > 0 && { angles }) });
    this.emit({ type: 'readings', tool, first: feed.first, ...coded });
    feed.atUs = [];
    feed.counts = [];
    feed.angles = [];
  }

  flushAll(): void {
    for (const [tool, feed] of this.feeds) this.flush(tool, feed);
  }

  pulling(): boolean {
    return [...this.feeds.values()].some((feed) => feed.detector.pulling);
  }
}

/** As the log gives it back: an event must be the same before it was written and after. */
function asLogged(event: JobEvent): JobEvent {
  return isAsLogged(event) ? event : JSON.parse(JSON.stringify(event));
}

/** JSON knows no minus zero, and no member that is undefined. */
function isAsLogged(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return value !== undefined && !Object.is(value, -0);
  return Object.values(value).every(isAsLogged);
}
