/** What has been learned of a job since its day, as rows of a table. */

import type { Learned } from '../audit/dispute.ts';
import { w } from '../words/catalogue.ts';
import { figure, UNIT_TEXT, type Unit, utc } from './figures.ts';
import { decisionWords, sortWords } from './impact.ts';
import type { Cell } from './table.ts';
import { reasonWords } from './words/index.ts';

/** The list that names all jobs once; under each job only the next one is named. */
export const jobListTitle = (): string => w`The jobs on this vehicle`;

export const learnedCells = (learned: readonly Learned[]): readonly (readonly Cell[])[] =>
  againOnce(learned).flatMap(learnedRows);

type Row = Exclude<Learned, { kind: 'worked-again' }> | Again;
type Again = Extract<Learned, { kind: 'worked-again' }> & { readonly more: number };

/** Of the later jobs only the first, which may have changed the plugs of this one, and how many followed. */
function againOnce(learned: readonly Learned[]): readonly Row[] {
  const more = learned.filter(({ kind }) => kind === 'worked-again').length - 1;
  let isFirst = true;
  return learned.flatMap((one): Row[] => {
    if (one.kind !== 'worked-again') return [one];
    const first = isFirst ? [{ ...one, more }] : [];
    isFirst = false;
    return first;
  });
}

function learnedRows(one: Row): readonly (readonly Cell[])[] {
  const row = (what: string, bold = false): readonly Cell[] => [{ text: utc(one.at) }, { text: what, bold }];
  switch (one.kind) {
    case 'checked':
      return [
        row(w`${one.tool} (${one.serial}) was calibrated again: certificate ${one.number} of ${one.date}.`),
      ];
    case 'worked-again':
      return [row(workedAgain(one))];
    case 'voided':
      return [row(w`The job was declared void by ${one.by}: ${reasonWords(one.reason)}`, true)];
    case 'stood': {
      const { assessment, assessed } = one.impact;
      const outOfTolerance = w`Impact assessment ${assessment}: ${assessed.tool} (${assessed.serial}) was out of tolerance on ${assessed.foundOn}.`;
      const stood =
        one.proofs === 0
          ? w`It had proved nothing in this job.`
          : w`Judged again with the errors found, every proof of this job still holds (${one.proofs} by this tool).`;
      return [row(`${outOfTolerance} ${stood}`)];
    }
    case 'touched': {
      const { assessment, assessed } = one.impact;
      const which = one.item.attempts.map((proof) => {
        const unit = unitOf(proof.quantity);
        const value = `${figure(proof.value, unit)} ± ${figure(proof.expanded, unit)} ${UNIT_TEXT[unit]}`;
        return w`cylinder ${proof.cylinder} ${value} ${sortWords(proof)}`;
      });
      const decided = one.item.decided.map((decision): readonly Cell[] => [
        { text: utc(decision.at) },
        {
          text: w`Impact assessment ${assessment}, decided by ${decision.by}: ${decisionWords(decision)}. ${decision.because}`,
        },
      ]);
      return [
        row(
          w`Impact assessment ${assessment}: ${assessed.tool} (${assessed.serial}) was out of tolerance on ${assessed.foundOn} (${assessed.asFound}). Judged again with the errors found: ${which.join('; ')}.`,
          true,
        ),
        ...(decided.length === 0
          ? [row(w`Impact assessment ${assessment}: nothing was decided about this job yet.`, true)]
          : decided),
      ];
    }
  }
}

function workedAgain({ job, complete, more }: Again): string {
  const opened = complete
    ? w`Job ${job} was opened on the same vehicle, and closed complete`
    : w`Job ${job} was opened on the same vehicle`;
  return more === 0 ? `${opened}.` : w`${opened}; ${more} more followed, see "${jobListTitle()}".`;
}

const unitOf = (quantity: 'torque' | 'length'): Unit => (quantity === 'torque' ? 'N.m' : 'mm');
