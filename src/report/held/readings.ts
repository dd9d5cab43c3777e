/**
 * The files of a package that people read: papers, jobs.csv, READ-ME.txt. The version that wrote them gives them again from the
 * records, byte for byte; of another version words and figures are compared.
 */

import { type ImpactAssessment, impactsOf } from '../../audit/impact-state.ts';
import { answerFromEntries, type JobAnswer } from '../../audit/questions.ts';
import { type Check, failed, passed } from '../../evidence/check.ts';
import type { JobRecord } from '../../evidence/record.ts';
import { firstOf } from '../../evidence/wordings.ts';
import type { PackageLog } from '../../package/checks.ts';
import { PACKAGE_FILES, type PackageIndex } from '../../package/format.ts';
import { WITHHELD } from '../../personal.ts';
import { ENGLISH, inLanguage, joined, plural, type Sentence, sentence } from '../../words/catalogue.ts';
import { jobsCsv } from '../ask-csv.ts';
import type { Paper } from '../paper.ts';
import { READ_ME, readMe, VERIFY_PAGE } from '../read-me.ts';
import { ANYBODY, type Audience, madeFor } from '../reader.ts';
import { purposeText } from '../words/index.ts';
import { DISPUTE_PAPER, disputeFile, type ForPeople, impactFiles } from './package-papers.ts';
import { figuresOnlyIn, type HeldPaper, heldPaper } from './paper.ts';
import type { PaperMakers } from './paper-makers.ts';

const NAME = 'papers';
export const JOBS_CSV = 'jobs.csv';

/** What the reader has at hand for it. Files are read once each of them was found to be as it was signed. */
export interface Readers {
  /** This program, as an index names it. */
  readonly program: string;
  readonly read: (path: string) => Promise<Uint8Array>;
  /** Null where the file cannot be opened as a record. */
  readonly record: (path: string) => Promise<JobRecord | null>;
  /** Null where nothing draws, as in a browser: then no paper is compared. */
  readonly pen: Pen | null;
  /** The page for browsers that this program puts into a package; null where it is not at hand. */
  readonly page: (() => Promise<string>) | null;
}

export interface Pen {
  /** Each paper of a record, held against it. */
  readonly holdPapers: (
    papers: readonly { readonly record: string; readonly paper: string }[],
  ) => Promise<readonly { readonly path: string; readonly held: HeldPaper }[]>;
  readonly papers: PaperMakers;
  /** Draws a paper as a PDF. */
  readonly draw: (make: () => Paper, audience: Audience) => Promise<Uint8Array>;
}

/** A file for people against what it has to be. */
interface Held {
  readonly path: string;
  /** `alike`: words and figures only. `not-held`: nobody can tell. */
  readonly outcome: 'same' | 'alike' | 'not-held' | 'differs';
  /** Why it differs. */
  readonly why?: Sentence;
}

/** Whether they say what the records say. */
export async function heldReadings(index: PackageIndex, log: PackageLog, readers: Readers): Promise<Check> {
  const there = new Set(index.files.map(({ path }) => path));
  const records = await recordsOf(index, readers);
  const all = [
    ...(await papersOf(index, readers)),
    ...(there.has(READ_ME) ? [await guideOf(index, log, readers)] : []),
    ...(there.has(JOBS_CSV) ? await listOf(index, log, records, readers) : []),
    ...(there.has(VERIFY_PAGE) ? [await pageOf(readers)] : []),
    ...(await othersOf(index, log, [...records.values()], readers)),
  ];
  const [first, ...more] = all.filter(({ outcome }) => outcome === 'differs');
  if (first === undefined)
    return passed(
      NAME,
      joined([...seenOf(all, index), ...(readers.pen === null ? [PAPERS_NOT_COMPARED] : [])]),
    );
  const faults = [first, ...more].map(({ path, why }) => why ?? (() => path));
  return failed(NAME, sentence`${firstOf(faults, 1)}. The records are what counts.`);
}

