/**
 * An answer is worked out without drawing: what draws is asked for only by what shows it. Every
 * function that makes part of a drawing is counted here, over all calculations.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { benchOf } from '../controls/helpers.ts';

/** What is in `drawing`, and what of a calculation returns shapes, or what shapes are made of. */
const DRAWS =
  /^export function \w+\((?:[^()]|\([^()]*\))*\): (Figure|FigureShape|Point|Drawn[A-Z])/m;

const src = join(import.meta.dirname, '../../src');
const drawing = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((path) => {
  if (!/^(drawing|calculations\/\w+)\/[\w-]+\.ts$/.test(path)) return false;
  return path.startsWith('drawing/') || DRAWS.test(readFileSync(join(src, path), 'utf8'));
});

let drawn = 0;
for (const path of drawing) {
  vi.doMock(join(src, path), async (importOriginal) => {
    const all = Object.entries(await importOriginal<Record<string, unknown>>());
    return Object.fromEntries(all.map(([name, one]) => [name, counted(one)]));
  });
}

/** The same function, each call of which is counted; what is no function as it is. */
function counted(one: unknown): unknown {
  if (typeof one !== 'function') return one;
  return (...given: unknown[]) => {
    drawn += 1;
    return one(...given);
  };
}

const { CALCULATIONS } = await import('../../src/calculations/list.ts');
const { draftsNear, EVERY } = await import('./any-drafts.ts');

test('every file of a calculation that draws is counted', () => {
  const some = ['pleats/figure.ts', 'pleats/folded.ts', 'seam/section.ts', 'lacing/drawn.ts'];
  expect(drawing).toEqual(expect.arrayContaining(some.map((path) => `calculations/${path}`)));
});

test.each(EVERY)('$id works its answer out without drawing; what shows it draws', (calculation) => {
  const bench = benchOf();
  let figures = 0;
  fc.assert(
    fc.property(draftsNear(calculation), (set) => {
      drawn = 0;
      const work = calculation.work({ ...calculation.start(bench), ...set }, bench);
      expect(drawn).toBe(0);
      for (const { draw } of (work.ok && work.answer.figures) || []) {
        drawn = 0;
        expect(draw().length).toBeGreaterThan(0);
        expect(drawn).toBeGreaterThan(0);
        figures += 1;
      }
    }),
    { seed: 1350, numRuns: 200 },
  );
  if (DRAWN.includes(calculation.id)) expect(figures).toBeGreaterThan(10);
  else expect(figures).toBe(0);
});

/** Those with a drawing beside their answer. */
const DRAWN = [
  'hem',
  'seam',
  'corner',
  'centre',
  'edging',
  'lacing',
  'crossing',
  'pleats',
  'gathers',
  'elastic',
  'circle',
  'tucks',
  'dart',
  'darts',
  'band',
  'collar',
  'level',
  'slant',
  'zones',
  'tiers',
  'flare',
  'cord',
  'facing',
  'piece',
  'match',
  'shares',
];

test('those with drawings are calculations there are', () => {
  expect(Object.keys(CALCULATIONS)).toEqual(expect.arrayContaining(DRAWN));
});
