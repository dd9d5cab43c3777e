import type { AttemptRow } from '../../audit/attempt.ts';
import { inQuestion, type JudgedAgain, judgeAgain } from '../../audit/impact.ts';
import { movedSince, overlapping, sharedJobs } from '../../audit/impact-comparison.ts';
import { assessmentEvents } from '../../audit/impact-events.ts';
import { notHeld, onFinding } from '../../audit/impact-held.ts';
import { assess, isRepeat } from '../../audit/impact-items.ts';
import { type Span, spanOf } from '../../audit/impact-span.ts';
import { type ImpactAssessment, nextAssessment } from '../../audit/impact-state.ts';
import type { Records } from '../../audit/records.ts';
import { outputFolder } from '../../files/output.ts';
import type { Certificate } from '../../instrument/certificate.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { type AudienceOptions, audienceOf } from '../station/audience.ts';
import { today } from '../station/clock.ts';
import type { Scope } from '../station/scope.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { progress } from '../terminal/progress.ts';
import { readCertificateFile } from './certificate.ts';
import {
  type AuditSession,
  impactOf,
  inSession,
  person,
  print,
  printImpact,
  record,
  sessionSigner,
  writeImpact,
} from './impact-shared.ts';
import { setupsOf } from './impact-since.ts';
import { recordsOf } from './records.ts';

interface AssessOptions extends Scope, AudienceOptions {
  readonly asFound: string;
  readonly since?: string;
  readonly by: string;
  readonly out?: string;
}

/**
 * Assesses the impact of a tool that was out of tolerance: judges everything since its last good check again, puts the
 * assessment into the log, signs it by a checkpoint, and writes the paper and the lists. Exit code 1 where a proof no
 * longer holds.
 */
export function impact(tool: string, options: AssessOptions): Promise<ExitCode> {
  return inSession(options, async (session) => {
    const { certificate: asFound, digest } = await readCertificateFile(options.asFound);
    const { stationFolder, entries, impacts } = session;
    const audience = await audienceOf(options);
    const since = options.since ?? null;
    const span = orThrow(spanOf(entries, { tool, asFound, since, today: today() }));
    const before = onFinding(impacts, digest);
    const records = recordsOf(stationFolder.log);
    const judged = await judgedIn(records, tool, asFound, span, before);
    const by = person(options.by);
    const signer = await sessionSigner(session);
    const assessment = nextAssessment(impacts);
    const assessed = assess(judged, await ofJobsRepeated(records, judged));
    outputFolder(options.out ?? stationFolder.folder);
    const events = assessmentEvents(judged, assessed, { assessment, tool, asFound, digest, span, before });
    const after = record(session, events, by);
    const one = impactOf(after, assessment);
    const files = await writeImpact(after, signer, one, { out: options.out, audience }, assessed.sorted);
    printImpact(one);
    print([
      '',
      ...sinceLastCheck(asFound, span),
      ...goesOnLines(before, one),
      ...overlapLines(session, one),
      '',
      ...files,
    ]);
    return one.items.length === 0 ? EXIT.done : EXIT.failed;
  });
}

/**
 * Everything since the last good check, without what was measured under a newer certificate and what assessments `before`
 * on the same file hold already. It does not end on the day of the finding: a tool may have been used on.
 */
export async function judgedIn(
  records: Records,
  tool: string,
  certificate: Certificate,
  { serial, from, foundOn }: Span,
  before: readonly ImpactAssessment[],
): Promise<readonly JudgedAgain[]> {
  const rows = await records.attemptsOf({ serial, from });
  const setups = await setupsOf(records, rows);
  const questioned = inQuestion(rows, setups, foundOn);
  if (questioned.length === 0)
    throw new ProblemError({
      code: 'impact-no-data',
      where: w`${tool}, serial number ${serial}`,
      message: w`the log holds no attempt with it from ${from} on that the finding of ${foundOn} can put in question`,
      next: w`Nothing was written, and jobs still open with it. Give it the certificate of that calibration; check serial number and dates. "plugmark ask --tool" shows when it was used.`,
    });
  const fresh = notHeld(questioned, before);
  const newest = before.at(-1);
  if (fresh.length === 0 && newest !== undefined) throw nothingSince(newest);
  return inSteps(fresh, (some) => judgeAgain(some, { certificate, setups }));
}

