/** Who sent a request, and that it was noted before it is answered. */
import { tokenHash } from '../archive/enrolment.ts';
import type { Reader, ReaderStore } from '../archive/readers.ts';
import type { Asker } from '../archive/roles.ts';

export interface Identified {
  readonly asker: Asker;
  /** The hash of what was shown: tells one asker from another without anything that lets somebody in. */
  readonly by: string;
}

/** `authorization` is the header. Null for nobody: a token that is not there, or whose time is over. */
export async function askerOf(
  readers: Pick<ReaderStore, 'of'>,
  authorization: string | undefined,
  now: string,
): Promise<Identified | null> {
  const token = /^Bearer ([\w-]{1,200})$/.exec(authorization ?? '')?.[1];
  if (token === undefined) return null;
  const by = tokenHash(token);
  const reader = await readers.of(by, now);
  return reader === null ? null : { asker: askerWith(reader), by };
}

/** A token for a whole tenant is an auditor's, one for a single log the foreman's of that shop. */
function askerWith({ tenant, log, name }: Reader): Asker {
  return log === null
    ? { tenant, role: 'auditor', who: name }
    : { tenant, role: 'foreman', who: name, shops: [log] };
}

/** What somebody reads is on disk before the answer goes out: who, when, and what was asked for, without the contents. */
export const noted = (
  readers: Pick<ReaderStore, 'noteRead'>,
  { tenant, who }: Asker,
  { at, question }: { readonly at: string; readonly question: string },
): Promise<void> => readers.noteRead({ tenant, at, reader: who, question });
