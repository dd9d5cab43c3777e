/**
 * The published JSON Schemas (draft 2020-12). Independent oracle: the validator `ajv` in its strict mode, which knows nothing
 * of plugmark and refuses a schema with anything in it that the standard has not: it takes what plugmark takes, and what is
 * not of a form, not.
 */

import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { describe, expect, it } from 'vitest';
import { reportOn } from '../../src/cli/bench/pulls-report.ts';
import { OUTPUTS } from '../../src/cli/help/outputs.ts';
import { type AnyForm, FORMS, schemaOf } from '../../src/cli/help/schema.ts';
import { revealed } from '../../src/evidence/disclosures.ts';
import { signedEntry } from '../../src/evidence/entry.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { fromUtf8 } from '../../src/evidence/platform/bytes.ts';
import type { JobRecord } from '../../src/evidence/record.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { stateSuccession } from '../../src/evidence/succession.ts';
import { indexBytes, signIndex, stationFile } from '../../src/package/format.ts';
import { parseTrace } from '../../src/pull/columns.ts';
import { jobCsvSchema } from '../../src/report/csv-columns.ts';
import { resultsOf } from '../../src/report/joining-results.ts';
import { finishedStudy, logged, startedStudy } from '../audit/study-entries.ts';
import { jwsOf, recordOf, signedTextOf } from '../evidence/forge.ts';
import { AT, logOf, seal, station, trusting, wholeJob } from '../evidence/sample-job.ts';
import { clickPull, drawn } from '../pull/shapes.ts';
import { madeJob, TROUBLED, V8_BY_HAND } from '../report/fixtures.ts';

const names = Object.keys(FORMS).filter((name): name is AnyForm => Object.hasOwn(FORMS, name));
/** Not the answers of commands: json-answers.test.ts takes each from the command itself. */
const read = names.filter((name) => !Object.hasOwn(OUTPUTS, name));

interface Case {
  readonly what: string;
  readonly form: AnyForm;
  /** What is signed, where the form is signed. */
  readonly value: unknown;
}

const HASH = Buffer.alloc(32).toString('base64');
const decoded = (part: string | undefined): unknown =>
  JSON.parse(Buffer.from(part ?? '', 'base64url').toString('utf8'));

const signedJson = (record: JobRecord) => JSON.parse(signedTextOf(record));

const signedEvent = (event: StationEvent): unknown => {
  const [one] = logged([event]).map(signedEntry);
  return Object(one)['event'];
};

