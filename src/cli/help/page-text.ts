import { columnsOf } from '../../ui/printable.ts';
import type { Block, Page, Span, Text } from './page.ts';

export interface Look {
  readonly columns: number;
  /** Whether the terminal shows bold letters; otherwise code is between backticks. */
  readonly bold: boolean;
}

const INDENT = 4;
/** A label that is wider has the text below it. */
const WIDEST_LABEL = 26;
const WIDEST_PAGE = 100;

/** The page for a terminal or a pipe: headings at the margin, all else indented, prose broken between words. */
export function textOfPage({ name, about, blocks }: Page, { columns, bold }: Look): string {
  const width = Math.max(20, Math.min(columns, WIDEST_PAGE) - INDENT);
  const shown = blocks.map((block) => {
    if (block.kind === 'heading') {
      const title = flowing(block.text, 1000, { bold: false }).join(' ');
      return `${' '.repeat(block.level > 2 ? INDENT / 2 : 0)}${heavy(title, bold)}`;
    }
    return linesOf(block, width, bold)
      .map((line) => `${' '.repeat(INDENT)}${line}`.trimEnd())
      .join('\n');
  });
  const page = [`${heavy(name, bold)} - ${about}`, ...shown];
  return `${page.reduce((text, block, i) => `${text}${tight(blocks, i) ? '\n' : '\n\n'}${block}`)}\n`;
}

/** Nothing is between a heading and its text, and between two entries. */
function tight(blocks: readonly Block[], i: number): boolean {
  const [before, here] = [blocks[i - 2]?.kind, blocks[i - 1]?.kind];
  return before === 'heading' || (before === 'entry' && here === 'entry');
}

function linesOf(
  block: Exclude<Block, { kind: 'heading' }>,
  width: number,
  bold: boolean,
): readonly string[] {
  switch (block.kind) {
    case 'paragraph':
      return flowing(block.text, width, { bold });
    case 'lines':
      return block.text.split('\n');
    case 'list':
      return block.items.flatMap(({ mark, text }) => {
        const lead = `${mark} `;
        return flowing(text, width - lead.length, { bold }).map(
          (line, i) => `${i === 0 ? lead : ' '.repeat(lead.length)}${line}`,
        );
      });
    case 'table':
      return tableLines(block, width, bold);
    case 'entry':
      return [
        ...flowing(block.term, width, { bold, bare: true }),
        ...flowing(block.text, width - INDENT, { bold }).map((line) => `${' '.repeat(INDENT)}${line}`),
      ];
  }
}

/** Short columns as wide as they need, the last one broken between words; a label that is too wide has a line to itself. */
function tableLines(
  { head, rows }: Extract<Block, { kind: 'table' }>,
  width: number,
  bold: boolean,
): readonly string[] {
  const labels = [head, ...rows].map((row) =>
    row.slice(0, -1).map((cell) => flowing(cell, 1000, { bold: false, bare: true }).join(' ')),
  );
  const widths = head
    .slice(0, -1)
    .map((_, at) => Math.min(WIDEST_LABEL, Math.max(...labels.map((row) => columnsOf(row[at] ?? '')))));
  const used = widths.reduce((sum, one) => sum + one + 2, 0);
  const shown = [head, ...rows].flatMap((row, i) => {
    const label = labels[i] ?? [];
    const text = flowing(row.at(-1) ?? [], Math.max(20, width - used), { bold });
    const fits = label.every((cell, at) => columnsOf(cell) <= (widths[at] ?? 0));
    const first = label.map((cell, at) => padded(cell, widths[at] ?? 0)).join('  ');
    const below = ' '.repeat(used);
    const [top = '', ...more] = text;
    return fits
      ? [`${first}  ${top}`, ...more.map((line) => below + line)]
      : [first, ...text.map((line) => below + line)];
  });
  const rule = [...widths, Math.max(4, Math.min(width - used, 20))].map((one) => '-'.repeat(one)).join('  ');
  return [...shown.slice(0, 1), rule, ...shown.slice(1)];
}

const padded = (text: string, width: number) => text + ' '.repeat(Math.max(0, width - columnsOf(text)));

/** Words as lines of at most `width`. `bare`: code without its backticks, where it is all there is. */
function flowing(
  text: Text,
  width: number,
  { bold, bare = false }: { readonly bold: boolean; readonly bare?: boolean },
): readonly string[] {
  const lines: string[] = [];
  let used = 0;
  for (const word of wordsOf(text, bold, bare)) {
    const line = lines.at(-1);
    if (line === undefined || used + 1 + word.columns > width) {
      lines.push(word.shown);
      used = word.columns;
    } else {
      lines.splice(-1, 1, `${line} ${word.shown}`);
      used += 1 + word.columns;
    }
  }
  return lines.length === 0 ? [''] : lines;
}

interface Word {
  readonly shown: string;
  readonly columns: number;
}

/** What has no space in between is one word, whatever its styles are. */
function wordsOf(text: Text, bold: boolean, bare: boolean): readonly Word[] {
  const words: Word[] = [];
  let open = false;
  for (const span of text) {
    const letters = lettersOf(span, bold, bare);
    for (const piece of letters.split(/(\s+)/).filter((one) => one !== '')) {
      if (/^\s/.test(piece)) {
        open = false;
        continue;
      }
      const shown = span.style === 'plain' ? piece : heavy(piece, bold);
      const before = open ? words.pop() : undefined;
      words.push({
        shown: (before?.shown ?? '') + shown,
        columns: (before?.columns ?? 0) + columnsOf(piece),
      });
      open = true;
    }
  }
  return words;
}

function lettersOf({ text, style }: Span, bold: boolean, bare: boolean): string {
  const letters = style === 'topic' ? `plugmark manual ${text}` : text;
  const marked = !bold && !bare && (style === 'code' || style === 'topic');
  return marked ? `\`${letters}\`` : letters;
}

const heavy = (text: string, bold: boolean) => (bold ? `\u001b[1m${text}\u001b[22m` : text);
