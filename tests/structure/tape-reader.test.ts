import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { filesIn, ROOT, sourcesIn } from './sources.ts';

/** Lines whose numbers decide nothing, and what they are. */
const FORMULAS: Readonly<Record<string, string>> = {
  'const [whole, half, next] = [gap + 0.5, gap + 1, gap + 1.5].map((tick) =>':
    'half-way between two lines, and to the next',
  'export const mmPerUnit: Readonly<Record<TapeUnit, number>> = { cm: 10, mm: 1, inch: 25.4 };':
    'an inch is 25.4 mm',
  'const [low, high] = rangeOf(profile.subarray((tick - 0.5) * perTick, (tick + 1.5) * perTick));':
    'a pitch to either side of half a graduation',
  'return bend < 0 ? px + (1.5 * 0.5 * (before - after)) / bend : px;':
    'the top of a parabola through places 1.5 px apart',
  '16: { perTick: 12, mmPx: 7.56 },': 'px to a millimetre, at 12 to 1/16 in',
  '8: { perTick: 24, mmPx: 7.56 },': 'the same at 24 to 1/8 in',
  'const lean = cubes / count / ((squares + 1e-9) / count) ** 1.5;': 'skewness, by the variance',
  'return (Math.sqrt(7) * (2.5 * most ** 3 - 1.5 * most - 1)) / 2;': 'Legendre’s cubic',
};

/** Less than this only keeps something from being divided by nothing. */
const ROUNDING = 2e-3;

const COMPARED = new Set([
  ts.SyntaxKind.LessThanToken,
  ts.SyntaxKind.GreaterThanToken,
  ts.SyntaxKind.LessThanEqualsToken,
  ts.SyntaxKind.GreaterThanEqualsToken,
]);

/**
 * Lines of a file on which a bare number decides something: one with a fraction, a half left
 * out, or one above 2 that is compared with. What a loop counts to is none.
 */
function bareIn(code: string): string[] {
  const file = ts.createSourceFile('x.ts', code, ts.ScriptTarget.Latest, true);
  const found = new Set<number>();
  const visit = (node: ts.Node, compared: boolean): void => {
    if (ts.isTypeNode(node)) return;
    if (ts.isNumericLiteral(node)) {
      const value = Number(node.text);
      const part = !Number.isInteger(value) && value !== 0.5 && value >= ROUNDING;
      if (part || (compared && value > 2)) {
        found.add(file.getLineAndCharacterOfPosition(node.getStart(file)).line);
      }
    }
    const compares =
      ts.isBinaryExpression(node) &&
      COMPARED.has(node.operatorToken.kind) &&
      !ts.isForStatement(node.parent);
    const leaves = ts.isFunctionLike(node) || ts.isElementAccessExpression(node);
    ts.forEachChild(node, (child) => visit(child, compares || (compared && !leaves)));
  };
  visit(file, false);
  const lines = code.split('\n');
  return [...found].map((line) => (lines[line] ?? '').trim()).filter((line) => !FORMULAS[line]);
}

test('what decides something in the reader of a tape stands in its room’s limits', () => {
  const files = filesIn('src/tape').filter(
    (path) => path.endsWith('.ts') && !path.endsWith('/limits.ts'),
  );
  expect(files.length).toBeGreaterThan(80);
  const bare = files.flatMap((path) =>
    bareIn(readFileSync(join(ROOT, path), 'utf8')).map((line) => `${path}: ${line}`),
  );
  expect(bare).toEqual([]);
});

test('each limit has its reason above it', () => {
  const limits = filesIn('src/tape').filter((path) => path.endsWith('/limits.ts'));
  expect(limits.length).toBeGreaterThan(10);
  for (const path of limits) {
    const lines = readFileSync(join(ROOT, path), 'utf8').split('\n');
    const without = lines.filter(
      (line, i) => line.startsWith('export const') && (lines[i - 1] ?? '').trim() === '',
    );
    expect(without, path).toEqual([]);
  }
});

test('a bare threshold is seen, and a count or an index is not', () => {
  expect(bareIn('if (away < 0.7 * best) return;')).toHaveLength(1);
  expect(bareIn('const slack = 0.3 * (last - first);')).toHaveLength(1);
  expect(bareIn('return agreeing.length >= 3;')).toHaveLength(1);
  expect(bareIn('if (away < NEARER * best && cells.length >= 2) return (a + b) * 0.5;')).toEqual(
    [],
  );
  expect(bareIn('for (let i = 0; i < 4; i++) sum += at[i + 3] / 8;')).toEqual([]);
});

/** Where two bare numbers are a place: its maker, and samples taken by the million. */
const BARE_PLACES = ['greyAt', 'placeIn', 'sample'];

/** Functions for others that are handed a place as two bare numbers, which say nothing of their space. */
function barePlaces(code: string): string[] {
  const asked = code.matchAll(/^export function (\w+)(?:<[^(]*>)?\(([^)]*)\)/gm);
  return [...asked].flatMap(([, name = '', given = '']) =>
    /\bx\w*: number,\s*y\w*: number/.test(given) && !BARE_PLACES.includes(name) ? [name] : [],
  );
}

test('a place of a picture is handed on with its space', () => {
  const bare = sourcesIn('src/tape').flatMap(({ path, code }) =>
    barePlaces(code).map((name) => `${path}: ${name}`),
  );
  expect(bare).toEqual([]);
  expect(barePlaces('export function at(one: Row, x: number, y: number): Row {')).toEqual(['at']);
  expect(barePlaces('export function at<S extends Space>(place: Place<S>): Row {')).toEqual([]);
});

test('the reader is described in the terms of its field', () => {
  const unclear = /\b(told|labelled|standing|together)\b/i;
  const lines = filesIn('src/tape')
    .filter((path) => path.endsWith('.ts'))
    .flatMap((path) => {
      const text = readFileSync(join(ROOT, path), 'utf8').split('\n');
      return text.filter((line) => unclear.test(line)).map((line) => `${path}: ${line.trim()}`);
    });
  expect(lines).toEqual([]);
});
