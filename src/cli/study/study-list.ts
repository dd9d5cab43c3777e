import {
  gaugeStudiesOf,
  isAsTaken,
  type LoggedStudy,
  openStudyOf,
  unknownStudy,
} from '../../audit/gauge-log.ts';
import type { ReadingFrom } from '../../evidence/gauge-study-event.ts';
import type { Stamp } from '../../evidence/log.ts';
import { ProblemError } from '../../problem.ts';
import { studyLines } from '../../report/gauge-study.ts';
import { orThrow } from '../../result.ts';
import { printJson } from '../answers/answer.ts';
import { listedStudies, shownStudy } from '../answers/process.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { optionText } from '../terminal/option-text.ts';
import { textTable } from '../terminal/text-table.ts';
import { appendBehindOthers } from './study-log.ts';

/** All studies of the station: made, open, given up. */
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
    print(rows.length === 0 ? ['No gauge study was made yet.'] : textTable(HEAD, rows));
    return EXIT.done;
  });
}

const HEAD = ['study', 'made', 'tool', 'appraisers x parts x trials', ''] as const;

function standOf({ taking, end }: LoggedStudy): string {
  if (end?.kind === 'made') return end.at.slice(0, 10);
  const { readings = [], order = [] } = taking?.exercise ?? {};
  return `${end === null ? 'open' : 'given up'}, ${readings.length} of ${order.length}`;
}

/** One study by both methods, computed anew from its readings; of one that is open or given up only how far it came. */
export function showStudy(number: string, options: Scope & { readonly json?: true }): Promise<ExitCode> {
  return withStationFolder(options, ({ log }) => {
    const found = gaugeStudiesOf(log.stationEntries()).find(({ study }) => study === number);
    if (found === undefined) throw new ProblemError(unknownStudy(number));
    if (options.json === true) printJson(shownStudy(found));
    else print(toldStudy(found));
    return EXIT.done;
  });
}

/** The result of a whole study, and how its readings were had. Readings of an open one would be seen before they are due again. */
export function toldStudy(study: LoggedStudy): readonly string[] {
  const { taking, end } = study;
  if (end?.kind !== 'made') {
    const on = end === null ? '' : `, on ${end.at.slice(0, 10)}: ${safeLine(end.because)}`;
    return [`${study.study}: ${standOf(study)} readings${on}`];
  }
  const lines = studyLines(end.made);
  if (taking === null) return lines;
  const count = (wanted: ReadingFrom) => taking.from.filter((from) => from === wanted).length;
  const typed = count('typed');
  return [
    ...lines,
    '',
    `Readings typed by hand ${count('hand')}, taken back on the way ${taking.takenBack}.`,
    ...(typed === 0
      ? []
      : [`Typed figures ${typed}: by a gauge that types or by a person, which nobody can tell apart.`]),
    ...(isAsTaken(study) ? [] : ['NOT AS TAKEN: these are not the readings that the log took one by one.']),
  ];
}

/** Gives up a study that is open; what was measured for it stays in the log. */
export function dropStudy(number: string, options: Scope & { readonly because: string }): Promise<ExitCode> {
  return withStationFolder(options, ({ log }) => {
    const because = optionText(options.because, '--because', 200);
    const { started } = orThrow(openStudyOf(log.stationEntries(), number));
    const event = { type: 'gauge-study-dropped', study: started.study, because } as const;
    appendBehindOthers(log, [event], now(), (entries) => void orThrow(openStudyOf(entries, number)));
    print([`${started.study} is given up; what was measured for it stays in the log.`]);
    return EXIT.done;
  });
}

const now = (): Stamp => ({
  at: new Date().toISOString(),
  monoUs: Number(process.hrtime.bigint() / 1000n),
});
const print = (lines: readonly string[]) => void process.stdout.write(`${lines.join('\n')}\n`);
