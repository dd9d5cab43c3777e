/** Every small fault that a slip of the hand could put into a file: found in its syntax tree, written as an edit of its text. */
import ts from 'typescript';

/** An edit: the characters from `start` to `end` become `by`. */
export interface Mutant {
  /** From the top of the project, with forward slashes. */
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly by: string;
  /** From 1. */
  readonly line: number;
  readonly was: string;
  /** Where the innermost function around it starts; null for code that runs when the module is loaded. */
  readonly inside: number | null;
}

type Edit = readonly [from: ts.Node | readonly [number, number], by: string];

const SWAPPED: ReadonlyMap<ts.SyntaxKind, readonly string[]> = new Map([
  [ts.SyntaxKind.LessThanToken, ['<=', '>=']],
  [ts.SyntaxKind.LessThanEqualsToken, ['<', '>']],
  [ts.SyntaxKind.GreaterThanToken, ['>=', '<=']],
  [ts.SyntaxKind.GreaterThanEqualsToken, ['>', '<']],
  [ts.SyntaxKind.EqualsEqualsEqualsToken, ['!==']],
  [ts.SyntaxKind.ExclamationEqualsEqualsToken, ['===']],
  [ts.SyntaxKind.PlusToken, ['-']],
  [ts.SyntaxKind.MinusToken, ['+']],
  [ts.SyntaxKind.AsteriskToken, ['/']],
  [ts.SyntaxKind.SlashToken, ['*']],
  [ts.SyntaxKind.PercentToken, ['*']],
  [ts.SyntaxKind.AsteriskAsteriskToken, ['*']],
  [ts.SyntaxKind.PlusEqualsToken, ['-=']],
  [ts.SyntaxKind.MinusEqualsToken, ['+=']],
  [ts.SyntaxKind.AsteriskEqualsToken, ['/=']],
  [ts.SyntaxKind.SlashEqualsToken, ['*=']],
]);
const COMPARISONS: ReadonlySet<ts.SyntaxKind> = new Set([
  ts.SyntaxKind.LessThanToken,
  ts.SyntaxKind.LessThanEqualsToken,
  ts.SyntaxKind.GreaterThanToken,
  ts.SyntaxKind.GreaterThanEqualsToken,
  ts.SyntaxKind.EqualsEqualsEqualsToken,
  ts.SyntaxKind.ExclamationEqualsEqualsToken,
  ts.SyntaxKind.AmpersandAmpersandToken,
  ts.SyntaxKind.BarBarToken,
]);
/** Methods that are put in place of each other. */
const OTHER_METHOD: Readonly<Record<string, string>> = {
  min: 'max',
  max: 'min',
  some: 'every',
  every: 'some',
  find: 'findLast',
  findLast: 'find',
  floor: 'ceil',
  ceil: 'floor',
  round: 'floor',
  startsWith: 'endsWith',
  endsWith: 'startsWith',
};
/** Methods that are left out, with what they were called on left as it is. */
const LEFT_OUT: ReadonlySet<string> = new Set([
  'filter',
  'sort',
  'reverse',
  'slice',
  'trim',
  'toSorted',
  'toReversed',
]);
/** Functions that are left out, with their one argument left as it is. */
const BARE: ReadonlySet<string> = new Set(['Math.abs', 'Math.sqrt']);
/** Sentences for people: another word is no fault of the program. */
const SENTENCES: ReadonlySet<string> = new Set(['message', 'next', 'where', 'describe']);

/** All mutants of a file that still are TypeScript. */
export function mutantsOf(file: string, text: string): readonly Mutant[] {
  const source = parsed(file, text);
  const mutants = new Map<string, Mutant>();
  const visit = (node: ts.Node, inside: number | null): void => {
    if (isNoCode(node)) return;
    for (const [from, by] of editsOf(node, source)) {
      const [start, end] = 'kind' in from ? [from.getStart(source), from.getEnd()] : from;
      const was = text.slice(start, end);
      if (was === by) continue;
      const line = source.getLineAndCharacterOfPosition(start).line + 1;
      const mutant = { file, start, end, by, line, was, inside };
      if (isSound(file, edited(text, mutant))) mutants.set(`${start} ${end} ${by}`, mutant);
    }
    const within = ts.isFunctionLike(node) ? node.getStart(source) : inside;
    ts.forEachChild(node, (child) => visit(child, within));
  };
  visit(source, null);
  return [...mutants.values()];
}

export const edited = (text: string, { start, end, by }: Pick<Mutant, 'start' | 'end' | 'by'>): string =>
  text.slice(0, start) + by + text.slice(end);

/**
 * The text with a call at the beginning of each function, and at the top, that leaves a mark for it: what a test reaches is
 * then known before any mutant is tried.
 */
export function marked(file: string, text: string): string {
  const source = parsed(file, text);
  const inserts: [at: number, text: string][] = [];
  const mark = (key: string) => `globalThis.reachedCode?.add(${JSON.stringify(`${file}#${key}`)})`;
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body !== undefined) {
      const body = node.body as ts.ConciseBody;
      const here = mark(String(node.getStart(source)));
      if (ts.isBlock(body)) inserts.push([body.getStart(source) + 1, `${here};`]);
      else inserts.push([body.getStart(source), `(${here}, `], [body.getEnd(), ')']);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  // What is further behind goes in first; of two at one place the one that closes an inner function.
  const ordered = inserts
    .map((insert, i) => [...insert, i] as const)
    .sort((a, b) => b[0] - a[0] || b[2] - a[2]);
  return `${ordered.reduce((out, [at, insert]) => out.slice(0, at) + insert + out.slice(at), text)}\n${mark('loaded')};\n`;
}

