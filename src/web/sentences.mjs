// Every sentence that the catalogue knows, read from the sources that say it: for tests, and for a build that packs no others.
import { readFileSync } from 'node:fs';
import ts from 'typescript';

/**
 * English sentence, as src/words/catalogue.ts makes its key, to the file that says it.
 * @param {readonly string[]} files
 * @returns {Map<string, string>}
 */
export function sentencesOf(files) {
  const sentences = new Map();
  for (const file of files) {
    const text = readFileSync(file, 'utf8');
    const found = file.endsWith('.html')
      ? sentencesInPage(text)
      : sentencesIn(ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true));
    for (const sentence of found) sentences.set(sentence, file);
  }
  return sentences;
}

/** An element with `data-words` says its text by the catalogue, or its label where it has one. */
const sentencesInPage = (html) =>
  [...html.matchAll(/<([^>]*) data-words>([^<]*)/g)].map(
    ([, attributes, text]) => /aria-label="([^"]*)"/.exec(attributes)?.[1] ?? text,
  );

/**
 * @param {ts.Node} source
 * @returns {string[]}
 */
export function sentencesIn(source) {
  const found = [];
  const isDeclaration = /\/cli\/(declare\/|main\.ts)/.test(source.getSourceFile().fileName);
  const visit = (node) => {
    if (ts.isTaggedTemplateExpression(node) && /^(w|sentence)$/.test(node.tag.getText()))
      found.push(templateKey(node.template));
    if (ts.isCallExpression(node)) found.push(...sentencesOfCall(node));
    if (isDeclaration && (ts.isCallExpression(node) || ts.isNewExpression(node)))
      found.push(...helpOfCall(node));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function templateKey(template) {
  if (ts.isNoSubstitutionTemplateLiteral(template)) return template.text;
  return template.templateSpans.reduce(
    (text, { literal }, at) => `${text}{${at}}${literal.text}`,
    template.head.text,
  );
}

function sentencesOfCall(call) {
  const [first, second] = call.arguments;
  switch (call.expression.getText()) {
    case 'plural':
      return second === undefined ? [] : [countedKey(second)];
    case 'phrases':
      return first === undefined ? [] : literalsIn(first);
    default:
      return /\.(refine|regex)$/.test(call.expression.getText()) ? refusalIn(second) : [];
  }
}

/** What a schema says of a value that it refuses; it is looked up where it is printed. */
function refusalIn(said) {
  if (said === undefined || ts.isStringLiteralLike(said)) return said === undefined ? [] : [said.text];
  if (!ts.isObjectLiteralExpression(said)) return [];
  const message = said.properties.find((one) => one.name?.getText() === 'message');
  return message !== undefined && ts.isPropertyAssignment(message) ? literalsIn(message.initializer) : [];
}

/** What is counted is written out where it is counted, so that it can be found. */
function countedKey(forms) {
  const of = (name) => {
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

/** The help of commands, arguments and options, which the help looks up where it prints them. */
function helpOfCall({ expression, arguments: given = [] }) {
  const called = ts.isPropertyAccessExpression(expression) ? expression.name.text : expression.getText();
  switch (called) {
    case 'description':
      return given.slice(0, 1).flatMap(literalsIn);
    case 'option':
    case 'requiredOption':
    case 'argument':
    case 'createArgument':
    case 'Option':
    case 'version':
    case 'helpOption':
    case 'helpCommand':
      return given.slice(called === 'version' ? 2 : 1, called === 'version' ? 3 : 2).flatMap(literalsIn);
    case 'closing':
      return given.slice(0, 1).flatMap(literalsIn);
    default:
      return [];
  }
}

/** Texts of a table, however deep; what a function in it says, it says by `w`. */
function literalsIn(node) {
  if (ts.isStringLiteralLike(node)) return node.text === '' ? [] : [node.text];
  if (ts.isArrayLiteralExpression(node)) return node.elements.flatMap(literalsIn);
  if (ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node))
    return literalsIn(node.expression);
  if (!ts.isObjectLiteralExpression(node)) return [];
  return node.properties.flatMap((one) => (ts.isPropertyAssignment(one) ? literalsIn(one.initializer) : []));
}
