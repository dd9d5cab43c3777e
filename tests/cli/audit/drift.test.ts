/** What laboratories and pulls say of a tool that moves, asked as a user asks. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { showCalendar } from '../../../src/cli/audit/calendar.ts';
import { keepCertificates } from '../../../src/cli/audit/certificates.ts';
import { showDrift } from '../../../src/cli/audit/drift.ts';
import { impact } from '../../../src/cli/audit/impact.ts';
import type { Certificate } from '../../../src/instrument/certificate.ts';
import { certificate, type ShopJob, workIn, wrenchWith } from '../../audit/shop.ts';
import { problemOf, said } from '../answers.ts';
import { folder } from '../program.ts';

const CAL_1 = certificate('CAL-1', '2024-01-12', { error: 0.02 });
const CAL_2 = certificate('CAL-2', '2025-01-14', { error: 0.31 });
const FOUND_3 = certificate('CAL-3', '2026-01-12', { error: 0.64 });
const CAL_3 = certificate('CAL-3', '2026-01-12', { error: 0.02 });

const worked = (job: string, on: string, checked: Certificate): ShopJob => ({
  job,
  on,
  peaks: [27, 27.4, 26.8, 27.1],
  wrench: {
    ...wrenchWith(checked),
    permissibleDeviation: { kind: 'relative', percent: 4 },
    interval: { months: 12 },
  },
});

let model = '';
let data = '';
beforeAll(async () => {
  model = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  await workIn(model, [
    worked('J-1', '2024-03-01', CAL_1),
    worked('J-2', '2025-03-01', CAL_2),
    worked('J-3', '2026-02-03', CAL_3),
  ]);
  return () => rmSync(model, { recursive: true, force: true });
});
beforeEach(() => {
  data = join(folder(), 'data');
  cpSync(model, data, { recursive: true });
});

const scope = () => ({ station: 'none.json', data });
const drift = (tool = 'wrench', given = {}) =>
  said(() => showDrift(tool, { ...scope(), last: 40, ...given }));
const written = (name: string, one: Certificate) => {
  const file = join(data, name);
  writeFileSync(file, JSON.stringify({ form: 'plugmark/certificate/1', ...one }));
  return file;
};
const recordFound = () =>
  said(() =>
    impact('wrench', {
      ...scope(),
      asFound: written('found.json', FOUND_3),
      since: 'CAL-2',
      by: 'Quality One',
    }),
  );
/** A table's row as words, so that the widths of columns do not matter. */
const row = (text: string, start: RegExp) =>
  text
    .split('\n')
    .find((line) => start.test(line))
    ?.trim()
    .split(/ {2,}/);

