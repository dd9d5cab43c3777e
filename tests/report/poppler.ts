import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const TOOLS = ['pdftotext', 'pdfinfo', 'pdftoppm', 'pdfdetach', 'pdffonts', 'pdfimages'] as const;
type Tool = (typeof TOOLS)[number];

/** Whether an independent PDF reader is installed; without one the tests that need it are not run, and this says so. */
export const hasPoppler = TOOLS.every((tool) => spawnSync(tool, ['-v']).error === undefined);
if (!hasPoppler)
  process.stderr.write('poppler-utils is not installed: checks of the finished PDF are left out\n');

/** Runs one of poppler's tools on a PDF; `{pdf}` and `{dir}` in the arguments stand for the file and a scratch folder. */
export function poppler(tool: Tool, pdf: Uint8Array, args: readonly string[]): string {
  return inScratch(pdf, (fill) => run(tool, args.map(fill)));
}

/** The same file with the texts for copying taken out of their place, so that a reader shows what is printed. */
export const withoutCopies = (pdf: Uint8Array): Uint8Array =>
  Buffer.from(Buffer.from(pdf).toString('latin1').replaceAll('/ActualText', '/PrintedOnl'), 'latin1');

/** The fonts of a PDF by name, without the tag of their subset. */
export function fontsIn(pdf: Uint8Array) {
  const lines = poppler('pdffonts', pdf, ['{pdf}']).trim().split('\n').slice(2);
  return lines
    .map((line) => {
      const [, name = '', embedded, subset, unicode] =
        /^(?:[A-Z]{6}\+)?(\S+) .* (yes|no) +(yes|no) +(yes|no) +\d+ +\d+$/.exec(line) ?? [];
      return { name, embedded: embedded === 'yes', subset: subset === 'yes', unicode: unicode === 'yes' };
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** How many pages a PDF has. */
export function pages(pdf: Uint8Array): number {
  return Number(/Pages:\s+(\d+)/.exec(poppler('pdfinfo', pdf, ['{pdf}']))?.[1]);
}

/** The bytes of the first file attached to a PDF. */
export function firstAttachment(pdf: Uint8Array): Uint8Array {
  return inScratch(pdf, (fill) => {
    run('pdfdetach', ['-save', '1', '-o', fill('{dir}/attached'), fill('{pdf}')]);
    return readFileSync(fill('{dir}/attached'));
  });
}

/** A page in grey, one byte a pixel. */
export function rendered(pdf: Uint8Array, dpi: number) {
  return inScratch(pdf, (fill) => {
    run('pdftoppm', ['-gray', '-r', String(dpi), '-singlefile', fill('{pdf}'), fill('{dir}/page')]);
    const bytes = readFileSync(fill('{dir}/page.pgm'));
    const header = /^P5\s(\d+)\s(\d+)\s255\s/.exec(bytes.toString('latin1', 0, 40));
    if (header === null) throw new Error('pdftoppm wrote no PGM');
    const width = Number(header[1]);
    const start = header[0].length;
    return {
      width,
      height: Number(header[2]),
      at: (x: number, y: number) => bytes[start + y * width + x] ?? 255,
    };
  });
}

function inScratch<T>(pdf: Uint8Array, use: (fill: (text: string) => string) => T): T {
  const dir = mkdtempSync(join(tmpdir(), 'report-'));
  const file = join(dir, 'file.pdf');
  try {
    writeFileSync(file, pdf);
    return use((text) => text.replace('{pdf}', file).replace('{dir}', dir));
  } finally {
    rmSync(dir, { recursive: true });
  }
}

function run(tool: Tool, args: readonly string[]): string {
  const done = spawnSync(tool, args, { encoding: 'utf8', maxBuffer: 1 << 26 });
  if (done.status !== 0) throw new Error(`${tool} failed: ${done.stderr}`);
  return done.stdout;
}
