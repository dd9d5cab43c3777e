/**
 * PDF/A-3b, as far as the tools of a Debian machine can tell. A whole validator is not to be had there: these are the rules
 * that our printer could break, one by one.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { LONG_NAMES, OTHER_SCRIPTS, pdfOf, TROUBLED, V8_WITH_REDO } from './fixtures.ts';
import { fontsIn, hasPoppler, poppler } from './poppler.ts';

const latin1 = (pdf: Uint8Array) => Buffer.from(pdf).toString('latin1');

const hasQpdf = spawnSync('qpdf', ['--version']).error === undefined;
if (!hasQpdf && process.env['ALL_TESTS'] === '1') throw new Error('qpdf is not installed');

const SHAPES = [
  ['eight cylinders', V8_WITH_REDO],
  ['all exceptions, simulated', { ...TROUBLED, source: 'simulated' }],
  ['other scripts', OTHER_SCRIPTS],
  ['long names', LONG_NAMES],
] as const;

describe.each(SHAPES)('a paper for the archive: %s', (_, options) => {
  test('says what it is, in its metadata and in the order of its parts', async () => {
    const pdf = latin1((await pdfOf(options)).pdf);
    expect(pdf.startsWith('%PDF-1.7')).toBe(true);
    expect(pdf).toContain('<pdfaid:part>3</pdfaid:part>');
    expect(pdf).toContain('<pdfaid:conformance>B</pdfaid:conformance>');
    expect(pdf).toMatch(/\/OutputIntents \[/);
    expect(pdf).toMatch(/\/Marked true/);
    expect(pdf).toMatch(/\/Lang \(en\)/);
    expect(pdf).toMatch(/\/ID \[<[0-9a-f]{32}> <[0-9a-f]{32}>\]/);
  });

  test('has nothing that an archive forbids: no encryption, script, transparency, outside reference or packed object', async () => {
    const pdf = latin1((await pdfOf(options)).pdf);
    for (const forbidden of [
      '/Encrypt',
      '/JavaScript',
      '/JS ',
      '/Launch',
      '/URI',
      '/SMask',
      '/ca ',
      '/CA ',
      '/LZWDecode',
      '/ObjStm',
      '/Movie',
      '/RichMedia',
    ])
      expect(pdf).not.toContain(forbidden);
  });

  test('carries the record as a part that belongs to the document, with type and day', async () => {
    const pdf = latin1((await pdfOf(options)).pdf);
    expect(pdf).toMatch(/\/AF \[\d+ 0 R\]/);
    expect(pdf).toContain('/AFRelationship /Source');
    expect(pdf).toMatch(/\/Subtype \/application#2Fjson/);
    expect(pdf).toMatch(/\/ModDate \(D:20250603/);
  });

  test.runIf(hasPoppler)('embeds every font, with what its letters mean', async () => {
    const fonts = fontsIn((await pdfOf(options)).pdf);
    expect(fonts.length).toBeGreaterThan(1);
    for (const font of fonts) expect(font).toMatchObject({ embedded: true, subset: true, unicode: true });
  });

  test('draws no letter that its font lacks', async () => {
    const texts = latin1((await pdfOf(options)).pdf)
      .split('\n')
      .filter((line) => line.endsWith(' TJ'));
    const glyphs = texts.flatMap((text): string[] => text.match(/<[0-9a-f]+>/g) ?? []);
    expect(glyphs.length).toBeGreaterThan(100);
    const missing = glyphs.filter((hex) => /^<(?:[0-9a-f]{4})*?0000/.test(hex));
    expect(missing).toEqual([]);
  });

  test.runIf(hasPoppler)('has a structure in which every picture has words', async () => {
    const tree = poppler('pdfinfo', (await pdfOf(options)).pdf, ['-struct', '{pdf}']);
    expect(tree).toMatch(/^Document/m);
    expect(tree).toMatch(/^ +H1/m);
    expect(tree).toMatch(/^ +Table/m);
  });

  test.runIf(hasQpdf)('is sound to a strict reader', async () => {
    const { pdf } = await pdfOf(options);
    const dir = mkdtempSync(join(tmpdir(), 'archival-'));
    try {
      const file = join(dir, 'a.pdf');
      writeFileSync(file, pdf);
      const { status, stdout, stderr } = spawnSync('qpdf', ['--check', file], { encoding: 'utf8' });
      expect(stderr).toBe('');
      expect(stdout).toContain('No syntax or stream encoding errors found');
      expect(status).toBe(0);
    } finally {
      rmSync(dir, { recursive: true });
    }
  });
});
