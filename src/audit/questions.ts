/** What an auditor asks of jobs: who, with what, how it came out, and everything that wants an explanation. */

import type { LogEntry } from '../evidence/log.ts';
import { problemOf, unfit } from '../instrument/unfit.ts';
import { circumstancesOf, readingFor } from '../job/measurement.ts';
import { EARLY_WORDS, type OutOfOrder } from '../job/out-of-order.ts';
import { type Mark, marksOf, WORTH, type Worth } from '../job/proof.ts';
import { EVALUATION_WORD } from '../metrology/verdict.ts';
import { formatGap } from '../quantity/length.ts';
import { formatTorque } from '../quantity/torque.ts';
import type { FigureSource } from '../reading.ts';
import { phrases, w } from '../words/catalogue.ts';
import type { Attempt, AttemptRow } from './attempt.ts';
import { type JobHistory, jobHistory } from './attempt-walk.ts';
import type { Decided, ImpactAssessment } from './impact-state.ts';
import type { Setup } from './setup.ts';

/** A job as the station's list has it. */
export interface AskedJob {
  readonly stream: string;
  readonly job: string;
  readonly state: 'open' | 'complete' | 'incomplete' | 'void';
  readonly openedAt: string;
  readonly lastAt: string;
  readonly vin: string | null;
  readonly plate: string | null;
  readonly fleet: string | null;
  readonly sources: readonly FigureSource[];
  readonly outOfOrder: readonly OutOfOrder[];
  /** Name of its station, where the records are of several. */
  readonly station?: string;
}

export interface JobAnswer extends AskedJob {
  readonly technicians: readonly string[];
  /** Name and serial number. */
  readonly tools: readonly string[];
  readonly parts: readonly string[];
  readonly attempts: number;
  /** Figures that the job rests on and that an instrument proves. */
  readonly proven: number;
  /** Those that a person attests. */
  readonly attested: number;
  readonly marks: readonly Mark[];
  /** Impact assessments that put proofs of it in question later, in words. */
  readonly questioned: readonly string[];
  /** In words, those impact assessments among them; empty where nothing wants an explanation. */
  readonly exceptions: readonly string[];
}

/** What of an attempt an answer about its job rests on. */
type Told = Attempt & Pick<AttemptRow, 'on' | 'serial'>;

/** The same from the entries of one job alone, as a record holds them. */
export function answerFromEntries(
  entries: readonly LogEntry[],
  impacts: readonly ImpactAssessment[],
): JobAnswer {
  const { asked, history } = jobIn(entries);
  const { on, setup } = history;
  const attempts = history.attempts
    .map((one) => ({
      ...one,
      on,
      serial: setup.instruments.find(({ id }) => id === one.tool)?.serial ?? null,
    }))
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at) || a.seq - b.seq);
  return answerFor(asked, attempts, attempts.length === 0 ? null : setup, impacts);
}

/** A job from its entries, those of samples left out or not. Throws where they do not begin with its opening. */
export function jobIn(entries: readonly LogEntry[]): {
  readonly asked: AskedJob;
  readonly history: JobHistory;
} {
  const [opening, last] = [entries[0], entries.at(-1)];
  const history = jobHistory(entries);
  if (opening?.event.type !== 'job-opened' || last === undefined || history === null)
    throw new Error('the entries of a job begin with its opening');
  const { job, vehicle } = opening.event.order;
  const { sources, outOfOrder } = history;
  const { vin = null, plate = null, fleet = null } = vehicle;
  const asked: AskedJob = {
    stream: opening.stream,
    job,
    state: stateIn(entries),
    openedAt: opening.at,
    lastAt: last.at,
    vin,
    plate,
    fleet,
    sources,
    outOfOrder,
  };
  return { asked, history };
}

function stateIn(entries: readonly LogEntry[]): AskedJob['state'] {
  const end = entries.findLast(({ event }) => event.type === 'job-closed' || event.type === 'job-voided');
  if (end === undefined) return 'open';
  if (end.event.type !== 'job-closed') return 'void';
  return end.event.complete ? 'complete' : 'incomplete';
}

