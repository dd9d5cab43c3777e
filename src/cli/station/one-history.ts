/**
 * A log has one history: it signs no checkpoint that does not extend the last one. What tells is the newest checkpoint in
 * the database, the newest record beside it, and a file outside the database that whoever turns the log back has to turn
 * back as well; all three are signed by the station's key.
 */

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { isSignedBy, readCheckpoint, type SignedCheckpoint } from '../../evidence/checkpoint.ts';
import type { PublicJwk } from '../../evidence/jwk.ts';
import { type Finding, heldAgainst, type LogNow } from '../../evidence/kept-checkpoints.ts';
import { askedOnce } from '../../evidence/merkle.ts';
import { noteText } from '../../evidence/note.ts';
import { toBase64 } from '../../evidence/platform/bytes.ts';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import type { StationState } from '../../evidence/station.ts';
import { successionBy } from '../../evidence/succession.ts';
import { writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import type { StationFolder } from './station.ts';
import { LAST_CHECKPOINT } from './station-log.ts';

const MAX_NOTE_BYTES = 130_000;
const RECORD_END = '.record.json';

/** A checkpoint, and where it was found. */
export interface Kept {
  readonly where: string;
  readonly checkpoint: SignedCheckpoint;
}

/** The log as it is now, for holding checkpoints against it. */
export const logNow = ({ log }: StationFolder, { origin, keys }: StationState): LogNow => ({
  origin,
  size: log.size(),
  tree: log.tree,
  keys: keys.map(({ jwk }) => jwk),
});

/** Throws `log-turned` where a checkpoint that the station signed does not fit the log as it is. */
export function refuseTurned(stationFolder: StationFolder, state: StationState): void {
  const { folder, log } = stationFolder;
  const fresh = logNow(stationFolder, state);
  const now = { ...fresh, tree: askedOnce(fresh.tree) };
  const newest = log.newestCheckpoint();
  const all = [
    ...(newest === null ? [] : keptIn(newest, w`the log`)),
    ...lastCheckpoint(folder),
    ...newestRecord(stationFolder, now),
  ];
  // Where all is well, all three are the same note.
  const kept = [...new Map(all.map((one) => [noteText(one.checkpoint), one])).values()];
  const [first] = kept.flatMap(({ where, checkpoint }) => {
    const [finding] = heldAgainst(now, [checkpoint]);
    const isFine = finding === undefined || finding.kind === 'extends' || isStated(checkpoint, state);
    return isFine ? [] : [{ where, finding }];
  });
  if (first !== undefined) throw new ProblemError(turned(first.where, first.finding));
}

/** Whether the log states that it lost what this checkpoint stands for. */
export const isStated = ({ size, root }: SignedCheckpoint, { lost }: StationState): boolean =>
  lost.some((one) => one.size === size && one.root === toBase64(root));

/** Keeps a checkpoint before anybody is given it: in the log, and outside of it. */
export async function keepSigned({ folder, log }: StationFolder, size: number, note: string): Promise<void> {
  log.keepCheckpoint(size, note);
  await writeWhole(join(folder, LAST_CHECKPOINT), note);
}

/** What lies outside the database; empty where the file is not there. Throws where it is no checkpoint. */
export function lastCheckpoint(folder: string): readonly Kept[] {
  const path = join(folder, LAST_CHECKPOINT);
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined) return [];
  // A pipe has no end, and no checkpoint is large.
  const bytes = there.isFile() && there.size <= MAX_NOTE_BYTES ? readFileSync(path) : new Uint8Array();
  return keptIn(bytes, path);
}

/**
 * By its log, the checkpoint inside its record that was newest when this program first looked. A folder holds all records of
 * a shop's life, and looking through it again for each signature would find only what the program has sealed since.
 */
const newestAtFirst = new WeakMap<StationFolder['log'], readonly Kept[]>();

/** The checkpoint inside the record of this log that was written last before this program came. */
function newestRecord({ folder, log }: StationFolder, now: LogNow): readonly Kept[] {
  const newest = newestAtFirst.get(log) ?? lookForNewest(folder, now);
  newestAtFirst.set(log, newest);
  return newest;
}

/** So many records of others, or that nobody can read, may be newer: nobody waits for more of them at each start. */
const MOST_LOOKED_AT = 50;

