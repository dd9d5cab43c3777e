/** Where figures came from, from the real drivers through the signed record to its verification. */
import { Subject } from 'rxjs';
import { describe, expect, it } from 'vitest';
import { bluetoothTool } from '../../drivers/bluetooth/tool.ts';
import type { Tool } from '../../drivers/driver.ts';
import { imds } from '../../drivers/imds/language.ts';
import { FORM } from '../../drivers/replay/schema.ts';
import { replayTool } from '../../drivers/replay/tool.ts';
import { typedTool } from '../../drivers/typed/tool.ts';
import { type VirtualScheduler, virtualScheduler } from '../../sim/scheduler.ts';
import type { LogEntry, StationLog } from '../../src/evidence/log.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { createBench } from '../../src/job/bench.ts';
import type { Command } from '../../src/job/command.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { fold } from '../../src/job/fold.ts';
import { runJob } from '../../src/pipeline/run-job.ts';
import type { FigureSource, Quantity, Reading, ToolDescription } from '../../src/reading.ts';
import { headlineOf, VERIFICATION } from '../../src/report/verification.ts';
import { proofText } from '../../src/report/words/index.ts';
import { FakeRadio } from '../drivers/bluetooth/fake-radio.ts';
import { drawn, turningPull } from '../pull/shapes.ts';
import { jobEntry } from './entries.ts';
import { judged, recordOf, rejected, signedAnew } from './forge.ts';
import { logOf, opening, seal, station, technician, trusting } from './sample-job.ts';

const trust = trusting(station, technician);
const ADDRESS = 'c0:00:00:00:00:01';

/** A figure at a moment, in steps of its tool. */
interface Figure {
  readonly atUs: number;
  readonly counts: number;
}

/** Gaps of 0.75 and 0.74 mm, in steps of 100 nm. */
const GAPS: readonly Figure[] = [
  { atUs: 1_000_000, counts: 7500 },
  { atUs: 2_000_000, counts: 7400 },
];
/** Two pulls that click within the window, with the walk to each plug before it; in hundredths of a N·m. */
const TORQUES: readonly Figure[] = [27.4, 27.1].flatMap((peakNm, i) =>
  drawn([{ atMs: 0, nm: 0 }, ...turningPull(8000, 700, peakNm, peakNm * 0.8, peakNm * 0.8)]).map(
    ({ atUs, nm }) => ({ atUs: 3_000_000 + i * 12_000_000 + atUs, counts: Math.round(100 * nm) }),
  ),
);
const FIGURES = { torque: TORQUES, length: GAPS } as const;
const ID = { torque: 'wrench', length: 'gauge' } as const;

/** A tool of the real driver of that source, and what makes it send. */
interface Sending {
  readonly tool: Tool;
  /** In the order of their times; empty where the tool plays by itself. */
  readonly sends: readonly { readonly atUs: number; readonly send: () => void }[];
  /** Puts it in reach. */
  readonly appear?: () => void;
}

function overRadio(quantity: Quantity, scheduler: VirtualScheduler, simulated: boolean): Sending {
  const radio = new FakeRadio({ simulated, quantity });
  const tool = bluetoothTool({
    id: ID[quantity],
    language: imds(quantity),
    adopted: { address: ADDRESS, serial: 'W-1' },
    radio,
    clock: scheduler,
    after: scheduler.after,
    random: () => 0,
  });
  const send = (counts: number) => radio.links[0]?.send(counts);
  return {
    tool,
    sends: FIGURES[quantity].map(({ atUs, counts }) => ({ atUs, send: () => send(counts) })),
    appear: () => radio.see(ADDRESS),
  };
}

function typed(quantity: Quantity, scheduler: VirtualScheduler): Sending {
  const lines$ = new Subject<string>();
  const tool = typedTool({ id: ID[quantity], quantity, unit: 'mm', clock: scheduler, lines$ });
  const sends = FIGURES[quantity].map(({ atUs, counts }) => ({
    atUs,
    send: () => lines$.next(String(counts / 10_000)),
  }));
  return { tool, sends };
}

