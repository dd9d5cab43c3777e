import { afterEach, describe, expect, test, vi } from 'vitest';
import { writePdf } from '../../src/report/index.ts';
import { modelOf, pdfOf, TROUBLED, V8_WITH_REDO } from './fixtures.ts';

const latin1 = (pdf: Uint8Array) => Buffer.from(pdf).toString('latin1');

describe('the bytes', () => {
  afterEach(() => vi.useRealTimers());

  test('are the same for the same record, whatever the clock says', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: Date.UTC(2030, 0, 1) });
    const early = await pdfOf(TROUBLED);
    vi.setSystemTime(Date.UTC(2031, 5, 6));
    const late = await pdfOf(TROUBLED);
    expect(Buffer.compare(early.pdf, late.pdf)).toBe(0);
    expect(latin1(early.pdf)).toMatch(/CreationDate/);
    expect(latin1(early.pdf)).not.toMatch(/D:203[01]/);
  });

  test('differ for another record', async () => {
    const [one, other] = await Promise.all([pdfOf(), pdfOf({ firstPull: { 1: 27.2 } })]);
    expect(Buffer.compare(one.pdf, other.pdf)).not.toBe(0);
  });

  test('hold no text outside the tagged content and the marked decoration, and no figure that is not one', async () => {
    for (const options of [V8_WITH_REDO, { ...TROUBLED, source: 'simulated' as const }]) {
      const pdf = latin1((await pdfOf(options)).pdf);
      let depth = 0;
      let texts = 0;
      for (const line of pdf.split('\n')) {
        if (/ (BDC|BMC)$/.test(line)) depth += 1;
        if (line === 'EMC') depth -= 1;
        if (line !== 'BT') continue;
        texts += 1;
        expect(depth).toBeGreaterThan(0);
      }
      expect(depth).toBe(0);
      expect(texts).toBeGreaterThan(100);
      expect(pdf).not.toMatch(/\b(NaN|undefined|Infinity)\b/);
    }
  });

  test('are refused when the record is not the one whose digest is printed', async () => {
    const { model } = modelOf();
    const recordBytes = new TextEncoder().encode('another record');
    await expect(writePdf(model, { recordBytes, recordName: 'a.json' })).rejects.toThrow(/digest/);
  });
});
