/** A built program in which every sentence is another one, and nothing else is changed. */
import { cpSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** The texts of closed editions are as frozen as their figures; those in `db` are SQL. */
const KEPT = /^(db\/|src\/rules\/edition-)/;

/** Copies the program with its sentences replaced; returns how many were. */
export function withOtherWords(dist: string, to: string): number {
  cpSync(dist, to, { recursive: true });
  return readdirSync(to, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.js') && !KEPT.test(file))
    .map((file) => {
      const path = join(to, file);
      const { code, count } = otherWords(readFileSync(path, 'utf8'));
      writeFileSync(path, code);
      return count;
    })
    .reduce((sum, count) => sum + count, 0);
}

/** Every text of the program that holds a space and a letter, with each of its words turned round: other words, as long. */
export function otherWords(code: string): { readonly code: string; readonly count: number } {
  const file = ts.createSourceFile('module.js', code, ts.ScriptTarget.ESNext, true, ts.ScriptKind.JS);
  const changes: { readonly from: number; readonly to: number; readonly by: string }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    const by = replacement(node);
    if (by !== null) changes.push({ from: node.getStart(file), to: node.end, by });
    ts.forEachChild(node, visit);
  };
  visit(file);
  const changed = changes
    .sort((a, b) => b.from - a.from)
    .reduce((text, { from, to, by }) => text.slice(0, from) + by + text.slice(to), code);
  return { code: changed, count: changes.length };
}

function replacement(node: ts.Node): string | null {
  if (ts.isStringLiteral(node)) return isSentence(node.text) ? JSON.stringify(turned(node.text)) : null;
  if (ts.isNoSubstitutionTemplateLiteral(node) && !isPattern(node.parent))
    return isSentence(node.text) ? `\`${inTemplate(node.text)}\`` : null;
  const isChunk = ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node);
  if (!isChunk || isInPattern(node) || !isSentence(node.text)) return null;
  const [open, close] = [ts.isTemplateHead(node) ? '`' : '}', ts.isTemplateTail(node) ? '`' : '${'];
  return `${open}${inTemplate(node.text)}${close}`;
}

const isSentence = (text: string) => / /.test(text) && /\p{L}/u.test(text);
const turned = (text: string) => text.replace(/\p{L}+/gu, (word) => [...word].reverse().join(''));
const inTemplate = (text: string) => turned(text).replace(/[\\`]|\$\{/g, (found) => `\\${found}`);

/** The text of a tagged template is a pattern, unless the tag makes it a sentence of the catalogue. */
const isPattern = (node: ts.Node): boolean =>
  ts.isTaggedTemplateExpression(node) && !/^(w|sentence)$/.test(node.tag.getText());

const isInPattern = (node: ts.Node): boolean =>
  isPattern(ts.isTemplateHead(node) ? node.parent.parent : node.parent.parent.parent);
