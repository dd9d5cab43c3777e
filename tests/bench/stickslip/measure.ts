/** Jobs of the third physics through the program's own bench: whether an untouched plug is called OK, and what is asked. */
import { Random } from '../../../sim/random.ts';
import { leftOut, people } from '../independent/jobs.ts';
import type { Tape } from '../independent/lines.ts';
import type { Measurement } from '../measurement.ts';
import { Bay, type SPRINGS } from './bay.ts';
import { SEATS } from './plug.ts';

const PACES = [5, 15, 25, 40, 60, 90, 130, 200];
const SPRING_NAMES = ['short', 'extension', 'soft'] as const satisfies readonly (keyof typeof SPRINGS)[];
const CYLINDERS = 6;

/** Each plug in turn; `then` after each, with its number. */
const each = (bay: Bay, then: (plug: number) => void): void => {
  for (let plug = 1; plug <= CYLINDERS; plug++) {
    bay.go();
    then(plug);
  }
};
const one = (random: Random, most: number): number => 1 + Math.floor(random.uniform(0, most));

const PEOPLE: Readonly<Record<string, (bay: Bay) => void>> = {
  careful: (bay) => each(bay, (plug) => bay.pull(plug)),
  're-hits all': (bay) =>
    each(bay, (plug) => {
      bay.pull(plug);
      bay.go([0.15, 0.8]);
      bay.pull(plug, { seconds: [0.2, 0.6], was: 'again' });
    }),
  'two-stage per plug': (bay) =>
    each(bay, (plug) => {
      bay.pull(plug, { share: bay.random.uniform(0.45, 0.65), seconds: [0.6, 1.4], was: 'stage' });
      bay.go([0.8, 3.5]);
      bay.pull(plug, { seconds: [0.5, 1.4] });
    }),
  'two-stage in rounds': (bay) => {
    each(bay, (plug) =>
      bay.pull(plug, { share: bay.random.uniform(0.45, 0.65), seconds: [0.6, 1.4], was: 'stage' }),
    );
    each(bay, (plug) => bay.pull(plug, { seconds: [0.5, 1.4] }));
  },
  'loosens and redoes': (bay) =>
    each(bay, (plug) => {
      bay.pull(plug);
      if (!bay.random.chance(0.4)) return;
      bay.go([1.5, 4]);
      bay.backOut(plug);
      bay.go([2.5, 6]);
      bay.pull(plug);
    }),
  '1 s between plugs': (bay) => {
    for (let plug = 1; plug <= CYLINDERS; plug++) {
      bay.go([0.8, 1.3]);
      bay.pull(plug, { seconds: [0.6, 1.2] });
    }
  },
  jerky: (bay) => each(bay, (plug) => bay.pull(plug, { seconds: [0.4, 1.6] })),
  'goes back to check': (bay) => {
    const after = 1 + one(bay.random, CYLINDERS - 1);
    each(bay, (plug) => {
      bay.pull(plug);
      if (plug !== after) return;
      bay.go();
      bay.pull(one(bay.random, plug - 1), { seconds: [0.25, 0.8], was: 'again' });
    });
  },
  'finds one tight': (bay) => {
    const tight = 1 + one(bay.random, CYLINDERS - 2);
    bay.plug(tight).tightenUnseen(bay.random.uniform(0.95, 1.4) * bay.upperNm);
    each(bay, (plug) =>
      bay.pull(plug, plug === tight ? { seconds: [0.25, 1.2], was: 'in place of the last' } : {}),
    );
  },
};

export const stickSlip: Measurement = {
  name: 'stick-slip',
  what: 'did the plug turn, by a physics of its own: size=1 (108 jobs a pace, 18 a person) seed=1 part=leftout,people',
  run: ({ number, text, progress }) => {
    const size = number('size', 1);
    const seed = text('seed', '1');
    const lines: string[] = [];
    for (const part of text('part', 'leftout,people').split(',')) {
      const [measure, tapes] =
        part === 'leftout' ? [leftOut('pace deg/s'), untouched(size, seed)] : [people(), persons(size, seed)];
      for (const { share, tape } of tapes) {
        measure.add(tape);
        progress(share, part);
      }
      lines.push(...(lines.length > 0 ? [''] : []), ...measure.lines());
    }
    return lines;
  },
};

/** A job, and what share of all comes before it. */
interface Worked {
  readonly share: number;
  readonly tape: Tape;
}

/** The last plug is never touched; an earlier one is pulled again at a steady pace in its place. */
function* untouched(size: number, seed: string): Generator<Worked> {
  const jobs = Math.max(1, Math.round(12 * size));
  for (const [i, pace] of PACES.entries())
    for (const seat of SEATS)
      for (const spring of SPRING_NAMES)
        for (let n = 0; n < jobs; n++) {
          const random = new Random(`${seed} ${pace} ${seat} ${spring} ${n}`);
          const bay = new Bay(random, { seat, spring, cylinders: 4, clicks: true });
          for (const plug of [1, 2, 3]) {
            bay.go();
            bay.pull(plug);
          }
          bay.go();
          bay.pull(one(random, 3), { degPerS: pace, was: 'in place of the last' });
          yield { share: i / PACES.length, tape: bay.tape({ 'pace deg/s': pace, seat, spring }, seat) };
        }
}

function* persons(size: number, seed: string): Generator<Worked> {
  const jobs = Math.max(1, Math.round(18 * size));
  const all = Object.entries(PEOPLE);
  for (const [i, [who, works]] of all.entries())
    for (let n = 0; n < jobs; n++) {
      const random = new Random(`${seed} ${who} ${n}`);
      const seat = SEATS[one(random, SEATS.length) - 1] ?? 'cone';
      const spring = SPRING_NAMES[one(random, SPRING_NAMES.length) - 1] ?? 'short';
      const clicks = n % 4 !== 3;
      const bay = new Bay(random, { seat, spring, cylinders: CYLINDERS, clicks, jerky: who === 'jerky' });
      works(bay);
      yield { share: i / all.length, tape: bay.tape({ who, seat }, seat) };
    }
}
