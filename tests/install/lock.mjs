// Keeps the lock file so that an installation from it unpacks files and runs nothing: no compiler, no script of anybody.
// npm runs this by itself (`dependencies` in package.json) when it has changed what is installed; `npm run house` calls it
// with --check, since npm also writes the lock file anew without changing anything.
//
// All native packages ship their binaries for Linux on x64 and arm64. npm would compile two of them all the same, and fail
// where there is no compiler: better-sqlite3, whose `gypfile: false` npm does not carry into a lock file, and noble, which has
// nothing to compile on Linux and, being optional, would be missing without a word.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const ROOT = new URL('../../', import.meta.url);
const FILE = new URL('package-lock.json', ROOT);

const before = readFileSync(FILE, 'utf8');
const lock = JSON.parse(before);
// What is not bundled is missing where a shop installs without a registry; `npm pack` would refuse it, but that comes late.
const { bundleDependencies, dependencies, optionalDependencies } = lock.packages[''];
for (const name of Object.keys({ ...dependencies, ...optionalDependencies }))
  if (!bundleDependencies.includes(name)) {
    console.error(
      `error lock: ${name} is not bundled. What to do: name it in bundleDependencies, then npm install`,
    );
    process.exit(1);
  }

const packages = Object.entries(lock.packages).map(([path, { hasInstallScript: _, ...entry }]) => [
  path,
  existsSync(new URL(`${path}/binding.gyp`, ROOT)) ? { ...entry, gypfile: false } : entry,
]);
const after = `${JSON.stringify({ ...lock, packages: Object.fromEntries(packages) }, null, 2)}\n`;

if (after !== before) {
  if (process.argv.includes('--check')) {
    console.error('error lock: npm would run something at installation. What to do: npm run dependencies');
    process.exit(1);
  }
  writeFileSync(FILE, after);
}
