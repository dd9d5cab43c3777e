import { existsSync } from 'node:fs';
import {
  destroyKeyFile,
  newKey,
  readKeyFile,
  relockKeyFile,
  type StationKey,
  writeKeyFile,
} from '../../../db/keyfile.ts';
import { type PublicJwk, thumbprint } from '../../evidence/jwk.ts';
import type { Stamp } from '../../evidence/log.ts';
import { keysOf, type Person, personNamed, type StationState } from '../../evidence/station.ts';
import type { StationEvent } from '../../evidence/station-event.ts';
import { ProblemError } from '../../problem.ts';
import type { ProblemCode } from '../../problem-code.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { listedKeys } from '../answers/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import { labelled, type Row } from '../terminal/labelled.ts';
import { askSecret, SECRETS } from '../terminal/secret.ts';
import { print } from '../terminal/wrapped.ts';
import { stamp } from './clock.ts';
import { folderOf, type Scope, withStationFolder } from './scope.ts';
import { openStationFolder, recordStation, type StationFolder, stateOf } from './station.ts';
import { isKeyHere, keyPath, makeKey, orNoKeys, unlocked } from './station-keys.ts';
import { stationKeysIn } from './station-log.ts';

/** Fewer can be tried out in an hour by whoever has the file. */
const SHORTEST_PIN = 6;

/** Lists the keys of the station and of its people, with where each stands. */
export function listKeys(options: Scope & { readonly json?: true }): Promise<ExitCode> {
  return changing(options, (stationFolder, state) => {
    if (options.json === true) {
      printJson(listedKeys(state, stationFolder.trustFile));
      return [];
    }
    const own = state.keys.map(({ kid, since }, i) => {
      const now = i === state.keys.length - 1 ? w`signs` : w`until ${state.keys[i + 1]?.since ?? ''}`;
      return [w`station`, `${kid}  ${w`from ${since}`}  ${standing(state, kid) ?? now}`] as const;
    });
    const people = state.people.flatMap((person) => personRows(state, person));
    const decided = {
      sign: w`sign with their own keys`,
      'do-not-sign': w`do not sign (decided by the shop)`,
    };
    const technicians =
      state.technicians === null ? w`not decided; those with a key sign` : decided[state.technicians];
    print([
      ...labelled([...own, ...people]),
      w`technicians: ${technicians}`,
      w`trust list: ${stationFolder.trustFile}`,
    ]);
    return [];
  });
}

/** A row for each key of a person, the one of now first. */
function personRows(state: StationState, person: Person): readonly Row[] {
  const line = (kid: string, how: string): Row => [w`technician`, `${kid}  ${safeLine(person.name)}  ${how}`];
  const keyLine = (jwk: PublicJwk, how: string) => {
    const kid = thumbprint(jwk);
    return line(kid, standing(state, kid) ?? how);
  };
  return [
    person.key === null ? line(w`no key`, '') : keyLine(person.key, ''),
    ...person.earlierKeys.toReversed().map((jwk) => keyLine(jwk, w`an earlier key`)),
  ];
}

function standing(state: StationState, kid: string): string | null {
  const revoked = state.revoked.get(kid);
  return revoked === undefined ? null : w`REVOKED from ${revoked.from} (${revoked.reason})`;
}

/** Says that a key is not to be believed from a day on. */
export function revokeKey(
  kid: string,
  options: Scope & { readonly from?: string; readonly as: string; readonly because: string },
): Promise<ExitCode> {
  return changing(options, (_archive, state, stamp) => {
    const { as: reason, because } = options;
    if (reason !== 'retired' && reason !== 'lost' && reason !== 'compromised')
      throw problem(
        'option-not-valid',
        w`"${reason}" is not a reason`,
        w`Give retired, lost or compromised.`,
      );
    const kids = [...state.keys.map((key) => key.kid), ...state.people.flatMap(keysOf).map(thumbprint)];
    if (!kids.includes(kid))
      throw problem('key-unknown', w`the log has no key ${kid}`, w`See "plugmark keys list".`);
    const from = new Date(options.from ?? stamp.at);
    if (Number.isNaN(from.getTime()))
      throw problem('option-not-valid', w`this is not a date`, w`Write it as 2026-03-02.`);
    return [{ type: 'key-revoked', kid, from: from.toISOString(), reason, because }];
  });
}

