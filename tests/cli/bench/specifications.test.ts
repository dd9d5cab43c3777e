import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  addSpecification,
  checkSpecifications,
  listSpecifications,
  showSpecification,
} from '../../../src/cli/bench/specifications.ts';
import { openStation, openStationFolder, stateOf } from '../../../src/cli/station/station.ts';
import { readStationFile } from '../../../src/cli/station/station-file.ts';
import { canonical } from '../../../src/evidence/canonical.ts';
import { fileNameOf, matchingEntries } from '../../../src/job/library.ts';
import { routineSchema, USUAL_ROUTINE } from '../../../src/job/routine.ts';
import { problemOf, said } from '../answers.ts';
import { example, exampleJson, folder } from '../program.ts';

const stamp = () => ({ at: '2026-05-04T09:30:00.000Z', monoUs: 1 });

let dir = '';
let scope: { readonly station: string };
beforeEach(async () => {
  dir = folder();
  scope = { station: join(dir, 'station.json') };
  writeFileSync(scope.station, JSON.stringify(exampleJson('station.json')));
  const { station, folder: data } = await readStationFile(scope.station);
  (await openStation(station, data, stamp)).log.close();
});
const library = () => join(dir, 'example-bay', 'specifications');
const add = (name: string, order = 'order-8.json') =>
  said(() => addSpecification({ ...scope, order: example(order), name, by: 'Foreman One' }));

describe("the shop's own library of specifications", () => {
  it('takes the figures of an order, with who entered them when, and tells the log', async () => {
    expect((await add('Example V8')).value).toBe(0);
    const { engine, plug, specification } = exampleJson('order-8.json');
    expect(JSON.parse(readFileSync(join(library(), 'example-v8.json'), 'utf8'))).toEqual({
      form: 'plugmark/specification/1',
      name: 'Example V8',
      engine,
      plug,
      specification,
      enteredBy: 'Foreman One',
      enteredOn: expect.stringMatching(/^\d{4}-\d\d-\d\d$/),
    });
    const stationFolder = await openStationFolder(join(dir, 'example-bay'));
    expect(stateOf(stationFolder).specifications).toContain(canonical(specification));
    const recorded = stationFolder.log.stationEntries().at(-1);
    expect(recorded).toMatchObject({ by: 'Foreman One', event: { type: 'specification-recorded' } });
    stationFolder.log.close();
  });

  it('lists what holds all the words, and shows one with its engine', async () => {
    await add('Example V8');
    await add('Example four', 'order-4.json');
    const lines = async (...words: readonly string[]) =>
      (await said(() => listSpecifications(words, scope))).text.trim().split('\n');
    expect((await lines()).map((line) => line.split(':')[0])).toEqual(['Example four', 'Example V8']);
    expect(await lines('V8')).toHaveLength(1);
    expect(await lines('truck')).toEqual(['No specification matches.']);
    const { text } = await said(() => showSpecification(['v8'], scope));
    expect(text).toContain('1   3   5   7');
    expect(text).toContain('front');
    expect(text).toContain('"torque": "25-30 N·m"');
    expect(await problemOf(() => showSpecification(['example'], scope))).toMatchObject({
      message: '2 match',
    });
  });

  it('never writes over an entry, whatever its name becomes as a file', async () => {
    await add('Example V8');
    for (const name of ['Example V8', ' example  v8'.trim(), 'Example V8!'])
      expect(await problemOf(() => add(name)), name).toMatchObject({ code: 'name-taken' });
    expect(readdirSync(library())).toEqual(['example-v8.json']);
  });

  it('takes no figures that no job could be opened with', async () => {
    const order = exampleJson('order-8.json');
    const path = join(dir, 'order.json');
    for (const [change, code] of [
      [{ torque: '42-45 N·m' }, 'figure-implausible'],
      [{ gap: '0.8-0.7 mm' }, 'range-reversed'],
    ] as const) {
      writeFileSync(path, JSON.stringify({ ...order, specification: { ...order.specification, ...change } }));
      expect(await problemOf(() => addSpecification({ ...scope, order: path, name: 'X' }))).toMatchObject({
        code,
      });
    }
    expect(existsSync(library())).toBe(false);
  });

  it('is looked over file by file: unreadable, implausible, taken twice, changed by hand', async () => {
    await add('Example V8');
    const check = () => said(() => checkSpecifications(scope));
    expect(await check()).toMatchObject({
      value: 0,
      text: expect.stringContaining('1 specifications, 0 wrong'),
    });
    const path = join(library(), 'example-v8.json');
    const entry = JSON.parse(readFileSync(path, 'utf8'));
    const write = (name: string, change: object) =>
      writeFileSync(join(library(), name), JSON.stringify({ ...entry, ...change }));
    write('by-hand.json', {
      name: 'By hand',
      specification: { ...entry.specification, torque: '24-30 N·m' },
    });
    expect(await check()).toMatchObject({ value: 0, text: expect.stringMatching(/NOTE .*by-hand.json/) });
    write('far-off.json', {
      name: 'Far off',
      specification: { ...entry.specification, torque: '300-310 N·m' },
    });
    write('other.json', { colour: 'red' });
    write('twin.json', {});
    const { value, text } = await check();
    expect(value).toBe(1);
    for (const words of [
      /WRONG .*far-off.json: specification.torque/,
      /WRONG .*other.json/,
      /WRONG .*twin.json/,
    ])
      expect(text.replaceAll(/\n +/g, ' ')).toMatch(words);
    expect(text).toContain('5 specifications, 3 wrong');
  });

  it('may be a folder that several stations share', async () => {
    writeFileSync(
      scope.station,
      JSON.stringify({ ...exampleJson('station.json'), specifications: 'of-the-shop' }),
    );
    await add('Example V8');
    expect(readdirSync(join(dir, 'of-the-shop'))).toEqual(['example-v8.json']);
  });
});

