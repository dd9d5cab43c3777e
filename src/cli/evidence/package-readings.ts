/**
 * The files of a package that people read: papers, jobs.csv, READ-ME.txt. The version that wrote them gives them again from the
 * records, byte for byte; another version says the same in other words, and cannot tell.
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { impactsOf } from '../../audit/impact-state.ts';
import { answerFromEntries, type JobAnswer } from '../../audit/questions.ts';
import { type Check, failed, passed } from '../../evidence/check.ts';
import { openRecord } from '../../evidence/record.ts';
import type { PackageLog } from '../../package/checks.ts';
import type { PackageIndex } from '../../package/format.ts';
import { WITHHELD } from '../../personal.ts';
import { jobsCsv } from '../../report/ask-csv.ts';
import { purposeText } from '../../report/words/index.ts';
import { programVersion } from '../help/version.ts';
import { progress } from '../terminal/progress.ts';
import { papersAnew } from './package-papers.ts';
import { READ_ME, readMe } from './package-text.ts';

const NAME = 'papers';
const CSV = 'jobs.csv';

/** Whether they say what the records say; to be asked once every file and every record was found to be as it was signed. */
export async function checkReadings(folder: string, index: PackageIndex, log: PackageLog): Promise<Check> {
  if (index.program !== `plugmark ${programVersion()}`)
    return passed(
      NAME,
      'Papers and lists were written by another version: they are as they were signed, and were NOT held against the records. Make a paper anew with "plugmark paper".',
    );
  const list = await listFaults(folder, index, log);
  const faults = [
    ...(await paperFaults(folder, index)),
    ...(list ?? []),
    ...(await readMeFaults(folder, index, log)),
  ];
  const [first] = faults;
  if (first === undefined) return passed(NAME, seenText(index, list !== null));
  const more = faults.length === 1 ? '' : `; and ${faults.length - 1} more`;
  return failed(NAME, `${first}${more}. The records are what counts.`);
}

function seenText({ jobs, files }: PackageIndex, listSeen: boolean): string {
  const papers = jobs.filter(({ paper }) => paper !== null).length;
  const has = (name: string) => files.some(({ path }) => path === name);
  const what = [
    ...(papers === 0 ? [] : [papers === 1 ? '1 paper' : `${papers} papers`]),
    ...(has(READ_ME) ? [READ_ME] : []),
    ...(listSeen ? [CSV] : []),
  ];
  const seen = what.length === 0 ? 'There are none.' : `What the records give: ${what.join(', ')}.`;
  return has(CSV) && !listSeen ? `${seen} NOT held against them: ${CSV}, which is of another form.` : seen;
}

async function paperFaults(folder: string, { jobs, files }: PackageIndex): Promise<readonly string[]> {
  const sha256 = new Map(files.map(({ path, sha256: digest }) => [path, digest]));
  const papers = jobs.flatMap(({ record, paper }) => (paper === null ? [] : [{ record, paper }]));
  const faults: string[] = [];
  const bar = progress('papers', papers.length);
  let done = 0;
  await papersAnew(folder, papers, (some) => {
    for (const one of some)
      if (sha256.get(one.path) !== one.sha256) faults.push(`${one.path} is not the paper of its record`);
    done += some.length;
    bar.at(done);
  });
  bar.end();
  return faults.sort();
}

/**
 * Rows of jobs without a record cannot be told; every other row is what the record of its job gives. Null where there is no
 * list, or one of another form.
 */
async function listFaults(
  folder: string,
  index: PackageIndex,
  log: PackageLog,
): Promise<readonly string[] | null> {
  const text = await textIn(folder, index, CSV);
  if (text === null) return null;
  const [head, ...rows] = text.split('\r\n').slice(0, -1);
  if (head !== jobsCsv([]).trimEnd()) return null;
  const left = new Set(rows);
  const impacts = impactsOf(log.entries);
  const faults: string[] = [];
  for (const { job, record } of index.jobs) {
    const opened = openRecord(await readFile(join(folder, record)));
    if (!opened.ok) continue;
    const answer = answerFromEntries(opened.value.record.entries, impacts);
    const found = withSomeWithheld(answer)
      .map((one) => jobsCsv([one]).split('\r\n')[1] ?? '')
      .find((row) => left.has(row));
    if (found === undefined) faults.push(`${CSV} does not say of job ${job} what its record says`);
    else left.delete(found);
  }
  const without = new Set(index.leftOut.map(({ job }) => job));
  const astray = [...left].find((row) => !without.has(row.split(',')[0] ?? ''));
  return astray === undefined ? faults : [...faults, `${CSV} has a row of no record here`];
}

/** More names than this were hardly at one job. */
const MOST_NAMES = 4;

/** The row of a job, and every row in which personal texts of it are withheld: the list may give away less than the record. */
function withSomeWithheld(answer: JobAnswer): readonly JobAnswer[] {
  const { technicians: names } = answer;
  const texts = (['vin', 'plate', 'fleet'] as const).reduce<readonly JobAnswer[]>(
    (all, kind) => all.flatMap((one) => (one[kind] === null ? [one] : [one, { ...one, [kind]: WITHHELD }])),
    [answer],
  );
  const some = names.length > MOST_NAMES ? [names] : hidden(names);
  return [...some, [WITHHELD]].flatMap((technicians) => texts.map((one) => ({ ...one, technicians })));
}

/** The names with any of them withheld, each once. */
const hidden = (names: readonly string[]): readonly (readonly string[])[] =>
  names
    .reduce<readonly (readonly string[])[]>(
      (all, name) =>
        all.flatMap((before) => [
          [...before, name],
          [...before, WITHHELD],
        ]),
      [[]],
    )
    .map((all) => [...new Set(all)]);

async function readMeFaults(
  folder: string,
  index: PackageIndex,
  log: PackageLog,
): Promise<readonly string[]> {
  const text = await textIn(folder, index, READ_ME);
  const kid = typeof log.station === 'string' ? undefined : log.station.keys.at(-1)?.kid;
  return text === null || kid === undefined || text === readMe(index.station, kid, purposeText(index))
    ? []
    : [`${READ_ME} is not what this version writes`];
}

async function textIn(folder: string, { files }: PackageIndex, name: string): Promise<string | null> {
  return files.some(({ path }) => path === name) ? await readFile(join(folder, name), 'utf8') : null;
}
