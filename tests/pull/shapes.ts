/** Torque traces drawn from straight lines, for tests that need to know every corner. */
export interface Corner {
  readonly atMs: number;
  readonly nm: number;
}

/** Samples of the line through the corners, every `stepMs`. */
export function drawn(corners: readonly Corner[], stepMs = 10): { atUs: number; nm: number }[] {
  const end = corners.at(-1)?.atMs ?? 0;
  const out: { atUs: number; nm: number }[] = [];
  for (let at = corners[0]?.atMs ?? 0; at <= end; at += stepMs) {
    const after = corners.findIndex(({ atMs }) => atMs >= at);
    const b = corners[after];
    const a = corners[Math.max(0, after - 1)];
    if (a === undefined || b === undefined) break;
    const share = b.atMs === a.atMs ? 1 : (at - a.atMs) / (b.atMs - a.atMs);
    out.push({ atUs: at * 1000, nm: a.nm + share * (b.nm - a.nm) });
  }
  return out;
}

/** The last hundredth of the way to the click, felt for: so that the click lies where a sample can see it. */
export const EASE_MS = 60;

/** A rise over `riseMs`, a click at `clickNm` that falls to `troughNm`, a follow-through to `peakNm`, let-off. */
export function clickPull(
  fromMs: number,
  riseMs: number,
  clickNm: number,
  troughNm: number,
  peakNm: number,
): Corner[] {
  const click = fromMs + riseMs + EASE_MS;
  return [
    { atMs: fromMs, nm: 0 },
    { atMs: fromMs + riseMs, nm: 0.99 * clickNm },
    { atMs: click, nm: clickNm },
    { atMs: click + 20, nm: troughNm },
    { atMs: click + 120, nm: peakNm },
    { atMs: click + 320, nm: 0 },
    { atMs: click + 620, nm: 0 },
  ];
}

/** The same on a plug that turns: the joint gives most at the bottom and hardens. `gives`: 0 for one that stands. */
export function turningPull(
  fromMs: number,
  riseMs: number,
  clickNm: number,
  troughNm: number,
  peakNm: number,
  gives = 1,
): Corner[] {
  const [start, ...click] = clickPull(fromMs, riseMs, clickNm, troughNm, peakNm);
  const way = [
    [0.36, 0.2],
    [0.66, 0.5],
    [0.87, 0.8],
  ] as const;
  const corners = way.map(([time, torque]) => ({
    atMs: fromMs + (torque + gives * (time - torque)) * riseMs,
    nm: torque * clickNm,
  }));
  return start === undefined ? [] : [start, ...corners, ...click];
}
