/** Plugs that came to the window though nobody saw a click, when the next one follows within seconds. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { place, type Situation } from '../../src/sequence/place.ts';
import { exampleOrder, INSTRUMENTS, workshop } from '../job/workshop.ts';
import { halfway, pullOf, riseBy, second, strokeTo, tenths, tightPull, turn } from './pulls.ts';

const FROM_LOOSE = { rise: riseBy(tenths(400, 0.6)) };
const ANOTHER = { kind: 'unsure', cylinder: 2, ask: 'other-plug', because: 'turned-from-loose' };
const drawn = {
  held: fc.double({ min: 25, max: 29.9, noNaN: true }),
  share: fc.double({ min: 0.6, max: 1.17, noNaN: true }),
  pauseMs: fc.integer({ min: 0, max: 2400 }),
  clicked: fc.boolean(),
};
/** A stroke before it came to the window without a click. */
const onFrom = (heldNm: number, pauseMs: number): Situation => halfway('stroke', heldNm, pauseMs);

describe('a plug that came to the window without a click', () => {
  it('is not the one that a pull turns from loose soon after, whatever that ends at, with an angle or without', () => {
    fc.assert(
      fc.property(fc.record(drawn), ({ held, share, pauseMs, clicked }) => {
        const peak = Math.min(29.9, share * held);
        for (const change of [FROM_LOOSE, turn(20)]) {
          const ended = clicked && peak >= 25;
          const pull = ended
            ? pullOf({ peakNm: peak, highestNm: peak, releaseNm: peak, ...change })
            : strokeTo(peak, change);
          expect(place(pull, onFrom(held, pauseMs))).toMatchObject(ANOTHER);
        }
      }),
    );
  });

  it('is the one that a stroke goes on with that stood as far as it had held', () => {
    const same = { kind: 'run-down', cylinder: 2, because: 'ended-without-click' };
    expect(place(strokeTo(28), onFrom(15, 900))).toMatchObject(same);
    expect(place(strokeTo(28, { riseMs: 60, rise: riseBy(tenths(60)) }), onFrom(26, 900))).toMatchObject(
      same,
    );
    expect(place(strokeTo(29, turn(3, 26 / 29)), onFrom(26, 900))).toMatchObject(same);
  });

  it('is asked about, and so is the one after it; what is said of either moves no other', () => {
    const clicks = INSTRUMENTS.map((one) =>
      one.quantity === 'torque' ? { ...one, type: 'setting' as const } : one,
    );
    const shop = workshop(exampleOrder(4), undefined, clicks);
    shop.stopShort(27);
    shop.stopShort(27.2);
    expect(shop.bench.state().questions).toMatchObject([
      { pull: 1, cylinder: 1 },
      { pull: 2, cylinder: 1 },
    ]);
    shop.give({
      kind: 'command',
      command: { do: 'give-pull', pull: 2, cylinder: 2, why: 'it was on this one' },
    });
    shop.answer('fresh');
    expect(shop.cylinder(1)).toMatchObject({ torque: 'done', pulls: [{ pull: { pull: 1 } }] });
    expect(shop.cylinder(2)).toMatchObject({ torque: 'done', pulls: [{ pull: { pull: 2 } }] });
    shop.pull(27.3);
    expect(shop.cylinder(3)).toMatchObject({ torque: 'done', pulls: [{ pull: { pull: 3 } }] });
  });
});

describe('soon after a plug came to the window', () => {
  const LESS_SURELY = { rise: riseBy(tenths(400, 0.1)) };

  it('a pull that came there too and rather turned a plug is asked about, with a click that was seen or not', () => {
    const which = { kind: 'unsure', cylinder: 2, ask: 'which', because: 'turned-too-soon' };
    expect(place(pullOf(LESS_SURELY), second(1200))).toMatchObject(which);
    expect(place(strokeTo(27, LESS_SURELY), second(1200))).toMatchObject(which);
  });

  it('a pull on a plug that stood, or that ended lower, was once more on the same', () => {
    const again = { kind: 'rehit', cylinder: 1 };
    expect(place(tightPull(), second(1000))).toMatchObject(again);
    expect(place(strokeTo(27, { riseMs: 60, rise: riseBy(tenths(60)) }), second(1000))).toMatchObject(again);
    expect(place(strokeTo(18, { riseMs: 60, rise: riseBy(tenths(60)) }), second(1000))).toMatchObject(again);
  });
});
