/** Sends the newest checkpoint of the log to the witnesses of the station file, and keeps what they cosigned. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readCheckpoint, type SignedCheckpoint } from '../../evidence/checkpoint.ts';
import { cosignaturesOn } from '../../evidence/cosignature.ts';
import { parseLaterLog } from '../../evidence/later-log.ts';
import { type NoteSignature, noteText } from '../../evidence/note.ts';
import { readVerifierKey, type WitnessKey } from '../../evidence/verifier-key.ts';
import { writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { askedWitnesses } from '../answers/witness.ts';
import { witnessedBeside } from '../evidence/later-log-file.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import { print } from '../terminal/wrapped.ts';
import { type Asked, type AskedWitness, askWitness, withCosignatures } from './ask-witness.ts';
import { laterLog } from './log.ts';
import { findings } from './log-check.ts';
import { inRecord, logNow, newestFirst, recordsIn } from './one-history.ts';
import { openStationFolder, type StationFolder, stateOf } from './station.ts';
import { readStationFile, type StationFile } from './station-file.ts';
import { COSIGNED_CHECKPOINT } from './station-log.ts';

/** Needs no key: what is sent was signed when the last record was sealed. */
export async function witnessLog({
  station,
  json = false,
}: {
  readonly station: string;
  readonly json?: boolean;
}): Promise<ExitCode> {
  const file = await readStationFile(station);
  const witnesses = witnessesOf(file);
  if (witnesses.length === 0)
    throw new ProblemError({
      code: 'no-witness',
      where: station,
      message: w`the station file names no witness`,
      next: w`Add "witnesses" to it: "plugmark manual witnesses" shows how.`,
    });
  const stationFolder = await openStationFolder(file.folder);
  try {
    const note = stationFolder.log.newestCheckpoint();
    if (note === null) {
      if (json) printJson(askedWitnesses(null, []));
      else print([w`Nothing is signed yet, so there is nothing to send.`]);
      return EXIT.done;
    }
    return await send(stationFolder, witnesses, note, json);
  } finally {
    stationFolder.log.close();
  }
}

async function send(
  stationFolder: StationFolder,
  witnesses: readonly AskedWitness[],
  newest: string,
  json: boolean,
): Promise<ExitCode> {
  const { folder, log } = stationFolder;
  const checkpoint = orThrow(readCheckpoint(newest, w`the log`));
  const [finding] = findings(stationFolder, [checkpoint]);
  if (finding?.kind !== 'extends')
    throw new ProblemError({
      code: 'log-turned',
      where: folder,
      message: w`nothing was sent: the log is not the one that the station signed`,
      next: w`Run "plugmark log check".`,
    });
  const before = cosignedBefore(folder);
  const answers = await Promise.all(
    witnesses.map(async (witness) => ({
      url: witness.url,
      answer: await askWitness(witness, checkpoint, log.tree, sizeAt(witness, before)),
    })),
  );
  const cosigned = answers.flatMap(({ answer }) => (answer.kind === 'cosigned' ? answer.signatures : []));
  if (cosigned.length > 0) {
    const keys = witnesses.flatMap((witness) => witness.keys);
    keepCosigned(stationFolder, { ...checkpoint, signatures: [...checkpoint.signatures, ...cosigned] }, keys);
  }
  if (json) printJson(askedWitnesses(checkpoint.size, answers));
  else print(answers.map(({ url, answer }) => answerLine(url, answer, checkpoint.size)));
  return answers.every(({ answer }) => answer.kind === 'cosigned') ? EXIT.done : EXIT.failed;
}

/** Keeps a checkpoint with the cosignatures of these keys, beside the log and beside each record that it dates. */
export function keepCosigned(
  stationFolder: StationFolder,
  checkpoint: SignedCheckpoint,
  keys: readonly WitnessKey[],
): void {
  const path = join(stationFolder.folder, COSIGNED_CHECKPOINT);
  // Those who cosigned this very checkpoint before stay in the note.
  const before = cosignedBefore(stationFolder.folder);
  const earlier = before?.text === checkpoint.text ? cosignedEarlier(before, keys) : [];
  const note = withCosignatures(
    noteText({ ...checkpoint, signatures: [...ownLines(checkpoint, keys), ...earlier] }),
    checkpoint.signatures,
  );
  writeWhole(path, note);
  notesBeside(stationFolder, keys, note);
}

