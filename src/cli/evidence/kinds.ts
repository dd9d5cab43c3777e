import type { Kinds } from '../../evidence/sharing.ts';
import { type PersonalKind, personalKindSchema } from '../../personal.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';

const KINDS = personalKindSchema.options;

/** What `--without` names: kinds of personal text with commas between them, or `all`. */
export function kindsIn(text: string): Kinds {
  const names = text.split(',').map((name) => name.trim());
  if (names.includes('all')) return new Set(KINDS);
  const stranger = names.find((name) => !isKind(name));
  if (stranger !== undefined)
    throw new ProblemError({
      code: 'option-not-valid',
      where: '--without',
      message: w`there is no kind of personal text "${stranger}"`,
      next: w`Choose from: ${KINDS.join(', ')}; or all.`,
    });
  return new Set(names.filter(isKind));
}

const isKind = (name: string): name is PersonalKind => personalKindSchema.safeParse(name).success;
