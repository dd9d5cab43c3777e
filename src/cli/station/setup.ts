import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { z } from 'zod';
import { personNamed } from '../../evidence/station.ts';
import { outputFile, writeNew } from '../../files/output.ts';
import { misdescribed } from '../../instrument/fitness.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import { workOrderSchema } from '../../job/order.ts';
import { type Problem, ProblemError, pathText } from '../../problem.ts';
import { LANGUAGES, type Language, spokenLanguage, w } from '../../words/catalogue.ts';
import { readCertificate } from '../audit/certificate.ts';
import { type Dialogue, openDialogue } from '../terminal/dialogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import { labelled } from '../terminal/labelled.ts';
import {
  askChoice,
  askObject,
  askText,
  askUntil,
  askYes,
  messageOf,
  refuse,
  type SoFar,
  type Wordings,
} from '../terminal/questions.ts';
import { withWayBack } from '../terminal/way-back.ts';
import { stamp, today } from './clock.ts';
import { speakIn } from './reader-language.ts';
import { languageSchema } from './reads.ts';
import { openStation, recordStation, stateOf } from './station.ts';
import { noteStationUsed } from './station-at-hand.ts';
import { type StationFile, stationFileSchema } from './station-file.ts';
import { usualFolder } from './station-log.ts';

const { station: stationName, data: dataFolder, tools: toolList } = stationFileSchema.shape;
const toolSchema = toolList.element;
type Tool = StationFile['tools'][number];

/** Fields of a tool that a first run does not ask for; they can be written into the file later. */
export const LATER: ReadonlySet<string> = new Set([
  'maker',
  'model',
  'correct',
  'interval',
  'cyclesUsed',
  'repeatability',
  'driftPerYear',
  'classUncertainty',
  'furtherTerms',
  'technician',
]);

/** A guided first run: asks for station, tools and people, then writes the station file and opens the station once. */
export async function setup(
  options: { readonly station: string },
  dialogue = openDialogue(),
): Promise<ExitCode> {
  try {
    if (existsSync(options.station)) throw new ProblemError(fileThere(options.station));
    // Nobody is asked for what cannot be written.
    outputFile(options.station);
    dialogue.say(
      w`Questions about this station. Enter takes the value in brackets; < goes back to the question before, as often as wanted. Ctrl-C cancels; nothing is written.`,
    );
    const base = dirname(resolve(options.station));
    const { file, people, wanted } = await withWayBack(dialogue, async (asked) => {
      const file = await askFile(asked, base);
      const people = await askPeople(asked);
      asked.say(`\n${w`${options.station} will hold:`}\n${jsonText(file).trimEnd()}`);
      return { file, people, wanted: await askYes(asked, w`Write it and open the station?`, 'yes') };
    });
    if (!wanted) {
      dialogue.say(w`Nothing was written.`);
      return EXIT.failed;
    }
    return await commit(options.station, file, people, dialogue);
  } finally {
    dialogue.close();
  }
}

async function askFile(dialogue: Dialogue, base: string): Promise<StationFile> {
  const screen = await askScreen(dialogue);
  const station = await askText(dialogue, stationName, w`Name of the station, as records show it`);
  const data = await askText(
    dialogue,
    dataFolder.unwrap(),
    w`Folder for log, keys and papers`,
    usualFolder(station),
  );
  let file: StationFile = {
    form: 'plugmark/station/1',
    station,
    data,
    ...(await askReads(dialogue, screen)),
    tools: [],
  };
  do file = await withTool(dialogue, base, file);
  while (await askYes(dialogue, w`Another tool?`, file.tools.length === 1 ? 'yes' : 'no'));
  return file;
}

/** The first answer: the other questions are in that language. */
async function askScreen(dialogue: Dialogue): Promise<Language> {
  const usual = LANGUAGES.find((language) => language === spokenLanguage()) ?? 'en';
  const screen = await askChoice(dialogue, languageSchema, w`Language of the screen`, usual);
  await speakIn(screen);
  return screen;
}

/** Languages and units; only what is not usual gets into the file. */
async function askReads(dialogue: Dialogue, screen: Language): Promise<Pick<StationFile, 'reads'>> {
  const papers = await askChoice(dialogue, languageSchema, w`Language of the papers`, screen);
  const torque = await askChoice(dialogue, z.enum(['N·m', 'lbf·ft']), w`Torque is shown in`, 'N·m');
  const length = await askChoice(dialogue, z.enum(['mm', 'in']), w`Gaps are shown in`, 'mm');
  const reads: StationFile['reads'] = {
    ...(screen === 'en' ? {} : { screen }),
    ...(papers === 'en' ? {} : { papers }),
    ...(torque === 'N·m' ? {} : { torque: '[ft_i].[lbf_av]' }),
    ...(length === 'mm' ? {} : { length: '[in_i]' }),
  };
  return Object.keys(reads).length === 0 ? {} : { reads };
}

/** The file with one more tool, asked for until the whole satisfies its schema. */
async function withTool(dialogue: Dialogue, base: string, file: StationFile): Promise<StationFile> {
  for (;;) {
    const tool = await askTool(dialogue, base, file.tools);
    const parsed = stationFileSchema.safeParse({ ...file, tools: [...file.tools, tool] });
    if (parsed.success) return parsed.data;
    const issue = parsed.error.issues[0];
    refuse(dialogue, pathText(issue?.path ?? []), w`${messageOf(issue)}; enter this tool again`);
  }
}