/** What the recorder wrote down of a real tool on the air. */
const RECORDED: Readonly<Record<Quantity, ToolDescription>> = {
  torque: {
    quantity: 'torque',
    unit: 'N.m',
    exponent: -2,
    serial: 'W-1',
    samplingFunction: 'instantaneous',
    link: { kind: 'bluetooth-le', address: ADDRESS, authenticated: true },
  },
  length: {
    quantity: 'length',
    unit: 'm',
    exponent: -7,
    serial: 'G-1',
    samplingFunction: 'instantaneous',
    link: { kind: 'bluetooth-le', address: ADDRESS, authenticated: true },
  },
};

function replayed(quantity: Quantity, scheduler: VirtualScheduler): Sending {
  const start: Reading = { kind: 'value', n: 1, atUs: 0, counts: 0 };
  const values = FIGURES[quantity].map(
    ({ atUs, counts }, i): Reading => ({ kind: 'value', n: i + 2, atUs, counts }),
  );
  const before: Reading = quantity === 'torque' ? start : { kind: 'not-known', n: 1, atUs: 0 };
  const tool = replayTool({
    id: ID[quantity],
    recording: {
      header: { form: FORM, tool: 'x', timing: { stamps: 'arrival' }, description: RECORDED[quantity] },
      readings: [before, ...values],
    },
    pace: { speed: 1 },
    clock: scheduler,
    after: scheduler.after,
  });
  return { tool, sends: [] };
}

const toolOf: Readonly<Record<FigureSource, (quantity: Quantity, scheduler: VirtualScheduler) => Sending>> = {
  linked: (quantity, scheduler) => overRadio(quantity, scheduler, false),
  simulated: (quantity, scheduler) => overRadio(quantity, scheduler, true),
  typed,
  replayed,
};

/** A job of two cylinders, worked through the pipeline with a wrench and a gauge of the given sources, and closed. */
async function jobFrom(torque: FigureSource, gap: FigureSource): Promise<readonly JobEvent[]> {
  const scheduler = virtualScheduler();
  const tools = [toolOf[torque]('torque', scheduler), toolOf[gap]('length', scheduler)];
  const opened = opening();
  const events: JobEvent[] = [opened];
  const entries: LogEntry[] = [];
  const log: StationLog = {
    append: (_stream, drafts, stamp) => {
      const added = drafts.map(({ event, by }) => jobEntry(event, { ...stamp, by, seq: entries.length + 1 }));
      entries.push(...added);
      return added;
    },
    entries: () => entries,
    streams: () => [],
    close: () => {},
  };
  const commands$ = new Subject<Command>();
  const run = {
    bench: createBench(fold(null, opened)),
    log,
    stream: 'job:WO-1',
    program: 'plugmark test',
    platform: 'test',
    tools: tools.map(({ tool }) => tool),
    commands$,
    stop$: new Subject<void>(),
    stamp: () => ({ at: '2026-03-02T09:30:00.000Z', monoUs: scheduler.nowUs() }),
  };
  runJob(run).step$.subscribe(({ happened }) => events.push(...happened.map(({ entry }) => entry.event)));
  for (const { tool, appear } of tools) {
    void tool.connect();
    await scheduler.runFor(50_000);
    appear?.();
    await scheduler.runFor(50_000);
  }
  const sends = tools.flatMap((one) => one.sends).sort((a, b) => a.atUs - b.atUs);
  for (const { atUs, send } of sends) {
    await scheduler.runFor(Math.max(0, atUs - scheduler.nowUs()));
    send();
  }
  await scheduler.runFor(Math.max(0, 30_000_000 - scheduler.nowUs()));
  commands$.next({ do: 'close' });
  for (const { tool } of tools) await tool.close();
  return events;
}

const figures = (source: FigureSource) => ({
  linked: 0,
  typed: 0,
  replayed: 0,
  simulated: 0,
  [source]: 2,
});

const TRUSTED = 'Signed by a station that you trust.';

