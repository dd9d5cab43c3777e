/** A station ships its log, and says how far the archive is. */

import { type Outbox, type Shipped, ship } from '../../archive/outbox.ts';
import { readCheckpoint } from '../../evidence/checkpoint.ts';
import { cosignaturesOn } from '../../evidence/cosignature.ts';
import { readVerifierKey } from '../../evidence/verifier-key.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { keepCosigned } from '../station/log-witness.ts';
import { refuseTurned } from '../station/one-history.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { newCheckpoint } from '../station/sign-log.ts';
import { type StationFolder, stateOf } from '../station/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { watched } from '../terminal/progress.ts';
import { print } from '../terminal/wrapped.ts';
import { type ArchiveLink, archiveLink, ask, lineTo } from './archive-link.ts';

/** Ships all that the archive has not got, and keeps the receipt: the checkpoint with the archive's cosignatures. */
export function shipLog(options: Scope & { readonly sealed?: true }): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const link = await archiveLink(stationFolder.folder);
    const outbox = await outboxOf(stationFolder, options.sealed === true);
    if (outbox === null) {
      print([w`Nothing is signed yet, so there is nothing to ship.`]);
      return EXIT.done;
    }
    const known = headOf((await ask(link.url, `/logs/${link.log}/checkpoint`)).text);
    const shipped = await ship(outbox, lineTo(link, watched(w`entries shipped`)), known);
    if (shipped.as !== 'kept') throw new ProblemError(notShipped(shipped, outbox, link));
    keepReceipt(stationFolder, link, shipped.note);
    print([
      w`${safeLine(link.archive)} has all ${outbox.size} entries and cosigned them. The receipt lies beside the log and its records.`,
    ]);
    return EXIT.done;
  });
}

/** What the archive has of the log, and what is still to be shipped. */
export function archiveStatus(options: Scope): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const link = await archiveLink(stationFolder.folder);
    const size = stationFolder.log.size();
    const has = headOf((await ask(link.url, `/logs/${link.log}/checkpoint`)).text);
    const behind = size - has;
    print([
      w`Archive ${safeLine(link.archive)} at ${safeLine(link.url)}`,
      behind < 0
        ? w`It has ${has} entries of this log, and this log has ${size}: an old copy was put back, or its end was cut off. Run "plugmark log check".`
        : behind === 0
          ? w`It has all ${size} entries.`
          : w`It has ${has} of ${size} entries; ${behind} are to be shipped: plugmark archive ship`,
    ]);
    return behind < 0 ? EXIT.failed : EXIT.done;
  });
}

/** The newest checkpoint, signed anew where the log has grown; `sealed`: the one that stands, for which no key is needed. */
async function outboxOf(stationFolder: StationFolder, sealed: boolean): Promise<Outbox | null> {
  const { log } = stationFolder;
  const state = stateOf(stationFolder);
  refuseTurned(stationFolder, state);
  const newest = log.newestCheckpoint();
  const stands = newest === null ? null : orThrow(readCheckpoint(newest, w`the log`));
  const note = sealed || stands?.size === log.size() ? newest : await newCheckpoint(stationFolder);
  if (note === null) return null;
  const { size } = orThrow(readCheckpoint(note, w`the log`));
  return {
    size,
    note,
    tree: log.tree,
    entries: (from, to) => log.signedAfter(from, to - from),
    successions: log
      .stationEntries()
      .flatMap(({ event }) => (event.type === 'key-rotated' ? [event.statement] : [])),
  };
}

function headOf(text: string): number {
  const read = readCheckpoint(text, w`checkpoint of the archive`);
  return read.ok ? read.value.size : 0;
}

/** Only what the archive really cosigned is a receipt. */
function keepReceipt(stationFolder: StationFolder, { url, vkeys }: ArchiveLink, note: string): void {
  const checkpoint = orThrow(readCheckpoint(note, 'receipt'));
  const keys = vkeys.flatMap((text) => {
    const key = readVerifierKey(text);
    return key === null || key.kind === 'log' ? [] : [key];
  });
  const cosigned = cosignaturesOn(checkpoint, keys);
  if (cosigned === null || cosigned.length === 0)
    throw new ProblemError({
      code: 'archive-refused',
      where: url,
      message: w`the archive answered without a cosignature by its own keys`,
      next: w`Have it looked at by whoever runs the archive. What was shipped may not be kept.`,
    });
  keepCosigned(stationFolder, checkpoint, keys);
}

function notShipped(
  shipped: Exclude<Shipped, { as: 'kept' }>,
  { size }: Outbox,
  { url }: ArchiveLink,
): Problem {
  switch (shipped.as) {
    case 'ahead':
      return {
        code: 'archive-ahead',
        where: url,
        message: w`the archive has ${shipped.size} entries of this log, and this log has ${size}: an old copy was put back, or its end was cut off`,
        next: w`Start no new job. Restore the newest backup: plugmark restore FILE. Where none has that many entries, show this to whoever runs the archive.`,
      };
    case 'parted':
      return {
        code: 'archive-parted',
        where: url,
        message: w`the archive has another history of this log: ${safeLine(shipped.why)}`,
        next: w`Run "plugmark log check", and show both to whoever runs the archive: plugmark archive faults.`,
      };
    case 'refused':
      return {
        code: 'archive-refused',
        where: url,
        message: w`the archive took nothing: ${safeLine(shipped.why) || w`it answered ${shipped.status}`}`,
        next:
          shipped.status === 403
            ? w`Where a copy of this station has a newer key, go on with that one alone. Otherwise show this to whoever runs the archive.`
            : w`Try again later. Nothing is lost: the log is the outbox.`,
      };
  }
}
