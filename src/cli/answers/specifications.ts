/** Answers about the shop's own library of specifications. */
import { z } from 'zod';
import { type LibraryEntry, libraryEntrySchema } from '../../job/library.ts';
import type { Problem } from '../../problem.ts';
import { answer, count, reason, reasonOf } from './answer.ts';

const listedSpecification = z.strictObject({
  file: z.string(),
  name: z.string(),
  part: z.string(),
  torque: z.string(),
  source: z.string(),
});

export const specificationsListAnswer = answer('specifications-list', {
  folder: z.string(),
  specifications: z.array(listedSpecification),
  unreadable: count,
});

export const specificationsShowAnswer = answer('specifications-show', { specification: libraryEntrySchema });

export const specificationsCheckAnswer = answer('specifications-check', {
  specifications: z.array(
    z.strictObject({
      file: z.string(),
      name: z.string().nullable(),
      state: z.enum(['usable', 'not-in-log', 'wrong']),
      problem: reason.nullable(),
    }),
  ),
});

/** An entry and the file that it is in. */
interface InFile {
  readonly file: string;
  readonly entry: LibraryEntry;
}

export const listedSpecifications = (
  folder: string,
  kept: readonly InFile[],
  unreadable: number,
): z.infer<typeof specificationsListAnswer> => ({
  form: 'plugmark/specifications-list/1',
  folder,
  specifications: kept.map(({ file, entry: { name, plug, specification } }) => ({
    file,
    name,
    part: plug.part,
    torque: specification.torque,
    source: specification.source.title,
  })),
  unreadable,
});

export const shownSpecification = (
  specification: LibraryEntry,
): z.infer<typeof specificationsShowAnswer> => ({ form: 'plugmark/specifications-show/1', specification });

export interface LookedAt extends InFile {
  /** Why no job could be opened with it. */
  readonly problem: Problem | null;
  /** The log knows it. */
  readonly recorded: boolean;
}

export const checkedSpecifications = (
  faults: readonly Problem[],
  looked: readonly LookedAt[],
): z.infer<typeof specificationsCheckAnswer> => ({
  form: 'plugmark/specifications-check/1',
  specifications: [
    ...faults.map((problem) => ({
      file: problem.where ?? '',
      name: null,
      state: 'wrong' as const,
      problem: reasonOf(problem),
    })),
    ...looked.map(({ file, entry, problem, recorded }) => ({
      file,
      name: entry.name,
      state: problem !== null ? ('wrong' as const) : recorded ? ('usable' as const) : ('not-in-log' as const),
      problem: problem && reasonOf(problem),
    })),
  ],
});
