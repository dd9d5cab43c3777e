import { expect, it } from 'vitest';
import { stationEventSchema } from '../../src/evidence/station-event.ts';

const study = (reading: number) => ({
  type: 'gauge-study-finished',
  study: 'GS-1',
  tool: 'gauge',
  serial: null,
  unit: 'mm',
  appraisers: ['A', 'B'],
  parts: ['1', '2'],
  readings: [
    [
      [reading, 0.75],
      [0.75, 0.75],
    ],
    [
      [0.75, 0.75],
      [0.75, 0.75],
    ],
  ],
});

it('a gauge study holds no reading that no certificate could hold', () => {
  for (const reading of [0.76, -1e6, 1e6])
    expect(stationEventSchema.safeParse(study(reading)).success).toBe(true);
  for (const reading of [1e160, 1.1e6, -1e308])
    expect(stationEventSchema.safeParse(study(reading)).success).toBe(false);
});
