/** The log held against every checkpoint that is at hand, and what is to be said where it does not go on from one. */

import type { TextFault } from '../../../db/check-texts.ts';
import type { StationKey } from '../../../db/keyfile.ts';
import { readCheckpoint, type SignedCheckpoint } from '../../evidence/checkpoint.ts';
import { type Finding, heldAgainst } from '../../evidence/kept-checkpoints.ts';
import { toBase64 } from '../../evidence/platform/bytes.ts';
import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import type { StationState } from '../../evidence/station.ts';
import { readBytes } from '../../files/input.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { plural, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { checkedLog } from '../answers/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { stamp } from './clock.ts';
import { inRecords, isStated, type Kept, lastCheckpoint, logNow, recordsApart } from './one-history.ts';
import { type Scope, withStationFolder } from './scope.ts';
import { newCheckpoint } from './sign-log.ts';
import { recordStation, type StationFolder, stateOf } from './station.ts';
import { currentKey, isKeyHere } from './station-keys.ts';

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
      else process.stdout.write(w`DIVERGED at entry ${fault.seq}: ${safeLine(fault.message)}.\n`);
      return EXIT.failed;
    }
    if (options.json !== true)
      print([w`All ${size} entries are as they were written, and the hash tree over them is whole.`]);
    const state = stateOf(stationFolder);
    const own = stationFolder.log
      .checkpoints()
      .map((note) => orThrow(readCheckpoint(note, w`a checkpoint of the station`)));
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
          plural(stated.length, {
            one: 'LOST: the log states that it went on without entries that # checkpoint stands for.',
            other: 'LOST: the log states that it went on without entries that # checkpoints stand for.',
          }),
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
    const key = await keyHere(stationFolder, state);
    const own = stationFolder.log.checkpoints().map((note) => ({
      checkpoint: orThrow(readCheckpoint(note, w`a checkpoint of the station`)),
    }));
    const lost = [...own, ...besideTheLog(stationFolder, state)].filter(({ checkpoint }) => {
      const [finding] = findings(stationFolder, [checkpoint]);
      // A lost entry may have named the key that signed it.
      const isGone = finding !== undefined && ['cut', 'diverged', 'not-signed'].includes(finding.kind);
      return isGone && !isStated(checkpoint, state);
    });
    if (lost.length === 0)
      throw new ProblemError({
        code: 'nothing-lost',
        message: w`the log goes on from every checkpoint that is here`,
        next: w`There is nothing to state. Look with "plugmark log check".`,
      });
    const checkpoints = lost
      .map(({ checkpoint }) => ({ size: checkpoint.size, root: toBase64(checkpoint.root) }))
      .filter((one, i, all) => all.findIndex(({ root }) => root === one.root) === i);
    await recordStation(
      stationFolder,
      [{ type: 'entries-lost', checkpoints, because: options.because }],
      stamp(),
    );
    if (key !== null) await newCheckpoint(stationFolder, { key, state: stateOf(stationFolder) });
    const apart = recordsApart(stationFolder.folder, logNow(stationFolder, state)).length;
    const most = Math.max(...checkpoints.map(({ size }) => size));
    print([
      w`Stated in the log: it had ${most} entries once, and went on without some of them. Every later record says so.`,
      w`An auditor who kept a checkpoint of the lost entries will find that the log does not go on from it.`,
      ...(apart === 0
        ? []
        : [
            w`${recordsHere(apart)} of the lost entries, and good as long as the key is not changed: no proof from the log can be made for them later. Stamp each of them before: plugmark time-stamp RECORD`,
          ]),
      ...(key === null
        ? [
            w`The key that this log names is not here, so that nothing was signed. Make a new one: plugmark keys rotate --lost`,
          ]
        : []),
    ]);
    return EXIT.done;
  });
}

export const recordsHere = (count: number): string =>
  plural(count, { one: '# record here is', other: '# records here are' });

/** Null where the log is older than the last change of the key: its key was destroyed then. */
async function keyHere({ folder }: StationFolder, state: StationState): Promise<StationKey | null> {
  const kid = state.keys.at(-1)?.kid ?? '';
  const isGone = state.revoked.has(kid) || !isKeyHere(folder, kid);
  return isGone ? null : await currentKey(folder, state);
}

const MOST_TEXTS = 10;

/** What is wrong with the texts that are kept beside the entries. */
function textLines(faults: readonly TextFault[]): readonly string[] {
  if (faults.length === 0) return [w`Every personal text is there, or was deleted with "plugmark forget".`];
  const words = ({ fault, seq, kind }: TextFault) =>
    ({
      missing: w`  entry ${seq}: a text (${kind ?? ''}) is MISSING. It was deleted, and not with "plugmark forget".`,
      back: w`  entry ${seq}: a text (${kind ?? ''}) that was forgotten is BACK.`,
      strange: w`  entry ${seq}: a text that does NOT belong to this entry.`,
    })[fault];
  const more = faults.length - MOST_TEXTS;
  return [
    w`Every verdict and every proof holds, but personal texts beside the entries are not as the log says:`,
    ...faults.slice(0, MOST_TEXTS).map(words),
    ...(more > 0 ? [w`  and ${more} more`] : []),
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
  const { size } = finding;
  switch (finding.kind) {
    case 'extends':
      return w`Checkpoint of ${size} entries: nothing before it was removed or changed.`;
    case 'other-log':
      return w`Checkpoint of ${size} entries: NOT from this log. It is from another station, or the log was started again.`;
    case 'not-signed':
      return w`Checkpoint of ${size} entries: NOT signed by a key of this station.`;
    case 'cut':
      return w`Checkpoint of ${size} entries: DIVERGED. Entries ${finding.from} to ${finding.to} are missing. The end of the log was cut off, or an old copy was put back.`;
    case 'diverged':
      return w`Checkpoint of ${size} entries: DIVERGED. Between entry ${finding.from} and entry ${finding.to} something was changed, removed or added.`;
  }
}

/** A checkpoint from a file: a note by itself, or the one inside a job record. */
export async function keptCheckpoint(file: string): Promise<SignedCheckpoint> {
  const bytes = await readBytes(file, w`checkpoint`, MAX_RECORD_BYTES);
  const opened = openRecord(bytes);
  return orThrow(readCheckpoint(opened.ok ? opened.value.record.log.checkpoint : bytes, file));
}
