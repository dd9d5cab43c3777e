/** One model, printed as pages, as text and as a screen: what one of them says, the others say. */
import { describe, expect, test } from 'vitest';
import { pullSvg } from '../../src/cli/evidence/pull-svg.ts';
import { firstPlace, moved, showFrame } from '../../src/cli/evidence/show-frame.ts';
import { writePdf } from '../../src/report/index.ts';
import { jobLines } from '../../src/report/job-text.ts';
import type { ReportModel } from '../../src/report/model.ts';
import { type JobOptions, modelOf, TROUBLED, V8_BY_HAND, V8_WITH_REDO } from './fixtures.ts';
import { hasPoppler, poppler } from './poppler.ts';

/** Without white space: where lines break is no part of what is said. */
const packed = (text: string) => text.replace(/\s+/g, '');

/** Every text of the model that a reader is to see. */
function textsOf(model: ReportModel): readonly string[] {
  const { customer, fingerprint } = model;
  return [
    model.status.word,
    model.status.text,
    model.outOfOrder,
    model.proof,
    customer.shop.name,
    ...customer.shop.address,
    ...[...customer.facts, ...model.jobFacts, ...model.specificationFacts].map(({ value }) => value),
    ...customer.plugs.flatMap(({ gap, torque }) => [gap, torque]),
    customer.nextChange,
    model.torqueWindow.limits,
    model.torqueWindow.acceptance,
    model.torqueWindow.guard,
    ...model.rows.flatMap(({ cylinder, valueText, verdictWord }) =>
      cylinder === null ? [] : [valueText, verdictWord],
    ),
    ...model.exceptions.flatMap(({ at, what, who }) => [at, what, who]),
    ...model.instruments.flatMap(({ serial, deviation, basis, device, link }) => [
      serial,
      deviation,
      basis,
      device,
      link,
    ]),
    ...model.cautions,
    ...model.proves,
    ...fingerprint.signers,
  ]
    .map(packed)
    .filter((text) => text !== '');
}

const SHAPES: readonly (readonly [string, JobOptions])[] = [
  ['one done again', V8_WITH_REDO],
  ['by hand, simulated', { ...V8_BY_HAND, source: 'simulated' }],
  ['all exceptions', TROUBLED],
];

describe.each(SHAPES)('what a record says: %s', (_, options) => {
  const { model } = modelOf(options);

  test('is in its text', () => {
    const text = packed(jobLines(model, { columns: Number.POSITIVE_INFINITY, ascii: false }).join('\n'));
    expect(textsOf(model).filter((one) => !text.includes(one))).toEqual([]);
  });

  test.runIf(hasPoppler)('is on its pages', async () => {
    const pdf = await writePdf(model, { recordName: 'a.json' });
    // In the order in which it was written, so that a text that is broken into lines is one.
    const text = packed(poppler('pdftotext', pdf, ['-raw', '{pdf}', '-']));
    expect(textsOf(model).filter((one) => !text.includes(one))).toEqual([]);
  });

  test.each([
    [80, 24],
    [120, 40],
    [60, 20],
  ])('is on a screen of %i by %i, cylinder by cylinder, and no line is too long', (columns, rows) => {
    let place = firstPlace(model);
    for (const { cylinder, pulls } of model.cylinders) {
      const lines = showFrame({ model, verdict: 'Authentic.', ascii: false }, place, { columns, rows });
      const texts = lines.map((line) => line.map(({ text }) => text).join(''));
      expect(texts.length).toBeLessThanOrEqual(rows);
      expect(texts.filter((text) => [...text].length > columns)).toEqual([]);
      expect(texts.join('\n')).toContain(`[${cylinder} `);
      if (pulls.length > 0) expect(texts.join('\n')).toMatch(/[\u2801-\u28ff]|holds no samples/);
      place = moved(model, place, { key: 'right' });
    }
    expect(place).toEqual(firstPlace(model));
  });
});

test('a picture of one pull has its window, its click and its peak, in words too', () => {
  const { model } = modelOf(V8_WITH_REDO);
  const svg = pullSvg(model, 3);
  expect(svg).toContain('pull 3: NOT OK');
  for (const words of ['limit 25.00', 'limit 30.00', 'click', 'peak 31.42', 'hatched: guard band'])
    expect(svg).toContain(words);
  expect(svg).toMatch(/<desc>Pull 3, tightening, NOT OK: peak 31.42 N·m/);
  expect(() => pullSvg(model, 99)).toThrow(/no pull 99/);
});
