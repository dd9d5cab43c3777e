/** Answers about the shop's own library of specifications. */
import { z } from 'zod';
import { type LibraryEntry, libraryEntrySchema } from '../../job/library.ts';
import type { Problem } from '../../problem.ts';
import { answer, count, reason, reasonOf } from './answer.ts';

const listedSpecification = z.strictObject({
  file: z.string().describe('File of the specification.'),
  name: z.string().describe('Its name.'),
  part: z.string().describe('Part number of the plug.'),
  torque: z.string().describe('The torque as the source has it, with its unit.'),
  source: z.string().describe('Title of the source.'),
});

export const specificationsListAnswer = answer('specifications-list', {
  folder: z.string().describe('The folder of the library.'),
  specifications: z.array(listedSpecification).describe('The specifications that can be read.'),
  unreadable: count.describe('How many files cannot be read.'),
}).describe('What "plugmark specifications list --json" prints.');

export const specificationsShowAnswer = answer('specifications-show', {
  specification: libraryEntrySchema.describe('The specification, as its file has it.'),
}).describe('What "plugmark specifications show --json" prints.');

export const specificationsCheckAnswer = answer('specifications-check', {
  specifications: z
    .array(
      z.strictObject({
        file: z.string().describe('File of the specification.'),
        name: z.string().nullable().describe('Its name; null where it cannot be read.'),
        state: z
          .enum(['usable', 'not-in-log', 'wrong'])
          .describe(
            'A job can be opened with it; the same, but the log does not contain it; or no job can be.',
          ),
        problem: reason.nullable().describe('Why no job can be opened with it; null where one can.'),
      }),
    )
    .describe('Every file of the library.'),
}).describe('What "plugmark specifications check --json" prints.');

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
