import { describe, expect, test } from 'vitest';
import { type ProblemSay, problemWords } from '#words/controls/problem-words.ts';
import { mm, toMm } from '../../src/lengths/length.ts';
import type { Problem } from '../../src/sewing/problem.ts';

const LABELS: Record<string, string> = { count: 'How many', bottom: 'Last from the bottom' };
const say: ProblemSay = {
  field: (key) => LABELS[key] ?? key,
  length: (value) => `${toMm(value) / 10} cm`,
};

/** One of each kind: a kind that is missing here does not compile. */
const EACH: { [Kind in Problem['kind']]: Extract<Problem, { kind: Kind }> } = {
  'not-positive': { kind: 'not-positive', field: 'pitch', given: mm(0) },
  negative: { kind: 'negative', field: 'top', given: mm(-20) },
  'too-short': { kind: 'too-short', field: 'girth', least: mm(40), given: mm(30) },
  'not-over': { kind: 'not-over', field: 'second', over: mm(3), given: mm(2) },
  'not-under': { kind: 'not-under', field: 'depth', under: mm(425), given: mm(425) },
  'too-long': { kind: 'too-long', field: 'opening', most: mm(1000), given: mm(2000) },
  'too-few': { kind: 'too-few', field: 'count', least: 3, given: 2 },
  'too-many': { kind: 'too-many', field: 'count', most: 2000, given: 3000 },
  'not-whole': { kind: 'not-whole', field: 'count', given: Number.NaN },
  'does-not-fit': { kind: 'does-not-fit', field: 'pitch', room: mm(100), needed: mm(120) },
  'ends-too-long': { kind: 'ends-too-long', field: 'bottom', room: mm(100), needed: mm(115) },
  'too-close': { kind: 'too-close', field: 'pitch', least: mm(5), most: 2000 },
  overlap: { kind: 'overlap', field: 'width', given: mm(32), pitch: mm(30) },
  'fewer-than-sewn': { kind: 'fewer-than-sewn', field: 'count', sewn: 4, given: 3 },
  outside: { kind: 'outside', field: 'level', given: mm(90), least: mm(10), most: mm(80) },
  'out-of-range': { kind: 'out-of-range', field: 'us', given: 3, least: 9, most: 23 },
  'bent-and-turned': { kind: 'bent-and-turned', field: 'radius' },
  'not-in-order': { kind: 'not-in-order', field: 'corners', given: mm(90) },
  'crosses-itself': { kind: 'crosses-itself', field: 'corners', side: 1, other: 5 },
  'not-round': { kind: 'not-round', field: 'angle', corners: 4, given: 100, needed: 90 },
  'not-as-many': { kind: 'not-as-many', field: 'other', given: 2, needed: 4 },
  'below-nothing': { kind: 'below-nothing', field: 'shares', given: -1.5 },
  'not-hundred': { kind: 'not-hundred', field: 'sidesShare', given: 96 },
  gap: { kind: 'gap', field: 'corners', gap: mm(30) },
  twice: { kind: 'twice', field: 'sewn', given: mm(30) },
};

describe('every problem', () => {
  test.each(Object.values(EACH))('$kind has one sentence, which names the field', (problem) => {
    const words = problemWords(problem, say);
    expect(words).toMatch(/^[^:.]+: [^.]+(\.\d[^.]*)*\.$/);
    expect(words.startsWith(`${say.field(problem.field)}: `)).toBe(true);
    expect(words).not.toMatch(/NaN|undefined|\[object/);
  });
});

test('what is missing, and what would mend it, is said', () => {
  expect(problemWords(EACH['ends-too-long'], say)).toBe(
    'Last from the bottom: first and last take 11.5 cm of 10 cm and leave nothing between them; 1.5 cm is missing.',
  );
  expect(problemWords({ ...EACH['ends-too-long'], needed: mm(100) }, say)).toBe(
    'Last from the bottom: first and last take 10 cm of 10 cm and leave nothing between them; shorten one of them.',
  );
  expect(problemWords(EACH.overlap, say)).toContain('0.2 cm is missing');
  expect(problemWords(EACH['not-as-many'], say)).toBe('other: 2 given, 4 needed: one for each.');
  expect(problemWords({ ...EACH['below-nothing'], given: 0 }, say)).toContain('all of them');
  expect(problemWords({ ...EACH['not-hundred'], given: 0 }, say)).toContain(
    'nothing takes a share',
  );
  expect(problemWords(EACH['too-few'], say)).toBe('How many: give at least 3.');
  expect(problemWords({ ...EACH['too-short'], most: mm(90) }, say)).toBe(
    'girth: 3 cm is too short; give at least 4 cm, at most 9 cm.',
  );
  expect(problemWords({ ...EACH['too-long'], least: mm(10) }, say)).toBe(
    'opening: 200 cm is too long; give at least 1 cm, at most 100 cm.',
  );
  expect(problemWords(EACH.outside, say)).toContain('from 1 cm to 8 cm');
});

test('a kind without words is a bug, and says so', () => {
  const unknown = { kind: 'unheard-of', field: 'count' } as unknown as Problem;
  expect(() => problemWords(unknown, say)).toThrow('no words for {"kind":"unheard-of"');
});