const PAPERS_NOT_COMPARED = sentence`The pages of papers were NOT compared: nothing draws here. "plugmark verify" on the folder compares them. The records are what counts.`;

function seenOf(all: readonly Held[], { jobs }: PackageIndex): readonly Sentence[] {
  const papers = new Set(jobs.map(({ paper }) => paper));
  const named = (wanted: Held['outcome'], say: (files: Sentence) => Sentence): readonly Sentence[] => {
    const paths = all.filter(({ outcome }) => outcome === wanted).map(({ path }) => path);
    const others = paths.filter((path) => !papers.has(path));
    const drawn = paths.length - others.length;
    const files = [...(drawn === 0 ? [] : [papersText(drawn)]), ...others.map((path) => () => path)];
    return files.length === 0 ? [] : [say(joined(files, ', '))];
  };
  const sentences = [
    ...named('same', (files) => sentence`What the records give: ${files}.`),
    ...named(
      'alike',
      (files) =>
        sentence`Of another version, its words and figures compared and what is drawn NOT: ${files}.`,
    ),
    ...named('not-held', (files) => sentence`NOT held against the records: ${files}.`),
  ];
  return sentences.length === 0 ? [sentence`There are none.`] : sentences;
}

const papersText =
  (count: number): Sentence =>
  () =>
    plural(count, { one: '# paper', other: '# papers' });

async function recordsOf(index: PackageIndex, { record }: Readers): Promise<ReadonlyMap<string, JobRecord>> {
  const records = new Map<string, JobRecord>();
  for (const { job, record: path } of index.jobs) {
    const one = await record(path);
    if (one !== null) records.set(job, one);
  }
  return records;
}

async function papersOf({ jobs }: PackageIndex, { pen }: Readers): Promise<readonly Held[]> {
  const papers = jobs.flatMap(({ record, paper }) => (paper === null ? [] : [{ record, paper }]));
  if (pen === null) return papers.map(({ paper }) => ({ path: paper, outcome: 'not-held' }));
  const held = await pen.holdPapers(papers);
  return held.map(({ path, held: one }) => heldAs(path, one)).sort((a, b) => (a.path < b.path ? -1 : 1));
}

const heldAs = (path: string, held: HeldPaper): Held =>
  held.outcome === 'differs'
    ? {
        path,
        outcome: held.outcome,
        why: sentence`${path} is not what the records give: ${() => held.detail.replace(/\.$/, '')}`,
      }
    : { path, outcome: held.outcome === 'same' ? 'same' : 'alike' };

async function guideOf(index: PackageIndex, log: PackageLog, { read, program }: Readers): Promise<Held> {
  const kid = typeof log.station === 'function' ? undefined : log.station.keys.at(-1)?.kid;
  const text = utf8(await read(READ_ME));
  if (kid !== undefined && text === madeFor(ANYBODY, () => readMe(index.station, kid, purposeText(index))))
    return { path: READ_ME, outcome: 'same' };
  const strange = (text.match(/(?<![\w-])[\w-]{43}(?![\w-])/g) ?? []).find((one) => one !== kid);
  if (strange !== undefined)
    return { path: READ_ME, outcome: 'differs', why: sentence`${READ_ME} names another key, ${strange}` };
  return index.program === program
    ? { path: READ_ME, outcome: 'differs', why: sentence`${READ_ME} is not what this version writes` }
    : { path: READ_ME, outcome: 'not-held' };
}

/** A page by a program that was built otherwise may be as good, and nobody can tell. */
async function pageOf({ read, page }: Readers): Promise<Held> {
  const isOurs = page !== null && utf8(await read(VERIFY_PAGE)) === (await page());
  return { path: VERIFY_PAGE, outcome: isOurs ? 'same' : 'not-held' };
}

