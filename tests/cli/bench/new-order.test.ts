import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { stationHistory } from '../../../src/cli/bench/earlier-orders.ts';
import { newOrder } from '../../../src/cli/bench/new-order.ts';
import { readLibrary } from '../../../src/cli/bench/specification-files.ts';
import { openInLog, openStation } from '../../../src/cli/station/station.ts';
import { type LoadedStation, readStationFile } from '../../../src/cli/station/station-file.ts';
import type { LibraryEntry } from '../../../src/job/library.ts';
import { type Override, openJob } from '../../../src/job/open.ts';
import { type WorkOrder, workOrderSchema } from '../../../src/job/order.ts';
import { shownLimit } from '../../../src/quantity/shown.ts';
import { orThrow } from '../../../src/result.ts';
import { exampleOrder } from '../../job/workshop.ts';
import { answering, problemOf } from '../answers.ts';
import { exampleJson, folder } from '../program.ts';

const ON = '2026-05-04';
const stamp = () => ({ at: `${ON}T09:30:00.000Z`, monoUs: 1 });

const entry = (name: string, cylinders: 4 | 8): LibraryEntry => {
  const { engine, plug, specification } = exampleOrder(cylinders);
  return {
    form: 'plugmark/specification/1',
    name,
    engine,
    plug,
    specification,
    enteredBy: 'Technician One',
    enteredOn: ON,
  };
};

/** A station with a library of two engines, and the jobs that were opened there before. */
async function shop(
  given: { readonly before?: readonly WorkOrder[]; readonly change?: Record<string, unknown> } = {},
) {
  const dir = folder();
  writeFileSync(
    join(dir, 'station.json'),
    JSON.stringify({ ...exampleJson('station.json'), ...given.change }),
  );
  const file = await readStationFile(join(dir, 'station.json'));
  mkdirSync(file.library, { recursive: true });
  const entries = [entry('Example V8', 8), entry('Example four', 4)];
  for (const [i, one] of entries.entries())
    writeFileSync(join(file.library, `${i}.json`), JSON.stringify(one));
  const station = await openStation(file.station, file.folder, stamp);
  for (const order of given.before ?? []) {
    const [event] = orThrow(
      openJob(order, file.instruments, { on: ON, decision: file.decision, overrides: [] }),
    );
    await openInLog(station, [{ by: 'technician', event }], stamp());
  }
  const log = await stationHistory(station);
  onTestFinished(() => station.log.close());
  return { file, history: log, library: await readLibrary(file.library) };
}

type Shop = { readonly file: LoadedStation } & Omit<Parameters<typeof newOrder>[1], 'on' | 'overrides'>;

async function ask(
  at: Shop,
  answers: Parameters<typeof answering>[0],
  { patient = true, overrides = [] as readonly Override[] } = {},
) {
  const talk = answering(answers, patient);
  const asked = await newOrder(talk.dialogue, { ...at, on: ON, overrides });
  return { asked, order: asked.do === 'open' ? asked.order : null, ...talk, text: talk.lines.join('\n') };
}

/** What a person types: every answer and the Enter behind it. */
const keysOf = (answers: Parameters<typeof answering>[0], prompts: readonly string[]) =>
  prompts.length + Object.values(answers).flat().join('').length;

const NEW_VEHICLE = {
  Technician: 'Technician One',
  Plate: 'AB 12',
  VIN: 'ZZ9EXAMP1PM000104',
  Odometer: '84210',
  'Number, words': '1',
};

