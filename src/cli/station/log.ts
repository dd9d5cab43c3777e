import { statSync } from 'node:fs';
import type { TextFault } from '../../../db/check-texts.ts';
import type { StationKey } from '../../../db/keyfile.ts';
import { readCheckpoint, type SignedCheckpoint, signCheckpoint } from '../../evidence/checkpoint.ts';
import { type Finding, heldAgainst } from '../../evidence/kept-checkpoints.ts';
import type { LaterLog } from '../../evidence/later-log.ts';
import { consistencyProof, inclusionProof, treeRoot } from '../../evidence/merkle.ts';
import { verifierKey } from '../../evidence/note.ts';
import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import type { StationState } from '../../evidence/station.ts';
import { readBytes } from '../../files/input.ts';
import { outputFile, writeInPlace } from '../../files/output.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { printJson } from '../answers/answer.ts';
import { checkedLog } from '../answers/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { stamp } from './clock.ts';
import {
  inRecords,
  isStated,
  type Kept,
  keepSigned,
  lastCheckpoint,
  logNow,
  refuseTurned,
} from './one-history.ts';
import { type Scope, withStationFolder } from './scope.ts';
import { recordStation, type StationFolder, stateOf } from './station.ts';
import { currentKey } from './station-keys.ts';

/** Signs the log as it stands; whoever keeps the checkpoint can tell later whether anything in front of it changed. */
export function checkpoint(options: Scope & { readonly out?: string }): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const { out } = options;
    const there = out === undefined ? null : await noteThere(out);
    const state = stateOf(stationFolder);
    const size = stationFolder.log.size();
    refuseTurned(stationFolder, state);
    const note = signed(stationFolder, size, await signerOf(stationFolder, state));
    if (out !== undefined && there !== null && there !== note) throw new ProblemError(neverOver(out));
    await keepSigned(stationFolder, size, note);
    if (out === undefined) process.stdout.write(note);
    else if (there === note) print([`${safeLine(out)} already is this checkpoint. Nothing written.`]);
    else {
      await writeInPlace(out, note);
      print([`Checkpoint of ${size} entries written to ${safeLine(out)}. Keep it in another place.`]);
    }
    return EXIT.done;
  });
}

/** What a file holds already; null where there is none, or a pipe or a device, which hold nothing. */
async function noteThere(file: string): Promise<string | null> {
  outputFile(file);
  if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true) return null;
  return Buffer.from(await readBytes(file, 'checkpoint', MAX_RECORD_BYTES)).toString('utf8');
}

/** What an auditor kept is the proof of what the log was then. */
const neverOver = (where: string): Problem => ({
  code: 'file-exists',
  where,
  message: 'the file exists; a checkpoint never overwrites a file',
  next: 'Name a new file. Keep the old checkpoint: it still proves the log of its time.',
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
        message: `the log has entries 1 to ${size}`,
        next: 'Name one of these.',
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

/**
 * Reads the whole log and holds it against checkpoints: those that an auditor kept (or records, which hold one each), and
 * those that the station signed itself. Exit code 1 where anything was removed or rewritten.
 */
export function check(
  files: readonly string[],
  options: Scope & { readonly json?: true },
): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const size = stationFolder.log.size();
    const { fault, texts } = stationFolder.log.checkAll();
    if (fault !== null) {
      if (options.json === true) printJson(checkedLog(size, fault, [], []));
      else process.stdout.write(`DIVERGED at entry ${fault.seq}: ${safeLine(fault.message)}.\n`);
      return EXIT.failed;
    }
    if (options.json !== true)
      process.stdout.write(
        `All ${size} entries are as they were written, and the hash tree over them is whole.\n`,
      );
    const state = stateOf(stationFolder);
    const own = stationFolder.log
      .checkpoints()
      .map((note) => orThrow(readCheckpoint(note, 'a checkpoint of the station')));
    const kept = await Promise.all(files.map(keptCheckpoint));
    const beside = besideTheLog(stationFolder, state);
    const stated = beside.filter(({ checkpoint }) => isStated(checkpoint, state));
    const apart = beside.flatMap((one) => {
      const [finding] = findings(stationFolder, [one.checkpoint]);
      const isFine = finding === undefined || finding.kind === 'extends' || stated.includes(one);
      return isFine ? [] : [{ ...one, finding }];
    });
    const results = findings(stationFolder, [...own, ...kept]);
    const all = [...results, ...apart.map(({ finding }) => finding)];
    if (options.json === true) printJson(checkedLog(size, null, texts, all));
    else {
      print(textLines(texts));
      report(results);
      print(apart.map(({ where, finding }) => safeLine(`${where}: ${words(finding)}`)));
      if (stated.length > 0)
        print([
          `LOST: the log states that it went on without entries that ${stated.length} checkpoints stand for.`,
        ]);
    }
    return texts.length > 0 ? EXIT.failed : outcome(all);
  });
}

/** The checkpoint outside the database, and those inside the records that lie beside it. */
const besideTheLog = (stationFolder: StationFolder, state: StationState): readonly Kept[] => [
  ...lastCheckpoint(stationFolder.folder),
  ...inRecords(stationFolder.folder, logNow(stationFolder, state)),
];

/**
 * States in the log that entries are gone for good: it goes on without them, and every later record says so. What was signed
 * over them stays against it.
 */