/** A tool whose description an instrument can rest on: with its certificate read, or with limits. */
async function askTool(dialogue: Dialogue, base: string, before: readonly Tool[]): Promise<Tool> {
  dialogue.say(`\n${w`Tool ${before.length + 1}`}`);
  for (;;) {
    const tool = await askObject(
      { dialogue, wordings: toolWordings(base, before), later: LATER },
      toolSchema,
    );
    const problem = misdescribed(await withCertificate(tool, base), today());
    if (problem === null) return tool;
    refuse(dialogue, problem.where ?? tool.id, `${problem.message}. ${problem.next}`);
  }
}

function toolWordings(base: string, before: readonly Tool[]): Wordings {
  const has = (quantity: string) => before.some((tool) => tool.quantity === quantity);
  const torque = ({ quantity }: SoFar) => quantity === 'torque';
  const certified = ({ certificate }: SoFar) => certificate !== undefined;
  return {
    quantity: { text: w`What it measures`, usual: () => (has('torque') ? 'length' : 'torque') },
    id: { text: w`A short name for it`, usual: (soFar) => (torque(soFar) ? 'wrench' : 'gauge') },
    type: { text: w`Kind of wrench (setting: it clicks)`, when: torque },
    serial: { text: w`Serial number on the tool` },
    range: { text: w`Limit it to its range` },
    'range.from': { text: w`From, in N·m or mm` },
    'range.to': { text: w`To` },
    certificate: {
      text: w`Calibration certificate (file, relative to the station file)`,
      check: (value) => certificateProblem(resolve(base, String(value))),
    },
    permissibleDeviation: {
      text: w`Permissible deviation, by its class or data sheet`,
      usual: (soFar) => (certified(soFar) ? undefined : torque(soFar) ? 'relative' : 'absolute'),
      needed: (soFar) => !certified(soFar),
    },
    'permissibleDeviation.percent': { text: w`Percent of the reading` },
    'permissibleDeviation.amount': { text: w`Amount, in N·m or mm` },
    resolution: { text: w`Step of its display, in N·m or mm`, usual: () => '0.01' },
    basis: {
      text: w`Source of this figure`,
      usual: (soFar) => (certified(soFar) ? w`calibration certificate` : w`data sheet`),
    },
    driver: { text: w`Driver`, usual: () => 'imds' },
    'driver.address': { text: w`Bluetooth address` },
    'driver.name': { text: w`Bluetooth name` },
    'driver.profile': { text: w`Profile (file)` },
    'driver.package': { text: w`Package of the driver (npm)` },
    'driver.port': { text: w`Serial port` },
    'driver.unit': { text: w`Unit of figures typed without one` },
    'driver.file': { text: w`Recording (file)` },
    'driver.speed': { text: w`Speed` },
  };
}

async function certificateProblem(file: string): Promise<Problem | null> {
  try {
    await readCertificate(file);
    return null;
  } catch (error) {
    if (error instanceof ProblemError) return error.problem;
    throw error;
  }
}

async function withCertificate(
  { driver: _driver, technician: _technician, certificate, ...tool }: Tool,
  base: string,
): Promise<Instrument> {
  return certificate === undefined
    ? tool
    : { ...tool, certificate: await readCertificate(resolve(base, certificate)) };
}

async function askPeople(dialogue: Dialogue): Promise<readonly string[]> {
  dialogue.say(`\n${w`People`}`);
  const people: string[] = [];
  for (;;) {
    const name = await askUntil<string | null>(
      dialogue,
      w`Name of a technician (Enter: no more): `,
      (answer) => {
        if (answer === '') return { ok: true, value: null };
        const parsed = workOrderSchema.shape.technician.safeParse(answer);
        return parsed.success
          ? { ok: true, value: parsed.data }
          : { ok: false, error: messageOf(parsed.error.issues[0]) };
      },
    );
    if (name === null) return people;
    if (!people.includes(name)) people.push(name);
  }
}

/** Opens the station, and only then lets the file appear; never over one that somebody else put there meanwhile. Ctrl-C waits for the end. */
async function commit(
  path: string,
  file: StationFile,
  people: readonly string[],
  dialogue: Dialogue,
): Promise<ExitCode> {
  const wait = () => {};
  process.on('SIGINT', wait);
  try {
    const folder = resolve(dirname(resolve(path)), file.data ?? usualFolder(file.station));
    const station = await openStation(file.station, folder, stamp, file.domain);
    try {
      const state = stateOf(station);
      const news = people.filter((person) => personNamed(state, person) === null);
      if (news.length > 0)
        await recordStation(
          station,
          news.map((person) => ({ type: 'person-recorded', person, key: null })),
          stamp(),
        );
      writeNew(path, `${JSON.stringify(file, null, 2)}\n`);
      noteStationUsed(path);
      dialogue.say(`\n${w`The station ${safeLine(file.station)} is set up.`}`);
      const written = labelled(
        [
          [w`station file`, safeLine(path)],
          [w`log and keys`, safeLine(folder)],
          [w`key`, station.key.kid],
          [w`trust list`, w`${safeLine(station.trustFile)} (give it to whoever verifies)`],
        ],
        '  ',
      );
      for (const line of written) dialogue.say(line);
      dialogue.say(
        w`Next: check the station with "plugmark doctor"; make a key for a person with "plugmark keys technician NAME".`,
      );
      dialogue.say(
        w`The key is a file. To keep it in a device instead (a smart card or HSM with Ed25519; a TPM has none): "plugmark manual keys".`,
      );
      return EXIT.done;
    } finally {
      station.log.close();
    }
  } finally {
    process.off('SIGINT', wait);
  }
}

const fileThere = (where: string): Problem => ({
  code: 'file-exists',
  where,
  message: w`a station file already exists`,
  next: w`Edit it by hand, or name another with --station.`,
});
