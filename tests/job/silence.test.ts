import { describe, expect, it } from 'vitest';
import { replay } from '../../src/job/replay.ts';
import { turningPull } from '../pull/shapes.ts';
import { workshop } from './workshop.ts';

/** A pull whose last reading is that of the hand letting go; the tool sends nothing at rest. */
function letGo() {
  const shop = workshop();
  shop.join();
  const corners = turningPull(400, 700, 27, 22, 22);
  const peak = corners.findIndex(({ nm }) => nm === Math.max(...corners.map((corner) => corner.nm)));
  const low = corners.findIndex(({ nm }, i) => i > peak && nm <= 0);
  shop.draw([{ atMs: 0, nm: 0 }, ...corners.slice(0, low + 1)]);
  return shop;
}

const silence = (atUs: number) => ({ kind: 'silence', tool: 'wrench', atUs }) as const;
/** Behind all that is drawn here. */
const LATER_US = 60_000_000;

describe('a wrench that sends only what changes', () => {
  it('has its pull judged once nothing more comes, and the record is judged the same again', () => {
    const shop = letGo();
    expect(shop.cylinder(1).pulls).toEqual([]);
    shop.give(silence(LATER_US));
    expect(shop.cylinder(1)).toMatchObject({ torque: 'done', pulls: [{ pull: { cut: null } }] });
    expect(shop.events.filter(({ type }) => type === 'tool-silent')).toHaveLength(1);
    expect(replay(shop.events).ok).toBe(true);
  });

  it('leaves no trace of a silence that ended nothing', () => {
    const shop = letGo();
    shop.give(silence(LATER_US));
    const before = shop.events.length;
    shop.give(silence(2 * LATER_US));
    expect(shop.events).toHaveLength(before);
  });

  it('is waited for in the middle of a pull', () => {
    const shop = workshop();
    shop.halfPull(26);
    shop.give(silence(LATER_US));
    expect(shop.cylinder(1).pulls).toEqual([]);
    expect(shop.events.some(({ type }) => type === 'tool-silent')).toBe(false);
  });

  it('does not let a silence be written into a record where none ended anything', () => {
    const shop = workshop();
    shop.pull(27);
    shop.give({ kind: 'flush' });
    const at = shop.events.findIndex(({ type }) => type === 'readings');
    const forged = shop.events.toSpliced(at, 0, { type: 'tool-silent', tool: 'wrench', atUs: LATER_US });
    expect(replay(forged)).toMatchObject({ ok: false, error: { code: 'judged-otherwise' } });
  });

  it('lets a stroke that nothing followed be settled without another reading', () => {
    const shop = workshop();
    shop.pull(20);
    const placed = () => shop.events.filter(({ type }) => type === 'pull-placed').length;
    const before = placed();
    shop.give(silence(2 * LATER_US));
    expect(placed()).toBe(before + 1);
    expect(replay(shop.events).ok).toBe(true);
  });
});
