/** Every sentence of the program that the catalogue knows, read from its sources. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

const SRC = new URL('../../src/', import.meta.url).pathname;

/** English sentence, as `src/words/catalogue.ts` makes its key, to the file that says it. */
export function sentencesOf(files: readonly string[] = sources(SRC)): ReadonlyMap<string, string> {
  const sentences = new Map<string, string>();
  for (const file of files) {
    const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
    for (const sentence of sentencesIn(source)) sentences.set(sentence, file.slice(SRC.length));
  }
  return sentences;
}

function sources(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !/^words\//.test(name))
    .map((name) => join(folder, name));
}

export function sentencesIn(source: ts.Node): readonly string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === 'w')
      found.push(templateKey(node.template));
    if (ts.isCallExpression(node)) found.push(...sentencesOfCall(node));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function templateKey(template: ts.TemplateLiteral): string {
  if (ts.isNoSubstitutionTemplateLiteral(template)) return template.text;
  return template.templateSpans.reduce(
    (text, { literal }, at) => `${text}{${at}}${literal.text}`,
    template.head.text,
  );
}

function sentencesOfCall(call: ts.CallExpression): readonly string[] {
  const [first, second] = call.arguments;
  switch (call.expression.getText()) {
    case 'plural':
      return second === undefined ? [] : [countedKey(second)];
    case 'phrases':
      return first === undefined ? [] : literalsIn(first);
    default:
      return [];
  }
}

/** What is counted is written out where it is counted, so that it can be found. */
function countedKey(forms: ts.Expression): string {
  const of = (name: string): string => {
    const member = ts.isObjectLiteralExpression(forms)
      ? forms.properties.find((one) => one.name?.getText() === name)
      : undefined;
    if (
      member === undefined ||
      !ts.isPropertyAssignment(member) ||
      !ts.isStringLiteralLike(member.initializer)
    )
      throw new Error(`no text for "${name}" in plural(${forms.getText()})`);
    return member.initializer.text;
  };
  return `${of('one')}|${of('other')}`;
}

/** Texts of a table, however deep; what a function in it says, it says by `w`. */
function literalsIn(node: ts.Expression): readonly string[] {
  if (ts.isStringLiteralLike(node)) return node.text === '' ? [] : [node.text];
  if (ts.isArrayLiteralExpression(node)) return node.elements.flatMap(literalsIn);
  if (ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node))
    return literalsIn(node.expression);
  if (!ts.isObjectLiteralExpression(node)) return [];
  return node.properties.flatMap((one) => (ts.isPropertyAssignment(one) ? literalsIn(one.initializer) : []));
}
