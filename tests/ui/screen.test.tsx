import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import type { JobState } from '../../src/job/state.ts';
import type { BenchView } from '../../src/ui/view.ts';
import { bare, drawn, inkColumns, linesOf } from './drawn.tsx';
import {
  attemptOf,
  cylinderIn,
  engineOf,
  jobWith,
  judged,
  linked,
  lost,
  questionOn,
  viewOf,
  withCylinder,
} from './fixtures.ts';
import { TRACE, VIEWS } from './views.ts';

// Without this the colours that a pipe does not get would be missing in every case, and the test could not fail.
vi.hoisted(() => {
  process.env['FORCE_COLOR'] = '2';
});

const SIZES = [
  { columns: 60, rows: 20 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
  { columns: 200, rows: 60 },
] as const;

const COLOR_CODE = /\u001b\[(?:3[0-8]|4[0-8]|9[0-7]|10[0-7])(?:;\d+)*m/;

const view = (name: string): BenchView => VIEWS[name] ?? expect.fail(`no view ${name}`);
const text = (name: string, drawing = {}) => linesOf(view(name), drawing).join('\n');

/** Where the panel takes the rows of a small window, the engine goes. */
const NO_ENGINE = new Set(['windows', 'list', 'chosen', 'oldPlugs', 'newPlugs', 'removed']);

const WORDS: Readonly<Record<string, readonly (string | RegExp)[]>> = {
  start: [
    'Switch on the gauge',
    'engine cold',
    /hand tools\s+only/,
    "maker's service",
    'seeking',
    '2 entries on disk',
  ],
  gap: ['Measure the gap of the plug for cylinder 7.', '✓ OK', '· to do', '142 entries on disk'],
  pulling: [
    /Cylinder 2: fit the plug by hand/,
    '26.4 N·m',
    'in the window',
    '25.00',
    '30.00',
    'SIMULATED',
    '█',
  ],
  ok: [/Cylinder 2 torque OK 27\.41 N·m/, '✓', '142 entries on disk'],
  notOk: [
    /✗ Cylinder 2 torque NOT OK 31\.22 N·m, over the window/,
    '[b] ',
    '[d] discard',
    '? ask',
    'look at its threads',
  ],
  unsure: ['waits for your answer', '[f] ', '[r] re-hit', '[h] ', 'What was this pull?'],
  undecided: [/\? Cylinder 2 torque UNDECIDED 29\.60 N·m/, '! again', 'not proven'],
  lost: ['wrench ✗ lost (it stopped answering)', 'The wrench is lost'],
  proven: ['Press s to sign and finish', '[s] sign'],
  closed: ['closed and complete', 'every gap and every torque is proven', '[q] leave'],
  windows: [
    '25.00 to 30.00 N·m',
    '25.61 to 29.27',
    '0.700 to 0.800 mm',
    'no certificate',
    'engine cold',
    '[Enter]',
  ],
  list: [
    'The engine is cold',
    'Ignition off',
    'twist',
    'blown clean',
    'Hand tools only',
    '[space] tick',
    '[a] all',
    '?',
  ],
  chosen: ['Compound in the boots', '[1]', 'as the maker allows', '?', '[1-2] choose'],
  oldPlugs: [
    'cylinder 7',
    'normal',
    'overheated',
    'Looks: light grey',
    'Likely from',
    '[x] damage',
    '[t] thread',
    'differs from the others',
  ],
  newPlugs: ['EX-1234', 'M14', '1.25 mm', 'flat, new gasket', '[x] differs', 'lot'],
  settled: ['✓ OK', '≈'],
  removed: ['cylinder 1', '0.94 mm', '22 N·m'],
  closedOpen: ['not complete', /Still open: cylinder 6: no torque yet; cylinder 8: gap n/, '[q] leave'],
};

describe.each(Object.keys(VIEWS))('the screen %s', (name) => {
  it.each(SIZES)('fits $columns by $rows, in Unicode and in ASCII, with and without help', (size) => {
    for (const drawing of [size, { ...size, ascii: true }, { ...size, help: true }]) {
      const lines = linesOf(view(name), drawing);
      expect(lines).toHaveLength(size.rows - 1);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(size.columns);
    }
  });

  it.each(SIZES)('says what it must at $columns by $rows', (size) => {
    // Sentences may be folded between words.
    const flat = text(name, size).replace(/\s+/g, ' ');
    for (const word of WORDS[name] ?? expect.fail('no words')) {
      if (typeof word === 'string') expect(flat).toContain(word);
      else expect(flat).toMatch(word);
    }
    if (!NO_ENGINE.has(name) || size.rows >= 40) expect(flat).toContain('front');
  });

  it('is drawn by Ink line for line', () => {
    const size = { columns: 120, rows: 40 };
    const trimmed = (lines: readonly string[]) => lines.map((line) => line.trimEnd());
    expect(trimmed(bare(drawn(view(name), size)).split('\n'))).toEqual(trimmed(linesOf(view(name), size)));
  });

  it('says the same without colour as with it', () => {
    const plain = drawn(view(name), { color: false });
    const colored = drawn(view(name), { color: true });
    expect(colored).toMatch(COLOR_CODE);
    expect(plain).not.toMatch(COLOR_CODE);
    // Ink leaves spaces at the end of a line where they have a colour.
    const trimmed = (text: string) => bare(text).replace(/ +$/gm, '');
    expect(trimmed(plain)).toBe(trimmed(colored));
  });

  it('keeps to ASCII when asked', () => {
    expect(drawn(view(name), { ascii: true, color: true })).toMatch(/^[\x20-\x7e\n\u001b]+$/);
  });
});

describe('what a technician must not miss', () => {
  it('names the target by a pointer and by reverse video', () => {
    const frame = drawn(view('gap'), { columns: 120, rows: 24 });
    expect(bare(frame)).toMatch(/► 7 · to do/);
    const reversed = [...frame.matchAll(/\u001b\[7m(.*?)\u001b\[27m/g)].map(([, inner]) => bare(inner ?? ''));
    expect(reversed.join('|')).toContain('7 ');
    expect(reversed.join('|')).not.toMatch(/[1358] ✓/);
  });

  it('says SIMULATED whatever else there is to say', () => {
    for (const [name, one] of Object.entries(VIEWS)) {
      for (const size of SIZES) {
        expect(linesOf({ ...one, sources: ['simulated'] }, size)[0], name).toMatch(/SIMULATED\s*$/);
        expect(linesOf({ ...one, sources: ['simulated'] }, { ...size, help: true })[0], name).toMatch(
          /SIMULATED\s*$/,
        );
      }
    }
    expect(text('gap')).not.toContain('SIMULATED');
    const once = viewOf(jobWith(3, { sources: ['linked', 'simulated'] }));
    expect(linesOf(once)[0]).toContain('SIMULATED');
  });

  it('says REPLAYED in the same place, and both where there are both', () => {
    const replayed = viewOf(jobWith(3), {}, { sources: ['linked', 'replayed'] });
    expect(linesOf(replayed)[0]).toMatch(/REPLAYED\s*$/);
    const both = viewOf(jobWith(3, { sources: ['simulated'] }), {}, { sources: ['replayed'] });
    expect(linesOf(both)[0]).toMatch(/SIMULATED, REPLAYED\s*$/);
  });

  it('calls a tool whose figures are typed so, and never linked', () => {
    const gauge = { ...linked('gauge'), source: 'typed' } as const;
    const lines = linesOf(viewOf(jobWith(3, { tools: { wrench: linked('wrench'), gauge } }))).join('\n');
    expect(lines).toContain('wrench ✓ linked');
    expect(lines).toContain('gauge ✓ typed');
  });

  it('shows no older verdict while a question is open', () => {
    expect(text('unsure')).not.toContain('torque OK');
    expect(text('notOk')).toContain('NOT OK');
  });

  it('shows the torque in large figures during a pull and the verdict after it', () => {
    const large = (name: string) =>
      linesOf(view(name), { columns: 120, rows: 40 }).filter((line) => /│ .*█/.test(line));
    expect(large('pulling').length).toBeGreaterThanOrEqual(5);
    expect(large('ok').length).toBeGreaterThanOrEqual(5);
    expect(large('pulling')).not.toEqual(large('ok'));
    expect(large('start')).toEqual([]);
    const number = linesOf(view('ok'), { columns: 120, rows: 40 }).filter((line) => /^ +█.*│/.test(line));
    expect(number.length).toBeGreaterThanOrEqual(5);
  });

  it('shows the trace where there is room', () => {
    expect(text('ok', SIZES[1])).toContain('trace');
    expect(text('ok', SIZES[2])).toMatch(/trace.*█/);
    expect(text('ok', SIZES[0])).not.toContain('trace');
  });

  it('warns of a low battery at any width', () => {
    const low = { ...linked('wrench'), description: { ...linked('wrench').description, batteryPercent: 9 } };
    const tools = { wrench: low as ReturnType<typeof linked>, gauge: linked('gauge') };
    for (const size of SIZES)
      expect(linesOf(viewOf(jobWith(3, { tools })), size).join()).toContain('battery low 9 %');
  });

  it('says so when no reading could prove the window', () => {
    const job = jobWith(0);
    const torqueWindow = { ...job.torqueWindow, acceptLower: 28, acceptUpper: 27, decidable: false };
    expect(linesOf(viewOf({ ...job, torqueWindow })).join()).toContain('cannot prove this window');
  });

  it('lists every key that counts now in the help, whole at any size', () => {
    const wanted = {
      gap: ['left, right', 'up, down', ' d ', ' u ', 's, Enter', ' c ', ' m ', ' ? ', 'Ctrl-C'],
      unsure: [' f ', ' r ', ' h ', ' c ', ' ? ', 'Ctrl-C'],
      notOk: [' b ', ' d ', ' k ', ' c ', 'Ctrl-C'],
      list: ['space', ' a ', '1 to 6', ' x ', 'Enter', 'Ctrl-C'],
      oldPlugs: [' n ', ' a ', ' x ', ' t ', ' w ', 'Enter'],
      newPlugs: [' x ', ' p ', ' l ', ' o ', 'Enter'],
    };
    for (const [name, keys] of Object.entries(wanted))
      for (const size of SIZES) {
        const help = text(name, { ...size, help: true });
        for (const key of keys) expect(help, name).toContain(key);
        expect(help.split('\n').slice(1, -2).join('\n'), name).not.toContain('…');
      }
  });

  it('still gives the next step where the window is too small', () => {
    for (const size of [
      { columns: 59, rows: 30 },
      { columns: 80, rows: 19 },
      { columns: 20, rows: 8 },
    ]) {
      const lines = linesOf(view('gap'), size);
      expect(lines).toHaveLength(size.rows - 1);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(size.columns);
      expect(lines.join(' ')).toContain('Measure the gap');
    }
  });
});

describe('text from outside', () => {
  const OPEN = { kind: 'no-torque', cylinder: 4 } as const;
  const evil =
    '\u001b[2J\u001b]0;x\u0007\u202e\u200bOK\r\n山田山田山田山田山田山田山田山田山田山田山田山田山田山田山田山田山田山田山田山田';
  const asked = withCylinder(jobWith(4), { ...cylinderIn(2, 'done', 'ask'), pulls: [attemptOf(5, null)] });
  const job: JobState = {
    ...asked,
    tools: {
      [evil]: { ...lost('wrench', 'no-answer'), tool: evil },
      gauge: { ...linked('gauge'), tool: evil },
    },
    questions: [questionOn(2, 'unsure', ['fresh', 'rehit', 'handling', 'refit', 'replace'])],
  };
  const order = { ...job.order, technician: evil, vehicle: { plate: evil, description: evil } };
  const hostile = viewOf({ ...job, order }, {}, { station: evil, sources: ['simulated'] });

  it.each(SIZES)('cannot leave its place at $columns by $rows', (size) => {
    const frames = [
      hostile,
      { ...hostile, job: { ...hostile.job, questions: [], closed: { complete: false, open: [OPEN, OPEN] } } },
    ];
    for (const frame of frames) {
      const lines = drawn(frame, size).split('\n').map(bare);
      expect(lines).toHaveLength(size.rows - 1);
      for (const line of lines) expect(line).not.toMatch(/[\p{Cc}\p{Cf}]/u);
      for (const columns of inkColumns(lines)) expect(columns).toBeLessThanOrEqual(size.columns);
      expect(lines[0]).toMatch(/SIMULATED\s*$/);
      expect(lines.join()).toContain('entries on disk');
    }
  });

  it('leaves the keys of a question readable in the narrowest window', () => {
    const last = linesOf(hostile, SIZES[0]).at(-1) ?? '';
    for (const key of ['f', 'r', 'h', 'b', 'd']) expect(last).toContain(`[${key}]`);
    expect(last).toMatch(/discard$/);
  });
});

describe('every engine', () => {
  const banks = fc
    .array(fc.integer({ min: 1, max: 24 }), { minLength: 1, maxLength: 4 })
    .filter((sizes) => sizes.reduce((sum, size) => sum + size, 0) <= 24);

  it('up to 24 cylinders in up to 4 banks fits, each cylinder there once, at any size', () => {
    fc.assert(
      fc.property(
        banks,
        fc.integer({ min: 60, max: 200 }),
        fc.integer({ min: 20, max: 60 }),
        fc.nat(24),
        fc.boolean(),
        (sizes, columns, rows, proven, ascii) => {
          const engine = engineOf(sizes);
          const lastVerdict = {
            quantity: 'torque',
            cylinder: 1,
            judgement: judged('NotDecidable', 'high', 29.6, 'N.m'),
          } as const;
          const job = jobWith(Math.min(proven, engine.serviceOrder.length), { lastVerdict }, engine);
          const lines = linesOf(viewOf(job, { nowNm: 3, trace: TRACE }), { columns, rows, ascii });
          expect(lines).toHaveLength(rows - 1);
          for (const line of lines) expect(line.length).toBeLessThanOrEqual(columns);
          const words = ascii
            ? /(\d+) ?(?:gap {4})?[+.!?] ?(?:OK|to do|gap|pull|again|ask)/g
            : /(\d+) ?(?:gap {4})?[✓·!?] ?(?:OK|to do|gap|pull|again|ask)/g;
          const shown = [...lines.join('\n').matchAll(words)].map(([, number]) => Number(number));
          expect(shown.sort((a, b) => a - b)).toEqual([...engine.serviceOrder].sort((a, b) => a - b));
          expect(lines.join('\n')).toContain('UNDECIDED');
          expect(lines.at(-1)).toContain('[q] leave');
          expect(lines.at(-2)).toContain('entries on disk');
        },
      ),
      { numRuns: 60 },
    );
  });

  it('of every single bank from 1 to 24 fits the narrowest window', () => {
    for (let count = 1; count <= 24; count += 1) {
      const lines = linesOf(viewOf(jobWith(0, {}, engineOf([count]))), SIZES[0]);
      expect(lines).toHaveLength(19);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(60);
    }
  });

  it('lies with its banks above each other and the front to the left', () => {
    const lines = linesOf(viewOf(jobWith(0)));
    const row = (number: string) =>
      lines.findIndex((line) => line.startsWith(' gap') && line.includes(` ${number} `));
    const front = lines.findIndex((line) => line.startsWith(' front'));
    expect(row('1')).toBe(row('7'));
    expect(row('2')).toBe(row('8'));
    expect(row('1')).toBeLessThan(front);
    expect(row('2')).toBeGreaterThan(front);
    const line = lines[row('1')] ?? '';
    expect(
      ['1', '3', '5', '7']
        .map((number) => line.indexOf(` ${number} `))
        .every((at, i, all) => i === 0 || at > (all[i - 1] ?? 0)),
    ).toBe(true);
  });
});
