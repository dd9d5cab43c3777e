import { z } from 'zod';

/** Why a pull was taken for what it is. What is printed for each is in report/words/placement.ts. */
export const placementReasonSchema = z.enum([
  // no plug was tightened
  'too-little-torque',
  'knock',
  'none-due',
  // it reached the window, or was on the way
  'plug-turned',
  'first-plug',
  'went-on-from-stroke',
  'went-on-after-short',
  'ended-low',
  'next-plug-ended-low',
  'ended-without-click',
  'low-during-question',
  'stopped-short',
  'same-plug-again',
  'tight-plug-again',
  // asked
  'did-not-turn',
  'tight-or-turning',
  'last-tight-or-turning',
  'turned-too-soon',
  'stroke-before-in-doubt',
  'below-held',
  'slow-to-held',
  'maybe-tight',
  'did-not-turn-on',
  'last-stroke-elsewhere',
  'turned-from-loose',
  'knock-or-short',
  'no-click-and-nothing-followed',
  'went-on-from-question',
  'during-question',
  'turned-though-all-done',
  'turned-again-later',
  'check-above-window',
  'end-missing',
  'end-of-scale',
  'two-tools-at-once',
  // loosened
  'to-be-backed-out',
  'none-tight-yet',
  'loosened-after-proof',
  'loosened-at-once',
  // a person said so, or a later pull did
  'answered',
  'given',
  'with-other-pull',
  'other-pull-went-on',
  'cylinder-left-out',
]);
export type PlacementReason = z.infer<typeof placementReasonSchema>;
