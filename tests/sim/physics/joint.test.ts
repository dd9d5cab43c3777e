import { describe, expect, it } from 'vitest';
import { Joint, type JointSpec } from '../../../sim/physics/joint.ts';
import { screwOf } from '../../../sim/physics/screw.ts';
import { Random } from '../../../sim/random.ts';
import { median, SEEDS } from './rig.ts';

const STIFFNESS = 4.5;
const SPEC: JointSpec = {
  thread: 'M14x1.25',
  seat: 'gasket',
  gasket: 'new',
  threads: 'dry',
  referenceNm: 27.5,
  crossThreaded: false,
};

function tightJoint(spec: Partial<JointSpec>, seed: number, toNm = 27.5): { joint: Joint; deg: number } {
  const joint = new Joint({ ...SPEC, ...spec }, new Random(seed));
  joint.fingerTight();
  return { joint, deg: tighten(joint, toNm) };
}

/** Turns the spring's far end slowly until the torque is reached, lets off, and returns how far the plug turned. */
function tighten(joint: Joint, toNm: number): number {
  const from = joint.angleDeg;
  for (let drive = from; joint.follow(drive, STIFFNESS) < toNm; ) drive += 0.05;
  joint.follow(joint.angleDeg, STIFFNESS);
  return joint.angleDeg - from;
}

describe('screw', () => {
  // Motosh for M14x1.25, ring 14.5 to 20.5 mm, 25 N·m: worked figures for three coefficients of friction.
  it.each([
    [0.1, 13.62],
    [0.15, 9.42],
    [0.2, 7.2],
  ])('turns 25 N·m into the clamp force of the worked example at µ = %f', (mu, kilonewton) => {
    const { tightenM } = screwOf({ thread: 'M14x1.25', seat: 'gasket' }, mu, mu);
    expect(25 / tightenM / 1000).toBeCloseTo(kilonewton, 1);
  });

  it('takes less to loosen than to tighten, by twice the pitch term', () => {
    const { tightenM, loosenM } = screwOf({ thread: 'M10x1', seat: 'conical' }, 0.15, 0.15);
    expect((tightenM - loosenM) * 1000).toBeCloseTo(1 / Math.PI, 6);
  });
});

describe('joint', () => {
  it('crushes a new gasket by half to two thirds of a turn on its way to the torque', () => {
    const turns = SEEDS.map((seed) => tightJoint({}, seed).deg);
    expect(Math.min(...turns)).toBeGreaterThanOrEqual(180);
    expect(Math.max(...turns)).toBeLessThanOrEqual(240);
    expect(Math.max(...turns) - Math.min(...turns)).toBeGreaterThan(10);
  });

  it('brings a used gasket there in about 1/12 and a cone in about 1/16 of a turn', () => {
    const used = SEEDS.map((seed) => tightJoint({ gasket: 'used' }, seed).deg);
    const conical = SEEDS.map((seed) => tightJoint({ seat: 'conical' }, seed).deg);
    expect(median(used)).toBeGreaterThan(28);
    expect(median(used)).toBeLessThan(32);
    expect(median(conical)).toBeGreaterThan(21);
    expect(median(conical)).toBeLessThan(24);
  });

  it('treats a new gasket that was crushed once as a used one', () => {
    for (const seed of SEEDS) {
      const { joint } = tightJoint({}, seed);
      joint.backOut();
      joint.fingerTight();
      const again = tighten(joint, 27.5);
      expect(again).toBeGreaterThan(22);
      expect(again).toBeLessThan(40);
    }
  });

  it('keeps its angle and its clamp force when the wrench lets off', () => {
    const { joint } = tightJoint({}, 5);
    const [angle, clamp] = [joint.angleDeg, joint.clampN];
    expect(joint.follow(angle, STIFFNESS)).toBe(0);
    expect(joint.angleDeg).toBe(angle);
    expect(joint.clampN).toBe(clamp);
    expect(clamp).toBeGreaterThan(7000);
    expect(clamp).toBeLessThan(14_000);
  });

  it('does not turn a tight plug until the torque is a little above what it saw last', () => {
    for (const seed of SEEDS) {
      const { joint } = tightJoint({}, seed);
      const rest = joint.angleDeg;
      expect(joint.follow(rest + 27.5 / STIFFNESS, STIFFNESS)).toBeCloseTo(27.5, 6);
      expect(joint.angleDeg).toBe(rest);
      joint.follow(rest, STIFFNESS);
      tighten(joint, 27.5 * 1.1);
      expect(joint.angleDeg).toBeGreaterThan(rest + 0.5);
    }
  });

  it('loosens at less torque than it was tightened with, and then quickly lets go', () => {
    for (const seed of SEEDS) {
      const { joint } = tightJoint({ seat: 'conical' }, seed);
      let lowest = 0;
      for (let drive = joint.angleDeg; drive > joint.contactDeg - 30; drive -= 0.05)
        lowest = Math.min(lowest, joint.follow(drive, STIFFNESS));
      expect(lowest).toBeLessThan(-0.6 * 27.5);
      expect(lowest).toBeGreaterThan(-27.5);
      expect(joint.clampN).toBe(0);
      expect(joint.holdsNm).toBeLessThan(1);
    }
  });

  it('binds turns before the seat when cross-threaded, without any clamp force', () => {
    const { joint, deg } = tightJoint({ crossThreaded: true }, 1);
    expect(joint.angleDeg).toBeLessThan(joint.contactDeg - 360);
    expect(deg).toBeGreaterThan(50);
    expect(deg).toBeLessThan(180);
    expect(joint.clampN).toBe(0);
  });

  it('clamps harder at the same torque on anti-seize', () => {
    const dry = SEEDS.map((seed) => tightJoint({}, seed).joint.clampN);
    const greased = SEEDS.map((seed) => tightJoint({ threads: 'anti-seize' }, seed).joint.clampN);
    expect(median(greased) / median(dry)).toBeGreaterThan(1.3);
    expect(median(greased) / median(dry)).toBeLessThan(1.6);
  });
});
