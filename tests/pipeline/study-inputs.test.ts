import { ReplaySubject, Subject } from 'rxjs';
import { describe, expect, it } from 'vitest';
import type { LinkState, Tool } from '../../drivers/driver.ts';
import type { SittingInput } from '../../src/audit/gauge-sitting.ts';
import { studyInputs } from '../../src/pipeline/study-inputs.ts';
import type { Reading, ToolDescription } from '../../src/reading.ts';
import { ok } from '../../src/result.ts';
import { clickPull, drawn } from '../pull/shapes.ts';

describe('a tool in a study', () => {
  const description = (quantity: 'torque' | 'length'): ToolDescription => ({
    quantity,
    unit: quantity === 'torque' ? 'N.m' : 'm',
    exponent: quantity === 'torque' ? -2 : -6,
    samplingFunction: 'instantaneous',
    link: { kind: 'bluetooth-le', authenticated: false },
  });
  function tool(quantity: 'torque' | 'length') {
    const link$ = new ReplaySubject<LinkState>(1);
    const readings$ = new Subject<Reading>();
    const got: SittingInput[] = [];
    const joined: Tool = {
      id: quantity,
      driver: 'test',
      quantity,
      source: 'linked',
      timing: { stamps: 'device' },
      link$,
      readings$,
      connect: () => Promise.resolve(ok(description(quantity))),
      close: () => Promise.resolve(),
    };
    studyInputs(joined, 25).subscribe((one) => got.push(one));
    link$.next({ state: 'linked', description: description(quantity) });
    return {
      got,
      link$,
      readings$,
      values: () => got.flatMap((one) => (one.kind === 'value' ? [one.value] : [])),
      refused: () => got.flatMap((one) => (one.kind === 'refused' ? [one.words] : [])),
    };
  }

  it('gives the peak of each whole pull and the torque meanwhile, and why the rest is not taken', () => {
    const { got, link$, readings$, values, refused } = tool('torque');
    let n = 0;
    let at = 0;
    const draw = (corners: Parameters<typeof drawn>[0], sign = 1) => {
      for (const { nm } of drawn(corners)) {
        at += 10_000;
        readings$.next({ kind: 'value', n: ++n, atUs: at, counts: Math.round(sign * 100 * nm) });
      }
    };
    const rest = (ms: number) =>
      draw([
        { atMs: 0, nm: 0 },
        { atMs: ms, nm: 0 },
      ]);
    const pull = [{ atMs: 0, nm: 0 }, ...clickPull(400, 700, 26, 20, 20)];
    rest(3000);
    draw(pull);
    expect(values()).toHaveLength(1);
    expect(Math.abs((values()[0] ?? 0) - 26)).toBeLessThan(0.3);
    const live = got.flatMap((one) => (one.kind === 'live' && one.pulling ? [one.nowNm] : []));
    expect(Math.max(...live)).toBeGreaterThan(25);
    // A second click on the same part would be taken for the next part.
    draw(pull);
    expect(refused()).toEqual(['Too soon after the last reading: not taken.']);
    rest(3000);
    draw(pull, -1);
    expect(refused().at(-1)).toBe('That pull loosened: not taken.');
    rest(3000);
    draw(pull);
    expect(values()).toHaveLength(2);
    link$.next({ state: 'lost', reason: 'tool-switching-off' });
    expect(got.at(-1)).toEqual({ kind: 'link', link: { state: 'lost', reason: 'tool-switching-off' } });
  });

  it('gives each reading of a gauge, but none that came too soon, from its memory, or without a value', () => {
    const { readings$, values, refused } = tool('length');
    const at = (ms: number, counts: number) =>
      readings$.next({ kind: 'value', n: 1, atUs: 1000 * ms, counts });
    at(0, 750);
    at(900, 751);
    at(1100, 752);
    readings$.next({ kind: 'stored', n: 4, atUs: 9_000_000, counts: 753 });
    readings$.next({ kind: 'not-known', n: 5, atUs: 9_100_000 });
    readings$.next({ kind: 'raw', n: 6, atUs: 9_200_000, source: 'x', hex: 'ff' });
    expect(values()).toEqual([0.75, 0.752]);
    expect(refused().map((words) => words.slice(0, 20))).toEqual([
      'Too soon after the l',
      'A reading from the m',
      'The tool sent no val',
      'This is not a figure',
    ]);
  });
});
