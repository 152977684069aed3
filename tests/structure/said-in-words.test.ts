import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { filesIn, ROOT } from './sources.ts';

/** Texts that nobody reads, which look as if somebody did. */
const UNREAD: Readonly<Record<string, string>> = {
  '0 1 front; 1 0 front; 1 0 back; 1 1 back; 1 1 front':
    'own steps as they are typed and stand in an address, the same in every language',
  'a sum is not measured': 'a reason by its name',
  'no answer in time': 'why the character engine is started anew, within the camera',
  'something newer is wanted': 'why a reading was given up, within the bridge',
  'the screen was left': 'the same',
};

/**
 * Whether a text is a sentence or a title, as far as that is seen: two words and a capital, or
 * four words. A key, a class or a reason by its name has fewer.
 */
function isSaid(text: string): boolean {
  if (text.includes('<')) return false; // a piece of SVG
  const words = text.split(/\s+/).filter((part) => /^[(“]?\p{L}[\p{L}’-]+[.,;:)]*$/u.test(part));
  return words.length > 3 || (words.length > 1 && /^\p{Lu}\p{Ll}/u.test(text));
}

/** What a file says by itself: in its texts and between its tags, but not to a developer. */
function said(code: string, path = 'x.tsx'): string[] {
  const file = ts.createSourceFile(path, code, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isThrowStatement(node) || ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    if (ts.isNewExpression(node) && /Error$/.test(node.expression.getText(file))) return;
    if (ts.isJsxAttribute(node) && node.name.getText(file) === 'class') return;
    if (ts.isJsxText(node) && /\p{L}/u.test(node.text)) found.push(node.text.trim());
    const isText = ts.isStringLiteralLike(node) || ts.isTemplateHead(node);
    if (isText && isSaid(node.text) && !UNREAD[node.text]) found.push(node.text);
    if (ts.isTemplateMiddleOrTemplateTail(node) && isSaid(node.text)) found.push(node.text);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

test('nothing that a person reads is said outside words', () => {
  const house = filesIn('src').filter((path) => /\.tsx?$/.test(path));
  const found = house
    .filter((path) => !path.startsWith('src/words/'))
    .flatMap((path) =>
      said(readFileSync(join(ROOT, path), 'utf8'), path).map((text) => `${path}: ${text}`),
    );
  expect(found).toEqual([]);
});

test('a sentence, a title and a text between tags are seen, and a key is not', () => {
  expect(said("const a = { says: 'trim 1/4 in outside the diagonal crease' };")).toHaveLength(1);
  expect(said("const a = kept('side', 'Side seams', 'join');")).toEqual(['Side seams']);
  expect(said('const a = <p>Hem</p>;')).toEqual(['Hem']);
  expect(said(['const a = `Mark $', '{b} of the strip to be cut`;'].join(''))).toHaveLength(1);
  expect(said('const a = <p class="tile wide link now">{words.hem}</p>;')).toEqual([]);
  expect(
    said("if (why === 'partly made') throw new Error('no such row in this garment');"),
  ).toEqual([]);
});
