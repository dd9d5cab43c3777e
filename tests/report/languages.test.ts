/** The same record for readers of four languages and of two systems of units. */
import { beforeAll, describe, expect, test } from 'vitest';
import { readerOf } from '../../src/cli/station/paper-reader.ts';
import { type ShownUnits, SI } from '../../src/quantity/shown.ts';
import { writeCsv } from '../../src/report/csv.ts';
import { heldPaper } from '../../src/report/held/paper.ts';
import { readPaper } from '../../src/report/held/pdf-file.ts';
import { jobLines } from '../../src/report/job-text.ts';
import { reportModel } from '../../src/report/model.ts';
import { writePdf } from '../../src/report/pdf.ts';
import { ANYBODY, type Audience, madeFor, type PaperReader } from '../../src/report/reader.ts';
import { inLanguage, LANGUAGES, speak } from '../../src/words/catalogue.ts';
import { dictionary } from '../../src/words/dictionaries.ts';
import { PSEUDO, unspoken } from '../words/pseudo.ts';
import { type JobOptions, LONG_NAMES, madeJob, TROUBLED, V8_BY_HAND, V8_WITH_REDO } from './fixtures.ts';
import { hasPoppler, poppler } from './poppler.ts';
import { outside, overlapping, wordsByPage } from './printed-words.ts';

const IMPERIAL: ShownUnits = { torque: '[ft_i].[lbf_av]', length: '[in_i]' };
const WIDE = { columns: Number.POSITIVE_INFINITY, ascii: false };

const drawn = (options: JobOptions, reader: PaperReader) => {
  const { input, record } = madeJob(options);
  const model = madeFor(reader, () => reportModel(input));
  return writePdf(model, { recordBytes: record, recordName: 'J.record.json', reader });
};
const drawnFor = async (audience: Audience, options = V8_WITH_REDO) =>
  drawn(options, await readerOf(audience));

/** What belongs to no language: units, codes of standards, and what the record itself has, from names to the shop's own words. */
const FACTS: readonly (string | RegExp)[] = [
  /N·m|mm|UTC|km|°|SHA-256|RFC|JOSE|QR|ILAC-G8|JCGM|VIN\b|OK\b|plugmark|\bU\b/,
  /\b[0-9a-f]{8}\b/,
  // As the source prints them, and a version.
  /0\.7-0\.8|M14x1\.25|1\.4\.2/,
  // What the fixture states of the signature.
  'the technician has no key of his own',
  'JOB-2041',
  'Bay 1',
  'Ann Example',
  'Van, petrol, 2014',
  'AB 123',
  '1M8GDM9AXKP042788',
  'V8, made up for this test',
  'Service data of this engine',
  /EX-14G|Example Tools|TW-60|PG-1/,
  /maker's data sheet, ±[\d.]+( % of the reading)?/,
  'measurement-device',
  /\b(wrench|gauge|station|technician)\b/,
  'kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k',
];

describe('what a paper says', () => {
  test.each([
    ['one done again', V8_WITH_REDO],
    ['by hand, simulated', { ...V8_BY_HAND, source: 'simulated' } as const],
    ['all exceptions', TROUBLED],
  ])('goes through the catalogue: %s', (_, options) => {
    const { input } = madeJob(options);
    const text = inLanguage(PSEUDO, () => jobLines(reportModel(input), WIDE).join('\n'));
    expect([...new Set(unspoken(text, FACTS))]).toEqual([]);
  });

  test('is in the units of its reader, bounds on the safe side', () => {
    const { input } = madeJob(V8_WITH_REDO);
    const reader = { ...ANYBODY, units: IMPERIAL };
    const text = madeFor(reader, () => jobLines(reportModel(input), WIDE).join('\n'));
    expect(text).toContain('18.44 to 22.12 lbf·ft');
    // 25.583 N·m is 18.869 lbf·ft and 29.301 N·m 21.611.
    expect(text).toContain('18.87 to 21.61 lbf·ft');
    expect(text).toContain('0.0276 to 0.0314 in');
    // As printed in the source, and as the station lists its instruments, in their own units.
    const others = text.split('\n').filter((line) => !/as printed|^ {2}(wrench|gauge) /.test(line));
    expect(others.filter((line) => /\d N·m|\d\.\d+ mm/.test(line))).toEqual([]);
  });
});

describe('a reprint', () => {
  test('in another language says that it is another paper of the same record, where the record names what it replaces', async () => {
    const replaces = 'f'.repeat(64);
    const { input } = madeJob(V8_WITH_REDO);
    const otherCopies = (reader: PaperReader, given: string | null = replaces) =>
      madeFor(reader, () => reportModel({ ...input, replaces: given })).fingerprint.otherCopies;
    const german = await readerOf({ language: 'de', units: SI });
    expect(otherCopies(german)).toContain(replaces);
    expect(otherCopies(german)).toContain('andere Papiere desselben Protokolls');
    expect(otherCopies(ANYBODY)).not.toContain('another language');
    expect(otherCopies(german, null)).toBe('');
  });
});

