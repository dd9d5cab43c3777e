/**
 * The judge as one readable module, so that a closed edition of the rules runs on for as long as there is JavaScript. Nothing
 * of it is minified and the comments stay. Of zod nothing is left: what the judge is given has been read by the program.
 */
import { fileURLToPath } from 'node:url';
import { type Plugin, rolldown } from 'rolldown';
import ts from 'typescript';

export const ROOT = new URL('../../', import.meta.url);

/** The bundle of the judge in the sources below `root`. */
export async function bundledJudge(edition: number, root: URL = ROOT): Promise<string> {
  const input = fileURLToPath(new URL('src/rules/judge.ts', root));
  const bundle = await rolldown({
    input,
    cwd: fileURLToPath(root),
    platform: 'node',
    external: [/^node:/, 'zod'],
    // A room of the judge does nothing when it is loaded; what is not used of it may go.
    treeshake: { moduleSideEffects: false },
    plugins: [ofNoPlatform, unusedSchemasGo],
  });
  try {
    const { output } = await bundle.generate({ format: 'esm', minify: false, comments: true });
    const [{ code }] = output;
    const imports = code.match(/^import .*$/gm) ?? [];
    if (output.length !== 1 || imports.length > 0)
      throw new Error(`the judge is not a module of its own:\n${imports.join('\n')}`);
    return `${heading(edition)}${code}`;
  } finally {
    await bundle.close();
  }
}

const heading = (edition: number) =>
  `// Edition ${edition} of the rules, closed. Made from the sources of its day; never made again, never changed.\n\n`;

/** A closed judge takes nothing of Node: it is to run in a page as well. */
const ofNoPlatform: Plugin = {
  name: 'of-no-platform',
  resolveId: {
    filter: { id: /\/platform\/bytes\.ts$/ },
    handler(id, importer) {
      return this.resolve(id.replace(/\.ts$/, '.browser.ts'), importer);
    },
  },
};

/** A schema that nothing uses is dropped only where its making is known to do nothing else. */
const unusedSchemasGo: Plugin = {
  name: 'unused-schemas-go',
  transform: {
    order: 'pre',
    filter: { id: /\.ts$/, code: /from 'zod'/ },
    handler(code, id) {
      const file = ts.createSourceFile(id, code, ts.ScriptTarget.ESNext);
      const calls = file.statements
        .filter((statement) => ts.isVariableStatement(statement))
        .flatMap(({ declarationList }) => declarationList.declarations)
        .flatMap(({ initializer }) =>
          initializer !== undefined && ts.isCallExpression(initializer) ? [initializer] : [],
        );
      return calls.reduceRight(
        (text, call) =>
          `${text.slice(0, call.getStart(file))}/* @__PURE__ */ (() => ${text.slice(call.getStart(file), call.end)})()${text.slice(call.end)}`,
        code,
      );
    },
  },
};
