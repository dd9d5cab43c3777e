/** A session starts, a tool is linked or lost. What the bench makes of it always follows it in the log: replay relies on that order. */
import type { FigureSource, LinkState, ToolId } from '../reading.ts';
import type { BenchState } from './bench-state.ts';
import { detectionFor, newFeed } from './feed.ts';
import { declared } from './judging.ts';
import { cutPull, settleStroke } from './take-pull.ts';

export interface Session {
  readonly program: string;
  readonly platform: string;
}

export function startSession(bench: BenchState, { program, platform }: Session): void {
  const before = [...bench.feeds];
  bench.feeds.clear();
  const session = bench.state().session + 1;
  bench.emit({ type: 'session-started', session, program, platform });
  for (const [tool, feed] of before) cutPull(bench, tool, feed, 'stopped');
  settleStroke(bench);
  bench.pullsBefore = bench.state().pullCount;
}

/** A tool as its driver names it. */
export interface ToolAtBench {
  readonly tool: ToolId;
  readonly driver: string;
  readonly source: FigureSource;
}

export function takeLink(bench: BenchState, { tool, driver, source }: ToolAtBench, to: LinkState): void {
  if (to.state !== 'linked' && to.state !== 'lost') return;
  const before = bench.feeds.get(tool);
  // A device that was sought and could not be joined has not been lost.
  if (to.state === 'lost' && before === undefined) return;
  bench.flushAll();
  bench.feeds.delete(tool);
  if (to.state === 'linked') {
    const { description } = to;
    const detection = detectionFor(tool, description, bench.state());
    bench.feeds.set(tool, newFeed(description, { source, driver }, detection));
    const looked = description.quantity === 'torque' ? { detection } : {};
    bench.emit({ type: 'tool-linked', tool, driver, source, description, ...looked });
    const wider = declared(bench.state(), tool, to.description);
    if (wider !== null) bench.emit(wider);
  } else {
    const { state: _lost, ...end } = to;
    bench.emit({ type: 'tool-lost', tool, ...end });
  }
  cutPull(bench, tool, before, 'link-lost');
  if (bench.stroke?.tool === tool) settleStroke(bench);
}
