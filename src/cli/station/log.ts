import { statSync } from 'node:fs';
import type { LaterLog } from '../../evidence/later-log.ts';
import { consistencyProof, inclusionProof } from '../../evidence/merkle.ts';
import { verifierKey } from '../../evidence/note.ts';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import { readBytes } from '../../files/input.ts';
import { outputFile, writeInPlace } from '../../files/output.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { findings, keptCheckpoint, report } from './log-check.ts';
import { keepSigned } from './one-history.ts';
import { type Scope, withStationFolder } from './scope.ts';
import { newCheckpoint, signedNow, signerOf } from './sign-log.ts';
import { type StationFolder, stateOf } from './station.ts';

/** Signs the log as it stands; whoever keeps the checkpoint can tell later whether anything in front of it changed. */
export function checkpoint(options: Scope & { readonly out?: string }): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const { out } = options;
    const there = out === undefined ? null : await noteThere(out);
    const signer = await signerOf(stationFolder, stateOf(stationFolder));
    const { size, note } = signedNow(stationFolder, signer);
    if (out !== undefined && there !== null && there !== note) throw new ProblemError(neverOver(out));
    await keepSigned(stationFolder, size, note);
    if (out === undefined) process.stdout.write(note);
    else if (there === note) print([w`${safeLine(out)} already is this checkpoint. Nothing written.`]);
    else {
      await writeInPlace(out, note);
      print([w`Checkpoint of ${size} entries written to ${safeLine(out)}. Keep it in another place.`]);
    }
    return EXIT.done;
  });
}

/** What a file holds already; null where there is none, or a pipe or a device, which hold nothing. */
async function noteThere(file: string): Promise<string | null> {
  outputFile(file);
  if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true) return null;
  return Buffer.from(await readBytes(file, w`checkpoint`, MAX_RECORD_BYTES)).toString('utf8');
}

/** What an auditor kept is the proof of what the log was then. */
const neverOver = (where: string): Problem => ({
  code: 'file-exists',
  where,
  message: w`the file exists; a checkpoint never overwrites a file`,
  next: w`Name a new file. Keep the old checkpoint: it still proves the log of its time.`,
});

/** Prints the verifier key of the log, as programs for notes, witnesses and policies take it. */
export function printVerifierKey(options: Scope): Promise<ExitCode> {
  return withStationFolder(options, (stationFolder) => {
    const { origin, keys } = stateOf(stationFolder);
    const key = keys.at(-1);
    if (key !== undefined) process.stdout.write(`${verifierKey(origin, key.jwk)}\n`);
    return EXIT.done;
  });
}

/** Proves that an entry is in the log: as JSON that any tool for RFC 9162 can check, or as c2sp.org/tlog-proof has it. */
export function proveInclusion(
  entry: number,
  options: Scope & { readonly form?: 'json' | 'tlog-proof' },
): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const { tree } = stationFolder.log;
    const size = stationFolder.log.size();
    if (entry < 1 || entry > size)
      throw new ProblemError({
        code: 'no-entry',
        message: w`the log has entries 1 to ${size}`,
        next: w`Name one of these.`,
      });
    const index = entry - 1;
    const path = inclusionProof(tree, index, size);
    const note = await newCheckpoint(stationFolder);
    if (options.form === 'tlog-proof') process.stdout.write(tlogProof(index, path, note));
    else
      printJson({
        index,
        leaf: base64(tree.node(0, index)),
        size,
        path: path.map(base64),
        checkpoint: note,
      });
    return EXIT.done;
  });
}

const tlogProof = (index: number, path: readonly Uint8Array[], note: string) =>
  ['c2sp.org/tlog-proof@v1', `index ${index}`, ...path.map(base64), '', note].join('\n');

/** Proves that the log begins with what an old checkpoint stands for. */
export function proveConsistency(file: string, options: Scope): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const old = await keptCheckpoint(file);
    const size = stationFolder.log.size();
    const [finding] = findings(stationFolder, [old]);
    if (finding === undefined || finding.kind !== 'extends') return report([finding]);
    printJson(laterLog(stationFolder, old.size, size, await newCheckpoint(stationFolder)));
    return EXIT.done;
  });
}

/** The proof that the log of `to` entries, which this checkpoint stands for, begins with the first `from`. */
export function laterLog({ log }: StationFolder, from: number, to: number, checkpoint: string): LaterLog {
  const path = consistencyProof(log.tree, from, to).map(base64);
  return { form: 'plugmark/consistency/1', from, to, path, checkpoint };
}

const base64 = (hash: Uint8Array) => Buffer.from(hash).toString('base64');
