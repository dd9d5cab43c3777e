import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { windowText, windowView } from '../../../src/cli/bench/window.ts';
import type { WindowOptions } from '../../../src/cli/bench/window-input.ts';
import { readStationFile } from '../../../src/cli/station/station-file.ts';
import { openJob } from '../../../src/job/open.ts';
import { workOrderSchema } from '../../../src/job/order.ts';
import { replay } from '../../../src/job/replay.ts';
import { ProblemError } from '../../../src/problem.ts';

const example = (name: string) => fileURLToPath(new URL(`../../../sim/example/${name}`, import.meta.url));
const ORDER = example('order-4.json');
const STATION = example('station-calibrated.json');
const ON = '2026-05-04';
const TYPED: WindowOptions = {
  thread: 'M14x1.25',
  seat: 'gasket',
  head: 'aluminium',
  lubrication: 'dry',
  resolution: 0.01,
  r: 1,
  atLeast: 0.95,
};

const lines = async (
  torque: string | undefined,
  options: Partial<WindowOptions> = {},
  columns: number | null = null,
) => windowText(await windowView(torque, { ...TYPED, ...options }, ON), columns, false).join('\n');
const problem = async (torque: string | undefined, options: Partial<WindowOptions> = {}) => {
  try {
    await windowView(torque, { ...TYPED, ...options }, ON);
  } catch (error) {
    if (error instanceof ProblemError) return error.problem;
    throw error;
  }
  return null;
};

describe('plugmark window with a rate', () => {
  it('says whether so many readings a second are enough, by the guard band of a pull', async () => {
    const at = (rate: number) => lines('25-30 N·m', { permissible: 2, rate });
    expect(await at(10)).toContain(
      'at this rate    At 10 readings a second this wrench cannot prove 25.00 to 30.00 N·m. It would take 25.',
    );
    expect(await at(100)).toContain('at this rate    this wrench can prove 25.00 to 30.00 N·m by calm pulls');
    expect(await lines('25-30 N·m', { permissible: 2 })).not.toContain('at this rate');
  });
});

