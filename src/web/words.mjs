// The dictionaries as the page carries them: only sentences that its own scripts can say, each under a short number.
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { sentencesOf } from './sentences.mjs';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** What Node cannot read as it is, TypeScript, as a module. */
async function moduleOf(contents) {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: ROOT, loader: 'ts' },
    bundle: true,
    write: false,
    format: 'esm',
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`);
}

/** What the page says in English for every reader, because it holds the table of a package against it. */
const ENGLISH_ALONE = '/src/audit/questions.ts';

/** The sentences of these scripts: their numbers, and for each language but English their wordings in the same order. */
export async function packedWords(scripts) {
  const { LANGUAGES, numberOf, entriesOf } = await moduleOf(
    `export { LANGUAGES } from './src/words/catalogue.ts';
    export { numberOf } from './src/words/packed.ts';
    export { entriesOf } from './src/words/dictionaries.ts';`,
  );
  const others = LANGUAGES.filter((language) => language !== 'en');
  const dictionaries = await Promise.all(
    others.map(async (language) => Object.assign({}, ...(await entriesOf(language)))),
  );
  const text = scripts.map((script) => script.text).join('');
  const sources = scripts.flatMap((script) => script.sources).filter((file) => !file.endsWith(ENGLISH_ALONE));
  const sentences = [...sentencesOf(sources).keys()].filter((one) => isSaidIn(text, one));
  const numbers = new Set(sentences.map(numberOf));
  if (numbers.size !== sentences.length) throw new Error('two sentences of the page have the same number');
  const wordings = dictionaries.map((entries, at) =>
    sentences.map((english) => {
      const wording = entries[english];
      if (wording === undefined) throw new Error(`no ${others[at]} for: ${english}`);
      return wording;
    }),
  );
  return {
    numbers: [...numbers],
    wordings: Object.fromEntries(others.map((one, at) => [one, wordings[at]])),
  };
}

/** A source may say more than what of it is in the script: a sentence is there if all its parts are, less what quoting changes. */
const isSaidIn = (script, sentence) =>
  sentence.split(/\{\d+\}|[|'"`\\\n$]/).every((part) => script.includes(part));
