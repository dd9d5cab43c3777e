import { z } from 'zod';
import { close, decide, type ImpactAssessment, type ItemState } from '../../audit/impact-state.ts';
import { type ImpactDecision, impactDecisionSchema } from '../../evidence/station-event.ts';
import { ProblemError } from '../../problem.ts';
import { decisionWords } from '../../report/impact.ts';
import { orThrow } from '../../result.ts';
import { plural, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { listedImpacts, shownImpact } from '../answers/impact.ts';
import { type AudienceOptions, audienceOf } from '../station/audience.ts';
import type { Scope } from '../station/scope.ts';
import { newCheckpoint } from '../station/sign-log.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { redoneIn } from './impact-redone.ts';
import {
  impactOf,
  inSession,
  person,
  print,
  printImpact,
  record,
  sessionSigner,
  words,
  writeImpact,
} from './impact-shared.ts';
import { jobsSince, sinceLines } from './impact-since.ts';
import { recordsOf } from './records.ts';

/** The station's impact assessments, the latest first. */
export function listImpacts({
  open,
  json,
  ...scope
}: Scope & { readonly open?: true; readonly json?: true }): Promise<ExitCode> {
  return inSession(scope, async ({ stationFolder, impacts }) => {
    const since = await jobsSince(recordsOf(stationFolder.log), impacts);
    const listed = impacts.filter(({ closed }) => open !== true || closed === null).reverse();
    if (json === true) {
      printJson(listedImpacts(listed, since));
      return EXIT.done;
    }
    const rows = listed.map((one) => [
      one.assessment,
      one.closed === null ? w`OPEN` : w`closed`,
      one.at.slice(0, 10),
      one.assessed.tool,
      one.assessed.serial,
      w`${one.assessed.from} to ${one.assessed.to}`,
      String(one.items.length),
      String(one.items.filter((item) => item.open).length),
      String(since.find(({ newest }) => newest === one)?.jobs.length ?? 0),
    ]);
    const head = [
      w`impact`,
      w`state`,
      w`assessed`,
      w`tool`,
      w`serial number`,
      w`judged again`,
      w`jobs`,
      w`open`,
      w`since`,
    ];
    print([
      ...(rows.length === 0 ? [w`No impact assessment.`] : textTable(head, rows)),
      ...sinceLines(since),
    ]);
    return EXIT.done;
  });
}

/** One impact assessment with its jobs and what was decided; writes its papers again where a folder is named. */
export function showImpact(
  assessment: string,
  { out, json, ...scope }: Scope & AudienceOptions & { readonly out?: string; readonly json?: true },
): Promise<ExitCode> {
  return inSession(scope, async (session) => {
    const one = impactOf(session, assessment);
    const papers =
      out === undefined
        ? []
        : [
            '',
            ...(await writeImpact(
              session,
              await sessionSigner(session),
              one,
              { out, audience: await audienceOf(scope) },
              null,
            )),
          ];
    const all = await jobsSince(recordsOf(session.stationFolder.log), session.impacts);
    const since = all.filter(({ newest }) => newest.assessed.digest === one.assessed.digest);
    if (json === true) {
      printJson(shownImpact(one, since));
      return EXIT.done;
    }
    printImpact(one);
    const more = [...spaced(sinceLines(since)), ...papers];
    if (more.length > 0) print(more);
    return EXIT.done;
  });
}

interface DecideOptions extends Scope {
  readonly as: string;
  readonly because: string;
  readonly by: string;
  /** A sort of jobs: all of it that nobody decided about yet. */
  readonly undecided?: string;
  /** The later job that did it again, for `redone`; found by the vehicle where nobody names it. */
  readonly in?: string;
}

/** What becomes of jobs that an impact assessment touches: those named, or all of a sort that nobody decided about yet. */
export function decideImpact(
  assessment: string,
  jobs: readonly string[],
  options: DecideOptions,
): Promise<ExitCode> {
  return inSession(options, async (session) => {
    const one = impactOf(session, assessment);
    const which =
      options.undecided === undefined
        ? jobs.map((job) => itemOf(one, job))
        : undecided(one, options.undecided);
    const [first] = which;
    if (first === undefined) throw nothingNamed(one);
    const because = words(options.because, '--because');
    const decision = decisionOf(options.as);
    if (options.in !== undefined && decision !== 'redone') throw notRedone();
    const decisions = [];
    for (const item of which)
      decisions.push({
        job: item.job,
        decision,
        redoneIn: decision === 'redone' ? await redoneIn(session, one, item, options.in ?? null) : null,
      });
    const events = orThrow(decide(one, decisions, because, session.impacts));
    const by = person(options.by);
    const signer = await sessionSigner(session);
    const after = record(session, events, by);
    await newCheckpoint(session.stationFolder, signer);
    const { items } = impactOf(after, assessment);
    const open = items.filter((item) => item.open).length;
    const name =
      which.length === 1
        ? w`Job ${safeLine(first.job)}`
        : plural(which.length, { one: '# job', other: '# jobs' });
    const inJobs = [...new Set(decisions.flatMap(({ redoneIn }) => redoneIn ?? []))].join(', ');
    const result = decisionWords({ decision, redoneIn: inJobs === '' ? null : safeLine(inJobs) });
    const stays =
      decision !== 'recall'
        ? ''
        : which.length === 1
          ? w`; it stays open until it is redone`
          : w`; they stay open until they are redone`;
    print([
      w`${name}: ${result}${stays}. ${open} of ${items.length} still open.`,
      ...(open === 0
        ? [w`Close it with: plugmark impact close ${one.assessment} --because "..." --by NAME`]
        : []),
    ]);
    return EXIT.done;
  });
}

export function closeImpact(
  assessment: string,
  options: Scope & { readonly because: string; readonly by: string },
): Promise<ExitCode> {
  return inSession(options, async (session) => {
    const one = impactOf(session, assessment);
    const event = orThrow(close(one, words(options.because, '--because')));
    const by = person(options.by);
    const signer = await sessionSigner(session);
    record(session, [event], by);
    await newCheckpoint(session.stationFolder, signer);
    print([
      w`Impact assessment ${one.assessment} is closed. Its paper: plugmark impact show ${one.assessment} --out FOLDER`,
    ]);
    return EXIT.done;
  });
}

const spaced = (lines: readonly string[]) => (lines.length === 0 ? [] : ['', ...lines]);

/** A job by its number or by any part of it that means one job only, as in "plugmark jobs --job". Problem: `item-unknown`. */
function itemOf({ assessment, items }: ImpactAssessment, number: string): ItemState {
  const wanted = number.toUpperCase();
  const exact = items.filter(({ job }) => job === number);
  const matching = exact.length > 0 ? exact : items.filter(({ job }) => job.toUpperCase().includes(wanted));
  const [only, ...others] = matching;
  if (only !== undefined && others.length === 0) return only;
  const message =
    only === undefined
      ? w`job ${safeLine(number)} is not among the jobs that this impact assessment touches`
      : w`${safeLine(number)} may mean ${matching.map(({ job }) => safeLine(job)).join(w` or `)}`;
  const next = w`List them with "plugmark impact show ${assessment}".`;
  throw new ProblemError({ code: 'item-unknown', where: assessment, message, next });
}

function undecided({ items }: ImpactAssessment, sort: string): readonly ItemState[] {
  const wanted = z.enum(['doubtful', 'out', 'any']).safeParse(sort);
  if (!wanted.success) throw notOneOf('--undecided', ['doubtful', 'out', 'any']);
  return items.filter(
    (item) => item.decided.length === 0 && (wanted.data === 'any' || item.sort === wanted.data),
  );
}

function decisionOf(text: string): ImpactDecision {
  const decision = impactDecisionSchema.safeParse(text);
  if (decision.success) return decision.data;
  throw notOneOf('--as', impactDecisionSchema.options);
}

function nothingNamed({ assessment }: ImpactAssessment): ProblemError {
  return new ProblemError({
    code: 'item-missing',
    where: assessment,
    message: w`no job is named, or all of them are decided`,
    next: w`Name jobs, or use --undecided doubtful, out or any; see "plugmark impact show ${assessment}".`,
  });
}

const notRedone = () =>
  new ProblemError({
    code: 'option-not-valid',
    where: '--in',
    message: w`it names the job that did it again, which only --as redone has`,
    next: w`Leave it out, or decide redone.`,
  });

function notOneOf(where: string, allowed: readonly string[]): ProblemError {
  const message = w`expected one of: ${allowed.join(', ')}`;
  return new ProblemError({ code: 'option-not-valid', where, message, next: w`Choose one of them.` });
}
