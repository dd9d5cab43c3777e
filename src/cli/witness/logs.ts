import type { WitnessedLog } from '../../../db/witness.ts';
import { readVerifierKey } from '../../evidence/verifier-key.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { plural, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { listedLogs } from '../answers/witness.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { type WitnessScope, withWitness } from './witness-folder.ts';

/** From now on the witness cosigns what this key of the log signs. A log whose key was rotated is added again with its new one. */
export function addLog(vkey: string, scope: WitnessScope): Promise<ExitCode> {
  return withWitness(scope, (file) => {
    const key = readVerifierKey(vkey.trim());
    if (key?.kind !== 'log') throw new ProblemError(notAKey());
    const isNew = file.addLog(key.name, vkey.trim());
    print([
      isNew
        ? w`The log ${safeLine(key.name)} is known now.`
        : w`The log ${safeLine(key.name)} was known with this key before.`,
    ]);
    return EXIT.done;
  });
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

function logLine({ origin, size, at, forks }: WitnessedLog): string {
  const state = size === null ? w`nothing cosigned yet` : w`${size} entries, cosigned on ${at ?? ''}`;
  const fork = forks === 0 ? '' : w`; TWO HISTORIES: it signed another log of the same size (${forks} kept)`;
  return `  ${safeLine(origin)}: ${state}${fork}`;
}

const notAKey = (): Problem => ({
  code: 'key-form',
  where: 'LOG-VKEY',
  message: w`this is not the verifier key of a log (Ed25519)`,
  next: w`Take what "plugmark log vkey" prints at the station, and put it between quotes.`,
});
