import { describe, expect, it } from 'vitest';
import type { JobEvent } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { technicianOf } from '../../src/job/hand-over.ts';
import { openJob } from '../../src/job/open.ts';
import { replay } from '../../src/job/replay.ts';
import { noteLines } from '../../src/report/words/index.ts';
import { lineFor } from '../../src/ui/lines.ts';
import { summaryLines } from '../../src/ui/summary.ts';
import { exampleOrder, INSTRUMENTS, OPENING, workshop } from './workshop.ts';

const VOID = { do: 'void', by: 'Foreman One', reason: 'wrong vehicle' } as const;

describe('a job that is declared void', () => {
  it('is closed and not complete, for a reason that its summary says', () => {
    const shop = workshop();
    for (let plug = 0; plug < 4; plug++) shop.gap(0.75);
    shop.give({ kind: 'command', command: VOID });
    expect(shop.events.at(-1)).toEqual({ type: 'job-voided', by: VOID.by, reason: VOID.reason });
    expect(shop.bench.state()).toMatchObject({
      voided: { by: VOID.by, reason: VOID.reason },
      closed: { complete: false, open: ['declared void'] },
    });
    expect(summaryLines(shop.bench.state()).at(-1)).toBe('VOID: declared void by Foreman One: wrong vehicle');
  });

  it('takes no command any more, and can still be declared so after closing', () => {
    const shop = workshop();
    shop.give({ kind: 'command', command: { do: 'close' } });
    expect(shop.give({ kind: 'command', command: VOID }).ok).toBe(true);
    for (const command of [VOID, { do: 'close' }, { do: 'hand-over', to: 'B' }] as const)
      expect(shop.give({ kind: 'command', command }).ok).toBe(false);
  });

  it('does not become complete by a closing that somebody puts behind it', () => {
    const shop = workshop();
    shop.give({ kind: 'command', command: VOID });
    const forged: JobEvent[] = [...shop.events, { type: 'job-closed', complete: true, open: [] }];
    expect(replay(forged).ok).toBe(false);
    expect(foldAll(forged)?.voided).not.toBeNull();
  });
});

describe('a job that is handed over', () => {
  it('belongs to the last who took it, whom the order does not name', () => {
    const shop = workshop();
    expect(technicianOf(shop.events)).toBe('Technician One');
    for (const to of ['Technician Two', 'Technician Three'])
      shop.give({ kind: 'command', command: { do: 'hand-over', to } });
    expect(shop.bench.state().technician).toBe('Technician Three');
    expect(shop.bench.state().order.technician).toBe('Technician One');
    expect(technicianOf(shop.events)).toBe('Technician Three');
    expect(shop.events.at(-1)).toEqual({ type: 'job-handed-over', to: 'Technician Three' });
    expect(shop.give({ kind: 'command', command: { do: 'hand-over', to: 'Technician Three' } }).ok).toBe(
      false,
    );
  });

  it('replays to the same state', () => {
    const shop = workshop();
    for (let plug = 0; plug < 4; plug++) shop.gap(0.75);
    shop.pull(27);
    shop.give({ kind: 'command', command: { do: 'hand-over', to: 'Technician Two' } });
    shop.pull(27);
    shop.give({ kind: 'command', command: VOID });
    const again = replay(shop.events);
    expect(again.ok && again.value.state()).toEqual(shop.bench.state());
  });

  it('says so in a line', () => {
    const shop = workshop();
    const before = shop.bench.state();
    shop.give({ kind: 'command', command: { do: 'hand-over', to: 'Two\u001b[2J' } });
    const event = shop.events.at(-1);
    if (event === undefined) throw new Error('no event');
    const line = lineFor(event, before, shop.bench.state(), '09:30:00');
    expect(line).toBe('09:30:00  job handed over  from Technician One  to Two[2J');
  });
});

describe('the VIN of a work order', () => {
  const opened = (vin: string) => {
    const order = exampleOrder(4);
    return openJob({ ...order, vehicle: { ...order.vehicle, vin } }, INSTRUMENTS, OPENING);
  };
  const notes = (vin: string) => {
    const job = opened(vin);
    return job.ok
      ? noteLines(job.value[0].order, job.value[0].basis.notes).filter((note) => note.includes('VIN'))
      : null;
  };

  it('stops a job only where it cannot be that of a vehicle of North America', () => {
    expect(opened('1M8GDM9A1KP042788')).toMatchObject({
      ok: false,
      error: { code: 'vin-check-digit', where: 'vehicle.vin' },
    });
    expect(opened('1M8GDM9AXKPO42788')).toMatchObject({ ok: false, error: { code: 'vin-character' } });
  });

  it('stands on the record as doubtful otherwise, and not at all where it is right', () => {
    expect(notes('WDBEA30D4HA391172')).toEqual([
      'The check digit of the VIN is 4; expected 3, though not every market uses it. Compare it with the vehicle, character by character.',
    ]);
    expect(notes('124379B1234')).toEqual([expect.stringContaining('The VIN has 11 characters')]);
    expect(notes('WDBEA30D3HA391172')).toEqual([]);
    expect(notes('1m8gdm9axkp042788')).toEqual([]);
  });
});