describe('a new job in a dialogue', () => {
  it('of a vehicle never seen takes eleven lines where engine and figures are in the library', async () => {
    const at = await shop({ before: [exampleOrder(8)] });
    const answers = { ...NEW_VEHICLE, Technician: '' };
    const { order, prompts } = await ask(at, answers);
    expect(prompts).toHaveLength(11);
    expect(keysOf(answers, prompts)).toBe(11 + 'AB 12ZZ9EXAMP1PM000104842101'.length);
    const { engine, plug, specification } = exampleOrder(4);
    expect(order).toEqual({
      form: 'plugmark/work-order/1',
      job: 'EX-8002',
      technician: 'Technician One',
      vehicle: { plate: 'AB 12', vin: 'ZZ9EXAMP1PM000104', odometerKm: 84210 },
      engine,
      plug,
      specification,
    });
  });

  it('of a vehicle that was here before takes twenty keys, its plate and its odometer among them', async () => {
    const at = await shop({ before: [{ ...exampleOrder(8), complaint: 'stalls when cold' }] });
    const answers = { Plate: 'example8', Odometer: '91' };
    const { order, prompts, text } = await ask(at, answers);
    expect(keysOf(answers, prompts)).toBe(21);
    expect(text).toContain('was here on 2026-05-04, job EX-8001');
    expect(text).toContain('less than last time (84210 km)');
    const { vehicle, ...before } = exampleOrder(8);
    expect(order).toEqual({
      ...before,
      job: 'EX-8002',
      vehicle: { ...vehicle, odometerKm: 91 },
    });
  });

  it('gives the same order as a file, which opens a job with the same windows', async () => {
    const at = await shop({ before: [exampleOrder(8)] });
    const { order, text } = await ask(at, { Plate: 'EXAMPLE 8', Odometer: '84210' });
    expect(order).toEqual({ ...exampleOrder(8), job: 'EX-8002' });
    expect(workOrderSchema.parse(JSON.parse(JSON.stringify(order)))).toEqual(order);
    const [opened] = orThrow(
      openJob(exampleOrder(8), at.file.instruments, { on: ON, decision: at.file.decision, overrides: [] }),
    );
    const { acceptLower, acceptUpper } = opened.torqueWindow;
    const ends = (lower: number, upper: number, unit: 'N.m' | 'mm') =>
      `accepted ${shownLimit(lower, unit, 'lower')} to ${shownLimit(upper, unit, 'upper')}`;
    expect(text.replaceAll(/ +/g, ' ')).toContain(ends(acceptLower, acceptUpper, 'N.m'));
    expect(text).toContain(
      ends(opened.gapWindow?.acceptLower ?? 0, opened.gapWindow?.acceptUpper ?? 0, 'mm'),
    );
  });

  it('refuses a number that is taken, and goes on with a job that is open when its number is given', async () => {
    const at = await shop({ before: [exampleOrder(8), exampleOrder(4)] });
    const { asked, prompts, text } = await ask(at, { 'Job number': 'EX-8001' });
    expect(asked).toEqual({ do: 'resume', job: 'EX-8001' });
    expect(prompts).toHaveLength(1);
    expect(text).toContain('Open: ');
    const closed = { ...at, history: { ...at.history, open: [] } };
    const { text: said, order } = await ask(closed, {
      ...NEW_VEHICLE,
      'Job number': ['EX-8001', 'EX 9', 'X-1'],
    });
    expect(said).toContain('job EX-8001 exists and is closed');
    expect(said).toContain('letters, digits, dots');
    expect(order?.job).toBe('X-1');
  });

  it('looks at the check digit at once: binding for North America, a note elsewhere', async () => {
    const at = await shop();
    const wrong = ['1M8GDM9A1KP042788', '1M8GDM9AXKP042788'];
    const { order, text } = await ask(at, { ...NEW_VEHICLE, VIN: wrong });
    expect(text).toContain('Not taken: the check digit of the VIN is 1; expected X');
    expect(order?.vehicle.vin).toBe(wrong[1]);
    const elsewhere = await ask(at, { ...NEW_VEHICLE, VIN: 'zz9 examp3pm000104' });
    expect(elsewhere.text).toContain('Note: the check digit of the VIN is 3; expected 1');
    expect(elsewhere.order?.vehicle.vin).toBe('ZZ9EXAMP3PM000104');
  });

  it('lets every line be said again before Enter opens, and opens nothing on q', async () => {
    const at = await shop();
    const { order } = await ask(at, {
      ...NEW_VEHICLE,
      'Enter opens': ['3', '10', ''],
      Plate: ['AB 12', 'CD 34'],
      Crowfoot: ['', '300 40 90'],
    });
    expect(order?.vehicle.plate).toBe('CD 34');
    expect(order?.adapter).toMatchObject({ armMm: 300, offsetMm: 40, angleDeg: 90 });
    expect((await ask(at, { ...NEW_VEHICLE, 'Enter opens': 'q' })).asked).toEqual({ do: 'nothing' });
  });

  it('takes a universal joint for what its bend does, and a wobble extension only with what was measured', async () => {
    const at = await shop();
    const bent = await ask(at, { ...NEW_VEHICLE, Crowfoot: ['universal 20', '300 40 90; universal 10'] });
    expect(bent.text).toContain('15° is the most');
    expect(bent.order).toMatchObject({
      adapter: { armMm: 300, offsetMm: 40, angleDeg: 90 },
      flexJoint: { kind: 'universal-joint', bentDeg: 10 },
    });
    expect(bent.text).toContain('universal joint, bent by up to 10°');
    const wobble = await ask(at, {
      ...NEW_VEHICLE,
      Crowfoot: ['wobble', 'wobble 5', 'wobble 5 3 % tried on the bench'],
    });
    expect(wobble.text).toContain('nobody can compute what torque a wobble extension passes on');
    expect(wobble.order?.flexJoint).toEqual({
      kind: 'wobble-extension',
      bentDeg: 5,
      stated: { percent: 3, basis: 'tried on the bench' },
    });
    expect(wobble.order?.adapter).toBeUndefined();
  });

  it('takes the facts of the right vehicle when the plate is corrected to that of another one', async () => {
    const at = await shop({ before: [exampleOrder(8), exampleOrder(4)] });
    const { order } = await ask(at, {
      Plate: ['EXAMPLE 8', 'EXAMPLE 4'],
      Odometer: '90000',
      'Enter opens': ['3', ''],
    });
    const four = exampleOrder(4);
    expect(order).toEqual({
      ...four,
      job: order?.job,
      vehicle: { ...four.vehicle, odometerKm: 90000 },
    });
  });

  it('finds an entry of the library by words of its name, and says so where several have them', async () => {
    const at = await shop();
    const { order, text } = await ask(at, { ...NEW_VEHICLE, 'Number, words': ['example', 'truck', 'v8'] });
    expect(text).toContain('2 match: "Example four", "Example V8"');
    expect(text).toContain('the library has no specification of this name');
    expect(order?.engine).toEqual(exampleOrder(8).engine);
  });

  it('takes miles, and keeps kilometres', async () => {
    const at = await shop();
    expect((await ask(at, { ...NEW_VEHICLE, Odometer: '52,300 mi' })).order?.vehicle.odometerKm).toBe(84169);
    const { order, text } = await ask(at, { ...NEW_VEHICLE, Odometer: ['many', '84 210 km'] });
    expect(text).toContain('expected whole kilometres or miles');
    expect(order?.vehicle.odometerKm).toBe(84210);
  });
});

