import type { PlugSpec } from '../../../sim/physics/bench.ts';

const GASKET: PlugSpec = {
  thread: 'M14x1.25',
  seat: 'gasket',
  gasket: 'new',
  lowerNm: 25,
  upperNm: 30,
  gapLowerMm: 0.7,
  gapUpperMm: 0.8,
};

/** Invented windows, of the size that general tables give for these threads. */
export const JOINTS = {
  'M14 new gasket': GASKET,
  'M14 used gasket': { ...GASKET, gasket: 'used' },
  'M14 conical': { ...GASKET, seat: 'conical', lowerNm: 15, upperNm: 20 },
  'M10 new gasket': { ...GASKET, thread: 'M10x1', lowerNm: 10, upperNm: 13 },
  'M10 used gasket': { ...GASKET, thread: 'M10x1', gasket: 'used', lowerNm: 10, upperNm: 13 },
  'M18 conical': { ...GASKET, thread: 'M18x1.5', seat: 'conical', lowerNm: 20, upperNm: 30 },
  'M18 new gasket': { ...GASKET, thread: 'M18x1.5', lowerNm: 35, upperNm: 42 },
} as const satisfies Record<string, PlugSpec>;

/** Joints that the model was never fitted on. */
export const OTHER_JOINTS = {
  'M12 new gasket': { ...GASKET, thread: 'M12x1.25', lowerNm: 15, upperNm: 20 },
  'M12 used gasket': { ...GASKET, thread: 'M12x1.25', gasket: 'used', lowerNm: 15, upperNm: 20 },
  'M14 conical, oiled': { ...GASKET, seat: 'conical', lowerNm: 15, upperNm: 20, threads: 'oiled' },
  'M12 conical, anti-seize': {
    ...GASKET,
    thread: 'M12x1.25',
    seat: 'conical',
    lowerNm: 11,
    upperNm: 15,
    threads: 'anti-seize',
  },
} as const satisfies Record<string, PlugSpec>;
