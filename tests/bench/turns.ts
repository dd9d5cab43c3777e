/** Orders by angle alone against the simulated truth: whether U covers the turn of the plug, and which verdicts are false. */
import { DEG_EXPONENT, Gyroscope } from '../../sim/physics/gyroscope.ts';
import { Joint } from '../../sim/physics/joint.ts';
import { TorqueSensor } from '../../sim/physics/sensor.ts';
import { Random } from '../../sim/random.ts';
import { createBench } from '../../src/job/bench.ts';
import { foldAll } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import { exampleOrder, INSTRUMENTS, OPENING, WRENCH } from '../job/workshop.ts';
import type { Measurement } from './measurement.ts';

interface Kind {
  readonly name: string;
  readonly torque: string;
  readonly limits: readonly [number, number];
  readonly seat: 'gasket' | 'conical';
  readonly gasket: 'new' | 'used';
  readonly referenceNm: number;
  /** How far the hand turns the wrench in one stroke. */
  readonly sweepDeg: readonly [number, number];
}

const KINDS: readonly Kind[] = [
  {
    name: 'new gasket, 1/2-2/3 turn',
    torque: '1/2-2/3 turn',
    limits: [180, 240],
    seat: 'gasket',
    gasket: 'new',
    referenceNm: 27.5,
    sweepDeg: [35, 110],
  },
  {
    name: 'used gasket, 1/12-1/6 turn',
    torque: '1/12-1/6 turn',
    limits: [30, 60],
    seat: 'gasket',
    gasket: 'used',
    referenceNm: 20,
    sweepDeg: [25, 80],
  },
  {
    name: 'cone, 1/16-1/8 turn',
    torque: '1/16-1/8 turn',
    limits: [22.5, 45],
    seat: 'conical',
    gasket: 'new',
    referenceNm: 10,
    sweepDeg: [20, 60],
  },
];
/** Torque of the fingers, at most, and how well the gyroscope lies still: as it says, or drifting as much as it may. */
const HANDS = [
  ['to contact', 0.6],
  ['spun down hard', 2.5],
] as const;

class Row {
  plugs = 0;
  measured = 0;
  covered = 0;
  readonly errors: number[] = [];
  readonly expanded: number[] = [];
  ok = 0;
  falseOk = 0;
  inside = 0;
  falseNotOk = 0;
  undecided = 0;
  asked = 0;
}

export const turns: Measurement = {
  name: 'turns',
  what: 'orders by angle alone against the simulated truth: plugs=600 (of each kind) seed=report',
  run: ({ number, text, progress }) => {
    const plugs = number('plugs', 600);
    const seed = text('seed', 'report');
    const rows = new Map<string, Row>();
    const cells = KINDS.flatMap((kind) => HANDS.map((hand) => ({ kind, hand })));
    for (const [i, { kind, hand }] of cells.entries()) {
      const row = new Row();
      rows.set(`${kind.name}, ${hand[0]}`, row);
      for (let plug = 0; plug < plugs; plug++) {
        tighten(row, kind, hand[1], new Random(`${seed} ${kind.name} ${hand[0]} ${plug}`));
        progress((i + plug / plugs) / cells.length, kind.name);
      }
    }
    return table(rows);
  },
};

