/** A new key for the station, and what becomes of the old one and of what it signed. */

import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { destroyKeyFile, isLockedKeyFile, relockKeyFile, type StationKey } from '../../../db/keyfile.ts';
import { readCheckpoint } from '../../evidence/checkpoint.ts';
import { thumbprint } from '../../evidence/jwk.ts';
import type { StationEvent } from '../../evidence/station-event.ts';
import { stateSuccession } from '../../evidence/succession.ts';
import { writeWhole } from '../../files/output.ts';
import { orThrow } from '../../result.ts';
import { plural, w } from '../../words/catalogue.ts';
import { proofBeside } from '../evidence/later-log-file.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import { askSecret, SECRETS } from '../terminal/secret.ts';
import { print } from '../terminal/wrapped.ts';
import { stamp } from './clock.ts';
import { noPassphrase, problem } from './keys.ts';
import { laterLog } from './log.ts';
import { findings, recordsHere } from './log-check.ts';
import { inRecords, logNow, recordsApart, refuseTurned } from './one-history.ts';
import { type Scope, withStationFolder } from './scope.ts';
import { newCheckpoint } from './sign-log.ts';
import { recordStation, type StationFolder, stateOf } from './station.ts';
import { currentKey, devicePath, keyPath, makeKey, makeKeyInDevice, orNoKeys } from './station-keys.ts';
import { TRUST_FILE } from './station-log.ts';

/** Makes a new key for the station; the old one names it, unless it was lost or is not to be believed. */
export function rotateKey(
  options: Scope & {
    readonly lost?: true;
    readonly because?: string;
    readonly keep?: true;
    readonly evenSo?: true;
    readonly pkcs11?: string;
    readonly token?: string;
  },
): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const { folder } = stationFolder;
    const before = stateOf(stationFolder);
    refuseTurned(stationFolder, before);
    const apart = recordsApart(folder, logNow(stationFolder, before));
    if (apart.length > 0 && options.evenSo !== true) throw leftBehind(apart);
    const old = options.lost === true ? null : await currentKey(folder, before);
    const oldFile = keyPath(folder, 'station', before.keys.at(-1)?.kid ?? '');
    const keeping = options.keep === true ? await lockedUnder(oldFile, old) : null;
    const place = deviceIn(options);
    const locked = place === null && (isLockedKeyFile(oldFile) === true || keeping !== null);
    const passphrase = locked ? await askSecret('passphrase', w`Passphrase for the new key: `) : null;
    if (locked && passphrase === null) throw noPassphrase();
    const at = stamp();
    const key = await orNoKeys(folder, async () => {
      const fresh =
        place === null
          ? makeKey(folder, 'station', passphrase ?? (process.env[SECRETS.passphrase] || null))
          : await makeKeyInDevice(folder, place);
      const event: StationEvent =
        old === null
          ? {
              type: 'key-replaced',
              key: fresh.jwk,
              ...(options.because === undefined ? {} : { because: options.because }),
            }
          : {
              type: 'key-rotated',
              key: fresh.jwk,
              statement: stateSuccession({ log: before.origin, next: fresh.jwk, at: at.at }, old.privateKey),
            };
      await recordStation(stationFolder, [event], at);
      return fresh;
    });
    const state = stateOf(stationFolder);
    // The last that the old key signs is a log in which it names the new one, and no other.
    if (old !== null) await newCheckpoint(stationFolder, { state, key: old });
    const note = await newCheckpoint(stationFolder, { state, key });
    const proofs = await proofsBeside(stationFolder, note);
    if (keeping !== null) keeping();
    else if (existsSync(oldFile)) orThrow(destroyKeyFile(oldFile));
    const oldDevice = existsSync(devicePath(folder, before.keys.at(-1)?.kid ?? ''));
    print([
      w`The station signs with ${key.kid} from now on.`,
      keeping === null
        ? oldDevice
          ? w`The old key is still in its device, where nothing here can destroy it: delete it there.`
          : w`The old key was destroyed. Destroy your copies of it too.`
        : w`The old key is kept, under its passphrase; nobody needs it any more.`,
      w`Give the new ${TRUST_FILE} to everybody who verifies. Who has it believes older records where the log shows them:`,
      w`${plural(proofs, { one: '# record here has such a proof beside it', other: '# records here have such a proof beside them' })} (*.record.json.proof); give it along. Others: plugmark log prove consistency RECORD > RECORD.proof`,
    ]);
    return EXIT.done;
  });
}

