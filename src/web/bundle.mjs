// Bundles program text for a browser: everything that verification needs, with nothing of Node in it.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

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

/** The text of one script that runs `entry`, a file of the program. */
export async function bundled(entry, { minify = true } = {}) {
  const { outputFiles, metafile } = await build({
    stdin: { contents: `${closedEditions()}\nimport "./${entry}";`, resolveDir: ROOT, loader: 'ts' },
    bundle: true,
    write: false,
    minify,
    format: 'iife',
    platform: 'browser',
    target: ['chrome137', 'firefox130', 'safari18'],
    charset: 'utf8',
    legalComments: 'none',
    define: { 'import.meta.url': '""' },
    inject: [resolve(ROOT, 'src/web/of-node.ts')],
    plugins: [twins, english, zodByName, ofNode],
    logLevel: 'error',
    metafile: true,
  });
  const [file] = outputFiles;
  if (process.env.META) { const o = Object.values(metafile.outputs)[0].inputs; const by = {}; for (const [k, v] of Object.entries(o)) { const g = k.includes('node_modules') ? k.replace(/.*node_modules\/((@[^/]+\/)?[^/]+).*/, '$1') : k.split('/').slice(0, 2).join('/'); by[g] = (by[g] ?? 0) + v.bytesInOutput; } console.log(Object.entries(by).sort((a, b) => b[1] - a[1]).slice(0, 25)); }
  return file.text;
}
