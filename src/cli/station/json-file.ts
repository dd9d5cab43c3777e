import type { z } from 'zod';
import { parseStrictJson } from '../../evidence/strict-json.ts';
import { inputName, readBytes } from '../../files/input.ts';
import { ProblemError, problemFromZod } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';

/** Nothing that people write by hand is larger. */
const MAX_BYTES = 1 << 20;

/** Reads a JSON file that a person wrote and holds it against its schema; problems name the file and the place in it. */
export async function readJson<T extends z.ZodType>(
  file: string,
  schema: T,
  what: string,
  example: string,
): Promise<z.infer<T>> {
  const next = w`Compare it with ${example}.`;
  const name = inputName(file);
  const value = orThrow(parseStrictJson(await readBytes(file, what, MAX_BYTES), name));
  const parsed = schema.safeParse(value);
  if (!parsed.success) throw new ProblemError(problemFromZod(parsed.error, name, 'input-not-valid', next));
  return parsed.data;
}