function answerLine(url: string, answer: Asked, size: number): string {
  const where = safeLine(url);
  switch (answer.kind) {
    case 'cosigned':
      return w`${where}: cosigned on ${answer.at}, ${size} entries`;
    case 'ahead':
      return w`${where}: HAS A LONGER LOG of this station, ${answer.size} entries; this one is signed up to ${size}. Its end was cut off, or an old copy was put back. Run "plugmark log check"`;
    case 'refused':
      return w`${where}: not cosigned; ${answer.why}`;
    case 'not-reached':
      return w`${where}: not cosigned; ${answer.why}. What is missing is sent the next time`;
  }
}

/** What was cosigned last; null where nothing was. */
export function cosignedBefore(folder: string): SignedCheckpoint | null {
  const path = join(folder, COSIGNED_CHECKPOINT);
  const there = statSync(path, { throwIfNoEntry: false });
  if (there?.isFile() !== true || there.size > MAX_BYTES) return null;
  const read = readCheckpoint(readFileSync(path), path);
  return read.ok ? read.value : null;
}

/** What the witness is thought to have; it says so where that is wrong. */
const sizeAt = ({ keys }: AskedWitness, before: SignedCheckpoint | null): number =>
  before !== null && (cosignaturesOn(before, keys) ?? []).length > 0 ? before.size : 0;

/** So many good notes in a row, and those before them are taken to be good as well: a folder holds a shop's life of them. */
const GOOD_IN_A_ROW = 50;

/**
 * Beside each record of this log the note that cosigns it. The first that enough witnesses signed stays, for it dates the
 * record; one with fewer witnesses is written anew. One that is missing is written in any case.
 */
function notesBeside(stationFolder: StationFolder, keys: readonly WitnessKey[], note: string): void {
  const now = logNow(stationFolder, stateOf(stationFolder));
  const cosigned = orThrow(readCheckpoint(note, 'checkpoint'));
  const count = witnessesOn(cosigned, keys);
  let goodInARow = 0;
  for (const record of newestFirst(recordsIn(stationFolder.folder))) {
    const beside = witnessedBeside(record);
    if (goodInARow >= GOOD_IN_A_ROW && existsSync(beside)) continue;
    const isGood = witnessesIn(beside, keys) >= count;
    goodInARow = isGood ? goodInARow + 1 : 0;
    if (isGood) continue;
    for (const { checkpoint } of inRecord(record, now)) {
      const [finding] = findings(stationFolder, [checkpoint]);
      if (finding?.kind !== 'extends' || checkpoint.size > cosigned.size) continue;
      writeWhole(beside, jsonText(laterLog(stationFolder, checkpoint.size, cosigned.size, note)));
    }
  }
}

const isLineOf = (line: NoteSignature) => (key: WitnessKey) =>
  key.name === line.name && Buffer.from(key.keyId).equals(line.keyId);

const ownLines = ({ signatures }: SignedCheckpoint, keys: readonly WitnessKey[]) =>
  signatures.filter((line) => !keys.some(isLineOf(line)));

/** More witnesses no station has. */
const MOST_OTHERS = 32;

/**
 * Those who cosigned this checkpoint before. What lies on the disk may have been written by anybody: lines of these keys that
 * do not hold are left out, lines under the name of the log as well, and of others only some are kept.
 */
function cosignedEarlier(note: SignedCheckpoint, keys: readonly WitnessKey[]): readonly NoteSignature[] {
  const others = note.signatures.filter((line) => line.name !== note.origin && !keys.some(isLineOf(line)));
  return [...linesThatHold(note, keys), ...others.slice(0, MOST_OTHERS)];
}

const linesThatHold = (note: SignedCheckpoint, keys: readonly WitnessKey[]) =>
  note.signatures.filter((line) => {
    const own = keys.filter(isLineOf(line));
    return (cosignaturesOn({ ...note, signatures: [line] }, own) ?? []).length > 0;
  });

/** How many of them have a line here that holds. */
const witnessesOn = (note: SignedCheckpoint, keys: readonly WitnessKey[]) =>
  new Set(linesThatHold(note, keys).map(({ name }) => name)).size;

const MAX_BYTES = 300_000;

function witnessesIn(path: string, keys: readonly WitnessKey[]): number {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there?.isFile() !== true || there.size > MAX_BYTES) return 0;
  const beside = parseLaterLog(readFileSync(path), path);
  const read = beside.ok ? readCheckpoint(beside.value.checkpoint, path) : null;
  return read?.ok === true ? witnessesOn(read.value, keys) : 0;
}

function witnessesOf({ witnesses = [] }: Pick<StationFile, 'witnesses'>): readonly AskedWitness[] {
  return witnesses.map(({ url, keys }) => ({
    url,
    keys: keys.flatMap((text) => {
      const key = readVerifierKey(text);
      return key === null || key.kind === 'log' ? [] : [key];
    }),
  }));
}
