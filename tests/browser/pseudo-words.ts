import ts from 'typescript';

/** What each vowel becomes: accented and twice, which makes a text some 40 % longer. */
const VOWELS: Readonly<Record<string, string>> = {
  a: 'áà',
  e: 'éè',
  i: 'íì',
  o: 'óò',
  u: 'úù',
  A: 'ÁÀ',
  E: 'ÉÈ',
  I: 'ÍÌ',
  O: 'ÓÒ',
  U: 'ÚÙ',
};

/** A text of a language that nobody speaks: what stands in `$1` or beside a number stays. */
function pseudo(text: string): string {
  return text.replace(/[aeiouAEIOU]/g, (vowel) => VOWELS[vowel] ?? vowel);
}

/**
 * A file of words in that language. What functions are given and decide by stays as it is, so
 * that placeholders, plurals and orders are those of the file.
 * @param source TypeScript
 */
export function pseudoSource(source: string): string {
  const file = ts.createSourceFile('words.ts', source, ts.ScriptTarget.Latest, true);
  const changes: { from: number; to: number; text: string }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isThrowStatement(node)) return;
    if (isText(node) && !decides(node)) {
      const [open, close] = ts.isTemplateHead(node)
        ? [1, 2]
        : ts.isTemplateMiddle(node)
          ? [1, 2]
          : [1, 1];
      const [from, to] = [node.getStart(file) + open, node.getEnd() - close];
      changes.push({ from, to, text: pseudoWritten(source.slice(from, to)) });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return changes
    .sort((a, b) => b.from - a.from)
    .reduce(
      (text, change) => text.slice(0, change.from) + change.text + text.slice(change.to),
      source,
    );
}

function isText(node: ts.Node): boolean {
  return (
    ts.isStringLiteral(node) ||
    ts.isNoSubstitutionTemplateLiteral(node) ||
    ts.isTemplateHead(node) ||
    ts.isTemplateMiddle(node) ||
    ts.isTemplateTail(node)
  );
}

/** Whether a text is no word said, but a name that something is chosen by. */
function decides(node: ts.Node): boolean {
  const { parent } = node;
  // The name of a language is none of its words.
  if (ts.isPropertyAssignment(parent))
    return parent.name === node || parent.name.getText() === 'lang';
  if (ts.isCaseClause(parent) || ts.isElementAccessExpression(parent)) return true;
  if (ts.isBinaryExpression(parent)) {
    const { kind } = parent.operatorToken;
    return (
      kind === ts.SyntaxKind.EqualsEqualsEqualsToken ||
      kind === ts.SyntaxKind.ExclamationEqualsEqualsToken ||
      kind === ts.SyntaxKind.InKeyword
    );
  }
  if (!ts.isCallExpression(parent)) return false;
  // What is put in the place of something else is said.
  return !parent.expression.getText().endsWith('.replace') || parent.arguments[1] !== node;
}

/** A text as it is written between its quotes: what is escaped stays. */
function pseudoWritten(written: string): string {
  return written.replace(/\\u\{?[0-9a-f]+\}?|\\.|[^\\]+/gi, (part) =>
    part.startsWith('\\') ? part : pseudo(part),
  );
}
