/** Texts of a source that read like a sentence and that no catalogue is asked for. */
import ts from 'typescript';

/** A word that is no unit, and something beside it. */
const isSentence = (text: string) => /\p{L}{3}/u.test(text) && /\S \S/.test(text);

/** What is described stands in the manual, what is thrown is a bug, and the others are the catalogue's own. */
const NOT_ASKED = /^(phrases|plural|new RegExp|RegExp|.*\.describe)$/s;

export function outsideOf(source: ts.Node): readonly string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
    if (ts.isThrowStatement(node)) return;
    if (ts.isTaggedTemplateExpression(node)) {
      if (ts.isTemplateExpression(node.template))
        for (const { expression } of node.template.templateSpans) visit(expression);
      return;
    }
    if (ts.isCallExpression(node) && NOT_ASKED.test(node.expression.getText())) {
      visit(node.expression);
      return;
    }
    if (ts.isStringLiteralLike(node) && isSentence(node.text)) found.push(node.text);
    if (ts.isTemplateExpression(node)) {
      const text = [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('0');
      if (isSentence(text)) found.push(text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}
