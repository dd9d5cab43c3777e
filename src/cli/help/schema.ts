import { z } from 'zod';
import { profileSchema } from '../../../drivers/profile/schema.ts';
import { bondsFileSchema } from '../../../drivers/radio/bonds.ts';
import { captureLineSchema } from '../../../drivers/replay/capture.ts';
import { headerSchema, lineSchema } from '../../../drivers/replay/schema.ts';
import { gaugeStudyEvents } from '../../evidence/gauge-study-event.ts';
import { jwsSchema, recordHeaderSchema } from '../../evidence/jws.ts';
import { logEntrySchema, stationEntrySchema } from '../../evidence/log.ts';
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
import { ProblemError } from '../../problem.ts';
import { pullsReportSchema } from '../bench/pulls-report.ts';
import { stationFileSchema } from '../station/station-file.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';

interface Form {
  readonly schema: z.ZodType;
  readonly about: string;
}

/** All that the program reads or writes as JSON, by the name that `plugmark schema` takes. */
export const FORMS = {
  'work-order': { schema: workOrderSchema, about: 'A work order.' },
  station: { schema: stationFileSchema, about: 'The station file.' },
  routine: { schema: routineSchema, about: "A shop's own routine." },
  specification: { schema: libraryEntrySchema, about: "An entry of the shop's library." },
  certificate: { schema: certificateFileSchema, about: 'A calibration certificate.' },
  profile: { schema: profileSchema, about: 'The description of a Bluetooth tool.' },
  'record-file': { schema: jwsSchema, about: 'The file of a record: a JWS in general JSON serialization.' },
  'record-header': { schema: recordHeaderSchema, about: 'The protected header of a signature of a record.' },
  record: { schema: recordSchema, about: 'What is signed: the payload of a record.' },
  'log-entry': { schema: logEntrySchema, about: 'An entry of a job in the station log.' },
  'station-entry': { schema: stationEntrySchema, about: 'An entry of the station itself.' },
  'gauge-study': {
    schema: z.discriminatedUnion('type', gaugeStudyEvents),
    about: 'What happens in a gauge study; each is the event of a station entry.',
  },
  'key-statement': {
    schema: successionSchema,
    about: "How an old key names the next one: the payload of a key rotation's statement.",
  },
  'trust-list': { schema: trustListSchema, about: 'The keys that a reader trusts: a JSON Web Key set.' },
  'package-index': { schema: packageIndexSchema, about: 'index.json of a package.' },
  'package-header': { schema: packageHeaderSchema, about: 'The protected header in index.jws of a package.' },
  'package-proofs': { schema: packageProofsSchema, about: 'proofs.json of a package.' },
  'package-station': { schema: packageStationSchema, about: 'station-entries.json of a package.' },
  pulls: { schema: pullsReportSchema, about: 'What plugmark pulls --json prints.' },
  'capture-line': {
    schema: captureLineSchema,
    about: 'A line of a capture: the first, a packet, or the last.',
  },
  'readings-line': {
    schema: z.union([headerSchema, lineSchema]),
    about: 'A line of a recording: the first, a reading, or the last.',
  },
  bonds: { schema: bondsFileSchema, about: 'The keys of paired tools, bluetooth-bonds.json.' },
} as const satisfies Record<string, Form>;
export type FormName = keyof typeof FORMS;

/** Those of JSON Schema's formats that the program's types use; what else zod names is no format of the standard. */
const STANDARD_FORMATS: ReadonlySet<unknown> = new Set(['date', 'date-time']);

/** JSON Schema (draft 2020-12) of a form, made from the types that the program itself reads it by. */
export function schemaOf(name: FormName) {
  const { schema, about } = FORMS[name];
  const made = z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    io: 'input',
    override: ({ jsonSchema }) => {
      if (!STANDARD_FORMATS.has(jsonSchema.format)) delete jsonSchema.format;
    },
  });
  return { title: `plugmark ${name}`, description: about, ...made };
}

/** Prints the schema of a form, or the names of all forms. */
export function schema(name: string | undefined): ExitCode {
  if (name === undefined) {
    const widest = Math.max(...Object.keys(FORMS).map(({ length }) => length));
    for (const [form, { about }] of Object.entries(FORMS))
      process.stdout.write(`${form.padEnd(widest)}  ${about}\n`);
    return EXIT.done;
  }
  if (!isForm(name))
    throw new ProblemError({
      code: 'form-unknown',
      message: `there is no form "${name}"`,
      next: `Choose one of: ${Object.keys(FORMS).join(', ')}.`,
    });
  process.stdout.write(jsonText(schemaOf(name)));
  return EXIT.done;
}

const isForm = (name: string): name is FormName => Object.hasOwn(FORMS, name);
