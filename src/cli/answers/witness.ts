/** Answers about witnesses: what a witness cosigned, and what witnesses answered a station. */
import { z } from 'zod';
import type { WitnessedLog } from '../../../db/witness.ts';
import type { Asked } from '../station/ask-witness.ts';
import { answer, count, time } from './answer.ts';

export const witnessListAnswer = answer('witness-list', {
  name: z.string().describe('Name of the witness.'),
  logs: z
    .array(
      z.strictObject({
        origin: z.string().describe('The log, as its checkpoints name it.'),
        entries: count.nullable().describe('Size of the newest checkpoint that it cosigned; null before.'),
        at: time.nullable().describe('When it cosigned that one; null before.'),
        vkey: z.string().describe('The verifier key of the log: the one that signs it now.'),
        keyAdded: time.describe('When that key was added.'),
        keysRetired: count.describe('Keys of the log before it, which sign nothing more here.'),
        forks: count.describe('Checkpoints that it keeps as proof of a second history; 0 where all is well.'),
      }),
    )
    .describe('The logs that it knows.'),
}).describe('What "plugmark witness list --json" prints.');

export const listedLogs = (
  name: string,
  logs: readonly WitnessedLog[],
): z.infer<typeof witnessListAnswer> => ({
  form: 'plugmark/witness-list/1',
  name,
  logs: logs.map(({ size, ...log }) => ({ ...log, entries: size })),
});

export const logWitnessAnswer = answer('log-witness', {
  entries: count.nullable().describe('Size of the checkpoint that was sent; null where nothing is signed.'),
  witnesses: z
    .array(
      z.strictObject({
        url: z.string().describe('Its address, from the station file.'),
        outcome: z
          .enum(['cosigned', 'ahead', 'refused', 'not-reached'])
          .describe(
            'It cosigned; it has a longer log of this station; it refused; or it could not be reached.',
          ),
        at: time.nullable().describe('When it cosigned, by its own clock; null where it did not.'),
        longer: count.nullable().describe('Size of the longer log that it has; null where it has none.'),
        reason: z.string().nullable().describe('Why it refused or was not reached; null otherwise.'),
      }),
    )
    .describe('What each witness of the station file answered; empty where nothing was sent.'),
}).describe('What "plugmark log witness --json" prints.');

export const askedWitnesses = (
  entries: number | null,
  answers: readonly { readonly url: string; readonly answer: Asked }[],
): z.infer<typeof logWitnessAnswer> => ({
  form: 'plugmark/log-witness/1',
  entries,
  witnesses: answers.map(({ url, answer: one }) => ({
    url,
    outcome: one.kind,
    at: one.kind === 'cosigned' ? one.at : null,
    longer: one.kind === 'ahead' ? one.size : null,
    reason: 'why' in one ? one.why : null,
  })),
});
