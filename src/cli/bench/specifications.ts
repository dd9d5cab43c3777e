/** `plugmark specifications`: the shop's own library, listed, shown, added to and looked over. */

import { canonical } from '../../evidence/canonical.ts';
import type { Stamp } from '../../evidence/log.ts';
import { namesOf } from '../../evidence/station.ts';
import { type LibraryEntry, libraryEntrySchema, matchingEntries } from '../../job/library.ts';
import { specifiedBy } from '../../job/open.ts';
import { type WorkOrder, workOrderSchema } from '../../job/order.ts';
import { gapLimitsOf } from '../../plug/gap.ts';
import { withoutNames } from '../../plug/specification.ts';
import { type Problem, ProblemError, problemFromZod } from '../../problem.ts';
import { glyphsFor } from '../../ui/glyphs.ts';
import { w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import {
  checkedSpecifications,
  type LookedAt,
  listedSpecifications,
  shownSpecification,
} from '../answers/specifications.ts';
import { stamp } from '../station/clock.ts';
import { readJson } from '../station/json-file.ts';
import { folderOf, type Scope } from '../station/scope.ts';
import { openStationFolder, recordStation, type StationFolder, stateOf } from '../station/station.ts';
import { libraryIn, readStationFile } from '../station/station-file.ts';
import { openDialogue } from '../terminal/dialogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { print } from '../terminal/wrapped.ts';
import { engineDrawing } from './new-order-engine.ts';
import { askKeep, entryWords, typeFigures } from './new-order-figures.ts';
import { askTechnician } from './new-order-vehicle.ts';
import { type Library, nameTaken, readLibrary, writeEntry } from './specification-files.ts';

/** Lists the entries whose name, plug or source holds all the words. */
export async function listSpecifications(
  words: readonly string[],
  options: Scope & { readonly json?: true },
): Promise<ExitCode> {
  const library = await libraryOf(options);
  const entries = matchingEntries(
    library.kept.map(({ entry }) => entry),
    words.join(' '),
  );
  if (options.json === true) {
    const kept = library.kept.filter(({ entry }) => entries.includes(entry));
    printJson(listedSpecifications(library.folder, kept, library.faults.length));
    return EXIT.done;
  }
  const lines = entries.map(entryWords);
  if (entries.length === 0)
    lines.push(
      library.kept.length === 0
        ? w`The library ${safeLine(library.folder)} is empty. Add one with "plugmark specifications add".`
        : w`No specification matches.`,
    );
  if (library.faults.length > 0)
    lines.push(w`${library.faults.length} not readable; see "plugmark specifications check"`);
  print(lines);
  return EXIT.done;
}

/** Shows one entry, the engine drawn and the rest as it stands in its file. */
export async function showSpecification(
  words: readonly string[],
  options: Scope & { readonly json?: true },
): Promise<ExitCode> {
  const library = await libraryOf(options);
  const [entry, ...others] = matchingEntries(
    library.kept.map((one) => one.entry),
    words.join(' '),
  );
  if (entry === undefined || others.length > 0)
    throw new ProblemError({
      code: 'specification-not-one',
      where: words.join(' '),
      message:
        entry === undefined
          ? w`the library has no specification of this name`
          : w`${others.length + 1} match`,
      next: w`Name one as "plugmark specifications" lists it.`,
    });
  if (options.json === true) {
    printJson(shownSpecification(entry));
    return EXIT.done;
  }
  const { form: _form, engine, ...rest } = entry;
  print([
    entryWords(entry),
    ...engineDrawing(engine.banks, glyphsFor(!speaksUtf8())),
    ...jsonText({ ...rest, engine })
      .trimEnd()
      .split('\n')
      .map(indented),
  ]);
  return EXIT.done;
}

/** Adds the figures of a work order, or typed ones. */
export async function addSpecification(
  options: Scope & { readonly order?: string; readonly name?: string; readonly by?: string },
): Promise<ExitCode> {
  const stationFolder = await openStationFolder(await folderOf(options));
  try {
    const library = await libraryOf(options);
    const now = stamp();
    const on = now.at.slice(0, 10);
    const entry =
      options.order === undefined
        ? await typed(library, stationFolder, on)
        : await fromOrder(options.order, options, on);
    if (entry === null) {
      print([w`Nothing was written.`]);
      return EXIT.failed;
    }
    const wrong = await keepable(library, entry, on);
    if (wrong !== null) throw new ProblemError(wrong);
    const file = await keep(stationFolder, library.folder, entry, now);
    print([w`${safeLine(entry.name)} is in the library: ${safeLine(file)}`]);
    return EXIT.done;
  } finally {
    stationFolder.log.close();
  }
}

/** Looks all entries over: whether each can be read, could open a job today, and stands in the station's log. */
export async function checkSpecifications(options: Scope & { readonly json?: true }): Promise<ExitCode> {
  const { kept, faults } = await libraryOf(options);
  const on = stamp().at.slice(0, 10);
  const stationFolder = await openStationFolder(await folderOf(options));
  try {
    const { specifications } = stateOf(stationFolder);
    const looked = kept.map(({ file, entry }) => ({
      file,
      entry,
      problem: unusable(entry, on),
      recorded: specifications.has(canonical(withoutNames(entry.specification))),
    }));
    const wrong = faults.length + looked.filter(({ problem }) => problem !== null).length;
    if (options.json === true)
      printJson(
        checkedSpecifications(
          faults.map(({ problem }) => problem),
          looked,
        ),
      );
    else
      print([
        ...faults.map(({ problem }) => `${w`WRONG`}    ${problemLine(problem)}`),
        ...looked.map(lookedLine),
        w`${kept.length + faults.length} specifications, ${wrong} wrong`,
      ]);
    return wrong === 0 ? EXIT.done : EXIT.failed;
  } finally {
    stationFolder.log.close();
  }
}

function lookedLine({ file, entry, problem, recorded }: LookedAt): string {
  if (problem !== null)
    return `${w`WRONG`}    ${problemLine({ ...problem, where: `${file}: ${problem.where ?? ''}` })}`;
  return recorded
    ? `${w`OK`}       ${entryWords(entry)}`
    : `${w`NOTE`}     ${w`${safeLine(file)}: put there or changed by hand; the log learns of it with the first job`}`;
}

/** Puts an entry into the library and its specification into the log, under the name of the one who entered it. */
export async function keep(
  stationFolder: StationFolder,
  folder: string,
  entry: LibraryEntry,
  now: Stamp,
): Promise<string> {
  const file = writeEntry(folder, entry);
  const { specification, enteredBy } = entry;
  if (!stateOf(stationFolder).specifications.has(canonical(withoutNames(specification))))
    await recordStation(stationFolder, [{ type: 'specification-recorded', specification }], now, enteredBy);
  return file;
}

async function fromOrder(
  path: string,
  { name, by }: { readonly name?: string; readonly by?: string },
  on: string,
): Promise<LibraryEntry> {
  const order = await readJson(path, workOrderSchema, w`work order`, '"plugmark manual work-order"');
  const { engine, plug, specification } = order;
  const entry = libraryEntrySchema.safeParse({
    form: 'plugmark/specification/1',
    name: name ?? engine.description,
    engine,
    plug,
    specification,
    enteredBy: by ?? order.technician,
    enteredOn: on,
  });
  if (entry.success) return entry.data;
  throw new ProblemError(problemFromZod(entry.error, path, 'input-not-valid', w`Give --name and --by.`));
}

async function typed(
  library: Library,
  stationFolder: StationFolder,
  on: string,
): Promise<LibraryEntry | null> {
  const dialogue = openDialogue();
  try {
    const enteredBy = await askTechnician(dialogue, null, namesOf(stateOf(stationFolder)));
    const figures = await typeFigures(dialogue, (given) => orderWith(given, enteredBy), on, undefined);
    const name = await askKeep(dialogue, library);
    if (name === null) return null;
    const { engine, plug, specification } = figures;
    return { form: 'plugmark/specification/1', name, engine, plug, specification, enteredBy, enteredOn: on };
  } finally {
    dialogue.close();
  }
}

function keepable(library: Library, entry: LibraryEntry, on: string): Problem | null {
  return nameTaken(library, entry.name)?.problem ?? unusable(entry, on);
}

/** Why no job could be opened with an entry; null when one could. */
function unusable(entry: LibraryEntry, on: string): Problem | null {
  const gap = gapLimitsOf(entry.specification, entry.plug);
  if (!gap.ok) return gap.error;
  const specified = specifiedBy(orderWith(entry, entry.enteredBy), on);
  return specified.ok ? null : specified.error;
}

const orderWith = (
  { engine, plug, specification }: Pick<WorkOrder, 'engine' | 'plug' | 'specification'>,
  technician: string,
): WorkOrder => ({
  form: 'plugmark/work-order/1',
  job: 'library',
  technician,
  vehicle: {},
  engine,
  plug,
  specification,
});

async function libraryOf({ station, data }: Scope): Promise<Library> {
  return readLibrary(data === undefined ? (await readStationFile(station)).library : libraryIn(data));
}

const problemLine = ({ where, message, next }: Problem) =>
  safeLine(`${where === undefined ? '' : `${where}: `}${message}. ${next}`);
/** The indentation of JSON, which cleaning a line takes away. */
const indented = (line: string) =>
  line.replace(/^ */, '') === '' ? '' : `${/^ */.exec(line)?.[0] ?? ''}${safeLine(line)}`;
