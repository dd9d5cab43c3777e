import { describe, expect, it } from 'vitest';
import type { Arrival } from '../../../drivers/bluetooth/counter.ts';
import { parseProfile, serialProfile } from '../../../drivers/profile/file.ts';
import { FrameStream } from '../../../drivers/profile/stream.ts';
import { virtualScheduler } from '../../../sim/scheduler.ts';
import { type Port, play } from '../../../sim/serve/player.ts';
import { type Scenario, scenarioSchema } from '../../../sim/serve/scenario.ts';
import { createPullDetector } from '../../../src/pull/detector.ts';
import { settingsFor } from '../../../src/pull/settings.ts';
import { exampleJson } from '../../cli/program.ts';
import { good } from '../../drivers/bench.ts';

const profile = good(
  serialProfile(good(parseProfile(JSON.stringify(exampleJson('profile-serial.json')), 'p')), 'p'),
);

/** Plays the steps on a wrench at a line that a station reads with the same profile. */
async function played(steps: readonly unknown[]) {
  const scenario = scenarioSchema.parse({
    form: 'plugmark/scenario/1',
    title: 'a test',
    tools: [{ id: 'wrench', profile: 'p', port: '/tmp/x' }],
    steps,
  });
  const scheduler = virtualScheduler();
  const arrivals: Arrival[] = [];
  const stream = new FrameStream(profile, (arrival) => arrivals.push(arrival), {
    source: 'serial',
    kind: 'value',
    openedUs: 0,
  });
  const happened: string[] = [];
  const port: Port = {
    send: (bytes) => stream.take(bytes, scheduler.nowUs()),
    heard: () => {},
    unplug: () => Promise.resolve(void happened.push(`out after ${arrivals.length}`)),
    plug: () => Promise.resolve(void happened.push(`in after ${arrivals.length}`)),
  };
  const { done } = play(scenario, [{ id: 'wrench', profile, port, noiseNm: 0.01 }], scheduler);
  await scheduler.runUntil(done);
  return { arrivals, happened };
}

function pullsIn(arrivals: readonly Arrival[]) {
  const detector = createPullDetector(
    settingsFor(25, {
      quantity: 'torque',
      unit: 'N.m',
      exponent: -5,
      samplingFunction: 'instantaneous',
      updateIntervalMs: 10,
      link: { kind: 'serial', authenticated: false },
    }),
  );
  return arrivals.flatMap((one) =>
    one.kind === 'value' ? (detector.push(one.atUs, one.counts / 1e5) ?? []) : [],
  );
}

describe('a scenario', () => {
  it('lets a wrench be pulled: the station finds the pull with its peak and its click', async () => {
    const { arrivals } = await played([
      { do: 'wait', ms: 2000 },
      { do: 'pull', tool: 'wrench', peakNm: 27.5 },
      { do: 'wait', ms: 2000 },
      { do: 'pull', tool: 'wrench', peakNm: 20, clicks: false },
      { do: 'wait', ms: 2000 },
    ]);
    const [clicked, leaned, ...others] = pullsIn(arrivals);
    expect(others).toEqual([]);
    expect(clicked).toMatchObject({ release: 'seen' });
    expect(clicked?.peakNm).toBeCloseTo(27.5, 0);
    expect(leaned).toMatchObject({ release: 'none' });
  });

  it('plays faults: bytes cut off, no value, silence, a port that is gone', async () => {
    const { arrivals, happened } = await played([
      { do: 'wait', ms: 200 },
      { do: 'bytes', tool: 'wrench', hex: '542b3032' },
      { do: 'wait', ms: 200 },
      { do: 'no-value', tool: 'wrench' },
      { do: 'silence', tool: 'wrench', ms: 500 },
      { do: 'unplug', tool: 'wrench', ms: 500 },
      { do: 'wait', ms: 200 },
    ]);
    const kinds = arrivals.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'raw')).toHaveLength(1);
    expect(kinds.filter((kind) => kind === 'not-known')).toHaveLength(1);
    const steps = arrivals.slice(1).map(({ atUs }, i) => atUs - (arrivals[i]?.atUs ?? 0));
    expect(Math.max(...steps)).toBeGreaterThan(990_000);
    const [out, back] = happened.map((text) => Number(text.split(' ').at(-1)));
    expect(back).toBe(out);
    expect(arrivals.length).toBeGreaterThan(back ?? 0);
  });

  it('is refused where it names a tool that it does not have, with the place', () => {
    const steps = [{ do: 'pull', tool: 'spanner', peakNm: 20 }];
    const parsed = scenarioSchema.safeParse({ ...(exampleJson('scenario.json') as Scenario), steps });
    expect(parsed.error?.issues[0]).toMatchObject({
      path: ['steps', 0, 'tool'],
      message: 'there is no tool "spanner"',
    });
  });
});
