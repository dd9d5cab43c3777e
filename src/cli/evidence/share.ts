/** Gives a record away without some of its personal texts. */

import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import { entriesOf, sharedRecord, withheldIn } from '../../evidence/sharing.ts';
import { inputName, readBytes } from '../../files/input.ts';
import { writeNew } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { kindsIn } from './kinds.ts';
import { withheldLines } from './report-lines.ts';

/** Writes the same signed record, with fewer of its texts beside it, as a new file. */
export async function share(
  file: string,
  options: { readonly without: string; readonly out?: string; readonly withNumbers?: true },
): Promise<ExitCode> {
  const kinds = kindsIn(options.without);
  if (options.out === undefined && inputName(file) !== file)
    throw new ProblemError({
      code: 'nothing-named',
      where: inputName(file),
      message: w`nothing says where the record goes`,
      next: w`Name a file with --out.`,
    });
  const opened = openRecord(await readBytes(file, w`record`, MAX_RECORD_BYTES));
  if (!opened.ok) throw new ProblemError({ ...opened.error.problem, where: file });
  const bytes = sharedRecord(opened.value, kinds, { withNumbers: options.withNumbers === true });
  const out = options.out ?? file.replace(/(\.record\.json)?$/, '.shared.record.json');
  writeNew(out, bytes);
  const shared = openRecord(bytes);
  if (!shared.ok) throw new Error('a record that was shared cannot be opened');
  print([
    w`${safeLine(out)}: the same record, under the same signatures.`,
    ...withheldLines(withheldIn(entriesOf(shared.value.record))),
    w`  The job number, the odometer and the texts of the program stay in it.`,
  ]);
  return EXIT.done;
}