describe('figures typed from the service information', () => {
  const TYPED = {
    ...NEW_VEHICLE,
    'Number, words': 'new',
    'Engine (': 'v8',
    '1 to 4': '1',
    'Cylinder head': 'al',
    'Part number': 'EXAMPLE-14G',
    Thread: 'm14',
    Seat: 'g',
    'Torque as printed': '25-30 N·m',
    'Gap as printed': '0.7-0.8 mm',
    Publisher: 'engine',
    'Title of': 'Workshop manual of an invented engine',
  };

  it('make the same engine as the example, and go into the library under the name that is given', async () => {
    const at = await shop();
    const { asked, order, text } = await ask(at, { ...TYPED, 'Name to keep them': ['example v8', 'My V8'] });
    const { engine } = exampleOrder(8);
    expect(order?.engine).toEqual({ ...engine, description: 'V8' });
    expect(order?.specification).toEqual({
      torque: '25-30 N·m',
      gap: '0.7-0.8 mm',
      threads: 'dry',
      source: { kind: 'engine-maker', title: 'Workshop manual of an invented engine' },
    });
    expect(text).toContain('already has the name "example v8"');
    expect(asked).toMatchObject({ keep: { name: 'My V8', enteredBy: 'Technician One', enteredOn: ON } });
  });

  it('are each looked at when they are given, with the place of what is wrong', async () => {
    const at = await shop();
    const { text, order } = await ask(at, {
      ...TYPED,
      'Engine (': ['W16', 'v0', 'V8'],
      '1 to 4': ['5', '1 3 5 7 / 2 4 6 8'],
      'Torque as printed': ['25-30', '25-30 mm', '25-30 N·m'],
      'Gap as printed': ['', '0.8-0.7 mm', '0.7-0.8 mm'],
      'Order in which you work': ['1 2 3', '8 7 6 5 4 3 2 1'],
      'Firing order': ['2 1 3 4 5 6 7 8', ''],
    });
    for (const words of [
      'expected for example "in-line 4"',
      'expected 2 to 24 cylinders',
      'expected every cylinder of banks exactly once (1, 2, 3, 4, 5, 6, 7, 8)',
      'a firing order starts with the first cylinder',
      'the range runs from 0.8 down to 0.7',
    ])
      expect(text).toContain(words);
    expect(order?.engine.serviceOrder).toEqual([8, 7, 6, 5, 4, 3, 2, 1]);
  });

  it('whose plug cannot be are asked for from the plug on', async () => {
    const { order, text } = await ask(await shop(), {
      ...TYPED,
      'Part number': ['EXAMPLE-14G', 'EXAMPLE-14G'],
      Thread: ['m14', 'm14'],
      Seat: ['g', 'g'],
      Hex: ['1', '16'],
      'Torque as printed': ['25-30 N·m', '25-30 N·m'],
      'Gap as printed': ['0.7-0.8 mm', '0.7-0.8 mm'],
      Publisher: ['engine', 'engine'],
      'Title of': ['Manual', 'Manual'],
    });
    expect(text).toContain('1 mm cannot be for M14x1.25');
    expect(order?.plug.hexMm).toBe(16);
  });

  it('are asked for in words, never by the name of a field', async () => {
    const { prompts, order } = await ask(await shop(), {
      ...TYPED,
      'The source says when': 'yes',
      'After so many kilometres': '60000',
    });
    expect(prompts.filter((prompt) => /^\w+\.\w+/.test(prompt))).toEqual([]);
    expect(order?.specification.change).toEqual({ km: 60_000 });
  });

  it('can have wires, a gap that is only looked at, a used plug and a reduction', async () => {
    const at = await shop();
    const { order } = await ask(at, {
      ...TYPED,
      'Plug: new': 'used',
      'A torque reduced': 'yes',
      'Reduced by': '30',
      'On the threads': 'anti',
      'Who set': 'Foreman One',
      'Rules for the gap': 'yes',
      'The gap is checked by': 'wire',
      'The wire that must pass': '0.72 mm',
      'The wire that must not': ['0.78', '0.78 mm'],
      'How far a wire': '0.003 mm',
      'Widest gap': '0.9 mm',
    });
    expect(order?.plug.condition).toBe('used');
    expect(order?.specification).toMatchObject({
      reduction: { percent: 30, lubricant: 'anti-seize', setBy: 'Foreman One' },
      gapRules: {
        check: 'wire',
        wires: { go: '0.72 mm', noGo: '0.78 mm', within: '0.003 mm' },
        serviceLimit: '0.9 mm',
      },
    });
    const looked = await ask(at, {
      ...TYPED,
      'Rules for the gap': 'yes',
      'The gap is checked by': 'visual-only',
      'Gap as printed': '',
    });
    expect(looked.order?.specification).toMatchObject({ gapRules: { check: 'visual-only' } });
    expect(looked.order?.specification).not.toHaveProperty('gap');
  });

  it('that no table comes near are taken only with the name of whoever looked again', async () => {
    const at = await shop();
    const { text, order } = await ask(at, {
      ...TYPED,
      'Torque as printed': ['42-45 N·m', '42-45 N·m'],
      'Gap as printed': ['0.7-0.8 mm', '0.7-0.8 mm'],
      Publisher: ['e', 'e'],
      'Title of': ['Manual', 'Manual'],
      'Who checked': ['', 'Foreman One'],
    });
    expect(text).toContain('42-45 N·m on M14x1.25 is not usual');
    expect(order?.specification).toMatchObject({ torque: '42-45 N·m', checkedBy: 'Foreman One' });
  });
});

