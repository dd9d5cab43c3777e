/** Topics are written in Markdown, so that they can be read on a code host as well; here they become pages. */
import { lexer, type Token, type Tokens } from 'marked';
import type { Block, Item, Page, Span, Text } from './page.ts';

/** The first line is `# name - what it is about`. What Markdown has beyond these blocks no topic may use: it throws. */
export function pageOf(markdown: string): Page {
  const [first, ...rest] = lexer(markdown).filter(({ type }) => type !== 'space' && type !== 'html');
  const [, name, about] = (first?.type === 'heading' && /^(\S+) - (.+)$/.exec(first['text'])) || [];
  if (name === undefined || about === undefined)
    throw new Error(`a topic begins with "# name - what it is about", not with "${first?.raw ?? ''}"`);
  return { name, about, blocks: rest.map(blockOf) };
}

function blockOf(token: Token): Block {
  if (isA(token, 'heading')) return { kind: 'heading', level: token.depth, text: textOf(token.tokens) };
  if (isA(token, 'paragraph')) return { kind: 'paragraph', text: textOf(token.tokens) };
  if (isA(token, 'code')) return { kind: 'lines', text: token.text };
  if (isA(token, 'list'))
    return { kind: 'list', items: token.items.map((item, i) => itemOf(token, item, i)) };
  if (isA(token, 'table'))
    return {
      kind: 'table',
      head: token.header.map((cell) => textOf(cell.tokens)),
      rows: token.rows.map((row) => row.map((cell) => textOf(cell.tokens))),
    };
  throw new Error(`a topic cannot hold this: ${token.raw}`);
}

function itemOf({ ordered, start }: Tokens.List, { tokens }: Tokens.ListItem, i: number): Item {
  return { mark: ordered ? `${Number(start) + i}.` : '-', text: textOf(tokens) };
}

function textOf(tokens: readonly Token[]): Text {
  return tokens.flatMap((token): Text => {
    if (isA(token, 'strong')) return styled(token.tokens, 'strong');
    if (isA(token, 'codespan')) return [{ text: token.text, style: 'code' }];
    if (isA(token, 'link')) return linkText(token);
    if (isA(token, 'text') || isA(token, 'paragraph'))
      return token.tokens === undefined
        ? [{ text: unescaped(token.text), style: 'plain' }]
        : textOf(token.tokens);
    if (isA(token, 'escape')) return [{ text: token.text, style: 'plain' }];
    throw new Error(`a line of a topic cannot hold this: ${token.raw}`);
  });
}

const styled = (tokens: readonly Token[], style: Span['style']): Text =>
  textOf(tokens).map(({ text }) => ({ text, style }));

/** A link to another topic: its words, and the topic where the words do not name it. */
function linkText({ href, tokens }: Tokens.Link): Text {
  const topic = /^([a-z-]+)\.md$/.exec(href)?.[1];
  if (topic === undefined) throw new Error(`a topic links to topics alone, not to ${href}`);
  const words = textOf(tokens);
  const named: Text = [{ text: topic, style: 'topic' }];
  if (words.map(({ text }) => text).join('') === topic) return named;
  return [...words, { text: ' (', style: 'plain' }, ...named, { text: ')', style: 'plain' }];
}

/** The lexer keeps line breaks of the source. */
const unescaped = (text: string) => text.replaceAll('\n', ' ');

interface TokenOf {
  readonly heading: Tokens.Heading;
  readonly paragraph: Tokens.Paragraph;
  readonly code: Tokens.Code;
  readonly list: Tokens.List;
  readonly table: Tokens.Table;
  readonly strong: Tokens.Strong;
  readonly codespan: Tokens.Codespan;
  readonly link: Tokens.Link;
  readonly text: Tokens.Text;
  readonly escape: Tokens.Escape;
}
const isA = <K extends keyof TokenOf>(token: Token, type: K): token is TokenOf[K] => token.type === type;
