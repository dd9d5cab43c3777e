/** A reason that was picked from a list, in words; what a person said in his own words stays as it is. */
import { type ReasonCode, reasonCodeSchema } from '../../job/reason.ts';
import { phrases } from '../../words/catalogue.ts';

const REASON_WORDS: Readonly<Record<ReasonCode, string>> = phrases({
  'wrench-was-on-that-plug': 'the wrench was on that plug',
  'wrong-cylinder-chosen': 'the wrong cylinder was chosen on the screen',
  'only-finger-tight': 'its plug was only finger-tight',
  'not-fitted-yet': 'its plug was not fitted yet',
  'thread-or-seat-to-look-at': 'thread or seat needs a look',
  'pull-not-clean': 'the pull was not a clean one',
  'plug-damaged': 'the plug was damaged',
  'thread-and-seat-sound': 'thread and seat inspected, both sound',
  'service-information-allows-it': 'the service information allows it',
  'done-in-time-confirmed-late': 'it was done in time, and confirmed late',
  'order-does-not-matter-here': 'on this engine the order does not matter',
  'wrong-key-pressed': 'the wrong key was pressed',
  'measured-or-read-again': 'measured or read again',
  'was-another-cylinder': 'it was another cylinder',
  'no-room-for-the-wrench': 'no room for the wrench',
  'no-adapter-reaches-it': 'no adapter that reaches it',
  'wrench-sends-no-angle': 'the wrench sends no angle',
  'does-not-apply-to-this-engine': 'does not apply to this engine',
  'done-before-the-job-was-opened': 'done before this job was opened',
  'cannot-be-done-here': 'cannot be done here',
});

/** The reason as its reader has it. */
export function reasonWords(reason: string): string {
  const code = reasonCodeSchema.safeParse(reason);
  return code.success ? REASON_WORDS[code.data] : reason;
}
