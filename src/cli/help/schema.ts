import { z } from 'zod';
import { profileSchema } from '../../../drivers/profile/schema.ts';
import { bondsFileSchema } from '../../../drivers/radio/bonds.ts';
import { captureLineSchema } from '../../../drivers/replay/capture.ts';
import { headerSchema, lineSchema } from '../../../drivers/replay/schema.ts';
import { scenarioSchema } from '../../../sim/serve/scenario.ts';
import { gaugeStudyEvents } from '../../evidence/gauge-study-event.ts';
import { jwsSchema, recordHeaderSchema } from '../../evidence/jws.ts';
import { laterLogSchema } from '../../evidence/later-log.ts';
import { jobEntrySchema, stationEntrySchema } from '../../evidence/log.ts';
import { recordSchema } from '../../evidence/record.ts';
import { successionSchema } from '../../evidence/succession.ts';
import { trustListSchema } from '../../evidence/trust.ts';
import { certificateFileSchema } from '../../instrument/certificate.ts';
import { libraryEntrySchema } from '../../job/library.ts';
import { workOrderSchema } from '../../job/order.ts';
import { routineSchema } from '../../job/routine.ts';
import {
  packageHeaderSchema,
  packageIndexSchema,
  packageProofsSchema,
  packageStationSchema,
} from '../../package/format.ts';
import { type PersonalKind, personalKindOf } from '../../personal.ts';
import { ProblemError } from '../../problem.ts';
import { jobCsvSchema } from '../../report/csv-columns.ts';
import { joiningResultSchema } from '../../report/joining-form.ts';
import { eventLineSchema } from '../bench/event-lines.ts';
import { stationFileSchema } from '../station/station-file.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import type { FormName } from './form-names.ts';
import { OUTPUTS } from './outputs.ts';

/** All that the program reads or writes as JSON, by the name that `plugmark schema` takes. */
export const FORMS = {
  'work-order': workOrderSchema.describe('A work order.'),
  station: stationFileSchema.describe('The station file.'),
  routine: routineSchema.describe("A shop's own routine."),
  specification: libraryEntrySchema.describe("An entry of the shop's library."),
  certificate: certificateFileSchema.describe('A calibration certificate.'),
  profile: profileSchema.describe('The description of a tool without code.'),
  'record-file': jwsSchema.describe('The file of a record: a JWS in general JSON serialization.'),
  'record-header': recordHeaderSchema.describe('The protected header of a signature of a record.'),
  record: recordSchema.describe('What is signed: the payload of a record.'),
  'log-entry': jobEntrySchema.describe('An entry of a job in the station log.'),
  'station-entry': stationEntrySchema.describe('An entry of the station itself in its log.'),
  'gauge-study': z
    .discriminatedUnion('type', gaugeStudyEvents)
    .describe('What happens in a gauge study; each is the event of a station entry.'),
  'key-statement': successionSchema.describe('How an old key names the next one: a payload of a JWS.'),
  'trust-list': trustListSchema.describe('The keys that a reader trusts: a JSON Web Key set.'),
  consistency: laterLogSchema.describe(
    'What proves that a log begins with an older one; beside a record whose key has ended.',
  ),
  'package-index': packageIndexSchema.describe('index.json of a package.'),
  'package-header': packageHeaderSchema.describe('The protected header in index.jws of a package.'),
  'package-proofs': packageProofsSchema.describe('proofs.json of a package.'),
  'package-station': packageStationSchema.describe('station-entries.json of a package.'),
  'capture-line': captureLineSchema.describe('A line of a capture: the first, a packet, or the last.'),
  'readings-line': z
    .union([headerSchema, lineSchema])
    .describe('A line of a recording: the first, readings, or the last.'),
  'job-csv': jobCsvSchema.describe('A row of the CSV of a job, as it is without --csv-locale.'),
  'event-line': eventLineSchema.describe('A line that "plugmark job --events" writes.'),
  'joining-results': z.array(joiningResultSchema).describe('What "plugmark results" writes.'),
  scenario: scenarioSchema.describe('What simulated tools do.'),
  bonds: bondsFileSchema.describe('The keys of paired tools, bluetooth-bonds.json.'),
  ...OUTPUTS,
} as const satisfies Readonly<Record<FormName | keyof typeof OUTPUTS, z.ZodType>>;
export type AnyForm = keyof typeof FORMS;

/** What is signed, or hashed into the log: personal texts are digests in it. */
const SIGNED: ReadonlySet<AnyForm> = new Set<AnyForm>([
  'record',
  'log-entry',
  'station-entry',
  'gauge-study',
  'package-station',
]);

/** What is signed in the place of a personal text (RFC 9901). */
const CONCEALED = {
  type: 'object',
  properties: {
    _sd: {
      type: 'array',
      items: { type: 'string', pattern: '^[A-Za-z0-9_-]{43}$' },
      minItems: 1,
      maxItems: 1,
      description: 'SHA-256 of the disclosure that holds the text, base64url.',
    },
  },
  required: ['_sd'],
  additionalProperties: false,
} as const;

/** Those of JSON Schema's formats that the program's types use; what else zod names is no format of the standard. */
const STANDARD_FORMATS: ReadonlySet<unknown> = new Set(['date', 'date-time']);

/** JSON Schema (draft 2020-12) of a form, made from the types that the program itself reads it by. */
export function schemaOf(name: AnyForm) {
  const made = z.toJSONSchema(FORMS[name], {
    target: 'draft-2020-12',
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      const kind = SIGNED.has(name) ? personalKindOf(zodSchema) : null;
      if (kind !== null) conceal(jsonSchema, kind);
      if (!STANDARD_FORMATS.has(jsonSchema.format)) delete jsonSchema.format;
    },
  });
  return { title: `plugmark ${name}`, ...made };
}

/** Puts what is signed of a text in its place; what the text may be, and of what kind it is, goes with the digest. */
function conceal(schema: z.core.JSONSchema.BaseSchema, kind: PersonalKind): void {
  const { description, ...text } = schema;
  for (const name of Object.keys(schema)) delete schema[name];
  const { properties, ...object } = structuredClone(CONCEALED);
  const items = { ...properties._sd.items, contentSchema: { title: kind, ...text } };
  Object.assign(
    schema,
    { ...object, properties: { _sd: { ...properties._sd, items } } },
    description === undefined ? {} : { description },
  );
}

/** Prints the schema of a form, or the names of all forms. */
export function schema(name: string | undefined): ExitCode {
  if (name === undefined) {
    const widest = Math.max(...Object.keys(FORMS).map(({ length }) => length));
    for (const [form, { description }] of Object.entries(FORMS))
      process.stdout.write(`${form.padEnd(widest)}  ${description}\n`);
    return EXIT.done;
  }
  if (!isForm(name))
    throw new ProblemError({
      code: 'option-not-valid',
      message: `there is no form "${name}"`,
      next: `Choose one of: ${Object.keys(FORMS).join(', ')}.`,
    });
  process.stdout.write(jsonText(schemaOf(name)));
  return EXIT.done;
}

const isForm = (name: string): name is AnyForm => Object.hasOwn(FORMS, name);
