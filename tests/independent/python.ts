/** The second verifier, in Python: whether it can run here, and what it finds. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';
import { schemaOf } from '../../src/cli/help/schema.ts';
import type { TrustList } from '../../src/evidence/trust.ts';

/** Debian's, which has python3-cryptography. */
export const PYTHON = '/usr/bin/python3';
const FORMS = [
  'record-file',
  'record-header',
  'record',
  'key-statement',
  'trust-list',
  'consistency',
  'package-index',
  'package-header',
  'package-proofs',
  'package-station',
] as const;

/** Why it cannot run here; null where it can. Nobody may pass over it in CI. */
export function missingPython(): string | null {
  const tried = spawnSync(PYTHON, ['-c', 'import cryptography']);
  if (tried.status === 0) return null;
  if (process.env['ALL_TESTS'] !== undefined)
    throw new Error('python3 or python3-cryptography is missing, and no test may be left out here');
  return 'python3 or python3-cryptography is not installed';
}

const foundSchema = z.strictObject({
  path: z.string(),
  verdict: z.enum(['authentic', 'not authentic', 'unreadable']),
  trusted: z.boolean().optional(),
  complete: z.boolean().nullish(),
  withheld: z.record(z.string(), z.int()).optional(),
  jumps: z.array(z.int()).nullish(),
  why: z.string().optional(),
});
export type Found = z.infer<typeof foundSchema>;

/** What takes the rules: nobody else can tell, or tell alike, whether samples give pulls, and entries a summary. */
export const BY_RULES: ReadonlySet<string> = new Set(['judged again', 'contents', 'completeness']);

/** Each form's schema, as the program prints it. */
const SCHEMAS = FORMS.map((form) => [`${form}.json`, JSON.stringify(schemaOf(form))] as const);

interface Reader {
  readonly trust: TrustList;
  /** File of the checkpoint that the reader kept. */
  readonly kept?: string;
}

/** What it finds of each path, in their order. */
export function verifiedByPython(paths: readonly string[], { trust, kept }: Reader): readonly Found[] {
  const folder = mkdtempSync(join(tmpdir(), 'plugmark-independent-'));
  try {
    const schemas = join(folder, 'schemas');
    mkdirSync(schemas);
    for (const [name, text] of SCHEMAS) writeFileSync(join(schemas, name), text);
    const list = join(folder, 'trusted-keys.json');
    writeFileSync(list, JSON.stringify(trust));
    const options = kept === undefined ? [] : ['--kept', kept];
    const verifier = new URL('verify.py', import.meta.url).pathname;
    const out = execFileSync(PYTHON, ['-B', verifier, ...options, schemas, list, ...paths], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
      maxBuffer: 1 << 26,
    });
    return out
      .trimEnd()
      .split('\n')
      .map((line) => foundSchema.parse(JSON.parse(line)));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
