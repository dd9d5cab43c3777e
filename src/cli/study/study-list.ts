import {
  gaugeStudiesOf,
  isAsTaken,
  type LoggedStudy,
  openStudyOf,
  unknownStudy,
} from '../../audit/gauge-log.ts';
import { marksOf } from '../../job/proof.ts';
import { ProblemError } from '../../problem.ts';
import { studyLines } from '../../report/gauge-study.ts';
import { MARK_WORD } from '../../report/words/index.ts';
import { orThrow } from '../../result.ts';
import { phrases, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { listedStudies, shownStudy } from '../answers/gauge-study.ts';
import { stamp } from '../station/clock.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { optionText } from '../terminal/option-text.ts';
import { textTable } from '../terminal/text-table.ts';
import { appendBehindOthers } from './study-log.ts';

/** All studies of the station: finished, open, given up. */
export function listStudies(options: Scope & { readonly json?: true }): Promise<ExitCode> {
  return withStationFolder(options, ({ log }) => {
    const all = gaugeStudiesOf(log.stationEntries());
    if (options.json === true) {
      printJson(listedStudies(all));
      return EXIT.done;
    }
    const rows = all.map((one) => {
      const { study, serial, tool, plan } = one;
      const { appraisers, parts, trials } = plan;
      return [
        study,
        standOf(one),
        serial ?? tool,
        `${appraisers.length} x ${parts.length} x ${trials}`,
        one.end?.kind === 'dropped' ? one.end.because : '',
      ];
    });
    print(rows.length === 0 ? [w`No gauge study yet.`] : textTable(HEAD, rows));
    return EXIT.done;
  });
}

const HEAD = phrases(['study', 'finished', 'tool', 'appraisers x parts x trials', 'why given up']);

function standOf({ taking, end }: LoggedStudy): string {
  if (end?.kind === 'finished') return end.at.slice(0, 10);
  const { readings = [], order = [] } = taking?.exercise ?? {};
  return end === null
    ? w`open, ${readings.length} of ${order.length}`
    : w`given up, ${readings.length} of ${order.length}`;
}

/** A finished study by both methods, computed again from its readings; of an open or given up one only how far it got. */
export function showStudy(number: string, options: Scope & { readonly json?: true }): Promise<ExitCode> {
  return withStationFolder(options, ({ log }) => {
    const logged = gaugeStudiesOf(log.stationEntries()).find(({ study }) => study === number);
    if (logged === undefined) throw new ProblemError(unknownStudy(number));
    if (options.json === true) printJson(shownStudy(logged));
    else print(resultLines(logged));
    return EXIT.done;
  });
}

/** The result of a finished study, and where its readings came from. An open one shows no reading: the study would not be blind. */
export function resultLines(study: LoggedStudy): readonly string[] {
  const { taking, end } = study;
  if (end?.kind !== 'finished') {
    const on = end === null ? '' : w`, on ${end.at.slice(0, 10)}: ${safeLine(end.because)}`;
    return [w`${study.study}: ${standOf(study)} readings${on}`];
  }
  const lines = studyLines(end.finished);
  if (taking === null) return lines;
  const typed = taking.sources.filter((source) => source === 'typed').length;
  return [
    ...lines,
    '',
    w`Readings typed: ${typed}. Taken back: ${taking.takenBack}.`,
    ...marksOf(taking.sources).map((mark) => w`${MARK_WORD[mark]}: this study says nothing about the tool.`),
    ...(isAsTaken(study) ? [] : [w`NOT AS TAKEN: these are not the readings that the log holds one by one.`]),
  ];
}

/** Gives up an open study; its readings stay in the log. */
export function dropStudy(number: string, options: Scope & { readonly because: string }): Promise<ExitCode> {
  return withStationFolder(options, ({ log }) => {
    const because = optionText(options.because, '--because', 200);
    const { started } = orThrow(openStudyOf(log.stationEntries(), number));
    const event = { type: 'gauge-study-dropped', study: started.study, because } as const;
    appendBehindOthers(log, [event], stamp(), (entries) => void orThrow(openStudyOf(entries, number)));
    print([w`${started.study} is given up. Its readings stay in the log.`]);
    return EXIT.done;
  });
}

const print = (lines: readonly string[]) => void process.stdout.write(`${lines.join('\n')}\n`);
