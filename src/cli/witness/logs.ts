import type { LogAdded, WitnessedLog } from '../../../db/witness.ts';
import { thumbprint } from '../../evidence/jwk.ts';
import { verifierKey } from '../../evidence/note.ts';
import { readVerifierKey } from '../../evidence/verifier-key.ts';
import { type Problem, ProblemError } from '../../problem.ts';
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
    print([`The log ${safeLine(key.name)} ${ADDED[added]}.`]);
    return EXIT.done;
  });
}

const ADDED: Readonly<Record<Exclude<LogAdded, 'retired'>, string>> = {
  'new-log': 'is known now',
  'new-key': 'is signed by this key from now on; what its key of before signs is not cosigned any more',
  there: 'was known with this key before',
};

/** The logs that the witness knows. A fork makes the answer a bad one. */
export function listLogs(options: WitnessScope & { readonly json?: true }): Promise<ExitCode> {
  return withWitness(options, (file) => {
    const { name } = file.identity();
    const logs = file.logs();
    if (options.json === true) printJson(listedLogs(name, logs));
    else
      print([
        `Witness ${safeLine(name)}, ${logs.length === 1 ? '1 log' : `${logs.length} logs`}`,
        ...logs.map(logLine),
      ]);
    return logs.some(({ forks }) => forks > 0) ? EXIT.failed : EXIT.done;
  });
}

function logLine({ origin, vkey, keyAdded, keysRetired, size, at, forks }: WitnessedLog): string {
  const state = size === null ? 'nothing cosigned yet' : `${size} entries, cosigned on ${at ?? ''}`;
  const fork = forks === 0 ? '' : `; TWO HISTORIES: it signed another log of the same size (${forks} kept)`;
  const [, id = ''] = vkey.split('+');
  const old = keysRetired === 0 ? '' : `, the ${keysRetired === 1 ? 'one' : keysRetired} before it retired`;
  return `  ${safeLine(origin)}: ${state}; key ${id} since ${keyAdded}${old}${fork}`;
}

const notAKey = (): Problem => ({
  code: 'key-form',
  where: 'LOG-VKEY',
  message: 'this is not the verifier key of a log (Ed25519)',
  next: 'Take what "plugmark log vkey" prints at the station, and put it between quotes.',
});

const ownKey = (): Problem => ({
  code: 'key-form',
  where: 'LOG-VKEY',
  message: 'this is the key of the witness itself, and nobody is his own witness',
  next: 'Take what "plugmark log vkey" prints at the station.',
});

const retired = (): Problem => ({
  code: 'key-retired',
  where: 'LOG-VKEY',
  message: 'this key of the log was retired here when a newer one was added, and it does not come back',
  next: 'Take the key of now: "plugmark log vkey" at the station. Where the newer one was added by mistake, the station has to make a new key first: plugmark keys rotate',
});
