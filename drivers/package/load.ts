import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readdir, readFile, realpath } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { z } from 'zod';
import { type Problem, ProblemError, problemFromZod } from '../../src/problem.ts';
import { driverSchema, type PackageDriver } from './contract.ts';
import { PACKAGE_NAME } from './name.ts';

/** A driver of somebody else, and exactly which one: a package URL (ECMA-427) with the SHA-256 of all its files. */
export interface LoadedDriver {
  readonly driver: PackageDriver;
  readonly purl: string;
  readonly folder: string;
}

const manifestSchema = z.object({
  name: z.string().regex(PACKAGE_NAME, 'expected a name that begins with plugmark-driver-'),
  version: z
    .string()
    .regex(/^\d+\.\d+\.\d+(?:[-+][A-Za-z0-9.+-]{1,40})?$/, 'expected a version such as 1.0.0'),
  'plugmark-driver': z
    .string()
    .regex(
      /^(?:\.\/)?(?!\.)[A-Za-z0-9._-]+(?:\/(?!\.)[A-Za-z0-9._-]+)*\.m?js$/,
      'expected a JavaScript file of the package',
    ),
});

/** Nobody's driver is larger; what it needs of other packages is not counted, and not read. */
const MOST_FILES = 1_000;
const MOST_BYTES = 16 << 20;

/**
 * Loads the driver of that name: from `node_modules` of the folder of the station file or of those above it, or from where
 * plugmark itself is installed. Only this one package is looked at. From then on its code runs with the rights of whoever started plugmark.
 */
export async function loadDriver(name: string, base: string): Promise<LoadedDriver> {
  const [folder, other] = await foldersOf(name, base);
  if (folder === undefined) throw new ProblemError(notInstalled(name, base));
  if (other !== undefined) throw new ProblemError(twice(name, folder, other));
  return loadFolder(folder);
}

/** The same from a folder that somebody names. */
export async function loadFolder(folder: string): Promise<LoadedDriver> {
  const where = join(folder, 'package.json');
  const manifest = checked(manifestSchema, await jsonOf(where), where);
  const file = await inside(folder, manifest['plugmark-driver']);
  const digest = await digestOf(folder);
  const loaded: unknown = await import(pathToFileURL(file).href).catch((cause: unknown) => {
    throw new ProblemError(broken(file, cause), { cause });
  });
  const exported =
    typeof loaded === 'object' && loaded !== null && 'default' in loaded ? loaded.default : undefined;
  const driver = checked(driverSchema, exported, file);
  const purl = `pkg:npm/${manifest.name.replace('@', '%40')}@${manifest.version}?checksum=sha256:${digest}`;
  return { driver, purl, folder };
}

/** Every place where a package of that name lies, each once. */
async function foldersOf(name: string, base: string): Promise<readonly string[]> {
  const found = new Set<string>();
  for (const start of [base, dirname(fileURLToPath(import.meta.url))])
    for (let at = start; ; at = dirname(at)) {
      const folder = join(at, 'node_modules', name);
      if (existsSync(join(folder, 'package.json'))) {
        found.add(await realpath(folder));
        break;
      }
      if (dirname(at) === at) break;
    }
  return [...found];
}

async function jsonOf(file: string): Promise<unknown> {
  try {
    return JSON.parse(await readFile(file, 'utf8'));
  } catch (cause) {
    throw new ProblemError(broken(file, cause), { cause });
  }
}

function checked<T extends z.ZodType>(schema: T, value: unknown, where: string): z.infer<T> {
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  throw new ProblemError(
    problemFromZod(parsed.error, where, 'driver-form', '"plugmark manual drivers" says what a driver gives.'),
  );
}

/** A link in the package may lead anywhere. */
async function inside(folder: string, name: string): Promise<string> {
  const file = await realpath(join(folder, name)).catch((cause: unknown) => {
    throw new ProblemError(broken(join(folder, name), cause), { cause });
  });
  if (file.startsWith((await realpath(folder)) + sep)) return file;
  throw new ProblemError(broken(file, new Error('the file is outside of the package')));
}

/** SHA-256 over name and SHA-256 of every file of the package, in the order of their names. */
async function digestOf(folder: string): Promise<string> {
  const all = createHash('sha256');
  const files = await filesIn(folder, folder);
  let bytes = 0;
  for (const file of files) {
    const content = await readFile(file);
    bytes += content.length;
    if (bytes > MOST_BYTES)
      throw new ProblemError(broken(folder, new Error('the package is larger than 16 MB')));
    const name = relative(folder, file).split(sep).join('/');
    all.update(`${createHash('sha256').update(content).digest('hex')}  ${name}\n`);
  }
  return all.digest('hex');
}

async function filesIn(folder: string, root: string): Promise<readonly string[]> {
  const files: string[] = [];
  for (const entry of await readdir(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory() && entry.name !== 'node_modules') files.push(...(await filesIn(path, root)));
    else if (!entry.isDirectory()) files.push(path);
    if (files.length > MOST_FILES)
      throw new ProblemError(broken(root, new Error('it has more than 1000 files')));
  }
  return files.sort();
}

const notInstalled = (name: string, base: string): Problem => ({
  code: 'driver-missing',
  where: name,
  message: `the driver ${name} is not installed in node_modules of ${base}, or of a folder above it`,
  next: `Install it there: npm install ${name}.`,
});

const twice = (name: string, one: string, other: string): Problem => ({
  code: 'driver-twice',
  where: name,
  message: `there are two drivers with the name ${name}: ${one} and ${other}`,
  next: 'Remove one of them.',
});

const broken = (where: string, cause: unknown): Problem => ({
  code: 'driver-form',
  where,
  message: `the driver cannot be loaded: ${cause instanceof Error ? cause.message : String(cause)}`,
  next: 'Install it again, or ask whoever wrote it.',
});
