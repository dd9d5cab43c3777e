import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { readsFinding } from '../../../src/cli/station/health/reads.ts';
import { LATER, setup } from '../../../src/cli/station/setup.ts';
import { openStationFolder, stateOf } from '../../../src/cli/station/station.ts';
import { readStationFile, stationFileSchema } from '../../../src/cli/station/station-file.ts';
import { askObject } from '../../../src/cli/terminal/questions.ts';
import { ENGLISH, inLanguage, speak } from '../../../src/words/catalogue.ts';
import { answering, problemOf } from '../answers.ts';
import { exampleJson, folder, start } from '../program.ts';

const tools = exampleJson('station.json').tools;

/** Answers that make the station of the examples. */
const ANSWERS = {
  'Name of the station': 'Example bay',
  'Kind of wrench': 'setting',
  'Serial number': ['EXAMPLE-W-1', 'EXAMPLE-G-1'],
  'Percent of the reading': '2',
  'Amount, in': '0.01',
  'Source of this figure': ['data sheet of the wrench', 'data sheet of the gauge'],
  'Bluetooth address': ['c2:00:00:00:00:01', 'c2:00:00:00:00:02'],
  'Another tool?': ['yes', 'no'],
  'Name of a technician': ['Technician One', 'Technician Two', 'Technician One'],
};

async function setUp(dir: string, answers: Parameters<typeof answering>[0] = {}, patient = true) {
  const talk = answering({ ...ANSWERS, 'Folder for log': join(dir, 'data'), ...answers }, patient);
  const code = await setup({ station: join(dir, 'station.json') }, talk.dialogue);
  return { code, ...talk };
}

afterEach(() => speak(ENGLISH));

