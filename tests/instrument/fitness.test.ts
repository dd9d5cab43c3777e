import { describe, expect, it } from 'vitest';
import { type Certificate, certificateFromJson } from '../../src/instrument/certificate.ts';
import { dueDate, misdescribed } from '../../src/instrument/fitness.ts';
import { type Instrument, instrumentSchema } from '../../src/instrument/instrument.ts';
import { problemOf, unfit } from '../../src/instrument/unfit.ts';
import { pathText } from '../../src/problem.ts';
import { inUnits } from '../../src/quantity/shown.ts';

const CERTIFICATE: Certificate = {
  number: 'C-7',
  laboratory: 'Example laboratory',
  serial: 'W-1',
  date: '2026-01-31',
  unit: 'N.m',
  points: [
    { reading: 10, error: 0.05, expanded: 0.1, k: 2 },
    { reading: 60, error: 0.3, expanded: 0.4, k: 2 },
  ],
};
const wrench = (change: Partial<Instrument> = {}): Instrument => ({
  id: 'wrench',
  quantity: 'torque',
  serial: 'W-1',
  resolution: 0.01,
  basis: 'certificate',
  certificate: CERTIFICATE,
  ...change,
});
const TASK = { on: '2026-06-01', from: 25, to: 30 };
const codes = (instrument: Instrument, task = TASK) => unfit(instrument, task).map(({ code }) => code);

describe('an instrument that is described wrongly', () => {
  it.each<[string, Instrument, string, string]>([
    [
      'a certificate of another serial number',
      wrench({ serial: 'W-2' }),
      'certificate-other-serial',
      'serial',
    ],
    [
      'a certificate of the future',
      wrench({ certificate: { ...CERTIFICATE, date: '2026-06-02' } }),
      'certificate-in-future',
      'date',
    ],
    [
      'a certificate that was due before it was made',
      wrench({ certificate: { ...CERTIFICATE, due: '2026-01-30' } }),
      'certificate-dates',
      'due',
    ],
    [
      'a certificate of a gauge',
      wrench({ certificate: { ...CERTIFICATE, unit: 'mm' } }),
      'certificate-unit',
      'unit',
    ],
  ])('is refused for %s, with the field', (_what, instrument, code, field) => {
    const problem = misdescribed(instrument, TASK.on);
    expect(problem).toMatchObject({ code, where: expect.stringContaining(field) });
  });

  it('is refused when nothing says how far it may be off, or which one it is', () => {
    const { certificate: _certificate, serial: _serial, ...bare } = wrench();
    expect(misdescribed(bare, TASK.on)).toMatchObject({ code: 'permissible-deviation-missing' });
    expect(misdescribed({ ...bare, certificate: CERTIFICATE }, TASK.on)).toMatchObject({
      code: 'serial-missing',
    });
    expect(
      misdescribed({ ...bare, permissibleDeviation: { kind: 'relative', percent: 4 } }, TASK.on),
    ).toBeNull();
  });

  it('is right on the day of its calibration', () => {
    expect(misdescribed(wrench(), '2026-01-31')).toBeNull();
  });
});

