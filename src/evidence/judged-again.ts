import { partingText } from '../job/parting.ts';
import { editionIn, OPEN_EDITION } from '../job/rules.ts';
import type { Edition } from '../rules/editions.ts';
import type { Again } from '../rules/judged.ts';
import { joined, type Sentence, sentence } from '../words/catalogue.ts';
import { type Check, failed, notLookedAt, passed } from './check.ts';
import { type JobRecord, rulesOf } from './record.ts';
import { reasonOf } from './wordings.ts';

export const JUDGED_AGAIN = 'judged again';

/** Judges the job again by the rules that it names: same pulls, same cylinders, same verdicts, or where they part. */
export function judgedAgain({ entries }: Pick<JobRecord, 'entries'>, edition: Edition): Check {
  const number = editionIn(rulesOf(entries));
  const rules =
    number === null || number === OPEN_EDITION
      ? []
      : [
          sentence`It was judged by edition ${number} of the rules; new jobs are judged by edition ${OPEN_EDITION}.`,
        ];
  if (edition === 'unknown')
    return failed(JUDGED_AGAIN, sentence`The job names rules that no version of the program has.`);
  if (edition === 'newer')
    return notLookedAt(
      JUDGED_AGAIN,
      sentence`It was not: a newer version of the program judged the job. Verify it with that version as well.`,
    );
  try {
    const again = edition.judgeAgain(entries.map(({ event }) => event));
    return again.agrees
      ? passed(
          JUDGED_AGAIN,
          joined([
            sentence`The samples give the same ${again.pulls} pulls again, each with the same verdict.`,
            ...rules,
          ]),
        )
      : failed(JUDGED_AGAIN, partedText(again));
  } catch (fault) {
    // A record that its station forged may hold what no bench would ever be given.
    return failed(JUDGED_AGAIN, sentence`The job cannot be judged again: ${reasonOf(fault)}.`);
  }
}

const partedText = ({ position, code, event }: Extract<Again, { agrees: false }>): Sentence =>
  sentence`event ${position}: ${() => partingText({ code, event })}.`;
