import { z } from 'zod';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';

/** What a person gave on the command line, trimmed and within what the log takes; a problem that names the option where it is not. */
export function optionText(text: string, where: string, longest: number): string {
  const parsed = z.string().min(1).max(longest).safeParse(text.trim());
  if (parsed.success) return parsed.data;
  throw new ProblemError({
    code: 'option-not-valid',
    where,
    message: w`expected 1 to ${longest} characters`,
    next: w`Write it in at most ${longest} characters.`,
  });
}
