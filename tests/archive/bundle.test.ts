import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ENTRIES_A_BUNDLE,
  isBundleOf,
  leavesOf,
  readShipment,
  shipmentText,
} from '../../src/archive/bundle.ts';
import { bundlesFrom } from '../../src/archive/outbox.ts';
import { treeRoot } from '../../src/evidence/merkle.ts';
import { testLog } from './logs.ts';

const LOG = testLog(700);

describe('bundles of entries', () => {
  it('read back as they were written, and lead to the root of their checkpoint', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 700 }), fc.nat(699), (size, index) => {
        const outbox = LOG.outbox(size);
        const bundles = bundlesFrom(outbox, Math.min(index, size - 1));
        expect(readShipment(shipmentText({ size, bundles }))).toEqual({
          size,
          bundles: bundles.map((bundle) => ({
            ...bundle,
            proof: bundle.proof.map((hash) => Buffer.from(hash)),
          })),
        });
        const checkpoint = { size, root: treeRoot(outbox.tree, size) };
        for (const bundle of bundles) expect(isBundleOf(bundle, leavesOf(bundle), checkpoint)).toBe(true);
      }),
      { numRuns: 30 },
    );
  });

  it('of another number, with another entry, or one entry short do not', () => {
    const outbox = LOG.outbox();
    const checkpoint = { size: 700, root: treeRoot(outbox.tree, 700) };
    const [first] = bundlesFrom(outbox, 0);
    if (first === undefined) throw new Error('no bundle');
    const holds = (bundle: typeof first) => isBundleOf(bundle, leavesOf(bundle), checkpoint);
    expect(holds({ ...first, number: 1 })).toBe(false);
    expect(holds({ ...first, entries: first.entries.slice(1) })).toBe(false);
    const changed = first.entries.map((entry, i) => (i === 5 ? { ...entry, body: '{}' } : entry));
    expect(holds({ ...first, entries: changed })).toBe(false);
    expect(first.entries.length).toBe(ENTRIES_A_BUNDLE);
  });

  it.each([
    ['nothing', ''],
    [
      'a head that promises more entries than follow',
      (text: string) => text.split('\n').slice(0, -3).join('\n'),
    ],
    ['lines behind the last entry', (text: string) => `${text}{}\n[]\n`],
    ['disclosures that are no list', (text: string) => text.replace('\n[]\n', '\n{}\n')],
    ['a head of another form', (text: string) => text.replace('plugmark/bundles/1', 'plugmark/bundles/2')],
    [
      'a hash of 31 bytes',
      (text: string) =>
        text.replace(/"proof":\["[^"]+"/, `"proof":["${Buffer.alloc(31).toString('base64')}"`),
    ],
  ])('%s is no shipment', (_what, change) => {
    const text = shipmentText({ size: 700, bundles: bundlesFrom(LOG.outbox(), 0) });
    expect(readShipment(typeof change === 'string' ? change : change(text))).toBeNull();
  });
});
