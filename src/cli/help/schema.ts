import { z } from 'zod';
import { jwsSchema } from '../../evidence/jws.ts';
import { logEntrySchema, stationEntrySchema } from '../../evidence/log.ts';
import { recordSchema } from '../../evidence/record.ts';
import { trustListSchema } from '../../evidence/trust.ts';
import { workOrderSchema } from '../../job/order.ts';
import { ProblemError } from '../../problem.ts';
import { stationFileSchema } from '../station/station-file.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import type { FormName } from './form-names.ts';
import { OUTPUTS } from './outputs.ts';

/**
 * The forms that other programs may read or write: files, and the answers of commands with `--json`. `record` is what is
 * signed, `record-file` the file around it.
 */
export const FORMS = {
  record: recordSchema,
  'record-file': jwsSchema,
  'log-entry': logEntrySchema,
  'station-entry': stationEntrySchema,
  'work-order': workOrderSchema,
  station: stationFileSchema,
  'trust-list': trustListSchema,
  ...OUTPUTS,
} as const satisfies Readonly<Record<FormName | keyof typeof OUTPUTS, z.ZodType>>;

/** JSON Schema (draft 2020-12) of a form, made from the types that the program itself reads it by. */
export function schemaOf(form: keyof typeof FORMS) {
  return { title: `plugmark ${form}`, ...z.toJSONSchema(FORMS[form], { target: 'draft-2020-12' }) };
}

/** Prints the schema of a form. */
export function schema(form: string): ExitCode {
  if (!isForm(form))
    throw new ProblemError({
      code: 'form-unknown',
      message: `there is no form "${form}"`,
      next: `Choose one of: ${Object.keys(FORMS).join(', ')}.`,
    });
  process.stdout.write(jsonText(schemaOf(form)));
  return EXIT.done;
}

const isForm = (name: string): name is keyof typeof FORMS => Object.hasOwn(FORMS, name);