describe('the guided first run', () => {
  it('writes a station file that the program reads, and opens the station with key, log and people', async () => {
    const dir = folder();
    const { code, lines } = await setUp(dir);
    expect(code).toBe(0);
    const station = await readStationFile(join(dir, 'station.json'));
    expect(station.station).toBe('Example bay');
    expect(station.tools.map(({ driver: _, ...tool }) => tool)).toEqual(
      tools.map(({ driver: _, ...tool }: { driver: unknown }) => tool),
    );
    const stationFolder = await openStationFolder(station.folder);
    const state = stateOf(stationFolder);
    expect(state.name).toBe('Example bay');
    expect(state.people.map(({ name }) => name)).toEqual(['Technician One', 'Technician Two']);
    expect(stationFolder.log.check()).toBeNull();
    stationFolder.log.close();
    expect(lines.join('\n')).toContain(state.keys[0]?.kid);
    expect(existsSync(stationFolder.trustFile)).toBe(true);
    expect(readdirSync(dir).sort()).toEqual(['data', 'station.json']);
  });

  it('asks what people read, and writes only what is not usual', async () => {
    const dir = folder();
    const { prompts } = await setUp(dir, {
      'Language of the screen': 'de',
      // From here on the questions are in that language.
      'Name des Arbeitsplatzes': 'Example bay',
      'Ordner für Logbuch': join(dir, 'data'),
      'Sprache der Dokumente': 'fr',
      'Drehmoment wird gezeigt in': 'lbf.ft',
      'Art des Schlüssels': 'setting',
      Seriennummer: ['EXAMPLE-W-1', 'EXAMPLE-G-1'],
      'Prozent des Messwerts': '2',
      'Betrag, in': '0.01',
      'Quelle dieser Angabe': ['data sheet of the wrench', 'data sheet of the gauge'],
      'Bluetooth-Adresse': ['c2:00:00:00:00:01', 'c2:00:00:00:00:02'],
      'Noch ein Werkzeug?': ['ja', 'nein'],
      'Name eines Technikers': ['Technician One'],
    });
    expect(prompts.slice(0, 2)).toEqual([
      'Language of the screen: en, de, fr, es [en]: ',
      'Name des Arbeitsplatzes, wie ihn Protokolle zeigen: ',
    ]);
    const file = join(dir, 'station.json');
    expect(JSON.parse(readFileSync(file, 'utf8')).reads).toEqual({
      screen: 'de',
      papers: 'fr',
      torque: '[ft_i].[lbf_av]',
    });
    const { reads } = await readStationFile(file);
    expect(reads).toEqual({
      screen: 'de',
      papers: 'fr',
      units: { torque: '[ft_i].[lbf_av]', length: 'mm' },
    });
    expect(inLanguage(ENGLISH, () => readsFinding(reads).text)).toBe(
      'screen German, papers French, lbf·ft, mm; German, French not yet read by a native of the trade',
    );
  });

  it('shows what it would write without what could steer the terminal', async () => {
    const { lines } = await setUp(folder(), {
      'Source of this figure': ['sheet\u009b2J\u202e', 'data sheet'],
    });
    const shown = lines.find((line) => line.includes('will hold'));
    expect(shown).toContain('sheet\\u009b2J\\u202e');
    expect(shown?.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  });

  it('refuses a wrong answer at once, in the words of the schema, and asks again', async () => {
    const dir = folder();
    const { lines, prompts } = await setUp(dir, {
      'A short name': ['My Wrench!', 'wrench'],
      'Percent of the reading': ['lots', '99', '2'],
    });
    const idWords = 'expected a short name in small letters, digits and hyphens';
    expect(lines).toContain(`  Not taken: ${idWords}`);
    const { error } = stationFileSchema.shape.tools.element.shape.permissibleDeviation
      .unwrap()
      .safeParse({ kind: 'relative', percent: 99 });
    expect(lines).toContain(`  Not taken: ${error?.issues[0]?.message}`);
    expect(prompts.filter((prompt) => prompt.startsWith('Percent of'))).toHaveLength(3);
    expect((await readStationFile(join(dir, 'station.json'))).tools[0]?.id).toBe('wrench');
  });

  it('asks a tool again whose name or quantity is taken, and one that nothing is promised of', async () => {
    const dir = folder();
    const { lines } = await setUp(dir, {
      'A short name': ['tool', 'tool', 'gauge'],
      'Another tool?': ['yes', 'no'],
      'Serial number': ['EXAMPLE-W-1', 'G', 'EXAMPLE-G-1'],
      'Amount, in': ['0.01', '0.01'],
    });
    expect(lines.join('\n')).toContain('"tool" appears twice');
    expect((await readStationFile(join(dir, 'station.json'))).tools.map(({ id }) => id)).toEqual([
      'tool',
      'gauge',
    ]);
  });

  it('reads a certificate when it is named, and takes no limits beside it for granted', async () => {
    const dir = folder();
    const points = [10, 20, 30].map((reading) => ({ reading, error: 0.1, expanded: 0.2, k: 2 }));
    const certificate = {
      form: 'plugmark/certificate/1',
      number: 'C-1',
      laboratory: 'Example laboratory',
      serial: 'EXAMPLE-W-1',
      date: '2026-01-15',
      unit: 'N.m',
      points,
    };
    writeFileSync(join(dir, 'w.json'), JSON.stringify(certificate));
    const { lines } = await setUp(dir, {
      'Calibration certificate': ['missing.json', 'w.json', ''],
      'Permissible deviation': [''],
      'Source of this figure': '',
    });
    expect(lines.join('\n')).toContain('the calibration certificate cannot be read: no such file');
    const [wrench] = (await readStationFile(join(dir, 'station.json'))).tools;
    expect(wrench).toMatchObject({ certificate: 'w.json', basis: 'calibration certificate' });
    expect(wrench).not.toHaveProperty('permissibleDeviation');
  });

  it('writes nothing when it is not wanted, and never over a file that is there', async () => {
    const dir = folder();
    expect((await setUp(dir, { 'Write it': 'no' })).code).toBe(1);
    expect(readdirSync(dir)).toEqual([]);
    writeFileSync(join(dir, 'station.json'), 'mine');
    expect(await problemOf(() => setUp(dir))).toMatchObject({ code: 'file-exists' });
    expect(readFileSync(join(dir, 'station.json'), 'utf8')).toBe('mine');
  });

  it('leaves no station file behind when the station cannot be opened', async () => {
    const dir = folder();
    mkdirSync(join(dir, 'data'));
    writeFileSync(join(dir, 'data', 'station.db'), 'not a database, but long enough'.repeat(100));
    expect(await problemOf(() => setUp(dir))).toMatchObject({ code: 'log-damaged' });
    expect(readdirSync(dir)).toEqual(['data']);
  });

  it('on a pipe a wrong answer ends it, because those behind it would be taken for the answer', async () => {
    const dir = folder();
    const problem = await problemOf(() => setUp(dir, { 'A short name': 'My Wrench!' }, false));
    expect(problem).toMatchObject({
      code: 'answer-not-valid',
      where: expect.stringContaining('A short name'),
    });
    expect(readdirSync(dir)).toEqual([]);
  });
});

describe('questions made from a schema', () => {
  it('ask for a field that nobody gave words to, so that a new one is never missed', async () => {
    const schema = z.strictObject({
      colour: z.enum(['red', 'blue']),
      size: z.number().positive().exactOptional(),
      wet: z.boolean(),
    });
    const { dialogue, prompts } = answering({ colour: ['green', 'blue'], size: '1,5', wet: 'yes' });
    expect(await askObject({ dialogue, wordings: {}, later: new Set() }, schema)).toEqual({
      colour: 'blue',
      size: 1.5,
      wet: true,
    });
    expect(prompts).toEqual([
      'colour: red, blue: ',
      'colour: red, blue: ',
      'size (Enter: none): ',
      'wet: yes, no: ',
    ]);
  });

  it('leave out only fields of a tool that exist and are optional', () => {
    const { shape } = stationFileSchema.shape.tools.element;
    for (const field of LATER) {
      const type: unknown = Reflect.get(shape, field);
      expect(type, field).toBeInstanceOf(z.ZodExactOptional);
    }
  });
});

describe('setup as a program', () => {
  const LINES = [
    '',
    'Bay Two',
    'data',
    '',
    '',
    '',
    'torque',
    'wrench',
    '',
    'W-1',
    'no',
    '',
    'relative',
    '4',
    '',
    '',
  ];

  it('takes answers as lines from a pipe, and says what it wrote', async () => {
    const dir = folder();
    const running = start(['setup'], { cwd: dir });
    for (const line of [...LINES, 'typed', 'N·m', 'no', 'Technician One', '', 'yes']) running.type(line);
    running.child.stdin?.end();
    const ended = await running.ended;
    expect(ended).toMatchObject({ code: 0, stderr: '' });
    expect(ended.stdout).toContain('The station Bay Two is set up.');
    expect((await readStationFile(join(dir, 'station.json'))).tools).toHaveLength(1);
  });

  it('leaves nothing at all when the answers end early, or somebody presses Ctrl-C', async () => {
    const dir = folder();
    const early = start(['setup'], { cwd: dir });
    for (const line of LINES) early.type(line);
    early.child.stdin?.end();
    expect(await early.ended).toMatchObject({
      code: 2,
      stderr: expect.stringContaining('Nothing was written'),
    });
    const broken = start(['setup'], { cwd: dir });
    await broken.says('Language of the screen');
    broken.type('');
    await broken.says('Name of the station');
    broken.type('Bay Two');
    await broken.says('Folder for log');
    broken.child.kill('SIGINT');
    expect(await broken.ended).toMatchObject({
      code: 2,
      stderr: expect.stringContaining('Nothing was written'),
    });
    expect(readdirSync(dir)).toEqual([]);
  });
});