/** Where the new key is to be made; null for a file. */
function deviceIn({
  pkcs11,
  token,
}: {
  readonly pkcs11?: string;
  readonly token?: string;
}): { readonly module: string; readonly token: string } | null {
  if (pkcs11 === undefined && token === undefined) return null;
  if (pkcs11 === undefined || token === undefined)
    throw problem(
      'option-not-valid',
      w`a key in a device needs both --pkcs11 and --token`,
      w`Name the module of its maker, and the label of the token.`,
    );
  return { module: resolve(pkcs11), token };
}

/** Nothing is changed before somebody has read this. */
const leftBehind = (records: readonly string[]) =>
  problem(
    'records-left-behind',
    w`${recordsHere(records.length)} of entries that the log lost, as ${safeLine(records[0] ?? '')}: once their key has ended no proof from the log can be made for them, and whoever has the new trust list will not trust them`,
    w`Stamp each of them first: plugmark time-stamp RECORD. Then run the command again with --even-so.`,
  );

/** Puts the old key under a passphrase once the new one is there; asks before anything is changed. */
async function lockedUnder(file: string, key: StationKey | null): Promise<() => void> {
  if (key === null)
    throw problem('option-not-valid', w`a key that was lost cannot be kept`, w`Leave out --keep or --lost.`);
  if (isLockedKeyFile(file) === true) return () => {};
  const passphrase = await askSecret('passphrase', w`Passphrase for the old key: `);
  if (passphrase === null) throw noPassphrase();
  return () => void orThrow(relockKeyFile(file, key, passphrase));
}

/** Beside each record here, the proof that the log of now contains it: its key has ended. How many there are. */
async function proofsBeside(stationFolder: StationFolder, note: string): Promise<number> {
  const state = stateOf(stationFolder);
  const own = inRecords(stationFolder.folder, logNow(stationFolder, state)).filter(
    ({ checkpoint }) => findings(stationFolder, [checkpoint])[0]?.kind === 'extends',
  );
  const { size } = orThrow(readCheckpoint(note, 'checkpoint'));
  for (const { where, checkpoint } of own)
    await writeWhole(proofBeside(where), jsonText(laterLog(stationFolder, checkpoint.size, size, note)));
  return own.length;
}

/** Destroys the file of a key that signs no more. */
export function destroyKey(kid: string, options: Scope): Promise<ExitCode> {
  return withStationFolder(options, (stationFolder) => {
    const state = stateOf(stationFolder);
    const current = [state.keys.at(-1)?.kid, ...state.people.map(({ key }) => key && thumbprint(key))];
    if (current.includes(kid) && !state.revoked.has(kid))
      throw problem(
        'key-in-use',
        w`the key ${kid} still signs`,
        w`Make a new one first: plugmark keys rotate`,
      );
    const file = (['station', 'technician'] as const)
      .map((role) => keyPath(stationFolder.folder, role, kid))
      .find((path) => existsSync(path));
    if (!/^[\w-]{43}$/.test(kid) || file === undefined)
      throw problem('key-unknown', w`there is no file of a key ${kid}`, w`See "plugmark doctor".`);
    orThrow(destroyKeyFile(file));
    print([w`${safeLine(file)} was destroyed. Destroy your copies of it too.`]);
    return EXIT.done;
  });
}
