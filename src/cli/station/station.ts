import { join } from 'node:path';
import type { StationKey } from '../../../db/keyfile.ts';
import { type Opening, openStationLog, type StationLogFile } from '../../../db/log.ts';
import { damagedNext, notReadableAsLog } from '../../../db/problems.ts';
import { openLogToRead } from '../../../db/read-only.ts';
import type { Draft, Stamp } from '../../evidence/log.ts';
import { newsOf, type StationState, stationOf } from '../../evidence/station.ts';
import type { StationEvent } from '../../evidence/station-event.ts';
import type { TrustList } from '../../evidence/trust.ts';
import { makeFolder } from '../../files/output.ts';
import type { JobEvent } from '../../job/event.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { watched } from '../terminal/progress.ts';
import { SECRETS } from '../terminal/secret.ts';
import { currentKey, makeKey } from './station-keys.ts';
import { logPath, logThere, lostBehindNew, lostLog, TRUST_FILE } from './station-log.ts';
import { ownTrust, preparedTrust, renewTrustFile } from './trust-file.ts';

/** A station's folder: its log, its keys, and the list of them for those who verify. */
export interface StationFolder {
  readonly folder: string;
  readonly log: StationLogFile;
  readonly trustFile: string;
}

/** A station at work: it can sign. */
export interface Station extends StationFolder {
  readonly name: string;
  readonly key: StationKey;
}

/**
 * Opens the station in `folder`, or sets it up: log, key, and a trust list that holds the key, for those who are to
 * verify its records. `domain` is that of the shop, and counts when it is set up. Problems of the file system, the database and the key are thrown, and `log-missing` where what is
 * there tells of a log that is gone.
 */
export async function openStation(
  name: string,
  folder: string,
  stamp: () => Stamp,
  domain?: string,
): Promise<Station> {
  makeFolder(folder, 0o700);
  refuse(lostLog(folder));
  const path = logPath(folder);
  const log = await openStationLog(path, shown()).catch(inLogsPlace(path));
  try {
    if (log.size() === 0) refuse(lostBehindNew(folder));
    const stationFolder = { folder, log, trustFile: join(folder, TRUST_FILE) };
    const state = stationOf(log.stationEntries());
    const key =
      state === null
        ? await setUp(stationFolder, { name, domain }, stamp())
        : await currentKey(folder, state);
    await renewTrust(stationFolder);
    return { ...stationFolder, name, key };
  } catch (cause) {
    log.close();
    throw cause;
  }
}

/**
 * Opens the log of a station that was set up before; its key is left alone. Where it may only be read, a copy answers, and
 * a line on the error output says so.
 */
export async function openStationFolder(folder: string): Promise<StationFolder> {
  const path = logThere(folder);
  const { log, copied } = await openLogToRead(path, shown()).catch(inLogsPlace(path));
  if (copied) process.stderr.write(w`${safeLine(path)} is read-only here; reading a copy.\n`);
  return { folder, log, trustFile: join(folder, TRUST_FILE) };
}

function refuse(problem: Problem | null): void {
  if (problem !== null) throw new ProblemError(problem);
}

/** Bars for what opening and asking a large log may take. */
const shown = (): Opening => ({
  mended: () =>
    void process.stderr.write(
      w`The tables for look-up were damaged. They were made again from the log, which is whole.\n`,
    ),
  cutOff: (entries) =>
    void process.stderr.write(
      `${
        entries === 0
          ? w`The last write to the log was cut off, as by a power cut. What it would have shown, nobody was shown.`
          : w`The last write to the log was cut off, as by a power cut: up to ${entries} entries. What it would have shown, nobody was shown.`
      }\n`,
    ),
  jobs: watched(w`jobs listed anew`),
  history: watched(w`jobs read for the history`),
  check: watched(w`entries checked`),
});

/** At the station's own path a file that is no log was one. */
export const inLogsPlace = (path: string) => (cause: unknown) => {
  if (!(cause instanceof ProblemError) || cause.problem.code !== 'log-not-a-log') throw cause;
  const problem: Problem = {
    code: 'log-damaged',
    where: path,
    message: notReadableAsLog(),
    next: damagedNext(),
  };
  throw new ProblemError(problem, { cause });
};

/** The station as its log has it now. */
export function stateOf({ log, folder }: StationFolder): StationState {
  const state = stationOf(log.stationEntries());
  if (state !== null) return state;
  refuse(lostBehindNew(folder));
  throw new ProblemError({
    code: 'no-station',
    where: folder,
    message: w`this station is not set up`,
    next: w`Set it up with "plugmark setup", or open a job.`,
  });
}

/** Puts events into the station's stream and brings the trust list up to date. */
export async function recordStation(
  stationFolder: StationFolder,
  events: readonly StationEvent[],
  stamp: Stamp,
  by = 'station',
) {
  const { log, trustFile } = stationFolder;
  const before = await trustBefore(stationFolder);
  const after = stationOf([...log.stationEntries(), ...events.map((event) => ({ event, at: stamp.at }))]);
  if (after === null) throw new Error('a station that was never set up');
  // All that may fail is done before the log goes on.
  const list = preparedTrust(trustFile, after, before);
  try {
    log.appendStation(
      events.map((event) => ({ by, event })),
      stamp,
    );
  } catch (cause) {
    list.drop();
    throw cause;
  }
  list.put();
}

/** What the trust list has beside the station's own keys. Where it was lost, a line on the error output says so. */
async function trustBefore({ trustFile }: StationFolder): Promise<TrustList> {
  const { list, lost } = await ownTrust(trustFile);
  if (lost !== null)
    process.stderr.write(
      `${safeLine(w`${trustFile} was ${lost}. It was made again from the log. Add the keys of others again: the log does not have them.`)}\n`,
    );
  return list;
}

/** Brings the trust list up to what the log says. */
export async function renewTrust(stationFolder: StationFolder): Promise<void> {
  await renewTrustFile(stationFolder.trustFile, stateOf(stationFolder), await trustBefore(stationFolder));
}

/** Opens a job in the log, behind everything about people, instruments and figures that the log did not know yet. */
export async function openInLog(
  station: Station,
  drafts: readonly Draft[],
  stamp: Stamp,
): Promise<readonly JobEvent[]> {
  const opening = drafts[0]?.event;
  if (opening?.type !== 'job-opened') throw new Error('a job is opened by its opening');
  const { technician, specification, job } = opening.order;
  const { instruments } = opening;
  const news = newsOf(stateOf(station), { station: station.name, technician, instruments, specification });
  if (news.length > 0) await recordStation(station, news, stamp);
  return station.log.append(`job:${job}`, drafts, stamp).map(({ event }) => event);
}

async function setUp(
  stationFolder: StationFolder,
  { name, domain }: { readonly name: string; readonly domain: string | undefined },
  stamp: Stamp,
): Promise<StationKey> {
  const passphrase = process.env[SECRETS.passphrase] || null;
  const key = makeKey(stationFolder.folder, 'station', passphrase);
  await recordStation(
    stationFolder,
    [{ type: 'station-set-up', station: name, key: key.jwk, ...(domain === undefined ? {} : { domain }) }],
    stamp,
  );
  return key;
}
