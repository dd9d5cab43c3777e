import type { AttemptRow } from '../audit/attempt.ts';
import { inQuestion, type JudgedAgain, judgeAgain } from '../audit/lookback.ts';
import { assess, isRepeat } from '../audit/lookback-items.ts';
import { foundPoints, type Span, spanOf } from '../audit/lookback-span.ts';
import { type LookBack, nextAssessment } from '../audit/lookback-state.ts';
import type { StationEvent } from '../evidence/station-event.ts';
import type { Certificate } from '../instrument/certificate.ts';
import { ProblemError } from '../problem.ts';
import { orThrow } from '../result.ts';
import { readCertificateFile } from './certificate.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import {
  atDesk,
  type Desk,
  deskSigner,
  linesOf,
  lookBackOf,
  now,
  person,
  print,
  record,
  writeLookBack,
} from './lookback-shared.ts';
import type { Archive } from './station.ts';
import type { Whose } from './whose.ts';

interface AssessOptions extends Whose {
  readonly asFound: string;
  readonly since?: string;
  readonly by: string;
  readonly out?: string;
}

/**
 * Looks back on a tool that was found out: judges everything since its last good check again, puts the assessment into
 * the log, signs it by a checkpoint, and writes the paper and the lists. Exit code 1 where a proof does not hold any more.
 */
export function lookBack(tool: string, options: AssessOptions): Promise<ExitCode> {
  return atDesk(options, async (desk) => {
    const { certificate: asFound, digest } = await readCertificateFile(options.asFound);
    const { archive, entries, lookBacks } = desk;
    const since = options.since ?? null;
    const today = now().at.slice(0, 10);
    const span = orThrow(spanOf(entries, { tool, asFound, since, today }));
    const judged = judgedIn(archive, tool, asFound, span);
    refuseTwice(lookBacks, digest, span, judged.length);
    const by = person(options.by);
    const signer = await deskSigner(desk);
    const assessment = nextAssessment(lookBacks);
    const repeated = ofJobsRepeated(archive, judged);
    const events = eventsOf(judged, repeated, { assessment, tool, asFound, digest, span });
    const after = record(desk, events, by);
    const made = lookBackOf(after, assessment);
    const papers = await writeLookBack(after, signer, made, options.out, judged);
    print([...foundLines(asFound, span), ...linesOf(made), ...overlapLines(desk, made), '', ...papers]);
    return made.items.length === 0 ? EXIT.done : EXIT.failed;
  });
}

interface About {
  readonly assessment: string;
  readonly tool: string;
  readonly asFound: Certificate;
  readonly digest: string;
  readonly span: Span;
}

/** What was found, the assessment, and its end where every proof holds. */
function eventsOf(
  judged: readonly JudgedAgain[],
  repeated: readonly AttemptRow[],
  { assessment, tool, asFound, digest, span }: About,
): readonly StationEvent[] {
  const { attempts, items, ...counts } = assess(judged, repeated);
  const { serial, foundOn, from, lastGood } = span;
  const made: StationEvent = {
    type: 'assessment-made',
    assessment,
    tool,
    serial,
    asFound: asFound.number,
    digest,
    lastGood: lastGood && { number: lastGood.number, date: lastGood.date },
    foundOn,
    from,
    to: lastDay(judged, foundOn),
    simulated: judged.some(({ row }) => row.simulated),
    attempts,
    ...counts,
    items: [...items],
  };
  const found: StationEvent = { type: 'as-found-recorded', tool, asFound, digest };
  const because = 'every proof holds with what was found';
  return items.length > 0 ? [found, made] : [found, made, { type: 'assessment-closed', assessment, because }];
}

/** Everything since the last good check, but what was measured under a newer certificate. */
function judgedIn(
  { log }: Archive,
  tool: string,
  certificate: Certificate,
  { serial, from, foundOn }: Span,
): readonly JudgedAgain[] {
  const rows = log.history.attemptsOf({ serial, from });
  const setups = new Map(
    [...new Set(rows.map(({ setupKey }) => setupKey))].map((key) => [key, log.history.setupOf(key)]),
  );
  const questioned = inQuestion(rows, setups, foundOn);
  if (questioned.length === 0)
    throw new ProblemError({
      code: 'lookback-no-data',
      where: `${tool}, serial ${serial}`,
      message: `the log holds no attempt with it from ${from} on that a check of ${foundOn} could put in question`,
      next: 'Nothing was written. See when it was used with "plugmark ask --tool", and check the serial number and the dates.',
    });
  return judgeAgain(questioned, { certificate, setups });
}

/** A tool may have been used on, under the old certificate, after it was found out. */
const lastDay = (judged: readonly JudgedAgain[], foundOn: string): string =>
  [foundOn, ...judged.map(({ row }) => row.day)].sort().at(-1) ?? foundOn;

/** All attempts of the jobs in which a re-hit or a check is in question: another tool may have proved what it went over. */
function ofJobsRepeated({ log }: Archive, judged: readonly JudgedAgain[]): readonly AttemptRow[] {
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
          `That check has the number of what was found. If one calibration made both, date what was found ${lastGood.date} too, and look back again.`,
        ]
      : []),
  ];
}

/** So few days that one calibration may have been given two: a laboratory whose numbers are all the same sees a tool later. */
const isSoonAfter = (day: string, later: string) => Date.parse(later) - Date.parse(day) <= 31 * 86_400_000;

/** Earlier look-backs that went over the same time: each is decided and closed by itself. */
function overlapLines({ lookBacks }: Desk, { made, items }: LookBack): readonly string[] {
  const jobs = new Set(items.map(({ job }) => job));
  const lines = lookBacks
    .filter((one) => one.made.serial === made.serial && one.made.from <= made.to && made.from <= one.made.to)
    .map((one) => {
      const both = one.items.filter(({ job }) => jobs.has(job)).length;
      const state = one.closed === null ? 'not closed' : 'closed';
      return `${one.assessment} (${state}) looked at ${one.made.from} to ${one.made.to} as well; jobs that stand in both: ${both}, to be decided in each.`;
    });
  return lines.length === 0 ? [] : ['', ...lines];
}

/** The same file may be looked back on again where that comes to something else: from another check, or with more attempts. */
function refuseTwice(all: readonly LookBack[], digest: string, { from }: Span, attempts: number): void {
  const there = all.find(
    ({ made }) => made.digest === digest && made.from === from && made.attempts === attempts,
  );
  if (there === undefined) return;
  throw new ProblemError({
    code: 'lookback-made',
    where: there.assessment,
    message: `this file was looked back on already, on ${there.at.slice(0, 10)} by ${there.by}, with as many attempts`,
    next: `See "plugmark lookback show ${there.assessment}".`,
  });
}
