/** What "plugmark forget" says before it deletes: which texts would go, and what will still hold them. */

import { type HeldJob, isFree, standsIn, textsIn, type Wanted } from '../../audit/forgetting.ts';
import { STATION_STREAM } from '../../evidence/log.ts';
import { addedUp, type KeptText, type Withheld } from '../../evidence/sharing.ts';
import { plural, w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import type { StationFolder } from './station.ts';
import { filesHolding } from './still-held.ts';

export const countsOf = (texts: readonly KeptText[]): string => {
  const counts: readonly Withheld[] = addedUp(texts.map(({ kind }) => ({ kind, count: 1 })));
  return counts.map(({ kind, count }) => `${kind} (${count})`).join(', ');
};

/** Their streams. */
export const jobsAmong = (texts: readonly KeptText[]): readonly string[] =>
  [...new Set(texts.map(({ stream }) => stream))].filter((stream) => stream !== STATION_STREAM);

const nameOf = (stream: string) => (stream === STATION_STREAM ? w`the station` : stream.replace(/^job:/, ''));

const countOfJobs = (count: number): string => plural(count, { one: '# job', other: '# jobs' });

const MOST = 10;
const someNames = (names: readonly string[]): string =>
  names.length <= MOST
    ? names.map(safeLine).join(', ')
    : w`${names.slice(0, MOST).map(safeLine).join(', ')} and ${names.length - MOST} more`;
const someLines = (lines: readonly string[]): readonly string[] => [
  ...lines.slice(0, MOST).map((one) => `  ${safeLine(one)}`),
  ...(lines.length > MOST ? [w`  and ${lines.length - MOST} more`] : []),
];

export function planLines({ kind }: Wanted, found: readonly KeptText[]): readonly string[] {
  const jobs = jobsAmong(found).map(nameOf);
  const ofStation = found.filter(({ stream }) => stream === STATION_STREAM).length;
  const free = found.filter((one) => isFree(one) && one.kind !== kind);
  return [
    w`To be deleted: ${countsOf(found)}.`,
    ...(jobs.length === 0 ? [] : [w`  in ${countOfJobs(jobs.length)}: ${someNames(jobs)}`]),
    ...(ofStation === 0 ? [] : [w`  in the station's own entries: ${ofStation}`]),
    ...(free.length === 0
      ? []
      : [
          w`These free texts contain it and are deleted whole:`,
          ...someLines(free.map((one) => `${nameOf(one.stream)}, ${one.kind}: ${one.content}`)),
        ]),
  ];
}

/** What will still hold it: what is signed, what was given away, and files that were made of it. */
export async function keptLines(
  stationFolder: StationFolder,
  wanted: Wanted,
  found: readonly KeptText[],
  beside: readonly string[],
): Promise<readonly string[]> {
  const { log } = stationFolder;
  const ended = jobsAmong(found).filter((stream) =>
    log.entries(stream).some(({ event }) => event.type === 'job-closed' || event.type === 'job-voided'),
  );
  return [
    ...signedLines(stationFolder, wanted),
    ...(ended.length === 0
      ? []
      : [
          w`${plural(ended.length, { one: '# of these jobs was closed or declared void', other: '# of these jobs were closed or declared void' })}: whoever was given the record or a paper still has it (${someNames(ended.map(nameOf))}).`,
        ]),
    ...(await fileLines(stationFolder, wanted, found, beside)),
    w`Backups, and files in other places, hold it until you delete them. A backup that is restored brings it back.`,
  ];
}

function signedLines({ log }: StationFolder, wanted: Wanted): readonly string[] {
  const stands = standsIn(wanted);
  const streams = [...log.signed()].flatMap(({ stream, body }) =>
    textsIn(JSON.parse(body)).some(stands) ? [stream] : [],
  );
  if (streams.length === 0) return [];
  const entries = plural(streams.length, { one: '# signed entry', other: '# signed entries' });
  const where = someNames([...new Set(streams.map(nameOf))]);
  return [
    w`It also stands in ${entries} (${where}), as in a job number or a description: there it cannot be deleted.`,
  ];
}

export async function fileLines(
  { log, folder }: StationFolder,
  wanted: Wanted,
  found: readonly KeptText[],
  beside: readonly string[],
): Promise<readonly string[]> {
  const jobs = new Set(jobsAmong(found));
  const others = log.streams().filter((stream) => !jobs.has(stream));
  const named = (streams: Iterable<string>) => new Set([...streams].map(nameOf));
  const files = await filesHolding(folder, beside, { wanted, jobs: named(jobs), otherJobs: named(others) });
  return files.length === 0
    ? []
    : [w`These files of the station hold it, or may, and are left as they are:`, ...someLines(files)];
}

export const heldLines = (held: readonly HeldJob[]): readonly string[] => [
  w`Held, and deleted all the same: ${countOfJobs(held.length)}.`,
  ...someLines(held.map(({ job, because }) => `${job}: ${because}`)),
];
