import { z } from 'zod';
import { close, decide, type LookBack } from '../audit/lookback-state.ts';
import { type LookBackDecision, lookBackDecisionSchema } from '../evidence/station-event.ts';
import { ProblemError } from '../problem.ts';
import { orThrow } from '../result.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import { newCheckpoint } from './log.ts';
import {
  atDesk,
  deskSigner,
  linesOf,
  lookBackOf,
  person,
  print,
  record,
  words,
  writeLookBack,
} from './lookback-shared.ts';
import { textTable } from './text-table.ts';
import type { Whose } from './whose.ts';

/** The station's look-backs, the latest first. */
export function listLookBacks({ open, ...whose }: Whose & { readonly open?: true }): Promise<ExitCode> {
  return atDesk(whose, ({ lookBacks }) => {
    const rows = lookBacks
      .filter(({ closed }) => open !== true || closed === null)
      .reverse()
      .map((one) => [
        one.assessment,
        one.closed === null ? 'OPEN' : 'closed',
        one.at.slice(0, 10),
        one.made.tool,
        one.made.serial,
        `${one.made.from} to ${one.made.to}`,
        String(one.items.length),
        String(one.items.filter((item) => item.open).length),
      ]);
    const head = ['look-back', 'state', 'made', 'tool', 'serial', 'looked at', 'jobs', 'open'];
    print(rows.length === 0 ? ['No look-back.'] : textTable(head, rows));
    return EXIT.done;
  });
}

/** One look-back with its jobs and what was decided; writes its papers again where a folder is named. */
export function showLookBack(
  assessment: string,
  { out, ...whose }: Whose & { readonly out?: string },
): Promise<ExitCode> {
  return atDesk(whose, async (desk) => {
    const one = lookBackOf(desk, assessment);
    const papers =
      out === undefined ? [] : ['', ...(await writeLookBack(desk, await deskSigner(desk), one, out, null))];
    print([...linesOf(one), ...papers]);
    return EXIT.done;
  });
}

interface DecideOptions extends Whose {
  readonly as: string;
  readonly because: string;
  readonly by: string;
  readonly all?: string;
}

/** What becomes of jobs that a look-back touches: those named, or all of a sort that nobody decided about yet. */
export function decideLookBack(
  assessment: string,
  jobs: readonly string[],
  options: DecideOptions,
): Promise<ExitCode> {
  return atDesk(options, async (desk) => {
    const one = lookBackOf(desk, assessment);
    const which = options.all === undefined ? jobs : undecided(one, options.all);
    if (which.length === 0) throw nothingNamed(one);
    const because = words(options.because, '--because');
    const events = orThrow(decide(one, which, decisionOf(options.as), because));
    const by = person(options.by);
    const signer = await deskSigner(desk);
    const after = record(desk, events, by);
    await newCheckpoint(desk.archive, signer);
    const { items } = lookBackOf(after, assessment);
    const open = items.filter((item) => item.open).length;
    print([
      `${which.length === 1 ? `Job ${safeLine(which[0] ?? '')} is` : `${which.length} jobs are`} decided. ${open} of ${items.length} still open.`,
      ...(open === 0
        ? [`Close it with: plugmark lookback close ${assessment} --because "..." --by NAME`]
        : []),
    ]);
    return EXIT.done;
  });
}

export function closeLookBack(
  assessment: string,
  options: Whose & { readonly because: string; readonly by: string },
): Promise<ExitCode> {
  return atDesk(options, async (desk) => {
    const event = orThrow(close(lookBackOf(desk, assessment), words(options.because, '--because')));
    const by = person(options.by);
    const signer = await deskSigner(desk);
    record(desk, [event], by);
    await newCheckpoint(desk.archive, signer);
    print([
      `Look-back ${assessment} is closed. Its paper: plugmark lookback show ${assessment} --out FOLDER`,
    ]);
    return EXIT.done;
  });
}

function undecided({ items }: LookBack, sort: string): readonly string[] {
  const wanted = z.enum(['doubtful', 'out', 'any']).safeParse(sort);
  if (!wanted.success) throw notOneOf('--all', ['doubtful', 'out', 'any']);
  return items
    .filter((item) => item.decided.length === 0 && (wanted.data === 'any' || item.sort === wanted.data))
    .map(({ job }) => job);
}

function decisionOf(text: string): LookBackDecision {
  const decision = lookBackDecisionSchema.safeParse(text);
  if (decision.success) return decision.data;
  throw notOneOf('--as', lookBackDecisionSchema.options);
}

function nothingNamed({ assessment }: LookBack): ProblemError {
  return new ProblemError({
    code: 'item-missing',
    where: assessment,
    message: 'no job is named, or all of them are decided',
    next: `Name jobs, or use --all doubtful, out or any; see "plugmark lookback show ${assessment}".`,
  });
}

function notOneOf(where: string, allowed: readonly string[]): ProblemError {
  const message = `expected one of: ${allowed.join(', ')}`;
  return new ProblemError({ code: 'option-not-valid', where, message, next: 'Choose one of them.' });
}
