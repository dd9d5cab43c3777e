/** Scripts that the papers' own fonts do not have, on a machine that has fonts for them. */
import { create } from 'fontkit';
import { describe, expect, test } from 'vitest';
import { machineFontFor } from '../../src/report/fonts/machine.ts';
import { heldPaper } from '../../src/report/held/paper.ts';
import { writePdf } from '../../src/report/index.ts';
import { modelOf } from './fixtures.ts';
import { fontsIn, hasPoppler, poppler, withoutCopies } from './poppler.ts';

const codePoint = (character: string) => character.codePointAt(0) ?? 0;
const hasFonts = ['王', 'س'].every((one) => machineFontFor(codePoint(one), create) !== null);
if (!hasFonts && process.env['ALL_TESTS'] === '1')
  throw new Error('fonts for Chinese and Arabic are not installed (fonts-droid-fallback, fonts-dejavu-core)');

const { model, record } = modelOf({
  order: { technician: '王小明', vehicle: { description: 'سيارة 2014', plate: '東京 500' } },
});
const drawn = (fonts: 'own' | 'machine') =>
  writePdf(model, { recordBytes: record, recordName: 'a.json', fonts });
const printed = (pdf: Uint8Array) => poppler('pdftotext', withoutCopies(pdf), ['-raw', '{pdf}', '-']);

describe.runIf(hasPoppler && hasFonts)('names in other scripts', () => {
  test('are drawn with fonts of the machine, embedded like its own', async () => {
    const pdf = await drawn('machine');
    expect(printed(pdf)).toContain('王小明');
    expect(printed(pdf)).toContain('東京 500');
    expect(printed(pdf)).not.toContain('□');
    const fonts = fontsIn(pdf);
    expect(fonts.length).toBeGreaterThanOrEqual(5);
    for (const font of fonts) expect(font).toMatchObject({ embedded: true, subset: true, unicode: true });
  });

  test('are the same bytes at every drawing', async () => {
    expect(Buffer.compare(await drawn('machine'), await drawn('machine'))).toBe(0);
  });

  test('are boxes with the name behind them where only its own fonts are taken, as in a package', async () => {
    const pdf = await drawn('own');
    expect(printed(pdf)).toContain('□□□');
    expect(poppler('pdftotext', pdf, ['-raw', '{pdf}', '-'])).toContain('王小明');
    expect(fontsIn(pdf)).toHaveLength(3);
  });

  describe('on a paper that is held against its record', () => {
    /** As a machine without such fonts draws. */
    const elsewhere = () => drawn('own');

    test('are what the record gives, with the fonts of this machine and with its own', async () => {
      expect(await heldPaper(await drawn('machine'), drawn)).toMatchObject({ outcome: 'same' });
      expect(await heldPaper(await drawn('own'), drawn)).toMatchObject({ outcome: 'same' });
    });

    test('are compared by words and figures where the fonts are those of another machine', async () => {
      const { outcome, detail } = await heldPaper(await drawn('machine'), elsewhere);
      expect(outcome).toBe('other-version');
      expect(detail).toContain('with fonts of the machine drew it');
    });

    test('do not hide another figure', async () => {
      const forged = { ...model, cautions: ['26.017 N·m', ...model.cautions.slice(1)] };
      const pdf = await writePdf(forged, {
        recordBytes: record,
        recordName: 'a.json',
        fonts: 'machine',
      });
      for (const draw of [drawn, elsewhere])
        expect(await heldPaper(pdf, draw)).toMatchObject({
          outcome: 'differs',
          detail: expect.stringContaining('26.017'),
        });
    });

    test('are no excuse on the paper of a record that needs no other fonts', async () => {
      const plain = modelOf({});
      const options = { recordBytes: plain.record, recordName: 'a.json' };
      const forged = { ...plain.model, cautions: ['王', ...plain.model.cautions.slice(1)] };
      const pdf = await writePdf(forged, { ...options, fonts: 'machine' });
      expect(await heldPaper(pdf, (fonts) => writePdf(plain.model, { ...options, fonts }))).toMatchObject({
        outcome: 'differs',
        detail: expect.stringContaining('王'),
      });
    });
  });
});
