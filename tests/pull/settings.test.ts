import { describe, expect, it } from 'vitest';
import { detectorSettings, endsScale, settingsFor } from '../../src/pull/settings.ts';
import type { ToolDescription } from '../../src/reading.ts';

const TOOL: ToolDescription = {
  quantity: 'torque',
  unit: 'N.m',
  exponent: -2,
  samplingFunction: 'instantaneous',
  link: { kind: 'direct', authenticated: false },
};
const of = (change: Partial<ToolDescription>) => settingsFor(25, { ...TOOL, ...change });

describe('what a detector is set to', () => {
  it('starts a pull at 8 % of the lower limit', () => {
    expect(detectorSettings(25)).toEqual({
      startNm: 2,
      stepNm: 0,
      range: null,
      stream: 'samples',
      silentMs: 2000,
    });
  });

  it('takes the step that a tool states, else one of its counts', () => {
    expect(of({}).stepNm).toBe(0.01);
    expect(of({ resolutionCounts: 0 }).stepNm).toBe(0.01);
    expect(of({ resolutionCounts: 5 }).stepNm).toBe(0.05);
  });

  it('takes the range, unless its upper end says nothing', () => {
    expect(of({ validRange: { lowerCounts: -6000, upperCounts: 6000 } }).range).toEqual({
      lowerNm: -60,
      upperNm: 60,
    });
    expect(of({ validRange: { lowerCounts: -6000, upperCounts: 1 } }).range).toEqual({
      lowerNm: -60,
      upperNm: 0.01,
    });
    expect(of({ validRange: { lowerCounts: 0, upperCounts: 0 } }).range).toBeNull();
  });

  it('waits two seconds for the next maximum, or three of the tool’s own steps', () => {
    expect(of({}).silentMs).toBe(2000);
    expect(of({ updateIntervalMs: 600 }).silentMs).toBe(2000);
    expect(of({ updateIntervalMs: 700 }).silentMs).toBe(2100);
  });

  it('takes highest figures for what they are', () => {
    for (const samplingFunction of ['maximum', 'minimum'] as const)
      expect(of({ samplingFunction }).stream).toBe('maxima');
    expect(of({ samplingFunction: 'instantaneous' }).stream).toBe('samples');
  });

  it('takes the drift that a gyroscope states a minute, else ten degrees, by the second', () => {
    expect(of({ angle: { exponent: -1, driftDegPerMin: 6 } }).angle).toEqual({
      stepDeg: 0.1,
      driftDegPerS: 0.1,
    });
    expect(of({ angle: { exponent: -1, resolutionCounts: 5 } }).angle).toEqual({
      stepDeg: 0.5,
      driftDegPerS: 0.166667,
    });
    expect(of({})).not.toHaveProperty('angle');
  });
});

describe('the end of the scale', () => {
  const settings = detectorSettings(25, { range: { lowerNm: -20, upperNm: 60 }, stepNm: 0.5 });
  it.each([
    [59.49, false],
    [59.5, true],
    [61, true],
    [-19.49, false],
    [-19.5, true],
  ])('a reading of %d N·m: %s', (nm, ends) => {
    expect(endsScale(settings, nm)).toBe(ends);
  });

  it('has none below where the tool starts at nothing, and none at all where it states no range', () => {
    expect(endsScale({ ...settings, range: { lowerNm: 0, upperNm: 60 } }, -5)).toBe(false);
    expect(endsScale({ ...settings, range: null }, 1000)).toBe(false);
  });
});
