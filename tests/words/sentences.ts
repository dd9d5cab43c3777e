/** Every sentence of the program that the catalogue knows, read from its sources. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type ts from 'typescript';
import { z } from 'zod';
// @ts-expect-error: a script of the build
import * as reading from '../../src/web/sentences.mjs';

const ROOT = new URL('../../', import.meta.url).pathname;
const SRC = `${ROOT}src/`;
const readingSchema = z.object({
  sentencesOf: z.function({ input: [z.array(z.string())], output: z.map(z.string(), z.string()) }),
  sentencesIn: z.function({ input: [z.custom<ts.Node>()], output: z.array(z.string()) }),
});

export const { sentencesIn, sentencesOf } = readingSchema.parse(reading);

/** English sentence, as `src/words/catalogue.ts` makes its key, to the file that says it. */
export const sentencesOfProgram = (): ReadonlyMap<string, string> =>
  new Map(
    [
      ...sentencesOf([
        ...sources(SRC),
        ...sources(`${ROOT}db`),
        ...sources(`${ROOT}drivers`),
        ...sources(`${ROOT}sim`),
      ]),
    ].map(([sentence, file]) => [sentence, file.slice(ROOT.length)]),
  );

const sources = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(tsx?|html)$/.test(name) && !/^words\//.test(name))
    .map((name) => join(folder, name));