describe.each([
  {
    torque: 'linked',
    gap: 'linked',
    verdict: 'authentic',
    headline: `Authentic and complete. ${TRUSTED}`,
    text: '2 torques proven by a linked wrench; 2 gaps proven by a linked gauge',
  },
  {
    torque: 'linked',
    gap: 'typed',
    verdict: 'authentic',
    headline: `Authentic and complete. ${TRUSTED} 2 gaps typed: attested by a person, NOT proven by an instrument.`,
    text: '2 torques proven by a linked wrench; 2 gaps typed by A. Example, attested, not proven by an instrument',
  },
  {
    torque: 'replayed',
    gap: 'linked',
    verdict: 'unproven',
    headline: `Authentic and complete, but NOT PROVEN. ${TRUSTED} REPLAYED: `,
    text: '2 torques REPLAYED, no proof; 2 gaps proven by a linked gauge',
  },
  {
    torque: 'simulated',
    gap: 'simulated',
    verdict: 'unproven',
    headline: `Authentic and complete, but NOT PROVEN. ${TRUSTED} SIMULATED: `,
    text: '2 torques SIMULATED, no proof; 2 gaps SIMULATED, no proof',
  },
  {
    torque: 'replayed',
    gap: 'typed',
    verdict: 'unproven',
    headline: `Authentic and complete, but NOT PROVEN. ${TRUSTED} REPLAYED: `,
    text: '2 torques REPLAYED, no proof; 2 gaps typed by A. Example, attested, not proven by an instrument',
  },
] as const)('a job with a $torque wrench and a $gap gauge', ({ torque, gap, verdict, headline, text }) => {
  it(`is ${verdict}, and says what each figure is worth`, async () => {
    const events = await jobFrom(torque, gap);
    const report = verifyRecord(seal(logOf(events)), trust);
    expect(report.checks.filter(({ outcome }) => outcome !== 'passed')).toEqual([]);
    expect(report.verdict).toBe(verdict);
    expect(VERIFICATION[report.verdict].exit).toBe(verdict === 'authentic' ? 0 : 1);
    expect(report.record?.summary.figures).toEqual({ torque: figures(torque), gap: figures(gap) });
    expect(report.record?.summary.cylinders.map((one) => [one.torque.source, one.gap.source])).toEqual([
      [torque, gap],
      [torque, gap],
    ]);
    expect(headlineOf(report).startsWith(headline)).toBe(true);
    expect(report.proof === null ? '' : proofText(report.proof)).toBe(text);
  });
});

describe('a source that was changed', () => {
  const replayedJob = jobFrom('replayed', 'linked');
  const forged = async (change: (event: JobEvent) => JobEvent) =>
    verifyRecord(seal(logOf((await replayedJob).map(change))), trust);
  const judgedAgain = ({ checks }: Awaited<ReturnType<typeof forged>>) =>
    checks.find(({ name }) => name === 'judged again');

  it('at one figure is found, with its place', async () => {
    const report = await forged((event) =>
      event.type === 'pull-detected' && event.pull === 2 ? { ...event, source: 'linked' } : event,
    );
    expect(report.verdict).toBe('rejected');
    expect(judgedAgain(report)?.detail).toMatch(/^event \d+: pull-detected is not what the readings give/);
  });

  it('at the link alone is found: what came over a file is replayed', async () => {
    const report = await forged((event) =>
      event.type === 'tool-linked' ? { ...event, source: 'linked' } : event,
    );
    expect(report.verdict).toBe('rejected');
    expect(judgedAgain(report)?.detail).toContain(
      'the source in tool-linked does not fit the kind of its link',
    );
  });

  it('in the summary is found', async () => {
    const content = recordOf(seal(logOf(await replayedJob)));
    const summary = { ...content.summary, sources: ['linked' as const] };
    expect(judged(signedAnew({ ...content, summary }, station, technician))).toMatchObject(
      rejected('contents'),
    );
  });

  it('throughout, by a station that lies, cannot be found: the list of what is not proven says so', async () => {
    const report = await forged((event) => {
      if (event.type === 'pull-detected') return { ...event, source: 'linked' };
      if (event.type !== 'tool-linked') return event;
      const link = { kind: 'bluetooth-le', authenticated: false } as const;
      return { ...event, source: 'linked', description: { ...event.description, link } };
    });
    expect(report.verdict).toBe('authentic');
  });
});
