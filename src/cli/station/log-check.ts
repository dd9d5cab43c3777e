/** The log held against every checkpoint that is at hand, and what is to be said where it does not go on from one. */

import type { TextFault } from '../../../db/check-texts.ts';
import { readCheckpoint, type SignedCheckpoint } from '../../evidence/checkpoint.ts';
import { type Finding, heldAgainst } from '../../evidence/kept-checkpoints.ts';
import { toBase64 } from '../../evidence/platform/bytes.ts';
import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import type { StationState } from '../../evidence/station.ts';
import { readBytes } from '../../files/input.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { printJson } from '../answers/answer.ts';
import { checkedLog } from '../answers/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { stamp } from './clock.ts';
import { inRecords, isStated, type Kept, lastCheckpoint, logNow } from './one-history.ts';
import { type Scope, withStationFolder } from './scope.ts';
import { newCheckpoint, signerOf } from './sign-log.ts';
import { recordStation, type StationFolder, stateOf } from './station.ts';

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
      .map(({ checkpoint }) => ({ size: checkpoint.size, root: toBase64(checkpoint.root) }))
      .filter((one, i, all) => all.findIndex(({ root }) => root === one.root) === i);
    await recordStation(
      stationFolder,
      [{ type: 'entries-lost', checkpoints, because: options.because }],
      stamp(),
    );
    await newCheckpoint(stationFolder, { ...signer, state: stateOf(stationFolder) });
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

export function report(results: readonly (Finding | undefined)[]): ExitCode {
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

/** A checkpoint from a file: a note by itself, or the one inside a job record. */
export async function keptCheckpoint(file: string): Promise<SignedCheckpoint> {
  const bytes = await readBytes(file, 'checkpoint', MAX_RECORD_BYTES);
  const opened = openRecord(bytes);
  return orThrow(readCheckpoint(opened.ok ? opened.value.record.log.checkpoint : bytes, file));
}