describe('an instrument that is unfit for the task', () => {
  it('is none when all is in order', () => {
    expect(
      codes(wrench({ range: { from: 5, to: 60 }, interval: { months: 12, cycles: 5000 }, cyclesUsed: 5000 })),
    ).toEqual([]);
  });

  it('is out of date the day after it was due, by the certificate or by the interval, whichever comes first', () => {
    const dated = wrench({ certificate: { ...CERTIFICATE, due: '2026-05-31' } });
    expect(codes(dated)).toEqual(['calibration-expired']);
    expect(codes(dated, { ...TASK, on: '2026-05-31' })).toEqual([]);
    expect(dueDate(wrench({ interval: { months: 1 } }))).toBe('2026-02-28');
    expect(
      dueDate(wrench({ interval: { months: 12 }, certificate: { ...CERTIFICATE, due: '2026-05-31' } })),
    ).toBe('2026-05-31');
    expect(dueDate(wrench())).toBeNull();
  });

  it('has done more cycles than its interval allows', () => {
    const worn = wrench({ interval: { months: 12, cycles: 5000 }, cyclesUsed: 5001 });
    expect(codes(worn)).toEqual(['cycles-used-up']);
  });

  it('is out of its range, or out of its calibration, at either end', () => {
    expect(codes(wrench({ range: { from: 26, to: 60 } }))).toEqual(['out-of-range']);
    expect(codes(wrench({ range: { from: 5, to: 29.9 } }))).toEqual(['out-of-range']);
    expect(codes(wrench(), { ...TASK, from: 9.9 })).toEqual(['outside-calibration']);
    expect(codes(wrench(), { ...TASK, to: 60.1 })).toEqual(['outside-calibration']);
    const [beyond] = unfit(wrench(), { ...TASK, to: 60.1 });
    expect(beyond).toEqual({
      code: 'outside-calibration',
      unit: 'N.m',
      from: 10,
      to: 60,
      neededFrom: 25,
      neededTo: 60.1,
    });
    expect(beyond && problemOf(beyond).message).toBe(
      'it is calibrated from 10 to 60 N·m; this job asks for 25 to 60.1 N·m',
    );
    const inPoundFeet = inUnits(
      { torque: '[ft_i].[lbf_av]', length: 'mm' },
      () => beyond && problemOf(beyond).message,
    );
    expect(inPoundFeet).toBe(
      'it is calibrated from 7.376 to 44.25 lbf·ft; this job asks for 18.44 to 44.33 lbf·ft',
    );
  });
});

describe('a certificate in JSON', () => {
  const file = { form: 'plugmark/certificate/1', ...CERTIFICATE };
  const point = CERTIFICATE.points[0];

  it('is read as it stands', () => {
    expect(certificateFromJson(file, 'c.json')).toEqual({ ok: true, value: CERTIFICATE });
  });

  it.each<[string, object, string]>([
    [
      'an uncertainty of zero',
      { points: [{ ...point, expanded: 0 }, CERTIFICATE.points[1]] },
      'points[0].expanded',
    ],
    [
      'a negative uncertainty',
      { points: [{ ...point, expanded: -1 }, CERTIFICATE.points[1]] },
      'points[0].expanded',
    ],
    ['no coverage factor', { points: [{ ...point, k: 0 }, CERTIFICATE.points[1]] }, 'points[0].k'],
    ['one point', { points: [point] }, 'points'],
    ['the same reading twice', { points: [point, point] }, 'points[1].reading'],
    ['a date that is none', { date: '2026-02-30' }, 'date'],
    ['a unit that is none', { unit: 'lbf' }, 'unit'],
    ['no serial number', { serial: '' }, 'serial'],
    ['a field that nobody knows', { note: 'x' }, 'c.json'],
  ])('is refused for %s, with the field', (_what, change, field) => {
    const out = certificateFromJson({ ...file, ...change }, 'c.json');
    expect(out).toMatchObject({ ok: false, error: { where: expect.stringContaining(field) } });
  });
});

describe('an instrument in the station file', () => {
  const faults = (change: object) => {
    const { certificate: _certificate, ...rest } = wrench();
    const parsed = instrumentSchema.safeParse({ ...rest, ...change });
    return parsed.success ? [] : parsed.error.issues.map(({ path }) => pathText(path));
  };

  it.each<[string, object, string]>([
    ['a reversed range', { range: { from: 60, to: 5 } }, 'range.from'],
    ['a range without width', { range: { from: 60, to: 60 } }, 'range.from'],
    [
      'a permissible deviation of zero',
      { permissibleDeviation: { kind: 'relative', percent: 0 } },
      'permissibleDeviation.percent',
    ],
    ['a step of zero', { resolution: 0 }, 'resolution'],
    [
      'readings without any spread',
      { repeatability: { readings: [25, 25, 25], basis: 'x' } },
      'repeatability.readings',
    ],
    [
      'a drift of zero',
      { driftPerYear: { within: { kind: 'absolute', amount: 0 }, basis: 'x' } },
      'driftPerYear.within.amount',
    ],
  ])('is refused for %s', (_what, change, field) => {
    expect(faults(change)).toContain(field);
    expect(faults({})).toEqual([]);
  });
});
