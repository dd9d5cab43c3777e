import type { LogAdded, WitnessedLog } from '../../../db/witness.ts';
import { thumbprint } from '../../evidence/jwk.ts';
import { verifierKey } from '../../evidence/note.ts';
import { readVerifierKey } from '../../evidence/verifier-key.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { plural, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { listedLogs } from '../answers/witness.ts';
import { now } from '../station/clock.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { type WitnessScope, withWitness } from './witness-folder.ts';

/** From now on the witness cosigns what this key of the log signs, and nothing that the key before it signs. */
export function addLog(vkey: string, scope: WitnessScope): Promise<ExitCode> {
  return withWitness(scope, (file) => {
    const key = readVerifierKey(vkey.trim());
    if (key?.kind !== 'log') throw new ProblemError(notAKey());
    if (thumbprint(key.jwk) === file.identity().kid) throw new ProblemError(ownKey());
    const added = file.addLog({ origin: key.name, vkey: verifierKey(key.name, key.jwk), at: now() });
    if (added === 'retired') throw new ProblemError(retired());
    print([addedText(safeLine(key.name), added)]);
    return EXIT.done;
  });
}

function addedText(log: string, added: Exclude<LogAdded, 'retired'>): string {
  switch (added) {
    case 'new-log':
      return w`The log ${log} is known now.`;
    case 'new-key':
      return w`The log ${log} is signed by this key from now on; what its key of before signs is not cosigned any more.`;
    case 'there':
      return w`The log ${log} was known with this key before.`;
  }
}

/** The logs that the witness knows. A fork makes the answer a bad one. */
export function listLogs(options: WitnessScope & { readonly json?: true }): Promise<ExitCode> {
  return withWitness(options, (file) => {
    const { name } = file.identity();
    const logs = file.logs();
    if (options.json === true) printJson(listedLogs(name, logs));
    else
      print([
        w`Witness ${safeLine(name)}, ${plural(logs.length, { one: '# log', other: '# logs' })}`,
        ...logs.map(logLine),
      ]);
    return logs.some(({ forks }) => forks > 0) ? EXIT.failed : EXIT.done;
  });
}

function logLine({ origin, vkey, keyAdded, keysRetired, size, at, forks }: WitnessedLog): string {
  const state = size === null ? w`nothing cosigned yet` : w`${size} entries, cosigned on ${at ?? ''}`;
  const fork = forks === 0 ? '' : w`; TWO HISTORIES: it signed another log of the same size (${forks} kept)`;
  const [, id = ''] = vkey.split('+');
  const old =
    keysRetired === 0
      ? ''
      : `, ${plural(keysRetired, { one: 'the one before it retired', other: 'the # before it retired' })}`;
  return `  ${safeLine(origin)}: ${state}; ${w`key ${id} since ${keyAdded}`}${old}${fork}`;
}

const notAKey = (): Problem => ({
  code: 'key-form',
  where: 'LOG-VKEY',
  message: w`this is not the verifier key of a log (Ed25519)`,
  next: w`Take what "plugmark log vkey" prints at the station, and put it between quotes.`,
});

const ownKey = (): Problem => ({
  code: 'key-form',
  where: 'LOG-VKEY',
  message: w`this is the key of the witness itself, and nobody is his own witness`,
  next: w`Take what "plugmark log vkey" prints at the station.`,
});

const retired = (): Problem => ({
  code: 'key-retired',
  where: 'LOG-VKEY',
  message: w`this key of the log was retired here when a newer one was added, and it does not come back`,
  next: w`Take the key of now: "plugmark log vkey" at the station. Where the newer one was added by mistake, the station has to make a new key first: plugmark keys rotate`,
});
