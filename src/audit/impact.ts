/**
 * The impact of a tool that was out of tolerance at calibration. ISO 9001:2015, 7.1.5.2 asks whether earlier results are
 * affected; IATF 16949, 7.1.5.2.1 asks for a record of it. Each attempt is judged again by the functions of its day, with
 * the error and the uncertainty that were found. The verdict of the day stays as it is.
 */
import type { Certificate } from '../instrument/certificate.ts';
import type { Instrument } from '../instrument/instrument.ts';
import { judgedBy } from '../job/judging.ts';
import { circumstancesOf } from '../job/measurement.ts';
import { windowFor } from '../job/windows.ts';
import type { Judgement, Window } from '../metrology/judgement.ts';
import { order } from '../quantity/compare.ts';
import { type AttemptRow, windowOf } from './attempt.ts';
import type { Setup } from './setup.ts';

/** What was found, and what the rows' jobs were opened with, by `setupKey`. */
export interface AsFound {
  readonly certificate: Certificate;
  readonly setups: ReadonlyMap<string, Setup>;
}

/**
 * `still-in`: proven with the error found as well. `doubtful`: too close to a limit to tell, or read beyond the points that
 * the laboratory tested. `out`: beyond the limits if the tool had this error that day already, which nobody can know.
 */
export type Sort = 'still-in' | 'doubtful' | 'out';

/** An attempt, and its verdict with the error found. */
export interface JudgedAgain {
  readonly row: AttemptRow;
  /** Null where there was nothing to judge, then or now. */
  readonly again: Judgement | null;
  readonly sort: Sort | null;
  /** Read within the points that the laboratory tested. */
  readonly covered: boolean;
}

/**
 * The rows that a finding of that ISO day can put in question. What was measured under a certificate of that day or later
 * came after it. The certificate is the one that was frozen with the job: its number alone may be that of another.
 */
export function inQuestion(
  rows: readonly AttemptRow[],
  setups: AsFound['setups'],
  foundOn: string,
): readonly AttemptRow[] {
  return rows.filter(({ setupKey, tool }) => {
    const { certificate } = setups.get(setupKey)?.instruments.find(({ id }) => id === tool) ?? {};
    return certificate === undefined || certificate.date < foundOn;
  });
}

/**
 * Each row judged again, in the order given. The error that was found is taken off the reading; its uncertainty takes the
 * place of the calibration's; the allowance for drift is left out, because the drift has been measured. As on the day, a
 * re-hit or a check counts only if it went above the window.
 *
 * The tool moved at some time between two checks, so its true error was between the two. What is OK with both is OK with
 * every error between them, because the limits are one interval.
 */
export function judgeAgain(rows: readonly AttemptRow[], asFound: AsFound): readonly JudgedAgain[] {
  const readings = asFound.certificate.points.map(({ reading }) => reading);
  const lowest = Math.min(...readings);
  const highest = Math.max(...readings);
  const basis = bases(asFound);
  return rows.map((row) => {
    const { readingSi, kind } = row;
    const repeats = kind === 'rehit' || kind === 'check';
    if (readingSi === null || (row.result === null && !repeats))
      return { row, again: null, sort: null, covered: true };
    const { instrument, setup, window } = basis(row);
    const circumstances = circumstancesOf(row.on, setup);
    const by = { instrument, circumstances, window, rule: setup.decision.rule };
    const again = judgedBy(by, readingSi, row.peakStandardSi);
    const covered = order(readingSi, lowest) >= 0 && order(readingSi, highest) <= 0;
    if (repeats && again.side !== 'high') return { row, again: null, sort: null, covered };
    return { row, again, sort: covered ? SORT_OF[again.result] : 'doubtful', covered };
  });
}

const SORT_OF: Readonly<Record<Judgement['result'], Sort>> = {
  OK: 'still-in',
  NotDecidable: 'doubtful',
  NotOK: 'out',
};

interface Basis {
  readonly setup: Setup;
  /** The tool as it was found. */
  readonly instrument: Instrument;
  readonly window: Window;
}

/** Jobs share their setups, and a window takes far longer than a reading: each is worked out once. */
function bases({ certificate, setups }: AsFound): (row: AttemptRow) => Basis {
  const worked = new Map<string, Basis>();
  return (row) => {
    const key = `${row.setupKey} ${row.quantity} ${row.stage} ${row.tool}`;
    const there = worked.get(key);
    if (there !== undefined) return there;
    const setup = setups.get(row.setupKey);
    const was = setup?.instruments.find(({ id }) => id === row.tool);
    const then = setup === undefined ? null : windowOf(setup, row);
    if (setup === undefined || was === undefined || then === null)
      throw new Error(`the setup of ${row.job} for ${row.tool} is missing`);
    const instrument = asItWasFound(was, certificate);
    const limits = { lower: then.lowerLimit, upper: then.upperLimit };
    const circumstances = circumstancesOf(row.on, setup);
    const window = windowFor(instrument, limits, circumstances, setup.decision.rule);
    const basis = { setup, instrument, window };
    worked.set(key, basis);
    return basis;
  };
}

function asItWasFound({ driftPerYear: _, ...was }: Instrument, certificate: Certificate): Instrument {
  return { ...was, certificate, correct: true };
}
