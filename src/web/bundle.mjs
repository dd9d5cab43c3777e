// Bundles program text for a browser: everything that verification needs, with nothing of Node in it.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

const { version: VERSION } = JSON.parse(readFileSync(resolve(ROOT, 'package.json'), 'utf8'));

/** A file that has a twin for browsers beside it: bytes.ts and bytes.browser.ts. */
const twins = {
  name: 'twins',
  setup({ onResolve }) {
    onResolve({ filter: /\/platform\/|^\.\// }, ({ path, resolveDir }) => {
      const file = resolve(resolveDir, path);
      const twin = file.replace(/\.ts$/, '.browser.ts');
      return /\/platform\/[a-z]+\.ts$/.test(file) && existsSync(twin) ? { path: twin } : undefined;
    });
  },
};

/** Of zod's texts the page needs none but the English ones: the others are two thirds of it. */
const english = {
  name: 'english',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /locales\/index\.js$/ }, ({ path, resolveDir }) => ({
      path: resolve(resolveDir, path),
      namespace: 'locales',
    }));
    onLoad({ filter: /./, namespace: 'locales' }, ({ path }) => ({
      contents: 'export { default as en } from "./en.js";',
      resolveDir: dirname(path),
    }));
  },
};

/** One namespace of zod's functions keeps all of them; names of a module are dropped where nothing takes them. */
const zodByName = {
  name: 'zod-by-name',
  setup({ onLoad }) {
    onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => ({
      contents: readFileSync(path, 'utf8').replace("import { z } from 'zod';", "import * as z from 'zod';"),
      loader: 'ts',
    }));
  },
};

/** The library of time stamps is one file: a class of it that nothing takes is dropped once it is made without other effect. */
const byClass = {
  name: 'by-class',
  setup({ onLoad }) {
    onLoad({ filter: /\/(pkijs|asn1js)\/build\/index\.js$/ }, ({ path }) => ({
      contents: readFileSync(path, 'utf8').replace(
        /^((?:var|const|let) \w+ = )(class\b[\s\S]*?^\});/gm,
        '$1/* @__PURE__ */ (() => $2)();',
      ),
    }));
  },
};

/** What the judges of closed editions, which nobody may change, take from Node. */
const ofNode = {
  name: 'of-node',
  setup({ onResolve }) {
    onResolve({ filter: /^node:(util|buffer)$/ }, ({ importer }) =>
      /\/rules\/edition-\d+\//.test(importer) ? { path: resolve(ROOT, 'src/web/of-node.ts') } : undefined,
    );
  },
};

/** Text that hands the page the judge of each closed edition. */
function closedEditions() {
  const editions = readdirSync(resolve(ROOT, 'src/rules')).filter((name) => /^edition-\d+$/.test(name));
  return [
    'import { provide } from "./src/evidence/platform/program.browser.ts";',
    ...editions.map(
      (name) =>
        `import * as ${name.replace('-', '')} from "./src/rules/${name}/judge.js"; provide("./${name}/judge.js", ${name.replace('-', '')});`,
    ),
  ].join('\n');
}

/** The text of one script that runs `entry`, a file of the program; with the judges of closed editions. */
export const bundled = async (entry, options = {}) => (await scriptOf(entry, options)).text;

/** The script, and the sources that something of is in it. */
export async function scriptOf(entry, { judges = true } = {}) {
  const { outputFiles, metafile } = await build({
    stdin: {
      contents: `${judges ? closedEditions() : ''}\nimport "./${entry}";`,
      resolveDir: ROOT,
      loader: 'ts',
    },
    bundle: true,
    absWorkingDir: ROOT,
    write: false,
    minify: true,
    metafile: true,
    format: 'iife',
    platform: 'browser',
    target: ['chrome137', 'firefox130', 'safari18'],
    charset: 'utf8',
    legalComments: 'eof',
    define: { 'import.meta.url': '""', PLUGMARK_VERSION: JSON.stringify(VERSION) },
    inject: [resolve(ROOT, 'src/web/of-node.ts')],
    plugins: [twins, english, zodByName, byClass, ofNode],
    logLevel: 'error',
  });
  const [{ text }] = outputFiles;
  const [{ inputs }] = Object.values(metafile.outputs);
  const sources = Object.entries(inputs).flatMap(([path, { bytesInOutput }]) =>
    bytesInOutput > 0 && /^src\/.*\.ts$/.test(path) ? [resolve(ROOT, path)] : [],
  );
  return { text, sources };
}