describe('the file', () => {
  test.each(LANGUAGES)('names its language and its units: %s', async (language) => {
    const pdf = await drawnFor({ language, units: IMPERIAL });
    expect(readPaper(pdf)?.audience).toEqual({ language, units: IMPERIAL });
    expect(Buffer.from(pdf).toString('latin1')).toContain(
      `<dc:language><rdf:Bag><rdf:li>${language}</rdf:li></rdf:Bag></dc:language>`,
    );
  });

  test('is the same whatever language the program speaks otherwise', async () => {
    const before = await drawnFor({ language: 'fr', units: SI });
    speak(await dictionary('de'));
    try {
      expect(Buffer.from(await drawnFor({ language: 'fr', units: SI })).equals(before)).toBe(true);
      expect(
        Buffer.from(await drawn(V8_WITH_REDO, ANYBODY)).equals(await drawnFor({ language: 'en', units: SI })),
      ).toBe(true);
    } finally {
      speak(ANYBODY.dictionary);
    }
  });

  test.each(LANGUAGES)('is held in its own language, and a forged figure is found: %s', async (language) => {
    const audience = { language, units: IMPERIAL };
    const draw = (_: unknown, asked: Audience) => drawnFor(asked);
    expect(await heldPaper(await drawnFor(audience), draw)).toMatchObject({ outcome: 'same' });
    const forged = await drawnFor(audience, { firstPull: { 3: 27.5 } });
    expect(await heldPaper(forged, draw)).toMatchObject({ outcome: 'differs' });
  });

  test('that only calls itself another language is no paper of the record', async () => {
    const pdf = Buffer.from(await drawnFor({ language: 'de', units: SI })).toString('latin1');
    const renamed = Buffer.from(pdf.replace('/Lang (de)', '/Lang (fr)'), 'latin1');
    expect(await heldPaper(renamed, (_, asked) => drawnFor(asked))).toMatchObject({ outcome: 'differs' });
  });
});

describe.runIf(hasPoppler)('the pages', () => {
  const shapes = [
    ['one done again', V8_WITH_REDO],
    ['by hand', V8_BY_HAND],
    ['all exceptions', TROUBLED],
    ['long names', LONG_NAMES],
  ] as const;
  const readers = LANGUAGES.flatMap((language) =>
    shapes.map(([name, options]) => [language, name, options] as const),
  );
  test.each(readers)('no word leaves the page or lies on another: %s, %s', async (language, _, options) => {
    const pdf = await drawnFor({ language, units: IMPERIAL }, options);
    expect(wordsByPage(pdf).flatMap((words) => [...outside(words), ...overlapping(words)])).toEqual([]);
  });

  test.each(LANGUAGES)('no word of a label is cut: %s', async (language) => {
    const pdf = await drawnFor({ language, units: IMPERIAL });
    expect(poppler('pdftotext', pdf, ['-layout', '{pdf}', '-'])).not.toContain('…');
  });
});

describe('the CSV', () => {
  let german = ANYBODY;
  beforeAll(async () => {
    german = await readerOf({ language: 'de', units: IMPERIAL });
  });

  test('has names of columns, codes and words in English, and figures as the shop reads them beside N·m and mm', () => {
    const { input } = madeJob(V8_WITH_REDO);
    const model = reportModel(input);
    const csv = inLanguage(german.dictionary, () => writeCsv(model, undefined, IMPERIAL));
    const usual = writeCsv(model);
    const [head, ...rows] = csv.split('\r\n');
    expect(head).toBe(usual.split('\r\n')[0]);
    const cells = (row: string) =>
      row.match(/("([^"]|"")*"|[^,]*)(,|$)/g)?.map((cell) => cell.replace(/,$/, '')) ?? [];
    const at = (row: string, name: string) => cells(row)[cells(head ?? '').indexOf(name)];
    const pull = rows.find((row) => at(row, 'Quantity') === 'torque') ?? '';
    expect(at(pull, 'Verdict')).toBe('OK');
    expect(at(pull, 'Unit as shown')).toBe('lbf·ft');
    expect(Number(at(pull, 'Value as shown'))).toBeCloseTo(
      Number(at(pull, 'Peak torque (N·m)')) / 1.3558179,
      1,
    );
    expect(at(pull, 'Accepted from as shown')).toBe('18.87');
    const gap = rows.find((row) => at(row, 'Quantity') === 'gap') ?? '';
    expect(at(gap, 'Unit as shown')).toBe('in');
    expect(at(gap, 'Upper limit as shown')).toBe('0.0314');
  });
});
