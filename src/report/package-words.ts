/** What a package leaves open, in words: what was learned later of its jobs, and what nobody should take for proven. */
import { PACKAGE_FILES } from '../package/format.ts';
import { lastWithoutGap, type Questioned, questionedIn } from '../package/station-entries.ts';
import type { PackageReport } from '../package/verify.ts';
import { plural, w } from '../words/catalogue.ts';
import { clean } from './clean.ts';
import { cylindersOf, jobsText, standOf } from './impact.ts';
import { noRecordText, notProvenByAny, purposeText } from './words/index.ts';

/** What it was made for, by whom, and what was asked for. */
export function packageText(index: PackageReport['index']): string {
  const asked = Object.entries(index.asked).map(([what, value]) =>
    value === null ? w`one ${what}` : `${what} ${value}`,
  );
  return clean(
    w`${purposeText(index)}; station ${index.station}; ${recordsText(index.jobs.length)}; asked for ${asked.join(', ') || w`all jobs`}`,
  );
}

export const recordsText = (count: number): string => plural(count, { one: '# record', other: '# records' });

export const leftOutText = (one: PackageReport['index']['leftOut'][number]): string =>
  clean(w`Left out: job ${one.job}, ${noRecordText(one)}.`);

export function questionHeadline({ index }: PackageReport): string {
  const count = index.jobs.filter(({ impacts }) => impacts.length > 0).length;
  return w`${count} of ${jobsText(index.jobs.length)} PUT IN QUESTION later.`;
}

/** From the entries that are in the log, not from what the index makes of them. */
export function questionLines({ index, log }: PackageReport): readonly string[] {
  if (typeof log === 'function') return [];
  const all = questionedIn(log.entries, new Set(index.jobs.map(({ job }) => job)));
  return [...all].sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([, some]) => some.map(questionLine));
}

function questionLine({ impact: { assessment, assessed }, item }: Questioned): string {
  const cylinders = (['out', 'doubtful'] as const).flatMap((sort) => {
    const some = cylindersOf(item, sort);
    return some === '' ? [] : [AT_CYLINDER[sort](some)];
  });
  return clean(
    w`job ${item.job} of ${item.on}: ${cylinders.join(', ')} by impact assessment ${assessment} on ${assessed.tool} (${assessed.serial}), out of tolerance ${assessed.foundOn}; ${standOf(item)}`,
  );
}

const AT_CYLINDER: Readonly<Record<'out' | 'doubtful', (cylinders: string) => string>> = {
  out: (cylinders) => w`OUT at cylinder ${cylinders}`,
  doubtful: (cylinders) => w`DOUBTFUL at cylinder ${cylinders}`,
};

/** What a reader could take for proven and is not. */
export function notProven({ index, log, held, verdict, checks }: PackageReport): readonly string[] {
  const last = typeof log === 'function' ? null : lastWithoutGap(log.entries);
  const size = typeof log === 'function' ? 0 : log.checkpoint.size;
  const papers = index.jobs.some(({ paper }) => paper !== null);
  return [
    w`that the readings came from the named instruments, where the link of a tool was not authenticated: each record says so`,
    ...notProvenByAny(checks),
    w`that no job was left out when it was chosen: only the whole log of the station shows that`,
    last === null
      ? w`that no impact assessment was left out: the station's own entries here are a choice of those that bear on these jobs`
      : w`that no impact assessment came behind the station's entry ${last.seq}: of what followed, up to ${size}, only the entries of the records here are shown`,
    ...(held
      ? []
      : [
          w`that nothing was rewritten before it was made: nobody held it against an older checkpoint. Keep its ${PACKAGE_FILES.checkpoint} for the next time, and give it with --kept`,
        ]),
    ...(papers
      ? []
      : [
          w`what papers say that somebody has from elsewhere: hold each against its record with "plugmark verify PAPER.pdf"`,
        ]),
    ...(verdict === 'other-rules'
      ? [
          w`the verdicts of the jobs that were not judged again: verify them with the version that made them as well`,
        ]
      : []),
    w`that nothing of a job came behind its last entry here: a job that goes on has more entries in the log`,
    w`the times: they are those of the clock of the station`,
  ];
}
