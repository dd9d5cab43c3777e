import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { newKey, writeKeyFile } from '../../../db/keyfile.ts';
import { makeFolder, writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import { askSecret } from '../terminal/secret.ts';
import { print } from '../terminal/wrapped.ts';
import { KEYS_FILE, NAME, notAName } from '../witness/init.ts';
import { keysOfWitness } from '../witness/witness-folder.ts';
import { type ArchiveIdentity, archiveKeyPath, identityPath } from './archive-folder.ts';

/** Makes an archive: its key, and the file that says who it is. Its tables are made when it is used first. */
export async function initArchive({
  data,
  name,
}: {
  readonly data: string;
  readonly name: string;
}): Promise<ExitCode> {
  if (!NAME.test(name)) throw new ProblemError(notAName(name));
  makeFolder(data, 0o700);
  if (existsSync(identityPath(data)))
    throw new ProblemError({
      code: 'file-exists',
      where: identityPath(data),
      message: w`an archive is here already`,
      next: w`Use it, or name another folder with --data.`,
    });
  const key = newKey();
  const passphrase = await askSecret('passphrase', w`Passphrase for the archive's key (Enter: none): `);
  // The key first: an archive without its key could never sign.
  orThrow(writeKeyFile(archiveKeyPath(data, key.kid), key, passphrase));
  const identity: ArchiveIdentity = { form: 'plugmark/archive-folder/1', name, kid: key.kid };
  const file = join(data, KEYS_FILE);
  writeWhole(
    file,
    `${keysOfWitness(name, key)
      .map(({ vkey }) => vkey)
      .join('\n')}\n`,
  );
  writeWhole(identityPath(data), jsonText(identity));
  print([
    w`Archive ${safeLine(name)} made in ${safeLine(data)}.`,
    ...(passphrase === null
      ? [w`Its key has no passphrase: whoever reads the file can sign as this archive.`]
      : []),
    w`Its verifier keys are in ${safeLine(file)}: give them to those who verify. What it keeps, plates and names with it, lies in this folder or in the database that you name: keep both as you keep the shop's books.`,
    w`To be safe in a network: name --certificate and --key when it listens beyond this computer; it refuses to do so without them. Nobody can enrol a station without a one-time token of yours.`,
    w`Next: plugmark archive enrol --tenant SHOP, then plugmark archive serve.`,
  ]);
  return EXIT.done;
}
