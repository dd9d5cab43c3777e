// What of the bundled packages is never loaded at run time stays out of the packed file. npm knows no list of files for what is
// bundled, so they are put aside while it packs (`prepack`) and put back afterwards (`postpack`, `--back`).
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { nameOf, productionPackages } from './sbom.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const ASIDE = join(ROOT, 'node_modules', '.not-shipped');

/** Licences stay, and so do READMEs, in which some packages have theirs. The sources of libusb stay beside its binaries: LGPL. */
const STAYS = /(^|\/)(licen[cs]e|copying|notice|authors|readme)[^/]*$|^libusb\//i;

/** By the path within its package: the reason why nothing loads it. */
const OF_ANY = [
  [/\.map$/, 'places in sources, for debuggers'],
  [/\.([cm]?ts|tsx|flow)$/, 'types and sources, for compilers: Node loads the JavaScript beside them'],
  [/^(test|tests|__tests__|spec|benchmarks?|coverage)\//, 'tests and measurements of the package'],
  [/^(docs?|examples?|man|assets)\//, 'documents of the package'],
  [/^\.(github|yarn|vscode|husky|changeset)\//, 'tools of those who make the package'],
  [/^(changelog|history|changes|upgrading|contributing|security)[^/]*$/i, 'news of the package'],
];
const OF_ONE = [
  ['better-sqlite3', /^(deps|src)\//, 'sources in C++: the binaries of all platforms are in prebuilds/'],
  ['usb', /^src\//, 'sources in C++, as above'],
  ['@serialport/bindings-cpp', /^src\//, 'sources in C++, as above'],
  ['@stoprocent/bluetooth-hci-socket', /^src\//, 'sources in C++, as above'],
  ['node-addon-api', /\.h$|^tools\//, 'for compilers of C++'],
  ['zod', /^src\//, 'sources in TypeScript'],
  ['rxjs', /^(src|dist\/(bundles|esm5?|types))\//, 'for browsers and bundlers: Node loads dist/cjs'],
  ['pdfkit', /^js\/pdfkit\.(standalone|browser|old)/, 'for browsers'],
  ['fontkit', /^(src\/|dist\/browser)/, 'for browsers, and sources'],
  ['es-toolkit', /^dist\/browser/, 'for browsers'],
  ['pngjs', /^browser\.js$/, 'for browsers'],
  ['fflate', /^umd\//, 'for browsers'],
  [
    'write-excel-file',
    /^(bundle|commonjs|browser|universal)\/|\.cjs$/,
    'for browsers and older Node: Node loads modules/',
  ],
];

const filesBelow = (folder, inside = '') =>
  readdirSync(join(folder, inside), { withFileTypes: true }).flatMap((entry) => {
    const path = join(inside, entry.name);
    if (entry.isDirectory()) return entry.name === 'node_modules' ? [] : filesBelow(folder, path);
    return entry.isFile() ? [path] : [];
  });

/** Of each bundled package its files, those that ship and those that do not. */
function sorted() {
  const [kept, left] = [[], []];
  for (const one of productionPackages()) {
    const [path, { inBundle }] = one;
    if (inBundle !== true || !existsSync(join(ROOT, path))) continue;
    const rules = [...OF_ANY, ...OF_ONE.flatMap(([name, ...rule]) => (name === nameOf(one) ? [rule] : []))];
    for (const file of filesBelow(join(ROOT, path)))
      (!STAYS.test(file) && rules.some(([pattern]) => pattern.test(file)) ? left : kept).push(
        join(path, file),
      );
  }
  return { kept, left };
}

const IMPORTS = /(?:\brequire\(|\bfrom|\bimport\(?)\s*["'](\.{1,2}\/[^"'\n]+)["']/g;
const ENDINGS = ['', '.js', '.cjs', '.mjs', '.json', '/index.js', '/index.cjs', '/index.mjs'];

/** Nothing that ships may name a file that does not. */
function checkImports({ kept, left }) {
  const [there, gone] = [new Set(kept), new Set(left)];
  for (const file of kept.filter((name) => /\.[cm]?js$/.test(name)))
    for (const [, to] of readFileSync(join(ROOT, file), 'utf8').matchAll(IMPORTS)) {
      const all = ENDINGS.map((ending) => join(dirname(file), `${to}${ending}`));
      // Types are named in comments alone: Node would not load them.
      const missing = all.find((one) => gone.has(one) && !one.endsWith('.d.ts'));
      if (missing !== undefined && !all.some((one) => there.has(one)))
        throw new Error(`${file} loads ${missing}, which tests/install/not-shipped.mjs leaves out`);
    }
}

function moved(files, from, to) {
  for (const file of files) {
    mkdirSync(dirname(join(to, file)), { recursive: true });
    renameSync(join(from, file), join(to, file));
  }
}

/** What is left out; nothing that ships names any of it. */
export function notShipped() {
  const all = sorted();
  checkImports(all);
  return all.left;
}

export const putAside = () => moved(notShipped(), ROOT, ASIDE);

export function putBack() {
  if (!existsSync(ASIDE)) return;
  const files = readdirSync(ASIDE, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(ASIDE.length + 1));
  moved(files, ASIDE, ROOT);
  rmSync(ASIDE, { recursive: true });
}

if (process.argv[1]?.endsWith('not-shipped.mjs') && process.argv.includes('--back')) putBack();
