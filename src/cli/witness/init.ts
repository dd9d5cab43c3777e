import { join } from 'node:path';
import { newKey, writeKeyFile } from '../../../db/keyfile.ts';
import { createWitnessFile, refuseSecond } from '../../../db/witness.ts';
import { makeFolder, writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { askSecret } from '../terminal/secret.ts';
import { print } from '../terminal/wrapped.ts';
import { keysOfWitness, type WitnessScope, witnessKeyPath, witnessPath } from './witness-folder.ts';

/** As in a note: no space of any script and no plus; short enough for a cosignature by ML-DSA-44. */
export const NAME = /^[^\p{White_Space}\p{Cc}+]{1,80}$/u;
export const KEYS_FILE = 'verifier-keys.txt';

/** Makes a witness: its key and its file. */
export async function initWitness({
  data,
  name,
}: WitnessScope & { readonly name: string }): Promise<ExitCode> {
  if (!NAME.test(name)) throw new ProblemError(notAName(name));
  makeFolder(data, 0o700);
  refuseSecond(witnessPath(data));
  const key = newKey();
  const passphrase = await askSecret('passphrase', w`Passphrase for the witness's key (Enter: none): `);
  // The key first: a file without its key could never sign, and could not be made again either.
  orThrow(writeKeyFile(witnessKeyPath(data, key.kid), key, passphrase));
  await createWitnessFile(witnessPath(data), { name, kid: key.kid });
  const keys = keysOfWitness(name, key);
  const file = join(data, KEYS_FILE);
  writeWhole(file, `${keys.map(({ vkey }) => vkey).join('\n')}\n`);
  print([
    w`Witness ${safeLine(name)} made in ${safeLine(data)}.`,
    ...(passphrase === null
      ? [w`Its key has no passphrase: whoever reads the file can sign as this witness.`]
      : []),
    w`Its verifier keys, Ed25519 and ML-DSA-44, are in ${safeLine(file)}. Give them to the stations that it is to cosign, and to those who verify.`,
    w`Next: plugmark witness add LOG-VKEY, with what "plugmark log vkey" prints at the station.`,
  ]);
  return EXIT.done;
}

export const notAName = (name: string) => ({
  code: 'witness-name' as const,
  where: '--name',
  message: w`"${name}" cannot be the name of a witness`,
  next: w`Name it like an address, without spaces and plus: example.com/witness.`,
});
