/**
 * The published JSON Schemas, read by a validator that knows nothing of plugmark: records pass, and what is not one does
 * not. Independent oracle: the Python package `jsonschema` (draft 2020-12), where it is installed.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type FORMS, schemaOf } from '../../src/cli/help/schema.ts';
import { jwsOf, recordOf } from '../evidence/forge.ts';
import { logOf, seal, station, trusting, wholeJob } from '../evidence/sample-job.ts';
import { madeJob, TROUBLED, V8_BY_HAND } from '../report/fixtures.ts';

const hasValidator = spawnSync('python3', ['-c', 'import jsonschema']).status === 0;
if (!hasValidator)
  process.stderr.write(
    'the Python package jsonschema is not installed: the check of the published schemas is left out\n',
  );

interface Case {
  readonly what: string;
  readonly form: keyof typeof FORMS;
  readonly value: unknown;
}

/** Checks the schemas themselves, then every value; the answer is a list of faults for each. */
const PROGRAM = `
import json, sys
from jsonschema import Draft202012Validator as V
given = json.load(sys.stdin)
for schema in given["schemas"].values():
    V.check_schema(schema)
validators = {form: V(schema, format_checker=V.FORMAT_CHECKER) for form, schema in given["schemas"].items()}
print(json.dumps([["/".join(map(str, e.absolute_path)) for e in validators[c["form"]].iter_errors(c["value"])]
                  for c in given["cases"]]))
`;

function faultsOf(cases: readonly Case[]): string[][] {
  const schemas = Object.fromEntries(cases.map(({ form }) => [form, schemaOf(form)]));
  const ran = spawnSync('python3', ['-W', 'ignore', '-c', PROGRAM], {
    input: JSON.stringify({ schemas, cases }),
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  if (ran.status !== 0) throw new Error(ran.stderr);
  return JSON.parse(ran.stdout);
}

const file = seal(logOf(wholeJob()));
const record = recordOf(file);
const [key] = trusting(station).keys;
const entry = record.entries[2];
const entriesOf = (name: string, { input }: ReturnType<typeof madeJob>): Case[] =>
  input.entries.map((value) => ({
    what: `${name}, entry ${value.n} (${value.event.type})`,
    form: 'log-entry',
    value,
  }));

const GOOD: readonly Case[] = [
  { what: 'the file of a record', form: 'record-file', value: jwsOf(file) },
  { what: 'what is signed in it', form: 'record', value: record },
  { what: 'the trust list', form: 'trust-list', value: trusting(station) },
  { what: 'the example of a station', form: 'station', value: example('station.json') },
  { what: 'the example of a work order', form: 'work-order', value: example('order-8.json') },
  { what: 'the work order in it', form: 'work-order', value: orderIn(record) },
  ...record.background.map(
    (value): Case => ({ what: `station entry ${value.n}`, form: 'station-entry', value }),
  ),
  ...entriesOf('a job by hand', madeJob(V8_BY_HAND)),
  ...entriesOf('a job with everything out of the ordinary', madeJob(TROUBLED)),
];

const BAD: readonly (Case & { readonly at: string })[] = [
  { what: 'a member more', form: 'record', value: { ...record, note: 'paid' }, at: '' },
  { what: 'no entries', form: 'record', value: { ...record, entries: [] }, at: 'entries' },
  { what: 'another form', form: 'record', value: { ...record, form: 'plugmark/record/2' }, at: 'form' },
  {
    what: 'an event of no known type',
    form: 'log-entry',
    value: { ...entry, event: { type: 'engine-blessed' } },
    at: 'event',
  },
  { what: 'a time without milliseconds', form: 'log-entry', value: { ...entry, at: '2026-03-02' }, at: 'at' },
  { what: 'a place in the log of one half', form: 'log-entry', value: { ...entry, seq: 0.5 }, at: 'seq' },
  { what: 'a private key', form: 'trust-list', value: { keys: [{ ...key, d: 'secret' }] }, at: 'keys/0' },
  {
    what: 'a thousand signatures',
    form: 'record-file',
    value: { ...jwsOf(file), signatures: Array(1000).fill(jwsOf(file).signatures[0]) },
    at: 'signatures',
  },
];

function example(name: string): unknown {
  return JSON.parse(readFileSync(new URL(`../../sim/example/${name}`, import.meta.url), 'utf8'));
}

function orderIn({ entries }: typeof record): unknown {
  const opened = entries[0]?.event;
  return opened?.type === 'job-opened' ? opened.order : null;
}

describe.runIf(hasValidator)('a validator of JSON Schema by other people', () => {
  let faults: string[][];
  beforeAll(() => {
    faults = faultsOf([...GOOD, ...BAD]);
  });

  it('takes every schema for one, and every value of ours as it was published', () => {
    expect(GOOD.filter((_, i) => faults[i]?.length !== 0).map(({ what }) => what)).toEqual([]);
    expect(new Set(GOOD.map(({ form }) => form)).size).toBe(7);
    expect(GOOD.length).toBeGreaterThan(80);
  });

  it.each(BAD.map(({ what, at }, i) => [what, at, i] as const))('refuses %s', (_what, at, i) => {
    expect(faults[GOOD.length + i]).toContain(at);
  });
});
