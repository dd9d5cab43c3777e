import { describe } from 'vitest';
import { lubricatedShare, plugJoint, torqueParts } from '../../src/plug/friction.ts';
import { agrees } from './published.ts';

/** Thread, bearing radius from dw (ISO 4014) and dh (ISO 273), force in kN and torque in N·m, fine thread, 8.8, µ 0.12. */
const VDI: readonly (readonly [
  name: string,
  diameter: number,
  pitch: number,
  dw: number,
  dh: number,
  kN: number,
  nm: number,
])[] = [
  ['M10x1.25', 10, 1.25, 14.63, 11, 31.6, 51],
  ['M12x1.25', 12, 1.25, 16.63, 13.5, 48.0, 90],
  ['M14x1.5', 14, 1.5, 19.64, 15.5, 64.8, 142],
  ['M16x1.5', 16, 1.5, 22.49, 17.5, 87.6, 218],
  ['M18x1.5', 18, 1.5, 25.34, 20, 117, 327],
];

describe('tightening torque from clamp force', () => {
  for (const [name, diameter, pitchMm, dw, dh, kN, nm] of VDI) {
    const joint = {
      pitchMm,
      threadRadiusMm: (diameter - 0.649519 * pitchMm) / 2,
      bearingRadiusMm: (dw + dh) / 4,
    };
    agrees(
      {
        what: `${name}, µ 0.12, ${kN} kN: torque in N·m`,
        value: nm,
        // The force is rounded to three figures as well.
        within: 0.006 * nm,
        source: 'tables after VDI 2230',
        confirmed: 'second-hand',
      },
      () => kN * torqueParts(joint, 0.12, 0.12).total,
    );
  }
});

describe('a plug by Motosh: M14x1.25, 25 N·m', () => {
  const joint = plugJoint('M14x1.25');
  const source = 'own computation, independent of the program';
  for (const [friction, kN, pitch, thread, bearing] of [
    [0.1, 13.62, 10.8, 41.5, 47.7],
    [0.15, 9.42, 7.5, 43.0, 49.5],
    [0.2, 7.2, 5.7, 43.9, 50.4],
  ] as const) {
    const parts = torqueParts(joint, friction, friction);
    const check = (what: string, value: number, within: number, ours: () => number) =>
      agrees({ what: `µ ${friction}: ${what}`, value, within, source, confirmed: 'computed' }, ours);
    check('clamp force, kN', kN, 0.005, () => 25 / parts.total);
    check('share of the pitch, %', pitch, 0.05, () => (100 * parts.pitch) / parts.total);
    check('share of the thread, %', thread, 0.05, () => (100 * parts.thread) / parts.total);
    check('share of the seat, %', bearing, 0.05, () => (100 * parts.bearing) / parts.total);
  }
  agrees(
    {
      what: 'reduction for the same clamp force, µ 0.15 to 0.10',
      value: 0.31,
      within: 0.005,
      source: 'own computation; a plug maker says about 30 %',
      confirmed: 'computed',
    },
    () => 1 - lubricatedShare('M14x1.25', 0.15, 0.1),
  );
});
