/** Codes of a work order and of an old plug as a cell of a paper has them. */
import type { Condition, Damage, ThreadState } from '../plug/condition.ts';
import type { FlexJoint } from '../plug/geometry.ts';
import type { Plug, Specification } from '../plug/specification.ts';
import { phrases } from '../words/catalogue.ts';

export const SEAT_WORDS: Readonly<Record<Plug['seat'], string>> = phrases({
  gasket: 'gasket seat',
  conical: 'conical seat',
});

export const GASKET_WORDS: Readonly<Record<NonNullable<Plug['gasket']>, string>> = phrases({
  new: 'new gasket',
  used: 'used gasket',
});

export const FLEX_JOINT_WORDS: Readonly<Record<FlexJoint['kind'], string>> = phrases({
  'universal-joint': 'universal joint',
  'wobble-extension': 'wobble extension',
});

/** What is on the threads that a torque holds for. */
export const THREADS_WORDS: Readonly<Record<Specification['threads'], string>> = phrases({
  dry: 'dry',
  oiled: 'oiled',
  'anti-seize': 'anti-seize',
  'factory-coated': 'factory-coated',
});

export const CONDITION_WORDS: Readonly<Record<Condition, string>> = phrases({
  normal: 'normal',
  reddish: 'reddish',
  sooty: 'sooty',
  'fuel-wet': 'fuel-wet',
  oily: 'oily',
  ash: 'ash',
  worn: 'worn',
  glazed: 'glazed',
  bridged: 'bridged',
  'metal-beads': 'metal-beads',
  overheated: 'overheated',
  'pre-ignition': 'pre-ignition',
  detonation: 'detonation',
});

export const DAMAGE_WORDS: Readonly<Record<Damage, string>> = phrases({
  'cracked-insulator': 'cracked insulator',
  'loose-centre': 'loose centre',
  'broken-ground': 'broken ground',
  'broken-shell': 'broken shell',
  'bent-electrode': 'bent electrode',
  flashover: 'flashover',
  'broken-tip': 'broken tip',
});

/** Of the thread in the head. */
export const THREAD_WORDS: Readonly<Record<ThreadState, string>> = phrases({
  sound: 'sound',
  dirty: 'dirty',
  damaged: 'damaged',
});
