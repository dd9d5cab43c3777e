/** Reasons that a list offers: what is recorded is the code, so that each reader has it in a language of his own. */
import { z } from 'zod';

export const reasonCodeSchema = z.enum([
  'wrench-was-on-that-plug',
  'wrong-cylinder-chosen',
  'only-finger-tight',
  'not-fitted-yet',
  'thread-or-seat-to-look-at',
  'pull-not-clean',
  'plug-damaged',
  'thread-and-seat-sound',
  'service-information-allows-it',
  'done-in-time-confirmed-late',
  'order-does-not-matter-here',
  'wrong-key-pressed',
  'measured-or-read-again',
  'was-another-cylinder',
  'no-room-for-the-wrench',
  'no-adapter-reaches-it',
  'wrench-sends-no-angle',
  'does-not-apply-to-this-engine',
  'done-before-the-job-was-opened',
  'cannot-be-done-here',
]);
export type ReasonCode = z.infer<typeof reasonCodeSchema>;
