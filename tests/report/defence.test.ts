import { describe, expect, it } from 'vitest';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { createBench } from '../../src/job/bench.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import type { WorkOrder } from '../../src/job/order.ts';
import { reportModel } from '../../src/report/model.ts';
import { tracesOf } from '../../src/report/traces.ts';
import { jobEntry } from '../evidence/entries.ts';
import { exampleOrder, handsOn, INSTRUMENTS, OPENING } from '../job/workshop.ts';

const [WRENCH, GAUGE] = INSTRUMENTS;
if (WRENCH === undefined || GAUGE === undefined) throw new Error('two instruments');
const certified: Instrument = {
  ...WRENCH,
  serial: 'W-1',
  correct: true,
  certificate: {
    number: 'C-7',
    laboratory: 'Example laboratory',
    serial: 'W-1',
    date: '2026-01-15',
    due: '2026-04-30',
    unit: 'N.m',
    points: [
      { reading: 10, error: 0.05, expanded: 0.1, k: 2 },
      { reading: 60, error: 0.3, expanded: 0.4, k: 2 },
    ],
  },
};
const adapter = { armMm: 300, offsetMm: 40, angleDeg: 0, within: { armMm: 2, offsetMm: 1, angleDeg: 5 } };

function papers(order: WorkOrder, instruments: readonly Instrument[]) {
  const overrides = [{ tool: 'wrench', by: 'A. Foreman', reason: 'no other wrench' }];
  const opening = openJob(order, instruments, {
    ...OPENING,
    overrides,
    decision: { ...OPENING.decision, grades: true },
  });
  if (!opening.ok) throw new Error(opening.error.message);
  const events: JobEvent[] = [...opening.value];
  const start = foldAll(events);
  if (start === null) throw new Error('not opened');
  const bench = createBench(start);
  const hands = handsOn(bench, events);
  hands.give({ kind: 'session', program: 'test', platform: 'test' });
  hands.join();
  hands.pull(24.2);
  const entries = events.map((event, i) =>
    jobEntry(event, { seq: i + 1, at: '2026-05-04T08:00:00.000Z', monoUs: i, by: 'technician' }, order.job),
  );
  return reportModel({
    state: bench.state(),
    entries,
    traces: tracesOf(events),
    recordDigest: '0'.repeat(64),
    program: 'plugmark test',
    station: 'Bay 1',
    replaces: null,
    beforeSigning: null,
    signers: [],
    technicianSignature: 'none',
    checkpoint: '',
  });
}

describe('what makes a verdict defensible on paper', () => {
  const model = papers({ ...exampleOrder(4), adapter }, [certified, GAUGE]);

  it('names the certificate, until when it held, and what was done with its errors', () => {
    expect(model.instruments[0]?.basis).toBe(
      'certificate C-7, Example laboratory, 2026-01-15, due 2026-04-30; its errors taken off',
    );
  });

  it('names who answered for an instrument that was out of date', () => {
    expect(model.exceptions[0]?.what).toBe(
      'wrench used although its calibration expired on 2026-04-30. Answered for by A. Foreman: no other wrench.',
    );
  });

  it('names the rule of decision, and what was noted about the figures', () => {
    expect(model.specificationFacts.find(({ label }) => label === 'Decision rule')?.value).toContain(
      'guard band 1 U',
    );
    expect(model.grades).toBe(true);
    expect(model.cautions.join()).toContain('No oil and no anti-seize');
  });

  it('shows torque as the plug saw it, curve and peak alike, beside limits at the plug', () => {
    const [row] = model.rows.filter(({ quantity, value }) => quantity === 'torque' && value !== null);
    expect(row?.value).toBeCloseTo((24.2 - 0.12) * (340 / 300), 0);
    expect(model.torqueWindow.figures.lowerLimit).toBe(25);
    const [plot] = model.plots;
    expect(Math.max(...(plot?.pulls[0]?.trace?.nm ?? []))).toBeCloseTo(24.2 * (340 / 300), 0);
  });
});
