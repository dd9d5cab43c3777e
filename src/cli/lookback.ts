import type { AttemptRow } from '../audit/attempt.ts';
import { type AsFound, type JudgedAgain, judgeAgain } from '../audit/lookback.ts';
import { assess, isRepeat } from '../audit/lookback-items.ts';
import { foundPoints, type Span, spanOf } from '../audit/lookback-span.ts';
import { type LookBack, lookBacksOf, nextAssessment } from '../audit/lookback-state.ts';
import type { StationEvent } from '../evidence/station-event.ts';
import type { Certificate } from '../instrument/certificate.ts';
import { ProblemError } from '../problem.ts';
import { orThrow } from '../result.ts';
import { readCertificateFile } from './certificate.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import { linesOf, lookBackOf, now, person, print, writeLookBack } from './lookback-shared.ts';
import { type Archive, currentKey, recordStation, stateOf } from './station.ts';
import { type Whose, withArchive } from './whose.ts';

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
  return withArchive(options, async (archive) => {
    const { certificate: asFound, digest } = await readCertificateFile(options.asFound);
    const entries = archive.log.stationEntries();
    const all = lookBacksOf(entries);
    refuseTwice(all, tool, digest);
    const since = options.since ?? null;
    const today = now().at.slice(0, 10);
    const span = orThrow(spanOf(entries, { tool, asFound, since, today }));
    const judged = judgedIn(archive, tool, asFound, span);
    // Before anything is written: an assessment that nobody can sign is none.
    await currentKey(archive.folder, stateOf(archive));
    const { attempts, items, ...counts } = assess(judged, ofJobsRepeated(archive, judged));
    const assessment = nextAssessment(all);
    const lastGood = span.lastGood && { number: span.lastGood.number, date: span.lastGood.date };
    const made: StationEvent = {
      type: 'assessment-made',
      assessment,
      tool,
      serial: span.serial,
      asFound: asFound.number,
      digest,
      lastGood,
      foundOn: span.foundOn,
      from: span.from,
      to: lastDay(judged, span.foundOn),
      simulated: judged.some(({ row }) => row.simulated),
      attempts,
      ...counts,
      items: [...items],
    };
    const events: StationEvent[] = [{ type: 'as-found-recorded', tool, asFound, digest }, made];
    if (items.length === 0)
      events.push({
        type: 'assessment-closed',
        assessment,
        because: 'every proof holds with what was found',
      });
    await recordStation(archive, events, now(), person(options.by));
    const papers = await writeLookBack(archive, assessment, options.out, judged);
    print([...foundLines(asFound, span), ...linesOf(lookBackOf(archive, assessment)), '', ...papers]);
    return items.length === 0 ? EXIT.done : EXIT.failed;
  });
}

/** Everything since the last good check, but what was measured under a newer certificate. */
function judgedIn(
  { log }: Archive,
  tool: string,
  certificate: Certificate,
  span: Span,
): readonly JudgedAgain[] {
  const { serial, from, foundOn, newer } = span;
  const rows = log.history
    .attemptsOf({ serial, from })
    .filter((row) => row.certificate === null || !newer.has(row.certificate));
  if (rows.length === 0)
    throw new ProblemError({
      code: 'lookback-no-data',
      where: `${tool}, serial ${serial}`,
      message: `the log holds no attempt with it from ${from} on that a check of ${foundOn} could put in question`,
      next: 'Nothing was written. See when it was used with "plugmark ask --tool", and check the serial number and the dates.',
    });
  const setups = new Map(
    [...new Set(rows.map(({ setupKey }) => setupKey))].map((key) => [key, log.history.setupOf(key)]),
  );
  const asFound: AsFound = { certificate, setups };
  return judgeAgain(rows, asFound);
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
  const points = foundPoints(asFound, lastGood);
  const moved = points.filter(({ finding }) => finding === 'moved').length;
  const better = points.filter(({ error, was }) => was !== null && Math.abs(error) < Math.abs(was.error));
  const against =
    lastGood === null
      ? 'The log holds no good check from before it: everything since its first use is looked at.'
      : moved > 0
        ? `At ${moved} of ${points.length} points it had moved since ${safeLine(lastGood.number)} of ${lastGood.date}, by more than the uncertainty of both.`
        : `It had not moved since ${safeLine(lastGood.number)} of ${lastGood.date}, as far as the uncertainty of both can tell${better.length === points.length ? '; its errors are smaller than they were' : ''}.`;
  return [against];
}

function refuseTwice(all: readonly LookBack[], tool: string, digest: string): void {
  const there = all.find(({ made }) => made.tool === tool && made.digest === digest);
  if (there === undefined) return;
  throw new ProblemError({
    code: 'lookback-made',
    where: there.assessment,
    message: `this file was looked back on already, on ${there.at.slice(0, 10)} by ${there.by}`,
    next: `See "plugmark lookback show ${there.assessment}".`,
  });
}
