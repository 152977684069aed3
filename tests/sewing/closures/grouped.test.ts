/** Rows 5.1, 5.2 and 5.10 of the check values; groups, laps and folds are derived and checked another way. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  inches,
  type Length,
  length,
  mm,
  toInches,
  toMm,
  ZERO,
} from '../../../src/lengths/length.ts';
import { bandEnd, overFold } from '../../../src/sewing/bands/band-end.ts';
import { type GroupsInput, grouped } from '../../../src/sewing/closures/grouped.ts';
import { hanger, loops } from '../../../src/sewing/closures/loops.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const ends = { top: ZERO, bottom: ZERO };
const placesOf = (input: GroupsInput) => solved(grouped(input)).run.marks.map(({ at }) => at);

describe('published', () => {
  // A sewing page, 2023: 8 buttons over 15 in, 15 ÷ 7 = 2.14.
  test('5.1: groups of one are a plain row', () => {
    const row = { opening: inches(15), ...ends, groups: 8, each: 1, within: ZERO };
    expect(toInches(solved(grouped(row)).between).toFixed(2)).toBe('2.14');
  });

  // A newspaper of 1927: 4 buttonholes 2 in apart, 1 in beyond each end: a strip of 8 in.
  test('5.2: 8 in, an inch free at each end, 4 places: 2 in apart', () => {
    const one = { top: inches(1), bottom: inches(1), within: ZERO };
    expect(
      toInches(solved(grouped({ opening: inches(8), ...one, groups: 4, each: 1 })).between),
    ).toBe(2);
  });

  // Guide C-231, extension sheet, and three pages: 1/8 in past the centre towards the edge.
  test('5.10: a buttonhole along a band starts 1/8 in past its button', () => {
    const end = solved(bandEnd({ lap: inches(1.5), from: inches(0.75), hole: inches(1.25) }));
    expect(toInches(end.mate)).toBe(0.75);
    expect([end.hole?.starts, end.hole?.ends].map((x) => toInches(x ?? ZERO))).toEqual([
      0.625, 1.875,
    ]);
  });
});

describe('laws', () => {
  const any = fc
    .record({
      groups: fc.integer({ min: 1, max: 8 }),
      each: fc.integer({ min: 1, max: 4 }),
      within: fc.integer({ min: 8, max: 400_000 }),
      top: fc.integer({ min: 0, max: 400_000 }),
      bottom: fc.integer({ min: 0, max: 400_000 }),
      free: fc.integer({ min: 8, max: 8_000_000 }),
    })
    .map(({ groups, each, within, top, bottom, free }): GroupsInput => {
      const opening = length(top + bottom + groups * (each - 1) * within + free);
      const [a, b, c] = [length(within), length(top), length(bottom)];
      return { opening, top: b, bottom: c, groups, each, within: a };
    });

  test('groups: spaces within are as given, those between alike, first and last where asked', () => {
    fc.assert(
      fc.property(any, (input) => {
        const { groups, each, within, top, bottom, opening } = input;
        const found = solved(grouped(input));
        const places = found.run.marks.map(({ at }) => at);
        expect(places).toHaveLength(groups * each);
        for (const [i, at] of places.slice(1).entries()) {
          const space = at - (places[i] ?? 0);
          expect(space).toBeCloseTo((i + 1) % each === 0 ? found.between : within, 3);
        }
        const [first = 0, last = 0] = [places[0], places.at(-1)];
        if (groups > 1) expect(first).toBe(top);
        expect(first - top).toBeCloseTo(opening - bottom - last, 3);
      }),
      { seed: 2501 },
    );
  });

  test('groups: mirrored they lie the other way round; scaled, all of it is', () => {
    fc.assert(
      fc.property(any, fc.integer({ min: 2, max: 6 }), (input, k) => {
        const there = placesOf(input);
        const back = placesOf({ ...input, top: input.bottom, bottom: input.top });
        for (const [i, at] of there.entries()) {
          expect(input.opening - (back.at(-1 - i) ?? 0)).toBeCloseTo(at, 3);
        }
        const by = (x: number) => length(k * x);
        const more = placesOf({
          ...{ opening: by(input.opening), top: by(input.top), bottom: by(input.bottom) },
          ...{ groups: input.groups, each: input.each, within: by(input.within) },
        });
        for (const [i, at] of more.entries()) expect(at).toBeCloseTo(k * (there[i] ?? 0), 2);
      }),
      { seed: 2502 },
    );
  });

  // Walked: the middle of the cloth from one half to the other, in a thousand steps round the bend.
  test('a fold: as far along the cloth as a walk round it', () => {
    const thin = fc.integer({ min: 0, max: 80_000 });
    fc.assert(
      fc.property(thin, thin, fc.integer({ min: 80, max: 800_000 }), (thing, thick, more) => {
        const radius = (thing + thick) / 2;
        const from = length(Math.ceil(thing / 2 + thick) + more);
        const flat = from - thing / 2 - thick;
        let walked = 2 * flat;
        const point = (i: number) => {
          const turn = (Math.PI * i) / 1000;
          return [radius * Math.sin(turn), radius * Math.cos(turn)] as const;
        };
        for (let i = 0; i < 1000; i += 1) {
          const [[x, y], [u, v]] = [point(i), point(i + 1)];
          walked += Math.hypot(u - x, v - y);
        }
        const apart = solved(overFold({ from, thing: length(thing), thick: length(thick) }));
        expect(Math.abs(apart - walked)).toBeLessThan(1e-5 * walked + 1);
      }),
      { seed: 2503, numRuns: 50 },
    );
  });

  test('loops: the strip is all of them, and the fronts mirror each other', () => {
    const size = fc.integer({ min: 8, max: 800_000 }).map(length);
    fc.assert(
      fc.property(size, size, fc.integer({ min: 1, max: 12 }), (around, belt, count) => {
        const input = { around, belt, loops: count, thick: mm(2), ease: mm(3), turn: mm(10) };
        const { each, strip, run } = solved(loops(input));
        expect(strip).toBe(count * each);
        expect(each - belt).toBe(mm(27));
        const places = run.marks.map(({ at }) => at);
        for (const at of places.slice(1)) {
          expect(places.some((other) => Math.abs(around - other - at) < 1e-3)).toBe(true);
        }
      }),
      { seed: 2504 },
    );
  });
});

test('a band’s mate, and back: the halves lie on each other', () => {
  const there = solved(bandEnd({ lap: mm(40), from: mm(15) }));
  expect(there).toEqual({ mate: mm(25) });
  expect(toMm(solved(hanger(mm(50), mm(10))))).toBe(120);
});

test('groups: no room between them says how much they take, and of what', () => {
  const one = { opening: mm(100), ...ends, within: mm(30) };
  expect(grouped({ ...one, groups: 2, each: 3 })).toMatchObject({
    problems: [{ kind: 'does-not-fit', field: 'within', room: mm(100), needed: mm(120) }],
  });
  // Two of 50 leave nothing between; one of 90 lies in its room.
  expect(fieldsOf(grouped({ ...one, within: mm(25), groups: 2, each: 3 }))).toEqual(['within']);
  expect(fieldsOf(grouped({ ...one, within: mm(45), groups: 1, each: 3 }))).toEqual([]);
  expect(fieldsOf(grouped({ ...one, within: mm(50), groups: 1, each: 3 }))).toEqual([]);
  expect(fieldsOf(grouped({ ...one, within: mm(51), groups: 1, each: 3 }))).toEqual(['within']);
  const { run } = solved(grouped({ ...one, groups: 1, each: 2 }));
  expect(run.marks.map(({ label, at }) => [label, toMm(at)])).toEqual([
    ['1', 35],
    ['2', 65],
  ]);
});

test('groups: ends that meet leave a place for one alone, and for no more', () => {
  const met = { opening: mm(100), top: mm(60), bottom: mm(40), within: mm(10) };
  expect(fieldsOf(grouped({ ...met, groups: 1, each: 1 }))).toEqual([]);
  expect(fieldsOf(grouped({ ...met, groups: 2, each: 1 }))).toEqual(['top']);
  expect(fieldsOf(grouped({ ...met, groups: 1, each: 2 }))).toEqual(['top']);
  expect(fieldsOf(grouped({ ...met, bottom: mm(41), groups: 1, each: 1 }))).toEqual(['top']);
  expect(fieldsOf(grouped({ ...met, bottom: mm(39), groups: 2, each: 1 }))).toEqual([]);
  expect(fieldsOf(grouped({ ...met, opening: ZERO, groups: 2, each: 1 }))).toEqual(['opening']);
});

test('what is wrong names its field', () => {
  const row = { opening: mm(100), ...ends, groups: 2, each: 2, within: mm(30) };
  const wrong = (set: Partial<GroupsInput>) => fieldsOf(grouped({ ...row, ...set }));
  expect(
    wrong({ opening: ZERO, top: mm(-1), bottom: mm(-1), groups: 0, each: 61, within: ZERO }),
  ).toEqual([...['opening', 'top', 'bottom', 'groups', 'each', 'within']]);
  expect(wrong({ within: mm(50) })).toEqual(['within']);
  expect(wrong({ top: mm(60), bottom: mm(60) })).toEqual(['top']);
  expect(wrong({ groups: 1, within: mm(100) })).toEqual([]);
  expect(fieldsOf(bandEnd({ lap: ZERO, from: ZERO, hole: ZERO }))).toEqual(['lap', 'from', 'hole']);
  expect(fieldsOf(bandEnd({ lap: mm(20), from: mm(20) }))).toEqual(['from']);
  expect(fieldsOf(bandEnd({ lap: mm(20), from: mm(3), hole: mm(20) }))).toEqual(['from']);
  expect(fieldsOf(overFold({ from: mm(4), thing: mm(4), thick: mm(2) }))).toEqual(['from']);
  const end = (from: number) => bandEnd({ lap: mm(20), from: from as Length, hole: mm(20) });
  expect(boundTold(end, 1, 'from', 'over')).toBe(inches(1 / 8));
  // Cloth of no thickness on itself: the strap runs from one half to the other.
  expect(solved(overFold({ from: mm(4), thing: ZERO, thick: ZERO }))).toBe(mm(8));
  expect(fieldsOf(overFold({ from: mm(4), thing: mm(-4), thick: mm(-2) }))).toEqual([
    'thing',
    'thick',
  ]);
  const none = { around: ZERO, loops: 0, belt: ZERO, thick: mm(-1), ease: mm(-1), turn: mm(-1) };
  expect(fieldsOf(loops(none))).toEqual(['around', 'loops', 'belt', 'thick', 'ease', 'turn']);
  expect(fieldsOf(hanger(ZERO, mm(-1)))).toEqual(['drop', 'seam']);
});
