import { existsSync } from 'node:fs';
import { ProblemError } from '../../problem.ts';
import { glyphsFor } from '../../ui/glyphs.ts';
import { columnsOf } from '../../ui/printable.ts';
import { w } from '../../words/catalogue.ts';
import type { DoctorAnswer } from '../answers/station.ts';
import { hasScreen, wantsColor } from '../bench/run.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { screenColumns, wrapped } from '../terminal/wrapped.ts';
import { radioFacts, radioFindings } from './health/bluetooth.ts';
import { clockFacts, clockFindings } from './health/clock.ts';
import { type Finding, fromProblem, good, warning } from './health/finding.ts';
import { diskFinding, nodeFinding } from './health/machine.ts';
import { profileFindings } from './health/profiles.ts';
import { readsFinding } from './health/reads.ts';
import { databaseFinding, stationHealth } from './health/station.ts';
import { terminalFindings } from './health/terminal.ts';
import { witnessFindings } from './health/witnesses.ts';
import { stationAtHand, USUAL_FILE } from './station-at-hand.ts';
import { type LoadedStation, readStationFile } from './station-file.ts';

/** Drivers that need no Bluetooth. */
const OFF_AIR: ReadonlySet<string> = new Set(['typed', 'replay', 'serial']);

/** Columns that a text keeps however narrow the terminal is. */
const NARROWEST = 20;

/** Looks over all that plugmark needs and says what to do; changes nothing. */
export async function doctor(options: {
  readonly station?: string;
  readonly json?: true;
}): Promise<ExitCode> {
  const { station, finding } = await stationFile(options.station);
  const health = station === null ? null : await stationHealth(station.folder);
  const radioTools =
    station?.tools.filter(({ driver }) => !OFF_AIR.has(driver.use)).map(({ id }) => id) ?? [];
  const findings = [
    nodeFinding(process.versions.node),
    await databaseFinding(),
    ...radioFindings(await radioFacts(), radioTools),
    finding,
    ...(station === null ? [] : [readsFinding(station.reads), ...(await profileFindings(station))]),
    ...(health?.findings ?? []),
    ...(station === null ? [] : await witnessFindings(station)),
    diskFinding(station?.folder ?? process.cwd()),
    ...clockFindings(await clockFacts(health?.lastEntry ?? null)),
    ...terminalFindings({
      screen: hasScreen(),
      columns: process.stdout.columns,
      rows: process.stdout.rows,
      utf8: speaksUtf8(),
      color: wantsColor(),
    }),
  ];
  const sound = findings.every(({ state }) => state !== 'bad');
  if (options.json === true)
    process.stdout.write(jsonText({ form: 'plugmark/doctor/1', sound, findings } satisfies DoctorAnswer));
  else process.stdout.write(`${findingLines(findings, !speaksUtf8(), screenColumns()).join('\n')}\n`);
  return sound ? EXIT.done : EXIT.failed;
}

/** A symbol, a word, what was found; what to do on the line below. */
export function findingLines(
  findings: readonly Finding[],
  ascii: boolean,
  columns = Number.POSITIVE_INFINITY,
): readonly string[] {
  const { done, again, bad } = glyphsFor(ascii);
  const words = { good: w`ok`, warning: w`note`, bad: w`FAIL` };
  const widest = Math.max(...Object.values(words).map(columnsOf));
  const mark = { good: done, warning: again, bad };
  const width = Math.max(...findings.map(({ name }) => columnsOf(name)));
  const lines = findings.flatMap(({ name, state, text, next }) => {
    const head = `${mark[state]} ${padded(words[state], widest)}  ${padded(name, width)}  `;
    const below = ' '.repeat(columnsOf(head));
    const texts = [text, ...(next === undefined ? [] : [next])].flatMap((one) =>
      isToBeCopied(one)
        ? [safeLine(one)]
        : wrapped(safeLine(one), Math.max(columns - below.length, NARROWEST)).map((line) => line.trimStart()),
    );
    return texts.map((one, at) => `${at === 0 ? head : below}${one}`);
  });
  const count = findings.filter(({ state }) => state === 'bad').length;
  return [...lines, count === 0 ? w`Everything is ready.` : w`Fix ${count} of these first.`];
}

/** A command for another program, which is copied as one line. */
const isToBeCopied = (text: string): boolean => text.includes('sudo ');

/** A station file that was named must be sound; the usual one need not be there. */
async function stationFile(
  named: string | undefined,
): Promise<{ readonly station: LoadedStation | null; readonly finding: Finding }> {
  const file = stationAtHand(named ?? USUAL_FILE);
  if (named === undefined && !existsSync(file))
    return {
      station: null,
      finding: warning(
        w`station`,
        w`no ${USUAL_FILE} in this folder`,
        w`Write one with "plugmark setup", or name one with --station.`,
      ),
    };
  try {
    const station = await readStationFile(file);
    const tools = station.tools.map(({ id }) => id).join(', ');
    return { station, finding: good(w`station`, w`${station.station}; tools: ${tools}`) };
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    return { station: null, finding: fromProblem(w`station`, error.problem) };
  }
}

const padded = (text: string, columns: number) => text + ' '.repeat(Math.max(0, columns - columnsOf(text)));
