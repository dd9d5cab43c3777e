/** A bench with two wrenches and a gauge, and hands for both wrenches. */
import type { Instrument } from '../../src/instrument/instrument.ts';
import type { Opening } from '../../src/job/open.ts';
import { type Corner, drawn, turningPull } from '../pull/shapes.ts';
import { exampleOrder, INSTRUMENTS, WRENCH, workshop } from './workshop.ts';

const [FIRST, GAUGE_ONE] = INSTRUMENTS;
if (FIRST === undefined || GAUGE_ONE === undefined) throw new Error('two instruments');
/** Less certain than the first: its guard bands are wider. */
const SECOND: Instrument = {
  ...FIRST,
  id: 'wrench-2',
  serial: 'W-2',
  permissibleDeviation: { kind: 'relative', percent: 4 },
};
export const TWO_WRENCHES = [FIRST, SECOND, GAUGE_ONE] as const;
const LINK = { kind: 'bluetooth-le', authenticated: false } as const;

/** A workshop whose second wrench is joined too; it pulls on its own. */
export function shopWithTwo(given: Partial<Opening> = {}) {
  const shop = workshop(exampleOrder(4), undefined, TWO_WRENCHES, given);
  shop.give({
    kind: 'link',
    tool: 'wrench-2',
    driver: 'test',
    source: 'linked',
    link: { state: 'linked', description: { ...WRENCH, serial: 'W-2', link: LINK } },
  });
  let n = 0;
  let nowMs = 100_000;
  const draw = (corners: readonly Corner[]) => {
    for (const { atUs, nm } of drawn(corners)) {
      n += 1;
      const at = Math.round(nowMs * 1000 + atUs);
      const reading = { kind: 'value', n, atUs: at, counts: Math.round(nm * 100) } as const;
      shop.give({ kind: 'reading', tool: 'wrench-2', reading });
    }
    nowMs += (corners.at(-1)?.atMs ?? 0) + 10;
    shop.wait(nowMs);
  };
  const second = (peakNm: number) => {
    draw([
      { atMs: 0, nm: 0 },
      { atMs: 3000, nm: 0 },
    ]);
    draw([{ atMs: 0, nm: 0 }, ...turningPull(400, 700, peakNm, peakNm * 0.8, peakNm * 0.8)]);
    draw([
      { atMs: 0, nm: 0 },
      { atMs: 3000, nm: 0 },
    ]);
  };
  return { ...shop, second };
}
export type TwoWrenches = ReturnType<typeof shopWithTwo>;
