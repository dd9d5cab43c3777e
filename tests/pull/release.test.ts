import { describe, expect, it } from 'vitest';
import type { Step } from '../../src/pull/climb.ts';
import { type Fall, ReleaseWatch } from '../../src/pull/release.ts';

const FRAME_MS = 4;
const step = (ms: number, nm: number): Step => ({
  nm,
  atUs: 1000 * ms,
  angleDeg: 0,
  impulseNms: 0,
  workJ: 0,
  setbackNm: 0,
});

/** Up to `topNm` within 200 ms, then through the corners, straight between them, a frame every four milliseconds. */
function falls(
  corners: readonly (readonly [ms: number, nm: number])[],
  { sigma = 0.01, lagUs = 0, topNm = 20 } = {},
): Fall[] {
  const watch = new ReleaseWatch(sigma, 1000 * FRAME_MS, lagUs);
  const found: Fall[] = [];
  const all = [[-200, 0], [0, topNm], ...corners] as const;
  for (let ms = -200; ms <= (all.at(-1)?.[0] ?? 0); ms += FRAME_MS) {
    const after = all.findIndex(([at]) => at >= ms);
    const [b, a] = [all[after] ?? all[0], all[Math.max(0, after - 1)] ?? all[0]];
    const share = b[0] === a[0] ? 1 : (ms - a[0]) / (b[0] - a[0]);
    const fall = watch.frame(step(ms, a[1] + share * (b[1] - a[1])));
    if (fall !== null) found.push(fall);
  }
  return found;
}
/** A head that gives way within `ms` by a share of the torque, and is held. */
const clicks = (share: number, ms = 16) =>
  [
    [ms, 20 * (1 - share)],
    [ms + 200, 20 * (1 - share)],
  ] as const;

describe('what is a click', () => {
  it('a fall of a tenth or more that is held; less is slight, and below 4 % nothing', () => {
    expect(falls(clicks(0.11))).toMatchObject([{ click: true, slight: false }]);
    expect(falls(clicks(0.09))).toMatchObject([{ click: false, slight: true }]);
    expect(falls(clicks(0.041))).toMatchObject([{ click: false, slight: true }]);
    expect(falls(clicks(0.039))).toEqual([]);
  });

  it('has to stand out of the noise', () => {
    expect(falls(clicks(0.2), { sigma: 4 / 9.1 })).toMatchObject([{ click: true }]);
    expect(falls(clicks(0.2), { sigma: 4 / 8.9 })).toEqual([]);
  });

  it('takes no longer than a head does, but as much more as the tool lags', () => {
    // Of a straight fall 70 % count, from where it left the top by 3 % of that.
    const [quick] = falls(clicks(0.3, 44));
    expect(quick).toMatchObject({ click: true, troughNm: 14 });
    expect(falls(clicks(0.3, 72))).toMatchObject([{ click: false }]);
    expect(falls(clicks(0.3, 72), { lagUs: 20_000 })).toMatchObject([{ click: true }]);
    expect(quick?.tookUs).toBe(28_000);
    expect(quick?.crest).toMatchObject({ nm: 20, atUs: 0 });
  });

  it('is told once it was held, or came back', () => {
    const told = (corners: Parameters<typeof falls>[0]) => falls(corners).length;
    // Held for 28 ms and a frame.
    expect(
      told([
        [16, 14],
        [44, 14],
      ]),
    ).toBe(0);
    expect(
      told([
        [16, 14],
        [48, 14],
      ]),
    ).toBe(1);
    // Back by 4 % of the top.
    expect(
      told([
        [16, 14],
        [20, 14.7],
      ]),
    ).toBe(0);
    expect(
      told([
        [16, 14],
        [20, 14.9],
      ]),
    ).toBe(1);
  });

  it('is not a hand that lets go, however quickly', () => {
    expect(
      falls([
        [40, 0.5],
        [300, 0],
      ]),
    ).toMatchObject([{ click: false }]);
    // A head that drops its torque altogether has it back at once.
    expect(
      falls([
        [20, 2],
        [60, 12],
      ]),
    ).toMatchObject([{ click: true, slight: false }]);
    expect(
      falls([
        [20, 2],
        [200, 2],
        [300, 12],
      ]),
    ).toMatchObject([{ click: false }]);
  });

  it('may come more than once', () => {
    expect(falls([...clicks(0.3), [300, 21], [316, 15], [500, 15]])).toMatchObject([
      { crest: { nm: 20 }, click: true },
      { crest: { nm: 21 }, click: true },
    ]);
  });

  it('is under way while it falls, and not before or behind', () => {
    const watch = new ReleaseWatch(0.01, 4000, 0);
    const at = (ms: number, nm: number) => {
      watch.frame(step(ms, nm));
      return watch.falling;
    };
    expect([at(0, 10), at(4, 20), at(8, 18.5), at(12, 17.9), at(16, 14)]).toEqual([
      false,
      false,
      false,
      true,
      true,
    ]);
    for (let ms = 20; ms < 80; ms += 4) at(ms, 14);
    expect(at(80, 14)).toBe(false);
  });
});
