import type { Block, Page, Text } from './page.ts';

/** Whose section of the manual a page is in, and what man finds it by. */
export const manSection = ({ name }: Page): 1 | 7 => (name === 'commands' ? 1 : 7);
export const manName = ({ name }: Page): string => (name === 'commands' ? 'plugmark' : `plugmark-${name}`);

/** A page for man (groff's man macros). */
export function roffOfPage(page: Page, version: string): string {
  const name = manName(page);
  const lines = [
    `.TH ${name.toUpperCase()} ${manSection(page)} "" "plugmark ${version}"`,
    // What somebody types is neither stretched nor hyphenated.
    '.ad l',
    '.nh',
    '.SH NAME',
    `${escaped(name)} \\- ${escaped(page.about)}`,
    ...(page.blocks[0]?.kind === 'heading' ? [] : ['.SH DESCRIPTION']),
    ...page.blocks.flatMap(roffOf),
  ];
  return `${lines.join('\n')}\n`;
}

function roffOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return [`.${block.level > 2 ? 'SS' : 'SH'} "${words(block.text).replaceAll('"', '')}"`];
    case 'paragraph':
      return ['.PP', line(block.text)];
    case 'lines':
      return ['.PP', '.RS 4', '.nf', ...block.text.split('\n').map(escaped), '.fi', '.RE'];
    case 'list':
      return block.items.flatMap(({ mark, text }) => [`.IP "${escaped(mark)}" 4`, line(text)]);
    case 'table':
      return block.rows.flatMap((row) => {
        const [label = [], ...rest] = row;
        const between = rest
          .slice(0, -1)
          .map((cell, i) => `${words(block.head[i + 1] ?? [])}: ${words(cell)}. `)
          .join('');
        return ['.TP', `\\fB${words(label)}\\fR`, guarded(between + inline(rest.at(-1) ?? []))];
      });
    case 'entry':
      return ['.TP', `\\fB${words(block.term)}\\fR`, line(block.text)];
  }
}

const line = (text: Text) => guarded(inline(text));
const words = (text: Text) => text.map((span) => escaped(span.text)).join('');

const inline = (text: Text) =>
  text
    .map(({ text: letters, style }) => {
      if (style === 'plain') return escaped(letters);
      return style === 'topic' ? `\\fBplugmark\\-${escaped(letters)}\\fR(7)` : `\\fB${escaped(letters)}\\fR`;
    })
    .join('');

/** No line of text begins as a request does. */
const guarded = (text: string) => text.replace(/^(?=[.'])/, '\\&');

/** Hyphens, carets, tildes and quotes that can be copied, and no escapes from the text. */
const escaped = (text: string) =>
  guarded(
    text
      .replaceAll('\\', '\\e')
      .replaceAll('-', '\\-')
      .replaceAll('^', '\\(ha')
      .replaceAll('~', '\\(ti')
      .replaceAll('`', '\\(ga')
      .replaceAll("'", '\\(aq'),
  );
