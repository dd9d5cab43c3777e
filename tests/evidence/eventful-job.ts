/** A job on two cylinders in which nearly everything happens, proven in the end; for tests that look at every kind of entry. */
import type { StationEvent } from '../../src/evidence/station-event.ts';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { USUAL_DECISION } from '../../src/job/basis.ts';
import { createBench } from '../../src/job/bench.ts';
import type { Command } from '../../src/job/command.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import type { Reading, ToolDescription } from '../../src/reading.ts';
import { GAUGE, handsOn, WRENCH } from '../job/workshop.ts';
import { AT, INSTRUMENTS, opening, stationEvents } from './sample-job.ts';

const [WRENCH_LISTED, GAUGE_LISTED] = INSTRUMENTS;
if (WRENCH_LISTED === undefined || GAUGE_LISTED === undefined) throw new Error('two instruments');

/** Out of date, so that somebody has to answer for it. */
const OVERDUE: Instrument = {
  ...WRENCH_LISTED,
  serial: 'W-1',
  range: { from: 5, to: 60 },
  certificate: {
    number: 'C-7',
    laboratory: 'Example laboratory',
    serial: 'W-1',
    date: '2025-01-15',
    due: '2025-12-31',
    unit: 'N.m',
    points: [10, 60].map((reading) => ({ reading, error: 0.05, expanded: 0.1, k: 2 })),
  },
};
const EVENTFUL_INSTRUMENTS = [OVERDUE, GAUGE_LISTED];

export const eventfulStation: readonly StationEvent[] = [
  ...stationEvents.filter(({ type }) => type !== 'instrument-recorded'),
  ...EVENTFUL_INSTRUMENTS.map((instrument) => ({ type: 'instrument-recorded' as const, instrument })),
];

const wrench: ToolDescription = {
  ...WRENCH,
  serial: 'W-1',
  batteryPercent: 80,
  updateIntervalMs: 10,
  resolutionCounts: 1,
  validRange: { lowerCounts: -6000, upperCounts: 6000 },
  link: { kind: 'bluetooth-le', address: 'c0:00:00:00:00:01', encrypted: true, authenticated: false },
};
/** Promises less than the station file does. */
const gauge: ToolDescription = { ...GAUGE, uncertainty: { kind: 'absolute', counts: 150 } };

export function eventfulJob(): JobEvent[] {
  const opened = openJob(opening().order, EVENTFUL_INSTRUMENTS, {
    on: AT.slice(0, 10),
    decision: USUAL_DECISION,
    overrides: [{ tool: 'wrench', by: 'A. Foreman', reason: 'no other wrench today' }],
  });
  if (!opened.ok) throw new Error(opened.error.message);
  const events: JobEvent[] = [...opened.value];
  const state = foldAll(events);
  if (state === null) throw new Error('no job');
  const hands = handsOn(createBench(state), events);
  const { give } = hands;
  const say = (command: Command) => {
    const out = give({ kind: 'command', command });
    if (!out.ok) throw new Error(out.error.message);
  };
  const begin = () =>
    give({ kind: 'session', program: 'plugmark 0.1.0', platform: 'test', simulated: false });
  const link = (tool: string, description: ToolDescription) =>
    give({ kind: 'link', tool, driver: 'test', link: { state: 'linked', description } });
  const read = (tool: string, reading: Reading) => give({ kind: 'reading', tool, reading });
  begin();
  link('wrench', wrench);
  link('gauge', gauge);
  hands.gap(0.75);
  hands.gap(0.9);
  say({ do: 'scrap-plug', cylinder: 2, reason: 'dropped' });
  say({ do: 'choose-cylinder', quantity: 'length', cylinder: 2 });
  hands.gap(0.75);
  hands.pull(27.4);
  hands.again(27.6);
  hands.rest();
  say({ do: 'hand-over', to: 'B. Example' });
  say({ do: 'hand-over', to: 'A. Example' });
  const atUs = 60_000_000;
  read('wrench', { kind: 'missed', n: 0, atUs, fromUs: atUs - 40_000, readings: 4, reason: 'lost' });
  give({ kind: 'link', tool: 'wrench', driver: 'test', link: { state: 'lost', reason: 'out of reach' } });
  link('wrench', wrench);
  read('wrench', { kind: 'not-known', n: hands.next('wrench'), atUs });
  read('wrench', { kind: 'raw', n: hands.next('wrench'), atUs, source: '2a58', hex: 'ff' });
  read('wrench', { kind: 'stored', n: hands.next('wrench'), atUs, counts: 2711 });
  hands.wait(61_000);
  hands.pull(27.1);
  hands.rest();
  say({ do: 'start-again', cylinder: 1, newPlug: false, why: 'washer forgotten' });
  hands.pull(27.2);
  hands.rest();
  begin();
  say({ do: 'close' });
  return events;
}
