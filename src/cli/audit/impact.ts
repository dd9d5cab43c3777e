import type { AttemptRow } from '../../audit/attempt.ts';
import { inQuestion, type JudgedAgain, judgeAgain } from '../../audit/impact.ts';
import { notHeld, onFinding } from '../../audit/impact-held.ts';
import { type Assessment, assess, isRepeat } from '../../audit/impact-items.ts';
import { foundPoints, type Span, spanOf } from '../../audit/impact-span.ts';
import { type ImpactAssessment, nextAssessment } from '../../audit/impact-state.ts';
import type { StationEvent } from '../../evidence/station-event.ts';
import { outputFolder } from '../../files/output.ts';
import type { Certificate } from '../../instrument/certificate.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import type { Scope } from '../station/scope.ts';
import type { StationFolder } from '../station/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { progress } from '../terminal/progress.ts';
import { readCertificateFile } from './certificate.ts';
import {
  type AuditSession,
  impactOf,
  inSession,
  linesOf,
  now,
  person,
  print,
  record,
  sessionSigner,
  writeImpact,
} from './impact-shared.ts';
import { setupsOf } from './impact-since.ts';

interface AssessOptions extends Scope {
  readonly asFound: string;
  readonly since?: string;
  readonly by: string;
  readonly out?: string;
}

/**
 * Assesses the impact of a tool that was out of tolerance: judges everything since its last good check again, puts the assessment into
 * the log, signs it by a checkpoint, and writes the paper and the lists. Exit code 1 where a proof does not hold any more.
 */
export function impact(tool: string, options: AssessOptions): Promise<ExitCode> {
  return inSession(options, async (session) => {
    const { certificate: asFound, digest } = await readCertificateFile(options.asFound);
    const { stationFolder, entries, impacts } = session;
    const since = options.since ?? null;
    const today = now().at.slice(0, 10);
    const span = orThrow(spanOf(entries, { tool, asFound, since, today }));
    const before = onFinding(impacts, digest);
    const judged = judgedIn(stationFolder, tool, asFound, span, before);
    const by = person(options.by);
    const signer = await sessionSigner(session);
    const assessment = nextAssessment(impacts);
    const assessed = assess(judged, ofJobsRepeated(stationFolder, judged));
    outputFolder(options.out ?? stationFolder.folder);
    const events = eventsOf(judged, assessed, { assessment, tool, asFound, digest, span, before });
    const after = record(session, events, by);
    const made = impactOf(after, assessment);
    const papers = await writeImpact(after, signer, made, options.out, assessed.sorted);
    const earlier = [...goesOnLines(before, made), ...overlapLines(session, made)];
    print([...foundLines(asFound, span), ...linesOf(made), ...earlier, '', ...papers]);
    return made.items.length === 0 ? EXIT.done : EXIT.failed;
  });
}

interface About {
  readonly assessment: string;
  readonly tool: string;
  readonly asFound: Certificate;
  readonly digest: string;
  readonly span: Span;
  /** The impact assessments on the same file. */
  readonly before: readonly ImpactAssessment[];
}

/** What was found, the assessment, and its end where every proof holds. */
function eventsOf(
  judged: readonly JudgedAgain[],
  { attempts, stillIn, doubtful, out, items }: Assessment,
  { assessment, tool, asFound, digest, span, before }: About,
): readonly StationEvent[] {
  const { serial, foundOn, lastGood } = span;
  const made: StationEvent = {
    type: 'assessment-made',
    assessment,
    tool,
    serial,
    asFound: asFound.number,
    digest,
    lastGood: lastGood && { number: lastGood.number, date: lastGood.date },
    foundOn,
    from: firstDay(judged, span, before),
    to: lastDay(judged, foundOn),
    simulated: judged.some(({ row }) => row.simulated),
    attempts,
    stillIn,
    doubtful,
    out,
    items: [...items],
  };
  const found: StationEvent = { type: 'as-found-recorded', tool, asFound, digest };
  const because = 'every proof holds with what was found';
  return items.length > 0 ? [found, made] : [found, made, { type: 'assessment-closed', assessment, because }];
}

/**
 * Everything since the last good check, but what was measured under a newer certificate, and what impact assessments `before` on
 * the same file hold already. It does not end with the day of the finding: a tool may have been used on.
 */
function judgedIn(
  { log }: StationFolder,
  tool: string,
  certificate: Certificate,
  { serial, from, foundOn }: Span,
  before: readonly ImpactAssessment[],
): readonly JudgedAgain[] {
  const rows = log.history.attemptsOf({ serial, from });
  const setups = setupsOf({ log }, rows);
  const questioned = inQuestion(rows, setups, foundOn);
  if (questioned.length === 0)
    throw new ProblemError({
      code: 'impact-no-data',
      where: `${tool}, serial ${serial}`,
      message: `the log holds no attempt with it from ${from} on that a check of ${foundOn} could put in question`,
      next: 'Nothing was written, and jobs open with it as before: give it the certificate of that calibration. See when it was used with "plugmark ask --tool"; check serial number and dates.',
    });
  const fresh = notHeld(questioned, before);
  const newest = before.at(-1);
  if (fresh.length === 0 && newest !== undefined) throw nothingSince(newest);
  return inSteps(fresh, (some) => judgeAgain(some, { certificate, setups }));
}

