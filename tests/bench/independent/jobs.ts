/** Whole jobs: whether a plug that nobody touched is called OK, and how often somebody is asked. */
import type { Tape } from './lines.ts';
import { type Played, play } from './play.ts';
import { percent, Rows } from './rows.ts';

interface Measure {
  add: (tape: Tape) => void;
  lines: () => string[];
}

/** What was asked, and about which pull. */
function questions({ events }: Played): { readonly ask: string; readonly pull: number }[] {
  return events.flatMap((event) => {
    if (event.type !== 'pull-placed') return [];
    const { pull } = event;
    if (event.kind === 'unsure') return [{ ask: event.ask ?? '', pull }];
    return event.judgement?.side === 'high' ? [{ ask: 'over-window', pull }] : [];
  });
}

const done = ({ state }: Played): boolean => state.cylinders.every(({ torque }) => torque === 'done');

const counted = (times: ReadonlyMap<string, number>): string =>
  [...times].map(([what, n]) => `${what} ${n}`).join(', ');

class LeftOut {
  jobs = 0;
  allOk = 0;
  firstOpen = 0;
  readonly by = new Map<string, number>();
  readonly asked = new Map<string, number>();
  /** What became of the angle of each pull. */
  readonly angle = new Map<string, number>();
}

/** The last plug was never touched, an earlier one pulled in its place: nobody answers what is asked about that. */
export function leftOut(by: 'pace deg/s' | 'fault'): Measure {
  const rows = new Rows(() => new LeftOut());
  return {
    add(tape) {
      const played = play(tape, 'in place of the last');
      const { seat, spring } = tape.job.key;
      const row = rows.row(String(tape.job.key[by]));
      row.jobs += 1;
      const before = played.state.cylinders.slice(0, -1);
      if (!before.every(({ torque }) => torque === 'done')) row.firstOpen += 1;
      for (const { pull } of played.seen) {
        const what = pull.angleFault ?? (pull.turn === null ? 'none' : 'measured');
        row.angle.set(what, (row.angle.get(what) ?? 0) + 1);
      }
      if (done(played)) {
        row.allOk += 1;
        for (const name of [String(seat), String(spring)]) row.by.set(name, (row.by.get(name) ?? 0) + 1);
      }
      const last = played.seen.findLast(({ truth }) => truth?.was === 'in place of the last');
      const placed = played.events.find(
        (event) => event.type === 'pull-placed' && event.pull === last?.pull.pull,
      );
      const what = placed?.type === 'pull-placed' ? (placed.ask ?? placed.kind) : 'not detected';
      row.asked.set(what, (row.asked.get(what) ?? 0) + 1);
    },
    lines: () => {
      const joint = (name: string) => (row: LeftOut) => String(row.by.get(name) ?? 0);
      return [
        'jobs that end all OK though the last plug was never touched, in all and by joint and extension; how the pull in its place was first taken',
        ...rows.table(by, {
          jobs: (row) => String(row.jobs),
          'all OK': (row) => String(row.allOk),
          'of 108': (row) => ((108 * row.allOk) / row.jobs).toFixed(1),
          'new gasket': joint('new gasket'),
          'used gasket': joint('used gasket'),
          cone: joint('cone'),
          short: joint('short'),
          extension: joint('extension'),
          soft: joint('soft'),
          'a first one open': (row) => String(row.firstOpen),
          taken: (row) => counted(row.asked),
          angle: (row) => counted(row.angle),
        }),
      ];
    },
  };
}

class Work {
  jobs = 0;
  finished = 0;
  pulls = 0;
  wrongJobs = 0;
  wrongOk = 0;
  wrongOkAsked = 0;
  loose = 0;
  stuck = 0;
  /** Of what was asked: about pulls that truly tightened the plug that was due. */
  needless = 0;
  readonly asks = new Map<string, number>();
}

/** Pulls below this share of the lower limit turn nothing. */
const PULLED_SHARE = 0.2;

export function people(): Measure {
  const rows = new Rows(() => new Work());
  return {
    add(tape) {
      score(rows.row(String(tape.job.key['who'])), play(tape, 'in place of the last'));
    },
    lines: () => [
      'questions in 100 pulls (answered at once and truly); cylinders OK by a pull on another plug, and OK though never tightened, at the end of the job',
      ...rows.table('technician', {
        jobs: (row) => String(row.jobs),
        'all OK': (row) => String(row.finished),
        pulls: (row) => String(row.pulls),
        'asked/100': (row) => percent(total(row.asks), row.pulls, 1),
        'of these about a plug that turned': (row) => percent(row.needless, row.pulls, 1),
        'jobs with a wrong OK': (row) => String(row.wrongJobs),
        'wrong OK, nobody asked': (row) => String(row.wrongOk),
        'wrong OK, asked': (row) => String(row.wrongOkAsked),
        'OK, not tight': (row) => String(row.loose),
        'open questions': (row) => String(row.stuck),
        what: (row) =>
          [...row.asks]
            .sort((a, b) => b[1] - a[1])
            .map(([ask, n]) => `${ask} ${n}`)
            .join(', '),
      }),
    ],
  };
}

const total = (counts: ReadonlyMap<string, number>): number =>
  [...counts.values()].reduce((a, b) => a + b, 0);