export function stateLoss(options: Scope & { readonly because: string }): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const state = stateOf(stationFolder);
    const signer = await signerOf(stationFolder, state);
    const own = stationFolder.log.checkpoints().map((note) => ({
      checkpoint: orThrow(readCheckpoint(note, 'a checkpoint of the station')),
    }));
    const lost = [...own, ...besideTheLog(stationFolder, state)].filter(({ checkpoint }) => {
      const [finding] = findings(stationFolder, [checkpoint]);
      const isGone = finding?.kind === 'cut' || finding?.kind === 'diverged';
      return isGone && !isStated(checkpoint, state);
    });
    if (lost.length === 0)
      throw new ProblemError({
        code: 'nothing-lost',
        message: 'the log goes on from every checkpoint that is here',
        next: 'There is nothing to state. Look with "plugmark log check".',
      });
    const checkpoints = lost
      .map(({ checkpoint }) => ({ size: checkpoint.size, root: base64(checkpoint.root) }))
      .filter((one, i, all) => all.findIndex(({ root }) => root === one.root) === i);
    await recordStation(
      stationFolder,
      [{ type: 'entries-lost', checkpoints, because: options.because }],
      stamp(),
    );
    await newCheckpoint(stationFolder, signer);
    const most = Math.max(...checkpoints.map(({ size }) => size));
    print([
      `Stated in the log: it had ${most} entries once, and went on without some of them. Every later record says so.`,
      'An auditor who kept a checkpoint of the lost entries will find that the log does not go on from it.',
    ]);
    return EXIT.done;
  });
}

const MOST_TEXTS = 10;

/** What is wrong with the texts that are kept beside the entries. */
function textLines(faults: readonly TextFault[]): readonly string[] {
  if (faults.length === 0) return ['Every personal text is there, or was deleted with "plugmark forget".'];
  const words = ({ fault, seq, kind }: TextFault) =>
    ({
      missing: `  entry ${seq}: a text (${kind}) is MISSING. It was deleted, and not with "plugmark forget".`,
      back: `  entry ${seq}: a text (${kind}) that was forgotten is BACK.`,
      strange: `  entry ${seq}: a text that does NOT belong to this entry.`,
    })[fault];
  const more = faults.length - MOST_TEXTS;
  return [
    'Every verdict and every proof holds, but personal texts beside the entries are not as the log says:',
    ...faults.slice(0, MOST_TEXTS).map(words),
    ...(more > 0 ? [`  and ${more} more`] : []),
  ];
}

export function findings(
  stationFolder: StationFolder,
  kept: readonly SignedCheckpoint[],
): readonly Finding[] {
  return heldAgainst(logNow(stationFolder, stateOf(stationFolder)), kept);
}

function report(results: readonly (Finding | undefined)[]): ExitCode {
  // The station keeps what it gave away: the same would be said of both.
  for (const line of new Set(results.flatMap((one) => (one === undefined ? [] : [words(one)]))))
    print([line]);
  return outcome(results);
}

const outcome = (found: readonly (Finding | undefined)[]): ExitCode =>
  found.every((one) => one?.kind === 'extends') ? EXIT.done : EXIT.failed;

export function words(finding: Finding): string {
  const about = `Checkpoint of ${finding.size} entries:`;
  switch (finding.kind) {
    case 'extends':
      return `${about} nothing before it was removed or changed.`;
    case 'other-log':
      return `${about} NOT from this log. It is from another station, or the log was started again.`;
    case 'not-signed':
      return `${about} NOT signed by a key of this station.`;
    case 'cut':
      return `${about} DIVERGED. Entries ${finding.from} to ${finding.to} are missing. The end of the log was cut off, or an old copy was put back.`;
    case 'diverged':
      return `${about} DIVERGED. Between entry ${finding.from} and entry ${finding.to} something was changed, removed or added.`;
  }
}

/** The key that signs for a log, and the name that it signs under. */
export interface Signer {
  readonly origin: string;
  readonly key: StationKey;
}

/** Asks for the passphrase of the key where it has one. */
export async function signerOf({ folder }: StationFolder, state: StationState): Promise<Signer> {
  return { origin: state.origin, key: await currentKey(folder, state) };
}

/** Signs the log as it stands, where it extends all that was signed before, and keeps the note; who asked for the signer before is not asked for a passphrase again. */
export async function newCheckpoint(stationFolder: StationFolder, signer?: Signer): Promise<string> {
  const state = stateOf(stationFolder);
  refuseTurned(stationFolder, state);
  const size = stationFolder.log.size();
  const note = signed(stationFolder, size, signer ?? (await signerOf(stationFolder, state)));
  await keepSigned(stationFolder, size, note);
  return note;
}

const signed = ({ log }: StationFolder, size: number, { origin, key }: Signer): string =>
  signCheckpoint({ origin, size, root: treeRoot(log.tree, size) }, key.privateKey);

/** A checkpoint from a file: a note by itself, or the one inside a job record. */
export async function keptCheckpoint(file: string): Promise<SignedCheckpoint> {
  const bytes = await readBytes(file, 'checkpoint', MAX_RECORD_BYTES);
  const opened = openRecord(bytes);
  return orThrow(readCheckpoint(opened.ok ? opened.value.record.log.checkpoint : bytes, file));
}

const base64 = (hash: Uint8Array) => Buffer.from(hash).toString('base64');