const ROWS_A_STEP = 500;

/** A year of a busy shop takes longer than a moment. */
function inSteps<T, R>(rows: readonly T[], work: (some: readonly T[]) => readonly R[]): readonly R[] {
  const bar = progress('readings judged again', rows.length);
  const results: R[] = [];
  for (let from = 0; from < rows.length; from += ROWS_A_STEP) {
    results.push(...work(rows.slice(from, from + ROWS_A_STEP)));
    bar.at(results.length);
  }
  bar.end();
  return results;
}

/** One that goes on from another begins with what it took up, one that looks further back with its check. */
const firstDay = (
  judged: readonly JudgedAgain[],
  { from }: Span,
  before: readonly ImpactAssessment[],
): string => {
  const goesOn = before.some(({ made }) => made.from <= from);
  return goesOn ? (judged.map(({ row }) => row.day).sort()[0] ?? from) : from;
};

/** A tool may have been used on, under the old certificate, after it was out of tolerance. */
const lastDay = (judged: readonly JudgedAgain[], foundOn: string): string =>
  [foundOn, ...judged.map(({ row }) => row.day)].sort().at(-1) ?? foundOn;

/** All attempts of the jobs in which a re-hit or a check is in question: another tool may have proved what it went over. */
function ofJobsRepeated({ log }: StationFolder, judged: readonly JudgedAgain[]): readonly AttemptRow[] {
  const repeated = judged.filter(({ row, sort }) => sort !== null && isRepeat(row));
  const jobs = new Set(repeated.map(({ row }) => row.job));
  return [...jobs].flatMap((job) => log.history.attemptsOf({ job }));
}

/** How what was found compares with the last good check. */
function foundLines(asFound: Certificate, { lastGood }: Span): readonly string[] {
  if (lastGood === null)
    return ['The log holds no good check from before it: everything since its first use is looked at.'];
  const points = foundPoints(asFound, lastGood);
  const moved = points.filter(({ finding }) => finding === 'moved').length;
  const better = points.every(({ error, was }) => was !== null && Math.abs(error) < Math.abs(was.error));
  const check = `${safeLine(lastGood.number)} of ${lastGood.date}`;
  return [
    moved > 0
      ? `At ${moved} of ${points.length} points it had moved since ${check}, by more than the uncertainty of both.`
      : `It had not moved since ${check}, as far as the uncertainty of both can tell${better ? '; its errors are smaller than they were' : ''}.`,
    ...(lastGood.number === asFound.number && isSoonAfter(lastGood.date, asFound.date)
      ? [
          `That check has the number of what was found. If one calibration made both, date what was found ${lastGood.date} too, and assess again.`,
        ]
      : []),
  ];
}

/** So few days that one calibration may have been given two: a laboratory whose numbers are all the same sees a tool later. */
const isSoonAfter = (day: string, later: string) => Date.parse(later) - Date.parse(day) <= 31 * 86_400_000;

/** Of impact assessments on the same file, each job stands in the first that saw all of it; one that went on since in both. */
function goesOnLines(
  before: readonly ImpactAssessment[],
  { made, items }: ImpactAssessment,
): readonly string[] {
  if (before.length === 0) return [];
  const names = before.map(({ assessment }) => assessment).join(', ');
  const held = new Set(before.flatMap((one) => one.items.map(({ job }) => job)));
  const both = items.filter(({ job }) => held.has(job)).map(({ job }) => job);
  const went = `Jobs that went on since stand in both, ${both.join(', ')}: what is decided of one is decided in each.`;
  return [
    '',
    `${made.assessment} goes on from ${names} on the same file: it holds only what was entered since, or lies further back.`,
    ...(both.length === 0 ? [] : [safeLine(went)]),
  ];
}

/** Earlier impact assessments on another finding that went over the same time: each is decided and closed by itself. */
function overlapLines({ impacts }: AuditSession, { made, items }: ImpactAssessment): readonly string[] {
  const jobs = new Set(items.map(({ job }) => job));
  const lines = impacts
    .filter((one) => one.made.serial === made.serial && one.made.digest !== made.digest)
    .filter((one) => one.made.from <= made.to && made.from <= one.made.to)
    .map((one) => {
      const both = one.items.filter(({ job }) => jobs.has(job)).length;
      const state = one.closed === null ? 'not closed' : 'closed';
      return `${one.assessment} (${state}) looked at ${one.made.from} to ${one.made.to} as well; jobs that stand in both: ${both}, to be decided in each.`;
    });
  return lines.length === 0 ? [] : ['', ...lines];
}

const nothingSince = ({ assessment, at, by }: ImpactAssessment) =>
  new ProblemError({
    code: 'impact-made',
    where: assessment,
    message: `this file was assessed already, on ${at.slice(0, 10)} by ${by}, and nothing was measured with the tool as it was found since`,
    next: `See "plugmark impact show ${assessment}".`,
  });