/** Makes a key for a technician, under a PIN that only he knows. */
export function addTechnician(name: string, options: Scope): Promise<ExitCode> {
  return changing(options, async ({ folder }, state) => {
    const pin = await askSecret(
      'pin',
      w`${safeLine(name)}, choose a PIN of at least ${SHORTEST_PIN} characters: `,
    );
    if (pin === null || pin.length < SHORTEST_PIN)
      throw problem(
        'pin-short',
        w`a PIN needs at least ${SHORTEST_PIN} characters`,
        w`Type one, or put it into ${SECRETS.pin}.`,
      );
    const before = personNamed(state, name)?.key ?? null;
    const key = makeKey(folder, 'technician', pin);
    return {
      events: [{ type: 'person-recorded', person: name, key: key.jwk }],
      afterwards: () => {
        const file = before === null ? null : keyPath(folder, 'technician', thumbprint(before));
        if (file !== null && existsSync(file)) orThrow(destroyKeyFile(file));
        process.stdout.write(w`${safeLine(name)} signs with ${key.kid}.\n`);
      },
    };
  });
}

/** The shop's decision about technicians' signatures; every record says so. */
export function decideTechnicians(technicians: string, options: Scope): Promise<ExitCode> {
  return changing(options, () => {
    if (technicians !== 'sign' && technicians !== 'do-not-sign')
      throw problem('option-not-valid', w`"${technicians}" is not a decision`, w`Say sign or do-not-sign.`);
    return [{ type: 'technicians-decided', technicians }];
  });
}

/** Puts every key of the station that is here under a passphrase, or takes it off: those that sign no more as well. */
export function lockKeys(options: Scope & { readonly remove?: true }): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const { folder } = stationFolder;
    const current = stateOf(stationFolder).keys.at(-1)?.kid ?? '';
    const files = stationKeysIn(folder);
    if (!files.includes(current) && isKeyHere(folder, current))
      print([w`The key of the station is in a device, under its PIN.`]);
    const kids =
      isKeyHere(folder, current) && !files.includes(current)
        ? files
        : [current, ...files.filter((kid) => kid !== current)];
    const keys: (readonly [path: string, key: StationKey])[] = [];
    for (const kid of kids) {
      const path = keyPath(folder, 'station', kid);
      keys.push([path, await unlocked(path, 'passphrase', w`Passphrase until now of ${kid}: `)]);
    }
    const passphrase = options.remove === true ? null : await askSecret('passphrase', w`New passphrase: `);
    if (passphrase === null && options.remove !== true) throw noPassphrase();
    for (const [path, key] of keys) orThrow(relockKeyFile(path, key, passphrase));
    return EXIT.done;
  });
}

export const noPassphrase = () =>
  problem('passphrase-empty', w`no passphrase was given`, w`Type one, or put it into ${SECRETS.passphrase}.`);

/** Makes a key for somebody outside the station, such as a foreman who countersigns, and prints its line for trust lists. */
export async function makeOwnKey(
  file: string,
  { name, role }: { readonly name: string; readonly role: string },
): Promise<ExitCode> {
  const passphrase = await askSecret('passphrase', w`Passphrase for the new key (Enter: none): `);
  const key = newKey();
  orThrow(writeKeyFile(file, key, passphrase));
  const { kid, jwk } = orThrow(readKeyFile(file, passphrase));
  process.stdout.write(jsonText({ ...jwk, kid, use: 'sig', alg: 'Ed25519', name, role }));
  return EXIT.done;
}

interface Changed {
  readonly events: readonly StationEvent[];
  /** What is done once they are in the log. */
  readonly afterwards?: () => void;
}

type Change = (
  stationFolder: StationFolder,
  state: StationState,
  stamp: Stamp,
) => readonly StationEvent[] | Promise<Changed>;

/** Opens the station's log, records what a change leads to, and writes the trust list anew. */
async function changing(options: Scope, change: Change): Promise<ExitCode> {
  const stationFolder = await openStationFolder(await folderOf(options));
  try {
    const at = stamp();
    await orNoKeys(stationFolder.folder, async () => {
      const changed = await change(stationFolder, stateOf(stationFolder), at);
      const { events, afterwards } =
        'events' in changed ? changed : { events: changed, afterwards: undefined };
      if (events.length > 0) await recordStation(stationFolder, events, at);
      afterwards?.();
    });
    return EXIT.done;
  } finally {
    stationFolder.log.close();
  }
}

export const problem = (code: ProblemCode, message: string, next: string) =>
  new ProblemError({ code, message, next });
