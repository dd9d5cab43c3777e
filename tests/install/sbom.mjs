// What the packed plugmark is made of, as a bill of materials (CycloneDX 1.6, ECMA-424): each bundled package with version, hash,
// licence and what it needs, all from the lock file, so that the same version has the same bytes. npm pack calls this
// (`prepack`); `npm sbom` itself does not take the replacements in `overrides`.
import { readFileSync, writeFileSync } from 'node:fs';

const ROOT = new URL('../../', import.meta.url);
const json = (name) => JSON.parse(readFileSync(new URL(name, ROOT), 'utf8'));

/** Packages whose manifest names no licence, by what their LICENSE file is. */
const BY_FILE = { 'png-js': 'MIT' };

/** They lie in the page that verifies (src/web), and in no folder of their own. */
const IN_PAGE = ['node_modules/@noble/curves', 'node_modules/@noble/hashes', 'node_modules/fzstd'];

/** The production packages of the lock file: where they lie, and what it says of them. */
export const productionPackages = (lock = json('package-lock.json')) =>
  Object.entries(lock.packages).filter(([path, { inBundle }]) => inBundle === true || IN_PAGE.includes(path));

export const nameOf = ([path, { name }]) =>
  name ?? path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
export const licenceOf = (one) => one[1].license ?? BY_FILE[nameOf(one)] ?? null;
const purlOf = (one) => `pkg:npm/${nameOf(one).replace('@', '%40')}@${one[1].version}`;

/** As Node looks for it: in the folder of the package, then in those above. */
function neededBy([path], name, all) {
  for (let at = path; ; at = at.slice(0, Math.max(0, at.lastIndexOf('/node_modules/')))) {
    const found = all.get(at === '' ? `node_modules/${name}` : `${at}/node_modules/${name}`);
    if (found !== undefined || at === '') return found;
  }
}

export function sbom() {
  const { name, version, license, dependencies, optionalDependencies } = json('package.json');
  const packages = productionPackages();
  const all = new Map(packages.map((one) => [one[0], one]));
  const needs = (one, names) =>
    [
      ...new Set(
        names.flatMap((needed) => {
          const found = neededBy(one, needed, all);
          return found === undefined ? [] : [purlOf(found)];
        }),
      ),
    ].sort();
  const self = `pkg:npm/${name}@${version}`;
  const components = packages.map((one) => {
    const [scope, rest] = nameOf(one).startsWith('@') ? nameOf(one).split('/') : [undefined, nameOf(one)];
    const licence = licenceOf(one);
    return {
      type: 'library',
      'bom-ref': purlOf(one),
      ...(scope === undefined ? {} : { group: scope }),
      name: rest,
      version: one[1].version,
      scope: one[1].optional === true ? 'optional' : 'required',
      hashes: [
        {
          alg: 'SHA-512',
          content: Buffer.from(one[1].integrity.slice('sha512-'.length), 'base64').toString('hex'),
        },
      ],
      licenses: [
        licence.includes(' ')
          ? { expression: licence.replace(/^\((.*)\)$/, '$1') }
          : { license: { id: licence } },
      ],
      purl: purlOf(one),
    };
  });
  // A version that lies in two places is one component.
  const once = [...new Map(components.map((one) => [one['bom-ref'], one])).values()];
  const dependsOn = new Map([
    [
      self,
      needs(
        ['', {}],
        [
          ...Object.keys({ ...dependencies, ...optionalDependencies }),
          ...IN_PAGE.map((path) => path.slice('node_modules/'.length)),
        ],
      ),
    ],
  ]);
  for (const one of packages)
    dependsOn.set(
      purlOf(one),
      needs(
        one,
        Object.keys({ ...one[1].dependencies, ...one[1].optionalDependencies, ...one[1].peerDependencies }),
      ),
    );
  return {
    $schema: 'http://cyclonedx.org/schema/bom-1.6.schema.json',
    bomFormat: 'CycloneDX',
    specVersion: '1.6',
    version: 1,
    metadata: {
      component: {
        type: 'application',
        'bom-ref': self,
        name,
        version,
        licenses: [{ license: { id: license } }],
        purl: self,
      },
    },
    components: once.sort((a, b) => (a['bom-ref'] < b['bom-ref'] ? -1 : 1)),
    dependencies: [...dependsOn]
      .map(([ref, on]) => ({ ref, dependsOn: on }))
      .sort((a, b) => (a.ref < b.ref ? -1 : 1)),
  };
}

if (process.argv[1]?.endsWith('sbom.mjs'))
  writeFileSync(new URL('dist/sbom.cdx.json', ROOT), `${JSON.stringify(sbom(), null, 2)}\n`);
