// Keeps the lock file so that an installation from it unpacks files and runs nothing: no compiler, no script of anybody.
// npm runs this by itself (`dependencies` in package.json) when it has changed what is installed.
//
// All native packages ship their binaries for Linux on x64 and arm64. npm would compile two of them all the same, and fail
// where there is no compiler: better-sqlite3, whose `gypfile: false` npm does not carry into a lock file, and noble, which has
// nothing to compile on Linux and, being optional, would be missing without a word.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const ROOT = new URL('../../', import.meta.url);

/** The same lock, from which packages are only unpacked. `compiles` tells whether the package at a path has a binding.gyp. */
export function unpackOnly(lock, compiles) {
  const packages = Object.entries(lock.packages).map(([path, { hasInstallScript: _, ...entry }]) => [
    path,
    compiles(path) ? { ...entry, gypfile: false } : entry,
  ]);
  return { ...lock, packages: Object.fromEntries(packages) };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const path = new URL('package-lock.json', ROOT);
  const before = readFileSync(path, 'utf8');
  const lock = unpackOnly(JSON.parse(before), (at) => existsSync(new URL(`${at}/binding.gyp`, ROOT)));
  const after = `${JSON.stringify(lock, null, 2)}\n`;
  if (after !== before) writeFileSync(path, after);
}
