import { Console } from 'node:console';
import { EventEmitter } from 'node:events';
import { Subject } from 'rxjs';
import { createBench } from '../../../src/job/bench.ts';
import { createLive, NO_TORQUE } from '../../../src/pipeline/live.ts';
import type { BenchView } from '../../../src/ui/view.ts';
import { asStreams, FakeKeyboard, FakeScreen } from '../../ui/fake-terminal.ts';
import { jobWith, linked } from '../../ui/fixtures.ts';
import type { Measurement } from '../measurement.ts';

interface Seen {
  readonly framesPerSecond: number;
  readonly bytesPerFrame: number;
  /** Of one core, all of the process: finding pulls, folding, drawing. */
  readonly cpuPercent: number;
}

const TITLE = 'J-1042';

/** The bench with `tools` wrenches at `hertz` readings a second each, and the screen on a terminal that is only counted. */
async function watched(tools: number, hertz: number, seconds: number): Promise<Seen> {
  const { runScreen } = await import('../../../src/ui/run.tsx');
  const ids = Array.from({ length: tools }, (_, i) => `wrench-${i + 1}`);
  const [wrench] = jobWith(3).instruments;
  if (wrench === undefined) throw new Error('no wrench');
  const bench = createBench(jobWith(3, { instruments: ids.map((id) => ({ ...wrench, id })), tools: {} }));
  const { description } = linked('wrench');
  if (description === undefined) throw new Error('no description');
  for (const tool of ids)
    bench.accept({
      kind: 'link',
      tool,
      driver: 'bench',
      source: 'simulated',
      link: { state: 'linked', description },
    });
  const screen = new FakeScreen();
  const view$ = new Subject<BenchView>();
  const follow = createLive();
  let live = NO_TORQUE;
  const show = (atUs: number) => {
    const now = bench.live();
    if (now !== null) live = follow(atUs, now);
    view$.next({
      station: 'bench',
      job: bench.state(),
      live,
      forecast: null,
      logEntries: 1,
      pullTimes: new Map(),
      sources: ['simulated'],
    });
  };
  const done = runScreen({
    view$,
    onCommand: () => {},
    onTyped: () => {},
    onQuit: () => {},
    types: false,
    quiet: true,
    ...asStreams(screen, new FakeKeyboard()),
    color: true,
    ascii: false,
    events: new EventEmitter(),
  });
  show(0);
  await new Promise((resolve) => setTimeout(resolve, 500));
  const [frames, written, cpu, startedMs] = [
    screen.writes.length,
    screen.text.length,
    process.cpuUsage(),
    performance.now(),
  ];
  let n = 0;
  // In batches of 20 ms, as a radio delivers them.
  const timer = setInterval(() => {
    const due = Math.floor(((performance.now() - startedMs) / 1000) * hertz);
    for (; n < due; n += 1)
      for (const tool of ids) {
        const atUs = Math.round((n * 1e6) / hertz);
        // A slow swing between the hands' rest and a light pull.
        const counts = Math.round(500 * (1 + Math.sin(n / 40)));
        bench.accept({ kind: 'reading', tool, reading: { kind: 'value', n: n + 1, atUs, counts } });
        show(atUs);
      }
  }, 20);
  await new Promise((resolve) => setTimeout(resolve, 1000 * seconds));
  clearInterval(timer);
  const { user, system } = process.cpuUsage(cpu);
  const took = (performance.now() - startedMs) / 1000;
  const drawn = screen.writes.slice(frames).filter((write) => write.includes(TITLE)).length;
  const seen = {
    framesPerSecond: drawn / took,
    bytesPerFrame: drawn === 0 ? 0 : (screen.text.length - written) / drawn,
    cpuPercent: (user + system) / 1e4 / took,
  };
  view$.complete();
  await done;
  return seen;
}

/** How often the screen is drawn and what it costs, on a terminal of 80 by 24. */
export const screenCost: Measurement = {
  name: 'screen',
  what: 'frames a second and share of a core: idle, at 50 readings a second, with 16 tools',
  async run(terms) {
    const seconds = terms.number('seconds', 10);
    // Ink must be told before it is loaded, and draws nothing where it believes in a build server.
    Object.assign(process.env, { NODE_ENV: 'production', CI: 'false', CONTINUOUS_INTEGRATION: 'false' });
    Object.assign(console, { Console });
    const cases = [
      ['idle, linked', 1, 0],
      ['1 tool at 50 Hz', 1, 50],
      ['1 tool at 100 Hz', 1, 100],
      ['16 tools at 50 Hz', 16, 50],
    ] as const;
    const lines = [`${'case'.padEnd(20)} frames/s  bytes/frame  % of a core`];
    for (const [name, tools, hertz] of cases) {
      const { framesPerSecond, bytesPerFrame, cpuPercent } = await watched(tools, hertz, seconds);
      const row = [
        framesPerSecond.toFixed(1).padStart(8),
        bytesPerFrame.toFixed(0).padStart(12),
        cpuPercent.toFixed(1).padStart(12),
      ];
      lines.push(`${name.padEnd(20)} ${row.join(' ')}`);
    }
    return lines;
  },
};