describe('drift by certificates', () => {
  it('is told although the days of use are too few, and each half says what it lacks', async () => {
    await recordFound();
    const { text } = await drift();
    expect(text).toContain('Pulls\n  Nothing to say: 1 day of use');
    expect(text).toMatch(/Certificate +CAL-3\n +Due +2027-01-12/);
    expect(text).toContain('4 certificates at 30.00 N·m, the point nearest to the 27.12 N·m of its use.');
  });

  it('starts the line again after an adjustment, and warns of the point that leaves its limits first', async () => {
    await recordFound();
    const { value, text } = await drift();
    expect(value).toBe(1);
    expect(text.startsWith('WARNING: Drift, EXAMPLE-W-1')).toBe(true);
    expect(row(text, /^ {2}2024-01-12/)).toEqual(['2024-01-12', 'CAL-1', 'first', '+0.02', '0.20', '2 %']);
    expect(row(text, /as found/)?.slice(3)).toEqual(['+0.64', '0.20', '53 %']);
    expect(row(text, /as left/)?.slice(3)).toEqual(['+0.02', '0.20', '2 %']);
    // 0.62 in two years, and 0.14 is 2·u of the slope: from 0.02 on it comes to 0.33, and stays below 1.20.
    expect(row(text, /^ {2}> {2}30/)).toEqual([
      '>',
      '30.00',
      '+0.31 ± 0.14',
      '+0.33',
      '+0.01 to +0.65',
      '± 1.20',
      '-',
    ]);
    expect(row(text, /^ +10\.00/)?.at(-1)).toMatch(/^! 2026-/);
    expect(text).toContain('permitted at 10.00 N·m');
    expect(text).toContain('It was adjusted once');
  });

  it('says that an adjustment nobody recorded would hide the drift, and that there is no line through it', async () => {
    const { value, text } = await drift();
    expect(value).toBe(1);
    expect(text).toContain('The certificates do NOT lie on a line');
    expect(text).toContain(
      '"not stated": before 2 of these certificates nobody recorded what the laboratory found',
    );
  });

  it('says nothing against a tool that stays within what is permitted', async () => {
    await recordFound();
    const { value, text } = await drift('EXAMPLE-W-1', { permissible: 8 });
    expect(value).toBe(0);
    expect(text).not.toContain('WARNING');
    expect(text.replace(/\s+/g, ' ')).toContain(
      'find it within what is permitted until 2027-01-12, when it is due',
    );
  });

  it('is undecided, and no warning, where nothing but too little knowledge reaches out', async () => {
    const still = join(folder(), 'data');
    const jobs = [
      worked('J-1', '2025-03-01', certificate('CAL-1', '2025-01-12')),
      worked('J-2', '2026-02-03', certificate('CAL-2', '2026-01-12', { error: 0.01 })),
    ];
    await workIn(still, jobs);
    const { value, text } = await said(() => showDrift('wrench', { station: '', data: still, last: 40 }));
    expect(value).toBe(1);
    expect(text.startsWith('UNDECIDED: Drift, EXAMPLE-W-1')).toBe(true);
    expect(text).not.toContain('WARNING');
    expect(row(text, /^ +10\.00/)?.at(-1)).toMatch(/^\? 2026-/);
    expect(text.replace(/\s+/g, ' ')).toContain('too few or too uncertain to rule one out');
    const listed = await said(() =>
      showCalendar({ station: '', data: still, soon: 30, shortest: 90, longest: 365 }),
    );
    expect(listed.text).not.toContain('drift');
  });

  it('takes in older certificates that were kept, but not what an impact assessment recorded as found', async () => {
    await recordFound();
    const old = certificate('CAL-0', '2023-01-10', { error: -0.28 });
    await said(() => keepCertificates([written('old.json', old), join(data, 'found.json')], scope()));
    const { text } = await drift();
    expect(row(text, /^ {2}2023-01-10/)?.slice(1, 4)).toEqual(['CAL-0', 'first', '-0.28']);
    expect(text).toContain('5 certificates at');
    for (const name of readdirSync(join(data, 'certificates')))
      cpSync(written('other.json', certificate('CAL-0', '2023-01-10')), join(data, 'certificates', name));
    const lost = await drift();
    expect(lost.text).toContain('4 certificates at');
    expect(lost.text).toContain('The kept files of CAL-0 are missing or changed.');
  });

  it('counts the days of use under a certificate by its day too, because numbers are used again', async () => {
    const again = join(folder(), 'data');
    await workIn(again, [
      worked('J-1', '2025-03-01', certificate('7', '2025-01-12')),
      worked('J-2', '2026-02-03', certificate('7', '2026-01-12')),
    ]);
    const { text } = await said(() => showDrift('wrench', { station: '', data: again, last: 40 }));
    expect(text).toContain('Pulls\n  Nothing to say: 1 day of use');
  });

  it('is written as a paper and its pictures', async () => {
    await recordFound();
    await drift('wrench', { out: join(data, 'pictures') });
    expect(readdirSync(join(data, 'pictures')).sort()).toEqual(['certificates.svg', 'drift.pdf']);
    expect(readFileSync(join(data, 'pictures', 'certificates.svg'), 'utf8')).toContain('CAL-3 (as found)');
  });

  it('speaks of a gauge by its certificates alone, and says what is missing', async () => {
    const gauge = () => showDrift('gauge', { ...scope(), last: 40 });
    expect((await problemOf(gauge)).message).toBe(
      'the readings of a gauge show the plugs, not the gauge; and this tool has no certificate',
    );
    for (const [i, date] of ['2024-05-02', '2025-05-02'].entries()) {
      const points = [0.5, 1].map((reading) => ({ reading, error: 0.001 * i, expanded: 0.002, k: 2 }));
      const kept = { ...certificate(`G-${i}`, date, { serial: 'EXAMPLE-G-1' }), unit: 'mm' as const, points };
      await said(() => keepCertificates([written(`g${i}.json`, kept)], scope()));
    }
    const { value, text } = await said(gauge);
    expect(value).toBe(0);
    expect(text).toContain('2 certificates at 0.500 mm, the point nearest to the 0.750 mm');
    expect(text).toContain('2 certificates are too few to test the line');
    expect(text).toContain('no due day is known');
  });

  it('says that nothing tells how far the tool may be off', async () => {
    const bare = join(folder(), 'data');
    await workIn(bare, [{ job: 'J-1', on: '2026-02-03', peaks: [27] }]);
    const problem = await problemOf(() => showDrift('wrench', { station: '', data: bare, last: 40 }));
    expect(problem.code).toBe('permissible-deviation-missing');
    expect((await problemOf(() => showDrift('nobody', { ...scope(), last: 40 }))).code).toBe('tool-unknown');
  });
});

describe('the calendar', () => {
  const calendar = () => said(() => showCalendar({ ...scope(), soon: 30, shortest: 90, longest: 365 }));

  it('marks a tool that drifts, and says where more is to be had', async () => {
    await recordFound();
    const { text } = await calendar();
    expect(text).toMatch(/^(~ in date|! DUE|~ soon), drift {2}/m);
    expect(text).toMatch(/EXAMPLE-W-1 may lie beyond what is permitted from 2026-\d\d-\d\d on/);
    expect(text).toContain('see "plugmark drift EXAMPLE-W-1"');
  });
});
