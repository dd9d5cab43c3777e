/** What the screen says where the order names an angle in place of a torque. */
import { describe, expect, it } from 'vitest';
import { nextSentence } from '../../src/ui/next-step.ts';
import { turningShop } from '../job/turning-shop.ts';
import { linesOf } from './drawn.tsx';
import { viewOf } from './fixtures.ts';

const byAngle = (angle = true, torque = '1/2-2/3 turn') =>
  turningShop({ specification: { torque, gapRules: { check: 'not-permitted' } }, angle });
const frame = (shop: ReturnType<typeof byAngle>, live = {}, size = {}) =>
  linesOf(viewOf(shop.bench.state(), live), size).join('\n');

describe('the screen of an order by angle', () => {
  it('names the turn and not a click, and counts degrees while the plug is turned', () => {
    const shop = byAngle();
    expect(nextSentence(shop.bench.state())).toBe(
      'Cylinder 1: fit the plug by hand to contact, then turn it 180° to 240°.',
    );
    const now = frame(shop, { pulling: true, nowNm: 7, turnedDeg: 64 });
    expect(now).toContain('turned 64°');
    expect(now).toContain('turn 180° to 240°');
    expect(now).toContain('degrees turned');
    expect(now).not.toMatch(/click|window/i);
  });

  it('says how far a plug has come, and to where it is turned on', () => {
    const shop = byAngle();
    shop.stroke(20, (nm) => 7.5 * nm);
    expect(nextSentence(shop.bench.state())).toMatch(
      /^Cylinder 1 is at 14\d°: turn it on to 180° to 240°\.$/,
    );
    expect(frame(shop)).toMatch(/Cylinder 1 NOT OK, turn 14\d° ± \d\.\d°: NOT OK/);
  });

  it.each([
    { columns: 80, rows: 24 },
    { columns: 120, rows: 40 },
    { columns: 60, rows: 20 },
  ])('shows the verdict on the turn at $columns by $rows', (size) => {
    const shop = byAngle();
    shop.stroke(28, (nm) => 7.5 * nm);
    expect(frame(shop, {}, size)).toMatch(/Cylinder 1 OK, turn 20\d° ± \d\.\d°: OK/);
  });

  it.each([
    ['the wrench sends no angle', () => byAngle(false), '180° to 240°'],
    ['the order names one figure', () => byAngle(true, '1/2 turn'), '180°'],
  ])('asks for a plug to be turned by hand where %s', (_what, open, limits) => {
    expect(nextSentence(open().bench.state())).toBe(
      `Cylinder 1: turn the plug by hand by ${limits} from contact. No wrench proves it here: press c, then e to record it.`,
    );
  });
});
