// What a shop installs is what was tested: the packed plugmark holds its dependencies (`bundleDependencies`), so that the same
// version is made of the same bytes everywhere, and installs without a registry. npm ignores a shrinkwrap file in a tarball.
//
// npm pack calls this (`prepack`). It holds what is installed here against the lock file, and takes out of the dependencies what
// npm would run at installation: they ship their binaries, and where there is no compiler npm would silently drop noble. What nothing loads is put aside.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { putAside } from './not-shipped.mjs';

const ROOT = new URL('../../', import.meta.url);
const AT_INSTALLATION = ['preinstall', 'install', 'postinstall'];

const json = (path) => JSON.parse(readFileSync(new URL(path, ROOT), 'utf8'));

const { bundleDependencies, dependencies, optionalDependencies } = json('package.json');
for (const name of Object.keys({ ...dependencies, ...optionalDependencies }))
  if (!bundleDependencies.includes(name))
    throw new Error(`package.json: ${name} belongs into bundleDependencies as well`);

for (const [path, { inBundle, version }] of Object.entries(json('package-lock.json').packages)) {
  if (inBundle !== true) continue;
  const file = `${path}/package.json`;
  const manifest = json(file);
  if (manifest.version !== version)
    throw new Error(`${path} is ${manifest.version}, not ${version} as the lock file says: run npm ci first`);
  const scripts = Object.entries(manifest.scripts ?? {});
  const kept = scripts.filter(([name]) => !AT_INSTALLATION.includes(name));
  if (kept.length === scripts.length && !existsSync(new URL(`${path}/binding.gyp`, ROOT))) continue;
  const unpackedOnly = { ...manifest, scripts: Object.fromEntries(kept), gypfile: false };
  writeFileSync(new URL(file, ROOT), `${JSON.stringify(unpackedOnly, null, 2)}\n`);
}
putAside();
