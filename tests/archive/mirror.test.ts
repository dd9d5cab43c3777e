import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readShipment } from '../../src/archive/bundle.ts';
import type { KeptLog, Writes } from '../../src/archive/kept-log.ts';
import { type Decision, takeCheckpoint, takeEntries } from '../../src/archive/mirror.ts';
import { type Outbox, type Reply, ship } from '../../src/archive/outbox.ts';
import { readAddCheckpoint } from '../../src/evidence/witness.ts';
import { type TestLog, testLog } from './logs.ts';

const AT = '2026-05-04T10:00:00.000Z';
const cosign = () => '— witness AAAA\n';

/** A mirror in memory, and how often a request to it is lost on the way there or back. */
function mirror(log: TestLog, lost: () => 'there' | 'back' | null = () => null) {
  let kept: KeptLog = {
    id: 'log',
    tenant: 'tenant',
    origin: log.origin,
    station: 'Bay 1',
    keys: [],
    standing: 'open',
    entries: 0,
    pending: null,
    head: null,
  };
  const bundles = new Map<number, string>();
  const faults: string[] = [];
  const write = ({ pending, head, entries, bundles: some = [], fault, standing }: Writes) => {
    for (const { number, text } of some) bundles.set(number, text);
    if (fault !== undefined) faults.push(fault.kind);
    kept = {
      ...kept,
      ...(pending !== undefined && { pending }),
      ...(head !== undefined && { head }),
      ...(entries !== undefined && { entries }),
      ...(standing !== undefined && { standing }),
    };
  };
  const reply = (decide: () => Decision): Reply => {
    const fate = lost();
    if (fate === 'there') throw new Error('lost');
    const { answer, writes } = decide();
    if (writes !== null) write(writes);
    if (fate === 'back') throw new Error('lost');
    const text =
      answer.status === 200
        ? answer.note
        : answer.status === 202
          ? JSON.stringify({ next: answer.next })
          : answer.status === 409
            ? `${answer.size}\n`
            : answer.why;
    return { status: answer.status, text };
  };
  const line = {
    checkpoint: async (text: string) =>
      reply(() => {
        const request = readAddCheckpoint(text);
        if (request === null) throw new Error('no request');
        const note = text.slice(text.indexOf('\n\n') + 2);
        return takeCheckpoint(kept, request, { note, at: AT, cosign });
      }),
    entries: async (text: string) =>
      reply(() => {
        const shipment = readShipment(text);
        if (shipment === null) throw new Error('no shipment');
        return takeEntries(kept, shipment, cosign);
      }),
    key: async () => ({ status: 403, text: '' }),
    shipped: () => {},
  };
  return { line, kept: () => kept, bundles, faults };
}

const bodiesIn = (bundles: ReadonlyMap<number, string>) =>
  [...bundles]
    .sort(([a], [b]) => a - b)
    .flatMap(([, text]) => text.split('\n').filter((_, i) => i % 2 === 0))
    .filter((body) => body !== '');

/** Ships until it arrives, as a station does. */
async function shipped(outbox: Outbox, { line, kept }: ReturnType<typeof mirror>) {
  for (;;) {
    try {
      return await ship(outbox, line, kept().head?.size ?? 0);
    } catch {
      // The next attempt goes on.
    }
  }
}

describe('a mirror', () => {
  it('cosigns a checkpoint once it has all entries, and has them as the station has', async () => {
    const log = testLog(600);
    const archive = mirror(log);
    const answer = await ship(log.outbox(), archive.line, 0);
    expect(answer).toEqual({ as: 'kept', note: archive.kept().head?.note });
    expect(archive.kept()).toMatchObject({ entries: 600, pending: null, head: { size: 600 } });
    expect(bodiesIn(archive.bundles)).toEqual(log.bodies);
  });

  it('has the whole log in the end however it grows and whatever is lost on the way', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 5 }),
        fc.infiniteStream(fc.constantFrom('there', 'back', null, null, null)),
        async (steps, fates) => {
          const log = testLog(steps.reduce((sum, step) => sum + step, 0));
          const archive = mirror(log, () => fates.next().value);
          let size = 0;
          for (const step of steps) {
            size += step;
            expect(await shipped(log.outbox(size), archive)).toMatchObject({ as: 'kept' });
            expect(archive.kept()).toMatchObject({ entries: size, pending: null, head: { size } });
          }
          expect(bodiesIn(archive.bundles)).toEqual(log.bodies);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('goes on from a larger checkpoint where the one before never became whole', async () => {
    const log = testLog(300);
    const archive = mirror(log);
    await archive.line.checkpoint(`old 0\n\n${log.outbox(260).note}`);
    expect(archive.kept().pending?.size).toBe(260);
    expect(await shipped(log.outbox(300), archive)).toMatchObject({ as: 'kept' });
    expect(archive.kept().head?.size).toBe(300);
  });

  it('tells a station whose log was restored from an old copy how much it has', async () => {
    const log = testLog(300);
    const archive = mirror(log);
    await ship(log.outbox(), archive.line, 0);
    expect(await ship(log.outbox(200), archive.line, 200)).toEqual({ as: 'ahead', size: 300 });
    expect(archive.kept()).toMatchObject({ standing: 'open', entries: 300 });
  });

  it('freezes on a log that signed two histories of one size, and keeps both notes', async () => {
    const log = testLog(300);
    const archive = mirror(log);
    await ship(log.outbox(), archive.line, 0);
    const other = testLog(300, { ...log, bodies: [...log.bodies.slice(0, 299), '{"other":true}'] });
    expect(await ship(other.outbox(), archive.line, 300)).toMatchObject({ as: 'parted' });
    expect(archive.faults).toEqual(['rewritten']);
    expect(archive.kept().standing).toBe('frozen');
    expect(await ship(log.outbox(), archive.line, 300)).toMatchObject({ as: 'parted' });
  });

  it('takes nothing of a copy that went another way and grew longer', async () => {
    const log = testLog(300);
    const archive = mirror(log);
    await ship(log.outbox(), archive.line, 0);
    const other = testLog(420, { ...log, bodies: log.bodies.slice(0, 250) });
    other.bodies[250] = '{"other":true}';
    expect(await ship(other.outbox(), archive.line, 300)).toMatchObject({ as: 'parted' });
    expect(archive.faults).toEqual(['not-extending']);
    expect(bodiesIn(archive.bundles)).toEqual(log.bodies);
    expect(archive.kept()).toMatchObject({ standing: 'open', head: { size: 300 } });
  });

  it('takes no entry that does not hash into the checkpoint', async () => {
    const log = testLog(300);
    const archive = mirror(log);
    const outbox = log.outbox();
    const forged: Outbox = {
      ...outbox,
      entries: (from, to) =>
        outbox.entries(from, to).map((entry, i) => (i === 7 ? { ...entry, body: '{}' } : entry)),
    };
    expect(await ship(forged, archive.line, 0)).toMatchObject({ as: 'parted' });
    expect(archive.kept()).toMatchObject({ entries: 0, head: null });
    expect(await ship(outbox, archive.line, 0)).toMatchObject({ as: 'kept' });
  });
});