/** Impact assessments, and the file on a claim. What lies beside them in the package is of nobody's making here. */
async function othersOf(
  index: PackageIndex,
  log: PackageLog,
  records: readonly JobRecord[],
  readers: Readers,
): Promise<readonly Held[]> {
  const jobs = new Set(index.jobs.map(({ job }) => job));
  const dispute = disputeFile(index, log, records);
  const given = new Map(
    [
      ...impactFiles(log.entries, jobs, { log: log.checkpoint, program: index.program }),
      ...(dispute === null ? [] : [dispute]),
    ].map((one) => [one.path, one]),
  );
  const own: ReadonlySet<string> = new Set([
    ...Object.values(PACKAGE_FILES),
    READ_ME,
    VERIFY_PAGE,
    JOBS_CSV,
    ...index.jobs.flatMap(({ record, paper }) => (paper === null ? [record] : [record, paper])),
  ]);
  const held: Held[] = [];
  for (const { path } of index.files) {
    if (own.has(path)) continue;
    const one = given.get(path);
    held.push(one === undefined ? { path, outcome: 'not-held' } : await heldWith(one, index, readers));
  }
  return held;
}

async function heldWith({ path, content }: ForPeople, index: PackageIndex, readers: Readers): Promise<Held> {
  const bytes = await readers.read(path);
  if (typeof content !== 'string') {
    const { pen } = readers;
    if (pen === null) return { path, outcome: 'not-held' };
    const held = await heldPaper(bytes, (_, audience) => pen.draw(() => content(pen.papers), audience));
    // Without all jobs of the claim the paper cannot be made again.
    if (held.outcome === 'differs' && path === DISPUTE_PAPER && index.leftOut.length > 0)
      return { path, outcome: 'not-held' };
    return heldAs(path, held);
  }
  const text = utf8(bytes);
  if (text === content) return { path, outcome: 'same' };
  const [strange] = figuresOnlyIn([text], [content]);
  return index.program === readers.program || strange !== undefined
    ? { path, outcome: 'differs', why: sentence`${path} is not what the station's entries give` }
    : { path, outcome: 'alike' };
}

const utf8 = (bytes: Uint8Array) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);

/**
 * Rows of jobs without a record cannot be compared; every other row is what the record of its job gives. A list of another
 * form is not held against them.
 */
async function listOf(
  index: PackageIndex,
  log: PackageLog,
  records: ReadonlyMap<string, JobRecord>,
  { read, program }: Readers,
): Promise<readonly Held[]> {
  const [head, ...rows] = utf8(await read(JOBS_CSV))
    .split('\r\n')
    .slice(0, -1);
  if (head !== jobsCsv([]).trimEnd()) return [{ path: JOBS_CSV, outcome: 'not-held' }];
  const isOld = index.program !== program;
  const left = new Set(rows);
  const impacts = impactsOf(log.entries);
  const faults: Sentence[] = [];
  let alike = false;
  for (const [job, record] of records) {
    const given = rowsOf(record, impacts);
    const found = given.find((row) => left.has(row)) ?? (isOld ? rowAlike(job, left, given) : undefined);
    if (found === undefined)
      faults.push(sentence`${JOBS_CSV} does not say of job ${job} what its record says`);
    else left.delete(found);
    alike ||= found !== undefined && !given.includes(found);
  }
  const without = new Set(index.leftOut.map(({ job }) => job));
  if ([...left].some((row) => !without.has(row.split(',')[0] ?? '')))
    faults.push(sentence`${JOBS_CSV} has a row of no record here`);
  if (faults.length > 0) return faults.map((why) => ({ path: JOBS_CSV, outcome: 'differs', why }));
  return [{ path: JOBS_CSV, outcome: alike ? 'alike' : 'same' }];
}

const rowsOf = (record: JobRecord, impacts: readonly ImpactAssessment[]): readonly string[] =>
  withSomeWithheld(inLanguage(ENGLISH, () => answerFromEntries(record.entries, impacts))).map(
    (one) => jobsCsv([one]).split('\r\n')[1] ?? '',
  );

/** A row by another version that says it in other words, with no figure that the record does not give. */
const rowAlike = (job: string, left: ReadonlySet<string>, given: readonly string[]): string | undefined =>
  [...left].find((row) => row.startsWith(`${job},`) && figuresOnlyIn([row], given).length === 0);

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