describe('the instruments of a new job', () => {
  const certified = (due: string) => {
    const points = [10, 20, 40].map((reading) => ({ reading, error: 0, expanded: 0.1, k: 2 }));
    const certificate = {
      form: 'plugmark/certificate/1',
      number: 'C-1',
      laboratory: 'Example laboratory',
      serial: 'EXAMPLE-W-1',
      date: '2025-05-01',
      due,
      unit: 'N.m',
      points,
    };
    const [wrench, gauge] = exampleJson('station.json').tools;
    const file = join(folder(), 'w.json');
    writeFileSync(file, JSON.stringify(certificate));
    return shop({ change: { tools: [{ ...wrench, certificate: file }, gauge] } });
  };

  it('stand there with the days that their calibration has left', async () => {
    const { text } = await ask(await certified('2026-05-20'), NEW_VEHICLE);
    expect(text).toMatch(
      /wrench +EXAMPLE-W-1; ✓ in date: certificate C-1 of 2025-05-01, due 2026-05-20, 16 days left/,
    );
    expect(text).toMatch(/gauge +EXAMPLE-G-1; · no certificate; within 0.01 mm by data sheet of the gauge/);
  });

  it('out of date ask who answers for it, and open nothing where nobody does', async () => {
    const at = await certified('2026-05-01');
    const { asked, text } = await ask(at, {
      ...NEW_VEHICLE,
      'Supervisor who answers': 'Foreman One',
      'Reason to use': 'it is away',
    });
    expect(text).toContain('OUT OF DATE');
    expect(text).toContain('3 days ago');
    expect(asked).toMatchObject({
      do: 'open',
      overrides: [{ tool: 'wrench', by: 'Foreman One', reason: 'it is away' }],
    });
    const nobody = await ask(at, { ...NEW_VEHICLE, 'A number changes': 'q' });
    expect(nobody.asked).toEqual({ do: 'nothing' });
    expect(nobody.text).toContain('NOT POSSIBLE');
    expect(await problemOf(() => ask(at, NEW_VEHICLE, { patient: false }))).toMatchObject({
      code: 'calibration-expired',
    });
  });
});
