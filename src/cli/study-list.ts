import { type Problem, ProblemError } from '../problem.ts';
import { studyLines } from '../report/gauge-study.ts';
import { EXIT, type ExitCode } from './exit.ts';
import type { Archive } from './station.ts';
import { readStudy, studyFiles, unknownStudy } from './study-file.ts';
import type { StudyEvent } from './study-run.ts';
import { textTable } from './text-table.ts';
import { type Whose, withArchive } from './whose.ts';

/** The studies that the station made, and those that were left open. */
export function listStudies(options: Whose): Promise<ExitCode> {
  return withArchive(options, async (archive) => {
    const made = studiesOf(archive);
    const rows = made.map(({ event, at }) => [
      event.study,
      at.slice(0, 10),
      event.serial ?? event.tool,
      `${event.appraisers.length} x ${event.parts.length} x ${event.readings[0]?.[0]?.length ?? 0}`,
    ]);
    for (const study of studyFiles(archive.folder)) {
      if (made.some(({ event }) => event.study === study)) continue;
      const { head, exercise } = await readStudy(archive.folder, study);
      const { plan, readings, order } = exercise;
      rows.push([
        study,
        `open, ${readings.length} of ${order.length}`,
        head.serial ?? head.tool,
        `${plan.appraisers.length} x ${plan.parts.length} x ${plan.trials}`,
      ]);
    }
    print(rows.length === 0 ? ['No gauge study was made yet.'] : textTable(HEAD, rows));
    return EXIT.done;
  });
}

const HEAD = ['study', 'made', 'tool', 'appraisers x parts x trials'] as const;

/** One study by both methods, computed anew from its readings. */
export function showStudy(number: string, options: Whose): Promise<ExitCode> {
  return withArchive(options, async (archive) => {
    const made = madeStudy(archive, number);
    if (made === undefined) throw new ProblemError(unknownStudy(number));
    print(await toldStudy(archive, made));
    return EXIT.done;
  });
}

export const madeStudy = (archive: Archive, study: string): StudyEvent | undefined =>
  studiesOf(archive).find(({ event }) => event.study === study)?.event;

/** The whole ones, each with the time of its record. */
export function studiesOf({ log }: Archive): readonly { readonly event: StudyEvent; readonly at: string }[] {
  return log
    .stationEntries()
    .flatMap(({ event, at }) => (event.type === 'gauge-study-made' ? [{ event, at }] : []));
}

/** The result, and how the readings were had where their file is still there. */
export async function toldStudy({ folder }: Archive, made: StudyEvent): Promise<readonly string[]> {
  if (!studyFiles(folder).includes(made.study)) return studyLines(made);
  const { byHand, takenBack } = await readStudy(folder, made.study);
  const said = `By the file of the study: readings typed by hand ${byHand}, taken back on the way ${takenBack}.`;
  return [...studyLines(made), '', said];
}

export const madeAlready = (study: string): Problem => ({
  code: 'study-made',
  where: study,
  message: 'this study is whole and recorded',
  next: `See "plugmark gauge-study show ${study}".`,
});

const print = (lines: readonly string[]) => void process.stdout.write(`${lines.join('\n')}\n`);
