import { describe, expect, test } from 'vitest';
import { writePdf } from '../../src/report/index.ts';
import { type ReportInput, reportModel } from '../../src/report/model.ts';
import { type JobOptions, madeJob, modelOf, SIXTEEN } from './fixtures.ts';
import { hasPoppler, pages, poppler } from './poppler.ts';

const SHOP = {
  name: 'Example Workshop',
  address: ['1 Example Street', 'Exampletown'],
  page: 'https://workshop.example/',
};

/** The same job, its opening with more in it. */
function withOpening(input: ReportInput, more: object): ReportInput {
  const entries = input.entries.map((entry) =>
    entry.event.type === 'job-opened' ? { ...entry, event: { ...entry.event, ...more } } : entry,
  );
  return { ...input, entries };
}
const sheetOf = (options: JobOptions = {}, more: object = {}) =>
  reportModel(withOpening(madeJob(options).input, more)).customer;
const factOf = (sheet: ReturnType<typeof sheetOf>, label: string) =>
  sheet.facts.find((fact) => fact.label === label)?.value;
const firstPage = (pdf: Uint8Array) => poppler('pdftotext', pdf, ['-raw', '-l', '1', '{pdf}', '-']);

describe('the page that a customer keeps', () => {
  test('names the shop of the record; a record without one says so and names the station', () => {
    expect(sheetOf({}, { shop: SHOP }).shop).toEqual({ ...SHOP, logo: '' });
    expect(sheetOf().shop).toMatchObject({
      name: 'Bay 1',
      address: ['Address of the shop: not in the record'],
    });
  });

  test('says that the limits of a single figure are the rule of the shop', () => {
    const { input } = madeJob();
    const singleFigure = { percent: 10, setBy: 'B. Boss', basis: 'house rule' };
    const specification = { ...input.state.order.specification, torque: '28 N·m', singleFigure };
    const order = { ...input.state.order, specification };
    expect(
      factOf(reportModel({ ...input, state: { ...input.state, order } }).customer, 'Torque limits'),
    ).toBe("the shop's own rule, plus/minus 10 %; the source prints one figure");
    expect(factOf(sheetOf(), 'Torque limits')).toBeUndefined();
  });

  test('gives times as the clock of the shop showed them, with their distance to UTC', () => {
    expect(factOf(sheetOf({}, { utcOffsetMin: 120 }), 'Started')).toBe('2025-06-03 10:15 (UTC+02:00)');
    expect(factOf(sheetOf({}, { utcOffsetMin: -210 }), 'Started')).toBe('2025-06-03 04:45 (UTC-03:30)');
    expect(factOf(sheetOf(), 'Started')).toBe('2025-06-03 08:15:00 UTC');
  });

  test('says of each plug what counted in the end', () => {
    const { plugs } = sheetOf({ firstPull: { 3: 31.42 } });
    expect(plugs[2]).toEqual({ position: 'Cyl. 3', verdict: 'ok', gap: '0.750 mm', torque: '27.80 N·m' });
    expect(sheetOf({ skip: [2] }).plugs[1]).toMatchObject({ verdict: 'not-done', torque: 'not measured' });
  });

  test('says when the plugs are due again only where the specification does', () => {
    const change = (order: object) => sheetOf({ order }).nextChange;
    const specification = {
      torque: '25-30 N·m',
      gap: '0.7-0.8 mm',
      threads: 'dry',
      source: { kind: 'plug-box', title: 'Box' },
    } as const;
    expect(change({})).toBe('The specification of this job does not say when.');
    expect(change({ specification: { ...specification, change: { km: 60_000, months: 48 } } })).toBe(
      'By the specification at 208210 km or in 2029-06, whichever comes first.',
    );
    expect(change({ vehicle: {}, specification: { ...specification, change: { km: 60_000 } } })).toBe(
      'By the specification after another 60000 km.',
    );
  });

  test('keeps a telephone number in the complaint to the shop', () => {
    const sheet = sheetOf({ order: { complaint: 'Misfires when cold, call +49 171 555 0199' } });
    expect(factOf(sheet, 'Complaint')).toBe('Misfires when cold, call (telephone number withheld)');
  });

  test('counts plugs and not cylinders where a cylinder has two', () => {
    const engine = {
      banks: [[1, 2, 3, 4, 5, 6, 7, 8]],
      serviceOrder: [1, 2, 3, 4, 5, 6, 7, 8],
      headMaterial: 'aluminium' as const,
      plugs: [1, 2, 3, 4].map((cylinder) => ({ cylinder, plugs: [cylinder, cylinder + 4] })),
    };
    const { status, customer, positions } = modelOf({ order: { engine } }).model;
    expect(status.text).toBe('8 of 8 plugs in 4 cylinders OK.');
    expect(customer.plugs[4]?.position).toBe('Plug 5 (cyl. 1)');
    expect(positions.note).toContain('cylinder 1 has the plugs 1 and 5');
  });

  test('says what the old plugs showed, and what follows from it', () => {
    const { input } = madeJob();
    const read = { condition: 'oily' as const, damage: ['flashover' as const], thread: 'sound' as const };
    const state = { ...input.state, oldPlugs: { 3: { read, gap: null, removal: null } } };
    expect(reportModel({ ...input, state }).customer.oldPlugs).toEqual([
      {
        position: 'Cyl. 3',
        condition: 'oily',
        looks: 'wet with oil, burnt track down the outside',
        advice: 'Have the oil consumption looked into.',
      },
    ]);
  });
});

describe.runIf(hasPoppler)('on paper', () => {
  test.each([
    ['eight cylinders', {}, 3],
    ['sixteen', SIXTEEN, 3],
    ['twenty-four', { banks: [Array.from({ length: 24 }, (_, i) => i + 1)] }, 4],
  ] as const)('it is one page, the proof begins on the next: %s', async (_, options, count) => {
    const { input, record } = madeJob(options as JobOptions);
    const model = reportModel(withOpening(input, { shop: SHOP, utcOffsetMin: 60 }));
    const pdf = await writePdf(model, { recordBytes: record, recordName: 'a.json' });
    expect(pages(pdf)).toBe(count);
    const text = firstPage(pdf);
    for (const words of [
      'Example Workshop',
      '1 Example Street',
      'Each new plug',
      'Customer (date, signature)',
    ])
      expect(text).toContain(words);
    expect(text).not.toContain('Proof of the job');
  });
});
