import type { Random } from '../../../sim/random.ts';
import { USUAL_DECISION } from '../../../src/job/basis.ts';
import type { JobEvent, JobEventOf } from '../../../src/job/event.ts';
import { judgedBy } from '../../../src/job/judging.ts';
import { openJob } from '../../../src/job/open.ts';
import type { Judgement, Window } from '../../../src/metrology/judgement.ts';
import type { DetectedPull } from '../../../src/pull/pull.ts';
import { roundedPull } from '../../../src/pull/rounded.ts';
import { orThrow } from '../../../src/result.ts';
import { between, instrumentsOn, lotAt, orderOf, WRENCHES } from './station.ts';

interface Dated {
  readonly event: JobEvent;
  readonly by: string;
  /** Since the job was opened. */
  readonly afterMs: number;
}

/** This share of first pulls stops short and is carried on. */
const SHORT = 0.04;
const GAP_SIGMA_MM = 0.022;

type Opening = JobEventOf<'job-opened'>;
/** Windows cost more than all else of a job, and are the same until an instrument has a new certificate. */
const openings = new Map<string, Opening>();

/** The events of job number `i`, samples left out. */
export function jobEvents(i: number, openedMs: number, chance: Random): readonly Dated[] {
  const order = orderOf(i, chance);
  const wrench = between(chance, 0, WRENCHES - 1);
  const instruments = instrumentsOn(wrench, openedMs);
  const on = new Date(openedMs).toISOString().slice(0, 10);
  const key = [...instruments.map(({ certificate }) => certificate?.number), order.engine.description, i % 4];
  const known =
    openings.get(key.join()) ??
    orThrow(openJob(order, instruments, { on, decision: USUAL_DECISION, overrides: [] }))[0];
  openings.set(key.join(), known);
  const opening: Opening = { ...known, order, basis: { ...known.basis, on } };
  const events: Dated[] = [];
  let afterMs = 0;
  const add = (event: JobEvent, by = 'station') => events.push({ event, by, afterMs });
  add(opening, 'technician');
  add({
    type: 'session-started',
    session: 1,
    program: 'plugmark 0.1.0',
    platform: 'linux x64, node 20',
  });
  for (const { id, quantity } of instruments)
    add({
      type: 'tool-linked',
      tool: id,
      driver: 'imds',
      source: 'linked',
      description: {
        quantity,
        unit: quantity === 'torque' ? 'N.m' : 'm',
        exponent: quantity === 'torque' ? -2 : -5,
        samplingFunction: 'instantaneous',
        link: { kind: 'bluetooth-le', authenticated: false },
      },
    });
  add({
    type: 'new-plugs-checked',
    cylinders: [...order.engine.serviceOrder],
    part: order.plug.part,
    lot: lotAt(Math.floor(i / 40)),
    differs: [],
  });
  if (opening.gapWindow !== null)
    for (const [at, cylinder] of order.engine.serviceOrder.entries()) {
      afterMs += 4000;
      const gapMm = Math.round(100 * chance.normal(0.75, GAP_SIGMA_MM)) / 100;
      add({
        type: 'gap-measured',
        tool: 'gauge',
        reading: at + 1,
        atUs: 1000 * afterMs,
        source: 'linked',
        cylinder,
        judgement: judged(opening, 'gauge', gapMm, opening.gapWindow, null),
      });
    }
  const aim = (opening.torqueWindow.lowerLimit + opening.torqueWindow.upperLimit) / 2;
  let pull = 0;
  const pulled = (cylinder: number, peakNm: number, kind: 'tightening' | 'continuation') => {
    afterMs += 9000;
    pull++;
    const found = detectedPull(pull, peakNm, afterMs, chance);
    add(found);
    add({
      type: 'pull-placed',
      pull,
      cylinder,
      kind,
      because: kind === 'tightening' ? 'plug-turned' : 'went-on-after-short',
      judgement: judged(opening, 'wrench', peakNm, opening.torqueWindow, found.peakStandardNm),
      evidence: {
        turned: 1,
        knock: 0,
        bend: thousandth(chance.normal(-1.5, 0.2)),
        slowdown: null,
        riseNmPerS: thousandth(chance.uniform(8, 20)),
        heldRiseMs: null,
        impulseNms: thousandth(chance.uniform(10, 20)),
        angleDeg: null,
        workJ: null,
        sinceLastMs: thousandth(chance.uniform(6000, 9000)),
      },
    });
  };
  for (const cylinder of order.engine.serviceOrder) {
    // One wrench wanders, so that there is something to find.
    const drift = wrench === 17 ? 0.4 * (openedMs / 3.15e10 - 53) : 0;
    const isShort = chance.chance(SHORT);
    if (isShort) pulled(cylinder, aim - 4 - chance.uniform(), 'tightening');
    pulled(cylinder, aim + drift + chance.normal(0, 0.55), isShort ? 'continuation' : 'tightening');
  }
  afterMs += 5000;
  add({ type: 'job-closed', complete: true, open: [] }, 'technician');
  return events;
}

const thousandth = (value: number) => Math.round(1000 * value) / 1000;

function judged(
  { order, instruments, basis }: Opening,
  tool: string,
  reading: number,
  window: Window,
  peakStandard: number | null,
): Judgement {
  const instrument = instruments.find(({ id }) => id === tool);
  if (instrument === undefined) throw new Error(`no ${tool}`);
  const circumstances = { on: basis.on, adapter: order.adapter };
  return judgedBy({ instrument, circumstances, window, rule: basis.decision.rule }, reading, peakStandard);
}

function detectedPull(
  pull: number,
  peakNm: number,
  endMs: number,
  chance: Random,
): JobEventOf<'pull-detected'> {
  const lastsMs = chance.uniform(900, 1600);
  const us = (ms: number) => Math.round(1000 * ms);
  const peakUs = us(endMs - 200);
  const steps = Array.from({ length: 9 }, (_, i) => ((i + 1) / 10) * lastsMs * chance.uniform(0.9, 1));
  const found: DetectedPull = {
    startUs: us(endMs - lastsMs),
    endUs: us(endMs),
    peakNm,
    peakUs,
    peakStandardNm: 0.03 * chance.uniform(0.5, 1.5),
    highestNm: peakNm + 0.01 * chance.uniform(),
    release: 'seen',
    releaseNm: peakNm,
    releaseUs: peakUs,
    dropShare: chance.uniform(0.15, 0.5),
    riseMs: lastsMs * chance.uniform(0.5, 0.7),
    rise: {
      reachedMs: steps.sort((a, b) => a - b),
      slopeAtTopNmPerS: chance.uniform(10, 30),
      impulseNms: chance.uniform(10, 20),
      setbackNm: 0,
    },
    turn: null,
    sinceLastMs: pull === 1 ? null : chance.uniform(6000, 9000),
    zeroNm: chance.normal(0.05, 0.01),
    zeroSettled: true,
    noiseNm: 0.025 * chance.uniform(0.9, 1.1),
    samples: Math.round(lastsMs / 10),
    intervalUs: 10_000 + chance.uniform(),
    longestGapUs: 10_000 + between(chance, 100, 900),
    saturated: false,
    stream: 'samples',
    cut: null,
  };
  return { type: 'pull-detected', pull, tool: 'wrench', source: 'linked', ...roundedPull(found) };
}