/** What there is to say of one job; `setup` is null for one without any attempt. */
export function answerFor(
  job: AskedJob,
  attempts: readonly Told[],
  setup: Setup | null,
  impacts: readonly ImpactAssessment[],
): JobAnswer {
  const each = (of: (row: Told) => string) => [...new Set(attempts.map(of))];
  const standing = attempts.filter(({ last, result, held }) => last && result === 'OK' && !held);
  const worth = (wanted: Worth) => standing.filter(({ source }) => WORTH[source] === wanted).length;
  const questioned = impacts.flatMap((one) => impactException(one, job.job));
  return {
    ...job,
    technicians: each(({ technician }) => technician),
    tools: each(({ tool, serial }) => (serial === null ? tool : `${tool} (${serial})`)),
    parts: each(({ part, lot }) => (lot === null ? part : `${part} lot ${lot}`)),
    attempts: attempts.length,
    proven: worth('proven'),
    attested: worth('attested'),
    marks: marksOf(job.sources),
    questioned,
    exceptions: [
      ...[STATE_EXCEPTION[job.state]].flatMap((one) => one ?? []),
      ...job.outOfOrder.map(outOfOrderException),
      ...toolExceptions(attempts[0], setup),
      ...attempts.flatMap(attemptException),
      ...questioned,
    ],
  };
}

const STATE_EXCEPTION: Readonly<Record<AskedJob['state'], string | null>> = phrases({
  open: 'still open',
  complete: null,
  incomplete: 'closed with work open',
  void: 'declared void',
});

/** An instrument that would have been refused was used: a supervisor answered for it, else the job had not been opened. */
function toolExceptions(row: Told | undefined, setup: Setup | null): readonly string[] {
  if (row === undefined || setup === null) return [];
  const circumstances = circumstancesOf(row.on, setup);
  return setup.instruments.flatMap((instrument) => {
    const window = instrument.quantity === 'torque' ? setup.torqueWindow : setup.gapWindow;
    if (window === null) return [];
    const from = readingFor(instrument, window.lowerLimit, circumstances);
    const to = readingFor(instrument, window.upperLimit, circumstances);
    return unfit(instrument, { on: row.on, from, to }).map(
      (refusal) => w`${instrument.id} used although ${problemOf(refusal).message}`,
    );
  });
}

const CENSORED: Readonly<Record<NonNullable<AttemptRow['censored']>, string | null>> = phrases({
  cut: 'cut off',
  saturated: "at the end of the tool's scale",
  undecided: 'nobody said what it was',
  // Wires tell bounds and no figure: nothing is wrong with that.
  bounded: null,
});

const SIDE_WORDS = phrases({ low: 'too low', high: 'too high', inside: 'too far out' });

/** Why an attempt wants an explanation. */
export function attemptException(row: Attempt): readonly string[] {
  const { quantity, cylinder, number, result, valueSi, side } = row;
  const which =
    quantity === 'torque'
      ? w`cylinder ${cylinder}, pull ${number}`
      : w`cylinder ${cylinder}, gap reading ${number}`;
  const censored = row.censored === null ? null : CENSORED[row.censored];
  const value =
    valueSi === null ? '' : ` (${quantity === 'torque' ? formatTorque(valueSi) : formatGap(valueSi, 3)})`;
  if (result === 'NotOK')
    return [`${which}: ${EVALUATION_WORD.NotOK}, ${SIDE_WORDS[side ?? 'inside']}${value}`];
  if (result === 'NotDecidable') return [`${which}: ${EVALUATION_WORD.NotDecidable}${value}`];
  if (censored !== null) return [`${which}: ${censored}`];
  if (!row.early) return [];
  return [
    row.held ? w`${which}: OUT OF ORDER, not proven by itself${value}` : w`${which}: OUT OF ORDER${value}`,
  ];
}

const CAME: Readonly<Record<OutOfOrder['what'], string>> = phrases({
  pull: 'pull',
  loosening: 'loosening',
  'old-plug': 'old plug',
  'by-angle': 'by angle',
  gap: 'gap',
});

/** In the same words for a list: what came, and before which step. */
function outOfOrderException({ step, what, cylinder, pull, doneAgain }: OutOfOrder): string {
  const where = cylinder === undefined ? '' : w`cylinder ${cylinder}, `;
  const came = pull === undefined ? CAME[what] : `${CAME[what]} ${pull}`;
  const again = doneAgain === true ? w`; done again since` : '';
  return w`OUT OF ORDER: ${where}${came}, ${EARLY_WORDS[step]}${again}`;
}

const DECIDED: Readonly<Record<Decided['decision'], string>> = phrases({
  recall: 'recall',
  inform: 'inform',
  accept: 'accept',
  redone: 'redone',
});

function impactException({ assessment, items, assessed }: ImpactAssessment, job: string): readonly string[] {
  const item = items.find((one) => one.job === job);
  if (item === undefined) return [];
  const sort = item.sort === 'out' ? w`OUT` : w`DOUBTFUL`;
  const last = item.decided.at(-1)?.decision;
  const decided = last === undefined ? w`not decided` : DECIDED[last];
  return [w`impact assessment ${assessment} on ${assessed.tool} (${assessed.serial}): ${sort}, ${decided}`];
}
