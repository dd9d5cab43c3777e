/** LibreOffice without a window, as a reader of what leaves the shop. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const SOFFICE = '/usr/bin/soffice';
/** With ALL_TESTS=1 it has to be here. */
export const hasSpreadsheet = process.env['ALL_TESTS'] === '1' || existsSync(SOFFICE);

export interface Cell {
  /** `float`, `string`, as OpenDocument has it (1.3, part 3, 19.389). */
  readonly type: string;
  readonly value: number | null;
  readonly text: string;
  readonly isFormula: boolean;
}

/** Number of English (US) and German (Germany) in the filter options of LibreOffice. */
const LANGUAGE = { en: 1033, de: 1031 } as const;

/** Opens a file as the spreadsheet of a country does, and gives its cells. */
export function cellsOf(
  file: string,
  as: { readonly separator: ',' | ';'; readonly language: keyof typeof LANGUAGE } | 'xlsx',
): readonly (readonly Cell[])[] {
  const folder = mkdtempSync(join(tmpdir(), 'plugmark-calc-'));
  try {
    // Parted by, texts in quotation marks, UTF-8, from the first line on, and numbers as that language writes them.
    const filter =
      as === 'xlsx'
        ? []
        : [`--infilter=CSV:${as.separator.charCodeAt(0)},34,76,1,,${LANGUAGE[as.language]},false,true`];
    execFileSync(
      SOFFICE,
      [
        `-env:UserInstallation=file://${folder}/profile`,
        '--headless',
        ...filter,
        ...['--convert-to', 'fods', '--outdir', folder, file],
      ],
      { stdio: 'ignore' },
    );
    const name = readdirSync(folder).find((one) => one.endsWith('.fods'));
    if (name === undefined) throw new Error(`LibreOffice did not read ${file}`);
    return rowsIn(readFileSync(join(folder, name), 'utf8'));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function rowsIn(document: string): readonly (readonly Cell[])[] {
  const sheet = document.slice(document.indexOf('<table:table '));
  return [...sheet.matchAll(/<table:table-row\b[^>]*?(?:\/>|>([\s\S]*?)<\/table:table-row>)/g)]
    .map(([, row = '']) => cellsIn(row))
    .filter((cells) => cells.some(({ text }) => text !== ''));
}

/** The last cells of a row, which are empty, are repeated to the end of the sheet. */
const MOST_COLUMNS = 200;

const cellsIn = (row: string): readonly Cell[] =>
  [...row.matchAll(/<table:table-cell\b([^>]*?)(?:\/>|>([\s\S]*?)<\/table:table-cell>)/g)].flatMap(
    ([, attributes = '', content = '']) => {
      const of = (name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(attributes)?.[1];
      const value = of('office:value');
      const cell: Cell = {
        type: of('office:value-type') ?? 'empty',
        value: value === undefined ? null : Number(value),
        text: plain(content),
        isFormula: of('table:formula') !== undefined,
      };
      const count = Number(of('table:number-columns-repeated') ?? 1);
      return Array.from({ length: Math.min(count, MOST_COLUMNS) }, () => cell);
    },
  );

const plain = (xml: string) =>
  xml
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&')
    .trim();