const parsed = (file: string, text: string): ts.SourceFile =>
  ts.createSourceFile(
    file,
    text,
    ts.ScriptTarget.ESNext,
    true,
    /x$/.test(file) ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );

function isSound(file: string, text: string): boolean {
  const options = {
    fileName: file,
    reportDiagnostics: true,
    compilerOptions: { target: ts.ScriptTarget.ESNext },
  };
  return ts.transpileModule(text, options).diagnostics?.length === 0;
}

/** Types, imports, sentences for people, and what is thrown for a bug. */
function isNoCode(node: ts.Node): boolean {
  if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return true;
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isThrowStatement(node)) return true;
  if (ts.isPropertyAssignment(node)) return SENTENCES.has(node.name.getText());
  return ts.isCallExpression(node) && isSchema(node);
}

/** What a file may hold is a table, and its bounds are tried with it: only the functions in it are code. */
const isSchema = (call: ts.CallExpression): boolean =>
  /^z\s*\./.test(call.getText()) && !/=>/.test(call.getText());

function editsOf(node: ts.Node, source: ts.SourceFile): readonly Edit[] {
  if (ts.isBinaryExpression(node)) return ofBinary(node);
  if (
    ts.isIfStatement(node) ||
    ts.isConditionalExpression(node) ||
    ts.isDoStatement(node) ||
    ts.isWhileStatement(node)
  )
    return ofCondition(node);
  if (ts.isPrefixUnaryExpression(node)) return ofPrefix(node);
  if (ts.isCallExpression(node)) return ofCall(node, source);
  if (ts.isNumericLiteral(node)) return ofNumber(node);
  if (node.kind === ts.SyntaxKind.TrueKeyword) return [[node, 'false']];
  if (node.kind === ts.SyntaxKind.FalseKeyword) return [[node, 'true']];
  if (ts.isArrayLiteralExpression(node) && node.elements.length > 0 && !isTarget(node)) return [[node, '[]']];
  if (ts.isExpressionStatement(node) && ts.isCallExpression(node.expression)) return [[node, ';']];
  if (ts.isFunctionLike(node) && 'body' in node && node.body !== undefined) {
    const body = node.body as ts.ConciseBody;
    return ts.isBlock(body) && body.statements.length > 0 ? [[body, '{}']] : [];
  }
  return [];
}

function ofBinary(node: ts.BinaryExpression): readonly Edit[] {
  const { left, right, operatorToken } = node;
  const { kind } = operatorToken;
  const [a, b] = [left.getText(), right.getText()];
  if (kind === ts.SyntaxKind.QuestionQuestionToken) return [[node, `(${a})`]];
  if (kind === ts.SyntaxKind.PlusToken && [left, right].some(isText)) return [];
  const swapped = (SWAPPED.get(kind) ?? []).map((by): Edit => [operatorToken, by]);
  const whole: Edit[] = COMPARISONS.has(kind)
    ? [
        [node, 'true'],
        [node, 'false'],
      ]
    : [];
  if (kind === ts.SyntaxKind.AmpersandAmpersandToken) whole.push([node, `(${a} || ${b})`]);
  if (kind === ts.SyntaxKind.BarBarToken) whole.push([node, `(${a} && ${b})`]);
  return [...swapped, ...whole];
}

const isText = (node: ts.Node): boolean => ts.isStringLiteralLike(node) || ts.isTemplateExpression(node);

function ofCondition(
  node: ts.IfStatement | ts.ConditionalExpression | ts.DoStatement | ts.WhileStatement,
): readonly Edit[] {
  if (ts.isConditionalExpression(node))
    return [
      [node.condition, 'true'],
      [node.condition, 'false'],
    ];
  if (ts.isIfStatement(node))
    return [
      [node.expression, 'true'],
      [node.expression, 'false'],
    ];
  return [[node.expression, 'false']];
}

function ofPrefix(node: ts.PrefixUnaryExpression): readonly Edit[] {
  const bare = ` ${node.operand.getText()}`;
  if (node.operator === ts.SyntaxKind.ExclamationToken || node.operator === ts.SyntaxKind.MinusToken)
    return [[node, bare]];
  return [];
}

function ofCall(node: ts.CallExpression, source: ts.SourceFile): readonly Edit[] {
  const { expression } = node;
  if (!ts.isPropertyAccessExpression(expression)) return [];
  const method = expression.name.text;
  const edits: Edit[] = [];
  const other = OTHER_METHOD[method];
  if (other !== undefined) edits.push([expression.name, other]);
  if (LEFT_OUT.has(method)) edits.push([[expression.expression.getEnd(), node.getEnd()], '']);
  const [argument] = node.arguments;
  if (argument !== undefined && BARE.has(expression.getText(source)))
    edits.push([node, `(${argument.getText()})`]);
  return edits;
}

function ofNumber(node: ts.NumericLiteral): readonly Edit[] {
  const value = Number(node.text);
  return [[node, String(Number.isInteger(value) ? value + 1 : Number((value * 1.1).toPrecision(12)))]];
}

/** The left side of an assignment, not a value. */
const isTarget = (node: ts.Node): boolean =>
  ts.isBinaryExpression(node.parent) &&
  node.parent.left === node &&
  node.parent.operatorToken.kind === ts.SyntaxKind.EqualsToken;