/** One plug, turned by strokes to somewhere in or near the limits. */
function tighten(row: Row, kind: Kind, handNm: number, random: Random): void {
  const order = exampleOrder(4);
  const plug = { ...order.plug, seat: kind.seat, ...(kind.seat === 'gasket' && { gasket: kind.gasket }) };
  const specification = { ...order.specification, torque: kind.torque };
  const opening = openJob({ ...order, plug, specification }, INSTRUMENTS, OPENING);
  if (!opening.ok) throw new Error(opening.error.message);
  const state = foldAll(opening.value);
  if (state === null) throw new Error('nothing opened');
  const bench = createBench(state);
  bench.accept({ kind: 'session', program: 'bench', platform: 'bench' });
  const angle = { exponent: DEG_EXPONENT, resolutionCounts: 1, driftDegPerMin: 6, uncertaintyDeg: 2 };
  const link = { state: 'linked', description: { ...WRENCH, angle } } as const;
  bench.accept({ kind: 'link', tool: 'wrench', driver: 'bench', source: 'linked', link });

  const joint = new Joint(
    {
      thread: plug.thread,
      seat: kind.seat,
      gasket: kind.gasket,
      threads: 'dry',
      referenceNm: kind.referenceNm,
      crossThreaded: false,
    },
    random.fork('joint'),
  );
  joint.fingerTight();
  const contactDeg = joint.contactDeg;
  const stiffness = random.uniform(0.8, 5);
  const byHand = random.uniform(0, handNm);
  for (let deg = joint.angleDeg; joint.follow(deg, 50) < byHand; deg += 0.01);
  const gyroscope = new Gyroscope(random.fork('gyroscope'));
  const sensor = new TorqueSensor(
    {
      capacityNm: 60,
      gain: 1 + random.within(0, 0.005, 2),
      offsetNm: random.uniform(-0.2, 0.2),
      noiseNm: 0.03,
    },
    random.fork('sensor'),
  );
  const [lower, upper] = kind.limits;
  const wide = (upper - lower) / 2;
  const targetDeg = contactDeg + random.uniform(lower - wide, upper + wide);
  const turnedDeg = () => joint.angleDeg - contactDeg;

  let atUs = 0;
  let n = 0;
  let handleDeg = 0;
  const reading = (nm: number) => {
    atUs += 10_000;
    n += 1;
    const counts = sensor.sample(nm);
    const angleCounts = gyroscope.sample(handleDeg, atUs);
    const out = bench.accept({
      kind: 'reading',
      tool: 'wrench',
      reading: { kind: 'value', n, atUs, counts, angleCounts },
    });
    if (!out.ok) throw new Error(out.error.message);
  };
  const rest = (ms: number) => {
    for (let left = ms; left > 0; left -= 10) reading(0);
  };
  rest(3000);
  for (let strokes = 0; strokes < 20 && joint.angleDeg < targetDeg - 0.2; strokes++) {
    const sweep = random.uniform(...kind.sweepDeg);
    const pace = random.uniform(30, 160) / 100;
    // Where the handle stands while nothing winds the tools up.
    const slackDeg = handleDeg - joint.angleDeg;
    let drive = joint.angleDeg;
    let nm = 0;
    for (let swept = 0; swept < sweep && joint.angleDeg < targetDeg; swept += pace) {
      drive += pace;
      nm = joint.follow(drive, stiffness);
      handleDeg = drive + slackDeg;
      reading(nm);
    }
    while (nm > 0) {
      drive -= 3 * pace;
      nm = Math.max(0, joint.follow(drive, stiffness));
      handleDeg = drive + slackDeg;
      reading(nm);
    }
    rest(80);
    const back = handleDeg - sweep;
    while (handleDeg > back) {
      handleDeg -= 4 * pace;
      reading(0);
    }
    rest(random.uniform(300, 3500));
    const { questions, cylinders } = bench.state();
    if (questions.length > 0 || cylinders[0]?.torque === 'done') break;
  }
  rest(4000);
  score(row, kind, turnedDeg(), bench.state());
}

function score(
  row: Row,
  { limits: [lower, upper] }: Kind,
  truth: number,
  state: ReturnType<ReturnType<typeof createBench>['state']>,
): void {
  row.plugs += 1;
  const [first] = state.cylinders;
  const inside = truth >= lower && truth <= upper;
  if (inside) row.inside += 1;
  const last = first?.pulls.findLast(({ turn }) => turn !== undefined && turn !== null);
  const result = first?.pulls.at(-1)?.judgement?.result;
  if (last?.turn != null && last === first?.pulls.at(-1)) {
    row.measured += 1;
    const error = last.turn.value - truth;
    row.errors.push(error);
    row.expanded.push(last.turn.expandedUncertainty);
    if (Math.abs(error) <= last.turn.expandedUncertainty) row.covered += 1;
  }
  if (first?.torque === 'done') {
    row.ok += 1;
    if (!inside) row.falseOk += 1;
  } else if (last?.turn?.result === 'NotOK' && result === 'NotOK' && inside) row.falseNotOk += 1;
  else if (state.questions.some(({ kind }) => kind !== 'over-window')) row.asked += 1;
  else if (result !== 'NotOK') row.undecided += 1;
}

const median = (list: readonly number[]): number =>
  [...list].sort((a, b) => a - b)[list.length >> 1] ?? Number.NaN;

function table(rows: ReadonlyMap<string, Row>): string[] {
  const share = (part: number, whole: number) => `${((100 * part) / Math.max(1, whole)).toFixed(1)} %`;
  const head = [
    'plug',
    'plugs',
    'U covers',
    'median error °',
    'median U °',
    'OK',
    'false OK',
    'within limits',
    'false NOT OK',
    'undecided',
    'asked',
  ];
  return [
    `| ${head.join(' | ')} |`,
    `| ${head.map(() => '---').join(' | ')} |`,
    ...[...rows].map(
      ([name, row]) =>
        `| ${[
          name,
          row.plugs,
          `${share(row.covered, row.measured)} of ${row.measured}`,
          median(row.errors).toFixed(1),
          median(row.expanded).toFixed(1),
          row.ok,
          row.falseOk,
          row.inside,
          row.falseNotOk,
          row.undecided,
          row.asked,
        ].join(' | ')} |`,
    ),
  ];
}
