import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, type Length, length, toInches, ZERO } from '../../../src/lengths/length.ts';
import {
  BUTTONHOLE_RULES,
  type ButtonholeInput,
  type ButtonholeRule,
  buttonhole,
} from '../../../src/sewing/closures/buttonhole.ts';
import {
  BUTTONHOLE_ABOVE_BUTTON,
  BUTTONHOLE_PAST_CENTRE,
} from '../../../src/sewing/sources/buttonholes.ts';
import { boundTold } from '../as-told.ts';
import { answer, problems, typed } from './closures-cases.ts';

const inch = (diameter: number, thickness: number, rest: Partial<ButtonholeInput> = {}) =>
  buttonhole({
    diameter: inches(diameter),
    thickness: inches(thickness),
    rule: 'diameter-thickness',
    direction: 'horizontal',
    ...rest,
  });
const lengthOf = (...of: Parameters<typeof inch>) => toInches(answer(inch(...of)).length);

describe('published', () => {
  // sewing.about.com, aa060399 (a teaching page): a 1 in button, 1/4 in thick, takes 1 1/4 in,
  // 1/8 in toward the edge of the centre line and 1 1/8 in the other side of it.
  test('a 1 in button 1/4 in thick', () => {
    const hole = answer(inch(1, 1 / 4));
    expect(toInches(hole.length)).toBe(1.25);
    expect(toInches(hole.past)).toBe(1 / 8);
    expect(toInches(hole.rest)).toBe(1.125);
  });

  // frkbustad.blogspot.com, 2010/09, and caseysclothingclass.blogspot.com, 2008/04 (teaching
  // pages): diameter + thickness + 1/8 in.
  test('diameter, thickness and an eighth', () => {
    expect(lengthOf(1, 1 / 4, { rule: 'diameter-thickness-eighth' })).toBe(1.375);
  });

  // New Mexico State University, Guide C-231: half the measured girth + 1/8 in. The figures for
  // a 5/8 in button 1/8 in thick (girth 1 1/2, so 7/8) are derived here.
  test('half the girth and an eighth, measured or taken from the button', () => {
    const rule = 'half-girth-eighth';
    expect(lengthOf(5 / 8, 1 / 8, { rule, girth: inches(1.5) })).toBe(7 / 8);
    expect(lengthOf(5 / 8, 1 / 8, { rule })).toBe(7 / 8);
    expect(lengthOf(5 / 8, 1 / 8, { rule, girth: inches(1.25) })).toBe(3 / 4);
  });

  // Th. de Dillmont, Encyclopedia of Needlework: exactly the diameter. K. H. Watson, Textiles and
  // Clothing: 1 1/4 × the diameter for a round button. Sewing reference book, trantor.is, ch0708
  // (a web page): diameter + 1/8 in. For a 3/4 in button they conflict: 3/4, 15/16, 7/8.
  test('the older rules conflict for a 3/4 in button', () => {
    const by = (rule: ButtonholeRule) => lengthOf(3 / 4, 1 / 8, { rule });
    expect([by('diameter'), by('round'), by('diameter-eighth')]).toEqual([3 / 4, 15 / 16, 7 / 8]);
  });

  // New Mexico State University, Guide C-231: a horizontal buttonhole starts 1/8 in past the
  // centre line toward the edge. ASDP standards, p. 24, and trantor.is, ch0708 (web pages): a
  // vertical one lies on the line, the button within its top 1/8 in.
  test('either direction has an eighth beyond the button', () => {
    for (const direction of ['horizontal', 'vertical'] as const) {
      const hole = answer(inch(5 / 8, 1 / 8, { direction }));
      expect(toInches(hole.past)).toBe(1 / 8);
      expect(toInches(hole.rest)).toBe(5 / 8);
      const said = { horizontal: BUTTONHOLE_PAST_CENTRE, vertical: BUTTONHOLE_ABOVE_BUTTON };
      expect(hole.placeRule).toBe(said[direction]);
    }
  });
});

describe('laws', () => {
  const rules = fc.constantFrom(...(Object.keys(BUTTONHOLE_RULES) as ButtonholeRule[]));
  const directions = fc.constantFrom('horizontal', 'vertical');

  test('the two parts make the whole, which the button can pass', () => {
    fc.assert(
      fc.property(
        typed(4, 60),
        typed(1, 15),
        rules,
        directions,
        (diameter, thickness, rule, to) => {
          const hole = answer(buttonhole({ diameter, thickness, rule, direction: to }));
          expect(hole.past + hole.rest).toBe(hole.length);
          expect(hole.length).toBeGreaterThanOrEqual(diameter);
          expect(hole.rest).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('any button has an answer or problems, and only of what its rule reads', () => {
    const anyLength = fc.integer({ min: -1e12, max: 1e12 }).map(length);
    fc.assert(
      fc.property(anyLength, anyLength, anyLength, rules, (diameter, thickness, girth, rule) => {
        const outcome = buttonhole({ diameter, thickness, girth, rule, direction: 'vertical' });
        if (outcome.ok) expect(Number.isFinite(outcome.value.length)).toBe(true);
        else for (const { field } of outcome.problems) expect(fieldsOf(rule)).toContain(field);
      }),
    );
  });
});

function fieldsOf(rule: ButtonholeRule): string[] {
  if (rule === 'half-girth-eighth') return ['diameter', 'girth'];
  return rule.startsWith('diameter-thickness') ? ['diameter', 'thickness'] : ['diameter'];
}

test('problems name the field', () => {
  expect(problems(inch(0, 1 / 8))[0]).toMatchObject({ kind: 'not-positive', field: 'diameter' });
  expect(problems(inch(1, 0))[0]).toMatchObject({ kind: 'not-positive', field: 'thickness' });
  expect(inch(1, 0, { rule: 'diameter' }).ok).toBe(true);
  for (const rule of ['diameter-thickness-eighth', 'half-girth-eighth'] as const) {
    expect(problems(inch(1, 0, { rule })).map(({ field }) => field)).toEqual(['thickness']);
  }
  const diameter = (of: number) => inch(toInches(of as Length), 1 / 16);
  expect(boundTold(diameter, 1, 'diameter', 'least')).toBe(inches(1 / 8));
  expect(problems(inch(1 / 16, 1 / 16))[0]).toMatchObject({ kind: 'too-short', field: 'diameter' });
  const girth = { rule: 'half-girth-eighth', girth: inches(1) } as const;
  expect(problems(inch(1, 1 / 8, girth))).toEqual([
    { kind: 'too-short', field: 'girth', least: inches(2), given: inches(1) },
  ]);
  expect(problems(inch(1, 1 / 8, { ...girth, girth: ZERO }))[0]).toMatchObject({ field: 'girth' });
});