function score(row: Work, played: Played): void {
  const { tape, state, seen, answered } = played;
  const wrongBefore = row.wrongOk + row.wrongOkAsked;
  row.jobs += 1;
  row.finished += done(played) ? 1 : 0;
  row.stuck += played.stuck;
  row.pulls += tape.truth.filter(({ peakNm }) => Math.abs(peakNm) >= PULLED_SHARE * tape.job.lowerNm).length;
  for (const { ask, pull } of questions(played)) {
    row.asks.set(ask, (row.asks.get(ask) ?? 0) + 1);
    const truth = seen.find((one) => one.pull.pull === pull)?.truth;
    if (truth?.was === 'fresh' || truth?.was === 'stage') row.needless += 1;
  }
  for (const { cylinder, torque, pulls } of state.cylinders) {
    if (torque !== 'done') continue;
    const proof = pulls.findLast(
      ({ kind, judgement }) =>
        judgement?.result === 'OK' && (kind === 'tightening' || kind === 'continuation'),
    );
    const truth = seen.find(({ pull }) => pull.pull === proof?.pull.pull)?.truth;
    if (truth?.plug !== cylinder) {
      if (answered.has(proof?.pull.pull ?? 0)) row.wrongOkAsked += 1;
      else row.wrongOk += 1;
    }
    if (!tight(tape, cylinder)) row.loose += 1;
  }
  if (row.wrongOk + row.wrongOkAsked > wrongBefore) row.wrongJobs += 1;
}

/** It was truly brought to the window since it was last taken out. */
function tight({ job, truth }: Tape, cylinder: number): boolean {
  const own = truth.filter(({ plug }) => plug === cylinder);
  return own
    .slice(own.findLastIndex(({ ended }) => ended === 'out') + 1)
    .some(({ peakNm }) => peakNm >= job.lowerNm);
}

class Tried {
  jobs = 0;
  pulls = 0;
  placed = 0;
  ok = 0;
  wrongOk = 0;
  readonly asks = new Map<string, number>();
}

/** Wrenches with weak clicks, tried before the first plug and not. */
export function trial(): Measure {
  const rows = new Rows(() => new Tried());
  return {
    add(tape) {
      const played = play(tape);
      const { trial: tried } = tape.job.key;
      const row = rows.row(`drop ${tape.job.key['drop %']} %, ${tried === true ? 'tried' : 'not tried'}`);
      row.jobs += 1;
      row.pulls += tape.truth.filter(({ plug }) => plug !== null).length;
      row.placed += played.events.some((e) => e.type === 'pull-placed' && e.because === 'trial-click')
        ? 1
        : 0;
      row.ok += played.state.cylinders.filter(({ torque }) => torque === 'done').length;
      const onPlug = new Map(played.seen.map(({ pull, truth }) => [pull.pull, truth?.plug ?? null]));
      row.wrongOk += played.state.cylinders.filter(
        ({ cylinder, torque, pulls }) =>
          torque === 'done' &&
          onPlug.get(pulls.findLast(({ judgement }) => judgement?.result === 'OK')?.pull.pull ?? 0) !==
            cylinder,
      ).length;
      for (const { ask } of questions(played)) row.asks.set(ask, (row.asks.get(ask) ?? 0) + 1);
    },
    lines: () => [
      'questions in 100 pulls of careful people, by how far the torque falls at a click',
      ...rows.table('click', {
        jobs: (row) => String(row.jobs),
        'trial detected': (row) => String(row.placed),
        pulls: (row) => String(row.pulls),
        'cylinders OK': (row) => String(row.ok),
        'wrong OK': (row) => String(row.wrongOk),
        'asked/100': (row) => percent(total(row.asks), row.pulls, 1),
        what: (row) => [...row.asks].map(([ask, n]) => `${ask} ${n}`).join(', '),
      }),
    ],
  };
}

class Handled {
  times = 0;
  pulls = 0;
  readonly asks = new Map<string, number>();
  short = 0;
  ok = 0;
}

/** Hours without a pull on a plug. */
export function handling(): Measure {
  const rows = new Rows(() => new Handled());
  let endUs = 0;
  return {
    add(tape) {
      const played = play(tape);
      endUs += tape.truth.at(-1)?.toUs ?? 0;
      for (const { was } of tape.truth) for (const name of [was, 'all']) rows.row(name).times += 1;
      for (const { pull, truth } of played.seen) {
        const placed = played.events.filter(
          (event) => event.type === 'pull-placed' && event.pull === pull.pull,
        );
        for (const name of [truth?.was ?? 'nothing', 'all']) {
          const row = rows.row(name);
          row.pulls += 1;
          for (const event of placed) {
            if (event.type !== 'pull-placed') continue;
            if (event.kind === 'unsure')
              row.asks.set(event.ask ?? '', (row.asks.get(event.ask ?? '') ?? 0) + 1);
            if (event.judgement?.side === 'low') row.short += 1;
            if (event.judgement?.side === 'high')
              row.asks.set('over-window', (row.asks.get('over-window') ?? 0) + 1);
            if (event.judgement?.result === 'OK') row.ok += 1;
          }
        }
      }
    },
    lines: () => [
      `${(endUs / 3.6e9).toFixed(1)} h of handling, no plug pulled`,
      ...rows.table('what', {
        times: (row) => String(row.times),
        'taken for pulls': (row) => String(row.pulls),
        'called OK': (row) => String(row.ok),
        'stopped short': (row) => String(row.short),
        questions: (row) => String(total(row.asks)),
        asked: (row) => [...row.asks].map(([ask, n]) => `${ask} ${n}`).join(', '),
      }),
    ],
  };
}