const ROWS_A_STEP = 500;

/** A year of a busy shop takes longer than a moment. */
function inSteps<T, R>(rows: readonly T[], work: (some: readonly T[]) => readonly R[]): readonly R[] {
  const bar = progress(w`readings judged again`, rows.length);
  const results: R[] = [];
  for (let from = 0; from < rows.length; from += ROWS_A_STEP) {
    results.push(...work(rows.slice(from, from + ROWS_A_STEP)));
    bar.at(results.length);
  }
  bar.end();
  return results;
}

/** All attempts of the jobs in which a re-hit or a check is in question: another tool may have proved that plug before. */
export function ofJobsRepeated(
  records: Records,
  judged: readonly JudgedAgain[],
): Promise<readonly AttemptRow[]> {
  const repeated = judged.filter(({ row, sort }) => sort !== null && isRepeat(row));
  const streams = new Set(repeated.map(({ row }) => row.stream));
  return records.attemptsIn([...streams].map((stream) => ({ stream })));
}

/** What was found beside the last good check. */
function sinceLastCheck(asFound: Certificate, { lastGood }: Span): readonly string[] {
  if (lastGood === null)
    return [w`The log holds no good check before it, so everything since its first use was judged again.`];
  const { points, moved, better, mayBeOne } = movedSince(asFound, lastGood);
  const check = w`${safeLine(lastGood.number)} of ${lastGood.date}`;
  return [
    moved > 0
      ? w`It moved at ${moved} of ${points} points since ${check}, by more than the uncertainty of both.`
      : better
        ? w`It did not move since ${check}, as far as the uncertainty of both can tell; its errors are smaller now.`
        : w`It did not move since ${check}, as far as the uncertainty of both can tell.`,
    ...(mayBeOne
      ? [
          w`That check and this finding have one number. If they are one calibration, date the finding ${lastGood.date} too, and assess again.`,
        ]
      : []),
  ];
}

/** Assessments on the same file: a job is in the first that saw all of it; one that went on since is in both. */
function goesOnLines(before: readonly ImpactAssessment[], impact: ImpactAssessment): readonly string[] {
  if (before.length === 0) return [];
  const names = before.map(({ assessment }) => assessment).join(', ');
  const both = sharedJobs(impact, before).join(', ');
  return [
    '',
    w`${impact.assessment} goes on from ${names} on the same file. It holds only what was entered since, or lies further back.`,
    ...(both === ''
      ? []
      : [safeLine(w`Jobs that went on since are in both: ${both}. A decision in one counts in the other.`)]),
  ];
}

/** Assessments on another finding over the same days: each is decided and closed by itself. */
function overlapLines({ impacts }: AuditSession, impact: ImpactAssessment): readonly string[] {
  const lines = overlapping(impact, impacts).map(({ impact: { assessment, assessed, closed }, jobs }) => {
    const state = closed === null ? w`not closed` : w`closed`;
    return w`${assessment} (${state}) judged ${assessed.from} to ${assessed.to} as well. Jobs in both: ${jobs}; decide about them in each.`;
  });
  return lines.length === 0 ? [] : ['', ...lines];
}

const nothingSince = ({ assessment, at, by }: ImpactAssessment) =>
  new ProblemError({
    code: 'impact-exists',
    where: assessment,
    message: w`this file was assessed on ${at.slice(0, 10)} by ${by}, and nothing was measured with the tool in that state since`,
    next: w`See "plugmark impact show ${assessment}".`,
  });