const example = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../sim/example/${name}`, import.meta.url), 'utf8'));

const file = seal(logOf(wholeJob()));
const jws = jwsOf(file);
const opened = recordOf(file);
const record = signedJson(opened);
const [key] = trusting(station).keys;
const [entry] = opened.entries.slice(2).map((one) => Object(signedEntry(one)));
const order = workOrderOf(example('order-8.json'));
const library = {
  form: 'plugmark/specification/1',
  name: 'Example V8',
  engine: order.engine,
  plug: order.plug,
  specification: order.specification,
  enteredBy: 'Technician One',
  enteredOn: '2026-03-02',
};
const hash = Buffer.alloc(32).toString('base64');
const index = indexBytes({
  program: 'plugmark test',
  station: 'Example bay',
  at: AT,
  purpose: 'audit',
  asked: { vin: 'ZZ9EXAMP9PM000108' },
  leftOut: [{ job: 'J-2', because: 'still-open' }],
  jobs: [{ job: 'J-1', record: 'records/J-1.record.json', paper: null, impacts: [] }],
  files: [{ path: 'records/J-1.record.json', bytes: 3, sha256: 'a'.repeat(64) }],
});
const profile = Object(example('profile-wrench.json'));

function workOrderOf(value: unknown) {
  return FORMS['work-order'].parse(value);
}

const entriesOf = (name: string, { input }: ReturnType<typeof madeJob>): Case[] =>
  input.entries.map((value) => ({
    what: `${name}, entry ${value.n} (${value.event.type})`,
    form: 'log-entry',
    value: signedEntry(value),
  }));

const report = () => {
  const rows = drawn([{ atMs: 0, nm: 0 }, ...clickPull(1000, 600, 27, 22, 27.8)]).map(
    ({ atUs, nm }) => `${atUs / 1e6},${nm.toFixed(3)}`,
  );
  const trace = parseTrace(
    `time_s,torque_Nm\n${rows.join('\n')}\n`,
    {
      time: 'time_s',
      torque: 'torque_Nm',
      angle: null,
      secondsPerUnit: 1,
      nmPerUnit: 1,
    },
    'pull.csv',
  );
  if (!trace.ok) throw new Error(trace.error.message);
  return reportOn(trace.value, 'pull.csv', { lowerNm: 25, maxima: false });
};

const GOOD: readonly Case[] = [
  { what: 'an order for eight cylinders', form: 'work-order', value: example('order-8.json') },
  { what: 'an order for four', form: 'work-order', value: example('order-4.json') },
  { what: 'a station', form: 'station', value: example('station.json') },
  { what: 'a station with certificates', form: 'station', value: example('station-calibrated.json') },
  { what: 'a routine', form: 'routine', value: example('routine.json') },
  { what: 'an entry of the library', form: 'specification', value: library },
  { what: 'a certificate', form: 'certificate', value: example('gauge-certificate.json') },
  { what: 'a profile', form: 'profile', value: profile },
  { what: 'another profile', form: 'profile', value: example('profile-gauge.json') },
  { what: 'a profile of text on a serial port', form: 'profile', value: example('profile-text.json') },
  { what: 'the file of a record', form: 'record-file', value: jws },
  ...jws.signatures.map(
    (one, i): Case => ({ what: `header ${i}`, form: 'record-header', value: decoded(one.protected) }),
  ),
  { what: 'what is signed in it', form: 'record', value: record },
  { what: 'the trust list', form: 'trust-list', value: trusting(station) },
  {
    what: 'a proof of consistency',
    form: 'consistency',
    value: { form: 'plugmark/consistency/1', from: 3, to: 9, path: [HASH], checkpoint: 'a note' },
  },
  ...opened.background.map(
    (one): Case => ({ what: `station entry ${one.n}`, form: 'station-entry', value: signedEntry(one) }),
  ),
  {
    what: 'the beginning of a study',
    form: 'gauge-study',
    value: signedEvent(
      startedStudy([
        [0, 1, 2],
        [2, 1, 0],
        [1, 0, 2],
        [0, 2, 1],
      ]),
    ),
  },
  {
    what: 'the end of a study',
    form: 'gauge-study',
    value: signedEvent(
      finishedStudy([
        [
          [1, 1],
          [2, 2],
          [3, 3],
        ],
        [
          [1, 1],
          [2, 2],
          [3, 3],
        ],
      ]),
    ),
  },
  {
    what: 'the statement of an old key',
    form: 'key-statement',
    value: decoded(
      stateSuccession({ log: 'o', next: publicJwk(station.privateKey), at: AT }, station.privateKey).split(
        '.',
      )[1],
    ),
  },
  { what: 'the index of a package', form: 'package-index', value: JSON.parse(fromUtf8(index)) },
  {
    what: 'its header',
    form: 'package-header',
    value: decoded(signIndex(index, station.privateKey).split('.')[0]),
  },
  {
    what: 'its proofs',
    form: 'package-proofs',
    value: { consistency: [{ from: 3, path: [hash] }], station: [hash] },
  },
  {
    what: 'its station entries',
    form: 'package-station',
    value: JSON.parse(fromUtf8(stationFile(opened.background))),
  },
  { what: 'the pulls of a trace', form: 'pulls', value: report() },
  { what: 'the end of a capture', form: 'capture-line', value: { packets: 1 } },
  {
    what: 'a packet',
    form: 'capture-line',
    value: { atUs: 1, service: '185a', characteristic: '2c0b', hex: 'c409' },
  },
  { what: 'readings', form: 'readings-line', value: { kind: 'values', n: 1, atUs: [1, 2], counts: [0, 12] } },
  { what: 'the example scenario', form: 'scenario', value: example('scenario.json') },
  { what: 'results of a record', form: 'joining-results', value: resultsOf(opened.entries) },
  {
    what: 'the first event line',
    form: 'event-line',
    value: {
      kind: 'started',
      form: 'plugmark/events/1',
      at: AT,
      program: 'plugmark 0.1.0',
      station: 'Example bay',
      job: 'J-1',
      resumed: false,
    },
  },
  {
    what: 'an event line of an entry',
    form: 'event-line',
    value: { kind: 'entry', seq: 2, n: 1, at: AT, by: 'station', event: { type: 'windows-confirmed' } },
  },
  {
    what: 'a row of the table of a job',
    form: 'job-csv',
    value: Object.fromEntries(
      Object.entries(jobCsvSchema.shape).map(([name, column]) => [
        name,
        column.safeParse(1.5).success ? 1.5 : '',
      ]),
    ),
  },
  {
    what: 'the keys of paired tools',
    form: 'bonds',
    value: {
      form: 'plugmark/bonds/1',
      bonds: { 'c2:00:00:00:00:01': { key: '0'.repeat(32), diversifier: '0001', random: '0'.repeat(16) } },
    },
  },
  ...entriesOf('a job by hand', madeJob(V8_BY_HAND)),
  ...entriesOf('a job with everything out of the ordinary', madeJob(TROUBLED)),
];

const BAD: readonly (Case & { readonly at: string })[] = [
  { what: 'a member more', form: 'record', value: { ...record, note: 'paid' }, at: '' },
  { what: 'no entries', form: 'record', value: { ...record, entries: [] }, at: '/entries' },
  { what: 'another form', form: 'record', value: { ...record, form: 'plugmark/record/0' }, at: '/form' },
  {
    what: 'an event of no known type',
    form: 'log-entry',
    value: { ...entry, event: { type: 'engine-blessed' } },
    at: '/event',
  },
  {
    what: 'a stream that is no job',
    form: 'log-entry',
    value: { ...entry, stream: 'station' },
    at: '/stream',
  },
  {
    what: 'a time without milliseconds',
    form: 'log-entry',
    value: { ...entry, at: '2026-03-02' },
    at: '/at',
  },
  { what: 'half a place in the log', form: 'log-entry', value: { ...entry, seq: 0.5 }, at: '/seq' },
  {
    what: 'a short hash in a proof of consistency',
    form: 'consistency',
    value: { form: 'plugmark/consistency/1', from: 3, to: 9, path: ['AAAA'], checkpoint: 'a note' },
    at: '/path/0',
  },
  { what: 'a private key', form: 'trust-list', value: { keys: [{ ...key, d: 'secret' }] }, at: '/keys/0' },
  {
    what: 'a thousand signatures',
    form: 'record-file',
    value: { ...jws, signatures: Array(1000).fill(jws.signatures[0]) },
    at: '/signatures',
  },
  {
    what: 'an unknown algorithm',
    form: 'record-header',
    value: { ...Object(decoded(jws.signatures[0]?.protected)), alg: 'none' },
    at: '/alg',
  },
  {
    what: 'a cylinder of half a number',
    form: 'work-order',
    value: { ...order, engine: { ...order.engine, serviceOrder: [1.5] } },
    at: '/engine/serviceOrder/0',
  },
  { what: 'a job number that is a path', form: 'work-order', value: { ...order, job: '../J' }, at: '/job' },
  {
    what: 'a station without tools',
    form: 'station',
    value: { form: 'plugmark/station/1', station: 'Bay', tools: [] },
    at: '/tools',
  },
  {
    what: 'a routine with a choice of one',
    form: 'routine',
    value: { ...Object(example('routine.json')), fitting: [{ id: 'a', text: 'A', choices: ['b'] }] },
    at: '/fitting/0/choices',
  },
  {
    what: 'a day that is none',
    form: 'specification',
    value: { ...library, enteredOn: '2026-02-30' },
    at: '/enteredOn',
  },
  {
    what: 'an uncertainty of zero',
    form: 'certificate',
    value: {
      ...Object(example('gauge-certificate.json')),
      points: [
        { reading: 1, error: 0, expanded: 0, k: 2 },
        { reading: 2, error: 0, expanded: 1, k: 2 },
      ],
    },
    at: '/points/0/expanded',
  },
  {
    what: 'a resolution as a number',
    form: 'profile',
    value: {
      ...profile,
      layout: { of: 'text', fields: [{ is: 'value', resolution: 0.01, unit: 'N·m' }] },
    },
    at: '/layout',
  },
  {
    what: 'a file outside of the package',
    form: 'package-index',
    value: {
      ...Object(JSON.parse(fromUtf8(index))),
      files: [{ path: '../x', bytes: 1, sha256: 'a'.repeat(64) }],
    },
    at: '/files/0/path',
  },
  {
    what: 'a short hash',
    form: 'package-proofs',
    value: { consistency: [], station: ['AAAA'] },
    at: '/station/0',
  },
  {
    what: 'a study of one appraiser',
    form: 'gauge-study',
    value: startedStudy([[0, 1, 2]], { appraisers: ['Ann'] }),
    at: '/appraisers',
  },
  {
    what: 'a half byte',
    form: 'capture-line',
    value: { atUs: 1, service: '185a', characteristic: '2c0b', hex: 'c' },
    at: '/hex',
  },
  {
    what: 'a result with a member that the standard does not have',
    form: 'joining-results',
    value: resultsOf(opened.entries).map((one) => ({ ...one, ReporterId: 'x' })),
    at: '/0',
  },
  {
    what: 'a scenario in which nothing happens',
    form: 'scenario',
    value: { ...Object(example('scenario.json')), steps: [] },
    at: '/steps',
  },
  {
    what: 'no lines missed',
    form: 'event-line',
    value: { kind: 'missed', lines: 0 },
    at: '/lines',
  },
  {
    what: 'a key that is too short',
    form: 'bonds',
    value: {
      form: 'plugmark/bonds/1',
      bonds: { a: { key: '00', diversifier: '0001', random: '0'.repeat(16) } },
    },
    at: '/bonds/a/key',
  },
];

describe('a validator of JSON Schema by other people', () => {
  const ajv = new Ajv2020({ strict: true, allErrors: true });
  addFormats.default(ajv);
  /** As plugmark reads what is signed: with something in the place of each digest. */
  const withTexts = (value: unknown) => {
    const back = revealed(JSON.parse(JSON.stringify(value)), [], 'case');
    return back.ok ? back.value.value : value;
  };
  const validators = new Map(names.map((name) => [name, ajv.compile(schemaOf(name))]));
  const faultsOf = ({ form, value }: Case) => {
    const validate = validators.get(form);
    return validate?.(value) === true ? [] : (validate?.errors ?? []).map(({ instancePath }) => instancePath);
  };

  it('takes every schema in its strict mode', () => {
    expect(validators.size).toBe(names.length);
  });

  it('and plugmark take every value of ours, of every form', () => {
    expect(GOOD.filter((one) => faultsOf(one).length !== 0).map(({ what }) => what)).toEqual([]);
    expect(GOOD.filter(({ form, value }) => !FORMS[form].safeParse(withTexts(value)).success)).toEqual([]);
    expect([...new Set(GOOD.map(({ form }) => form))].sort()).toEqual([...read, 'pulls'].sort());
    expect(GOOD.length).toBeGreaterThan(80);
  });

  it.each(BAD.map((one) => [one.what, one] as const))('and plugmark refuse %s', (_what, one) => {
    expect(faultsOf(one)).toContain(one.at);
    expect(FORMS[one.form].safeParse(withTexts(one.value)).success).toBe(false);
  });
});

describe('the schemas', () => {
  it.each(names)('%s says what each of its fields holds', (name) => {
    expect(undescribed(schemaOf(name), '')).toEqual([]);
  });
});

/** Fields without a description; a constant says itself what it is. */
function undescribed(node: unknown, path: string): readonly string[] {
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([name, part]) => {
    // Of an object; a list may have a field of this name.
    if (name !== 'properties' || !('type' in node)) return undescribed(part, `${path}/${name}`);
    return Object.entries(Object(part)).flatMap(([field, one]) => {
      const bare = !('description' in Object(one)) && !('const' in Object(one));
      return [...(bare ? [`${path}/${field}`] : []), ...undescribed(one, `${path}/${field}`)];
    });
  });
}
