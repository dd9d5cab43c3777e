import { countersignRecord, MAX_RECORD_BYTES } from '../../evidence/record.ts';
import { inputName, readBytes } from '../../files/input.ts';
import { writeNew } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { now } from '../station/clock.ts';
import { unlocked } from '../station/station-keys.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';

/**
 * Adds a signature to a record and writes it as a new file: the sealed one stays as it is, and so does its digest on paper.
 */
export async function countersign(
  file: string,
  options: { readonly key: string; readonly out?: string },
): Promise<ExitCode> {
  if (options.out === undefined && inputName(file) !== file)
    throw new ProblemError({
      code: 'nothing-named',
      where: inputName(file),
      message: w`nothing says where the countersigned record goes`,
      next: w`Name a file with --out.`,
    });
  const bytes = await readBytes(file, w`record`, MAX_RECORD_BYTES);
  const key = await unlocked(options.key, 'passphrase', w`Passphrase of your key: `);
  const signed = countersignRecord(bytes, { privateKey: key.privateKey, signedAt: now() });
  if (!signed.ok) throw new ProblemError({ ...signed.error.problem, where: file });
  const out = options.out ?? file.replace(/(\.record\.json)?$/, '.countersigned.record.json');
  writeNew(out, signed.value);
  process.stdout.write(w`${safeLine(out)}: countersigned with ${key.kid}.\n`);
  return EXIT.done;
}
