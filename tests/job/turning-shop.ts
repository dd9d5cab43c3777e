import type { Instrument } from '../../src/instrument/instrument.ts';
import { type BenchInput, createBench } from '../../src/job/bench.ts';
import type { Command } from '../../src/job/command.ts';
import type { JobEvent, JobEventOf } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import type { Specification } from '../../src/plug/specification.ts';
import { type Corner, clickPull } from '../pull/shapes.ts';
import { turned } from '../pull/turned-samples.ts';
import { exampleOrder, INSTRUMENTS, OPENING, WRENCH } from './workshop.ts';

/** Until a pull is over. */
const AFTER_MS = 700;

interface Wanted {
  readonly specification?: Partial<Specification>;
  /** Whether the wrench sends its angle. */
  readonly angle?: boolean;
  readonly instruments?: readonly Instrument[];
}

/** A job on four cylinders with a wrench that sends its angle. */
export function turningShop({ specification = {}, angle = true, instruments = INSTRUMENTS }: Wanted = {}) {
  const order = exampleOrder(4);
  const ordered = { ...order, specification: { ...order.specification, ...specification } };
  const opening = openJob(ordered, instruments, OPENING);
  if (!opening.ok) throw new Error(opening.error.message);
  const events: JobEvent[] = [...opening.value];
  const state = foldAll(events);
  if (state === null) throw new Error('nothing opened');
  const bench = createBench(state);
  const give = (input: BenchInput) => {
    const out = bench.accept(input);
    if (!out.ok) throw new Error(out.error.message);
    events.push(...out.value);
  };
  give({ kind: 'session', program: 'plugmark test', platform: 'test' });
  const description = {
    ...WRENCH,
    ...(angle && { angle: { exponent: -2, driftDegPerMin: 1, uncertaintyDeg: 2 } }),
  };
  const link = { state: 'linked', description } as const;
  give({ kind: 'link', tool: 'wrench', driver: 'test', source: 'linked', link });
  let n = 0;
  let nowMs = 0;
  /** What the plug in the wrench turned already, and the torque that it holds. */
  const draw = (
    corners: readonly Corner[],
    plugDeg: (nm: number) => number,
    lost: (n: number) => boolean,
  ) => {
    for (const one of turned(corners, { nmPerDeg: 2, plugDeg })) {
      n += 1;
      const angleCounts = Math.round(100 * one.deg);
      give({
        kind: 'reading',
        tool: 'wrench',
        reading: {
          kind: 'value',
          n,
          atUs: 1000 * nowMs + one.atUs,
          counts: Math.round(100 * one.nm),
          ...(angle && !lost(n) && { angleCounts }),
        },
      });
    }
    nowMs += (corners.at(-1)?.atMs ?? 0) + 10;
  };
  return {
    bench,
    events,
    give,
    /** Pulled to a click at `nm`. */
    pull: (nm: number, plugDeg: (nm: number) => number) =>
      draw([{ atMs: 0, nm: 0 }, ...clickPull(3000, 900, nm, 0.8 * nm, 0.85 * nm)], plugDeg, () => false),
    /**
     * A stroke up to `nm` and let off, on a plug that holds `heldNm` by now. `lost`: a reading of which no angle came.
     */
    stroke: (
      nm: number,
      plugDeg: (nm: number) => number,
      { heldNm = 0, restMs = 3000, lost = (_n: number) => false as boolean } = {},
    ) =>
      draw(
        [
          { atMs: 0, nm: 0 },
          { atMs: restMs, nm: 0 },
          { atMs: restMs + 900, nm },
          { atMs: restMs + 1150, nm: 0 },
          { atMs: restMs + 1150 + AFTER_MS, nm: 0 },
        ],
        (now) => plugDeg(Math.max(now, heldNm)) - plugDeg(heldNm),
        lost,
      ),
    rest: (ms = 3000) =>
      draw(
        [
          { atMs: 0, nm: 0 },
          { atMs: ms, nm: 0 },
        ],
        () => 0,
        () => false,
      ),
    say: (command: Command) => give({ kind: 'command', command }),
    placed: () => events.filter((event): event is JobEventOf<'pull-placed'> => event.type === 'pull-placed'),
    cylinder: (number: number) => bench.state().cylinders.find(({ cylinder }) => cylinder === number),
  };
}