describe('names in the library', () => {
  it('become names of files that lead nowhere else', () => {
    expect(fileNameOf('../../etc/passwd')).toBe('etc-passwd.json');
    expect(fileNameOf('Größe 1,8')).toBe('gro-e-1-8.json');
    expect(fileNameOf('***')).toBe('specification.json');
  });

  it('find the one that bears just this name, even where others hold it', () => {
    const { plug, specification } = exampleJson('order-8.json');
    const entries = ['V8', 'V8 with turbo'].map((name) => ({ name, plug, specification }));
    expect(matchingEntries(entries, ' v8 ')).toEqual(entries.slice(0, 1));
    expect(matchingEntries(entries, 'turbo V8')).toEqual(entries.slice(1));
    expect(matchingEntries(entries, '')).toEqual(entries);
  });
});

describe('the routine of a station', () => {
  const routineOf = async (routine?: string) => {
    writeFileSync(
      scope.station,
      JSON.stringify({ ...exampleJson('station.json'), ...(routine === undefined ? {} : { routine }) }),
    );
    return (await readStationFile(scope.station)).routine;
  };

  it('is the usual one unless the file says otherwise, and none where it says none', async () => {
    expect(await routineOf()).toEqual(USUAL_ROUTINE);
    expect(await routineOf('none')).toBeNull();
  });

  it('may be a file, seen from the station file; a fault in it is named with its place', async () => {
    const routine = exampleJson('routine.json');
    mkdirSync(join(dir, 'own'));
    writeFileSync(join(dir, 'own', 'routine.json'), JSON.stringify(routine));
    expect(await routineOf('own/routine.json')).toEqual(routineSchema.parse(routine));
    const twice = { ...routine, fitting: routine.beforeRemoval };
    writeFileSync(join(dir, 'own', 'routine.json'), JSON.stringify(twice));
    expect(await problemOf(() => routineOf('own/routine.json'))).toMatchObject({
      where: expect.stringContaining('routine.json: fitting[0].id'),
      message: expect.stringContaining('"engine-cold" is there twice'),
    });
    expect(await problemOf(() => routineOf('none.json'))).toMatchObject({ code: 'file-unreadable' });
  });
});