function lookForNewest(folder: string, now: LogNow): readonly Kept[] {
  for (const path of newestFirst(recordsIn(folder)).slice(0, MOST_LOOKED_AT)) {
    const own = inRecord(path, now);
    if (own.length > 0) return own;
  }
  return [];
}

export const newestFirst = (paths: readonly string[]): readonly string[] =>
  paths
    .map((path) => ({ path, atMs: statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0 }))
    .sort((a, b) => b.atMs - a.atMs)
    .map(({ path }) => path);

/** The checkpoints inside all records that lie beside the log and are of it. */
export const inRecords = (folder: string, now: LogNow): readonly Kept[] =>
  recordsIn(folder).flatMap((path) => inRecord(path, now));

/** Records of this log that lie beside it and are not in it as it is now: of entries that it lost. */
export const recordsApart = (folder: string, now: LogNow): readonly string[] =>
  recordsIn(folder).filter((path) => {
    const [finding] = heldAgainst(
      now,
      checkpointIn(path).map(({ checkpoint }) => checkpoint),
    );
    return finding !== undefined && finding.kind !== 'extends' && finding.kind !== 'other-log';
  });

export const recordsIn = (folder: string): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(RECORD_END))
    .map((name) => join(folder, name));

/**
 * A record of another station, or one that nobody can read, says nothing of this log. One that a later key of this station
 * signed does: it tells of a change of the key that the log has lost.
 */
export const inRecord = (path: string, { origin, keys }: LogNow): readonly Kept[] =>
  checkpointIn(path).filter(
    ({ checkpoint, statements }) =>
      checkpoint.origin === origin && isSignedBy(checkpoint, withFollowing(keys, origin, statements)),
  );

/** The keys, and those that one of them named, or one that it named. */
function withFollowing(
  keys: readonly PublicJwk[],
  origin: string,
  statements: readonly string[],
): readonly PublicJwk[] {
  const all = [...keys];
  for (const statement of statements)
    for (const key of all) {
      const stated = successionBy(statement, key);
      if (stated?.log !== origin) continue;
      all.push(stated.next);
      break;
    }
  return all;
}

interface KeptInRecord extends Kept {
  /** By which keys named those that follow them. */
  readonly statements: readonly string[];
}

function checkpointIn(path: string): readonly KeptInRecord[] {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found?.isFile() !== true || found.size > MAX_RECORD_BYTES) return [];
  const content = contentIn(readFileSync(path));
  const read = readCheckpoint(content?.log.checkpoint ?? '', path);
  if (content === null || !read.ok) return [];
  const statements = content.background.flatMap(({ event }) => event.statement ?? []);
  return [{ where: path, checkpoint: read.value, statements }];
}

const contentSchema = z.object({
  log: z.object({ checkpoint: z.string() }),
  background: z.array(z.object({ event: z.object({ statement: z.string().optional() }) })),
});

/** The checkpoint and the statements are signed by themselves, so that nothing else of the record need be checked. */
function contentIn(record: Uint8Array): z.infer<typeof contentSchema> | null {
  try {
    const { payload } = z.object({ payload: z.string() }).parse(JSON.parse(Buffer.from(record).toString()));
    return contentSchema.parse(JSON.parse(Buffer.from(payload, 'base64url').toString()));
  } catch {
    return null;
  }
}

function keptIn(note: string | Uint8Array, where: string): readonly Kept[] {
  const read = readCheckpoint(note, where);
  if (!read.ok) throw new ProblemError({ ...read.error, next: changedNext() });
  return [{ where, checkpoint: read.value }];
}

const changedNext = () =>
  w`The station wrote this file and somebody changed it. Run "plugmark log check"; put the file back from your copy.`;

function turned(where: string, finding: Finding): ConstructorParameters<typeof ProblemError>[0] {
  const { size } = finding;
  const words: Readonly<Record<Finding['kind'], string>> = {
    extends: '',
    'other-log': w`it is a checkpoint of another log`,
    'not-signed': w`it is a checkpoint that no key of this station signed`,
    cut: w`the station signed a log of ${size} entries before, and this one is shorter: its end was cut off, or an old copy was put back`,
    diverged: w`the station signed a log of ${size} entries before, and this one has other entries: something was changed, removed or added`,
  };
  return {
    code: 'log-turned',
    where,
    message: w`nothing was signed: ${words[finding.kind]}`,
    next: w`Run "plugmark log check". Restore a backup that has all entries, or fill them in with "plugmark recover --records". Where they are gone for good, say so: plugmark log lost --because "..."`,
  };
}
