/** What the program is delivered with: which packages, of which licence, pinned to which bytes, and what they would run. */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
// @ts-expect-error: a script of the packing, without types
import { licenceOf, nameOf, productionPackages, sbom } from './sbom.mjs';

const ROOT = new URL('../../', import.meta.url);
const json = (name: string): unknown => JSON.parse(readFileSync(new URL(name, ROOT), 'utf8'));

const packages = z
  .array(
    z.tuple([
      z.string(),
      z
        .object({ version: z.string(), integrity: z.string(), inBundle: z.literal(true).exactOptional() })
        .loose(),
    ]),
  )
  .min(100)
  .parse(productionPackages());
const named = (one: unknown) => z.string().parse(nameOf(one));

/** May be given away inside a program under the MIT licence; anything else is looked at by a person first. */
const TAKEN = ['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', '(MIT OR CC0-1.0)'];

describe('the packages that plugmark is delivered with', () => {
  it('are all under licences that allow it', () => {
    const others = packages.filter((one) => !TAKEN.includes(licenceOf(one)));
    expect(others.map((one) => `${named(one)}: ${licenceOf(one)}`)).toEqual([]);
  });

  it('are pinned: by an exact version where plugmark names them, by a hash in the lock file', () => {
    const manifest = z
      .object({
        dependencies: z.record(z.string(), z.string()),
        optionalDependencies: z.record(z.string(), z.string()),
        devDependencies: z.record(z.string(), z.string()),
      })
      .parse(json('package.json'));
    const loose = Object.entries({
      ...manifest.dependencies,
      ...manifest.optionalDependencies,
      ...manifest.devDependencies,
    }).filter(([, version]) => !/^(npm:[\w-]+@)?\d+\.\d+\.\d+(-[\w.]+)?$|^file:/.test(version));
    expect(loose).toEqual([]);
    expect(packages.filter(([, { integrity }]) => !integrity.startsWith('sha512-'))).toEqual([]);
  });

  it('gain no script that runs at installation: these four would compile, and are packed without it', () => {
    const scripts = packages.flatMap(([path]) => {
      const file = new URL(`${path}/package.json`, ROOT);
      // Of another platform: the lock file says whether it would run something.
      if (!existsSync(file)) return [];
      const manifest = z
        .object({ name: z.string(), scripts: z.record(z.string(), z.string()).optional() })
        .parse(JSON.parse(readFileSync(file, 'utf8')));
      return ['preinstall', 'install', 'postinstall'].flatMap((when) => {
        const script = manifest.scripts?.[when];
        return script === undefined ? [] : [`${manifest.name} ${when}: ${script}`];
      });
    });
    const known = [
      '@abandonware/noble install: node-gyp-build',
      '@serialport/bindings-cpp install: node-gyp-build',
      '@stoprocent/bluetooth-hci-socket install: node-gyp-build',
      'usb install: node-gyp-build',
    ];
    // Packing takes these out of what is installed here as well.
    expect(scripts.filter((one) => !known.includes(one))).toEqual([]);
    expect(packages.filter(([, about]) => about['hasInstallScript'] === true)).toEqual([]);
  });
});

describe('the bill of materials', () => {
  const bom = z
    .object({
      bomFormat: z.literal('CycloneDX'),
      specVersion: z.literal('1.6'),
      metadata: z.object({ component: z.object({ 'bom-ref': z.string(), version: z.string() }) }),
      components: z.array(
        z.object({
          'bom-ref': z.string(),
          purl: z.string().regex(/^pkg:npm\/(%40[\w.-]+\/)?[\w.-]+@\d[\w.-]*$/),
          hashes: z.tuple([
            z.object({ alg: z.literal('SHA-512'), content: z.string().regex(/^[0-9a-f]{128}$/) }),
          ]),
          licenses: z.array(z.unknown()).length(1),
        }),
      ),
      dependencies: z.array(z.object({ ref: z.string(), dependsOn: z.array(z.string()) })),
    })
    .parse(sbom());

  it('names every package once, and none that is not delivered', () => {
    const refs = bom.components.map((one) => one['bom-ref']);
    expect(new Set(refs).size).toBe(refs.length);
    const due = packages.map((one) => `${named(one)}@${one[1].version}`);
    expect(refs.map((ref) => ref.slice('pkg:npm/'.length).replace('%40', '@')).sort()).toEqual(
      [...new Set(due)].sort(),
    );
  });

  it('says what needs what, down from plugmark itself', () => {
    const refs = new Set([bom.metadata.component['bom-ref'], ...bom.components.map((one) => one['bom-ref'])]);
    for (const { ref, dependsOn } of bom.dependencies)
      for (const one of [ref, ...dependsOn]) expect(refs).toContain(one);
    const needs = new Map(bom.dependencies.map(({ ref, dependsOn }) => [ref, dependsOn]));
    const reached = new Set<string>();
    const reach = (ref: string) => {
      if (reached.has(ref)) return;
      reached.add(ref);
      for (const one of needs.get(ref) ?? []) reach(one);
    };
    reach(bom.metadata.component['bom-ref']);
    expect([...refs].filter((ref) => !reached.has(ref))).toEqual([]);
  });

  it('is the same from the same lock file', () => {
    expect(sbom()).toEqual(sbom());
  });
});