describe('plugmark window on a typed specification', () => {
  it('prints window, guard band, what the wrench reads, the verdict and the budget with every source', async () => {
    const text = await lines('25-30 N·m', { permissible: 2, reading: '25.3 N·m' });
    expect(text).toContain('limits          25.00 to 30.00 N·m at the plug');
    expect(text).toContain('guard band      0.591 at the lower, 0.709 N·m at the upper limit');
    expect(text).toContain('accepted        25.60 to 29.29 N·m at the plug');
    expect(text).toContain('verdict         UNDECIDED');
    expect(text).toMatch(/permissible deviation +B {5}0\.5060 .* rectangular .* typed at the command line/);
    expect(text).toMatch(
      /check against its class {2}B {5}0\.1265 .* normal .* a quarter of the limit, not stated/,
    );
    expect(text).toMatch(/resolution +B .* step of the readings/);
    expect(text).toContain('k = 2.000 (95 %)');
    expect(text).toContain('NGK, European catalogue 2016/17');
  });

  it('draws the window and the density of the reading on a terminal, and nothing of it elsewhere', async () => {
    const plain = await lines('25-30 N·m', { permissible: 2 });
    const drawn = await lines('25-30 N·m', { permissible: 2 }, 90);
    expect(plain).not.toContain('┃');
    expect(drawn.startsWith(plain)).toBe(true);
    const plot = drawn.slice(plain.length).split('\n');
    expect(plot.some((line) => /^─+┃░+▓+░+┃─+$/.test(line))).toBe(true);
    expect(Math.max(...plot.map((line) => line.length))).toBeLessThanOrEqual(89);
    const peakColumn = (plot.find((line) => line.includes('█')) ?? '').indexOf('█');
    const axis = plot.find((line) => line.includes('▓')) ?? '';
    expect(axis[peakColumn]).toBe('▓');
  });

  it('speaks plain ASCII where the terminal does', async () => {
    const view = await windowView('25-30 N·m', { ...TYPED, spread: 1, arm: 300, offset: 40, angle: 45 }, ON);
    expect(windowText(view, 80, true).join('')).toMatch(/^[\x20-\x7e]*$/);
  });

  it('says before the job that a wrench cannot prove a window, and what it would take', async () => {
    const text = await lines('10-10.8 N·m', { thread: 'M10x1' });
    expect(text).toContain('NO: this wrench cannot prove this window; it would need U below 0.400 N·m');
    expect(text).not.toContain('wrench reads    ');
  });

  it('turns limits into what the wrench must read through an adapter, and a reading into what the plug saw', async () => {
    const view = await windowView(
      '25-30 N·m',
      { ...TYPED, permissible: 1, arm: 300, offset: 40, reading: '24 N·m' },
      ON,
    );
    expect(view.measured.value).toBeCloseTo((24 * 340) / 300, 12);
    expect(view.wrenchReads.from).toBeCloseTo((view.window.acceptLower * 300) / 340, 12);
    expect(view.measured.budget.rows.map(({ cause }) => cause)).toContain('adapter-arm');
  });

  it('shows the grades and the risks where they are asked for', async () => {
    const text = await lines('25-30 N·m', { grades: true, spread: 1.2, reading: '25.3 N·m' });
    expect(text).toContain('UNDECIDED (conditional-pass)');
    expect(text).toMatch(/false OK \(customer\), .* done again for nothing \(shop\)/);
  });

  it.each<[string, string | undefined, Partial<WindowOptions>, string]>([
    ['nothing to look at', undefined, {}, 'nothing-named'],
    ['an angle that nobody could mean', '5 turns', {}, 'figure-impossible'],
    ['a reversed range', '30-25 N·m', {}, 'range-reversed'],
    ['a figure that nobody could mean', '225-230 N·m', {}, 'figure-impossible'],
    ['a figure that no table comes near', '42-45 N·m', {}, 'figure-implausible'],
    ['a thread that no plug has', '25-30 N·m', { thread: 'M13' }, 'input-not-valid'],
    ['half an adapter', '25-30 N·m', { arm: 300 }, 'input-not-valid'],
    ['an adapter without a lever', '25-30 N·m', { arm: 30, offset: 40, angle: 180 }, 'input-not-valid'],
    ['a rule that nobody knows', '25-30 N·m', { rule: 'hope' }, 'input-not-valid'],
    ['a reading in mm', '25-30 N·m', { reading: '25 mm' }, 'unit-of-another-quantity'],
  ])('refuses %s', async (_what, torque, options, code) => {
    expect(await problem(torque, options)).toMatchObject({ code });
  });
});

describe('plugmark window on an order and a station', () => {
  const files = { order: ORDER, station: STATION };

  it('has the certificate in its budget, with correction, drift and repeatability', async () => {
    const text = await lines(undefined, files);
    expect(text).toContain('certificate EXAMPLE-2026-0117, Example Calibration Laboratory, 2026-03-16');
    for (const term of ['calibration', 'drift since calibration', 'resolution', 'repeatability'])
      expect(text).toMatch(new RegExp(`^ {2}${term} `, 'm'));
    expect(text).toMatch(/effective degrees of freedom \d+\.\d, k = 2\.\d{3}/);
  });

  it('says that an instrument would be refused, and why', async () => {
    const view = await windowView(undefined, { ...TYPED, ...files }, '2027-03-17');
    expect(view.refusals.map(({ code }) => code)).toEqual(['calibration-expired']);
    expect(windowText(view, null, false).join('\n')).toContain(
      'REFUSED         its calibration expired on 2027-03-16',
    );
  });

  it('gives the figures of the live job, and of a record judged again, bit for bit', async () => {
    const view = await windowView(undefined, { ...TYPED, ...files }, ON);
    const { instruments, decision } = await readStationFile(STATION);
    const order = workOrderSchema.parse(JSON.parse(await readFile(ORDER, 'utf8')));
    const opened = openJob(order, instruments, { on: ON, decision, overrides: [] });
    if (!opened.ok) throw new Error(opened.error.message);
    expect(opened.value[0].torqueWindow).toEqual(view.window);
    const again = replay(JSON.parse(JSON.stringify(opened.value)));
    if (!again.ok) throw new Error(again.error.message);
    expect(again.value.state().torqueWindow).toEqual(view.window);
  });
});
