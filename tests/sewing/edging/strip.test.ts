import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, type Length, mm, toInches, toMm } from '../../../src/lengths/length.ts';
import type { Fit, Middle, Rows, StripInput } from '../../../src/sewing/edging/strip.ts';
import { stripHoles } from '../../../src/sewing/edging/strip-holes.ts';
import { strikesOf, type WebPlace, websOf } from '../../../src/sewing/edging/strip-material.ts';
import { fieldsOf, solved } from '../outcomes.ts';
import { A_STRIP } from './a-strip.ts';

const stripOf = (set: Partial<StripInput>) => stripHoles({ ...A_STRIP, ...set });
const placesOf = (set: Partial<StripInput>) =>
  solved(stripOf(set)).rows.map(({ runs }) =>
    runs.flatMap(({ marks }) => marks.map(({ at }) => toMm(at))),
  );

describe('examples', () => {
  test('a strap with seven holes a strap width apart: six widths in all, the fourth is the middle', () => {
    // oaksidesaddlery.uk: pitch = width of the strap, an odd number, the middle hole is the fit.
    const strap = { length: inches(7), width: inches(1), pitch: inches(1), margin: inches(0.5) };
    const { rows } = solved(stripOf({ ...strap, end: inches(0.5), middle: 'hole' }));
    const [row] = rows;
    expect(row?.count).toBe(7);
    const marks = row?.runs[0]?.marks ?? [];
    expect(toInches(marks[6]?.at as Length) - toInches(marks[0]?.at as Length)).toBe(6);
    expect(row?.middle).toEqual({ hole: 4, beyond: 0 });
    expect(marks[3]?.kind).toBe('centre');
  });

  test('keeping the pitch, what is left over goes to both ends, or to the far one', () => {
    // 403 − 2 × 4 = 395; 49 spaces of 8 are 392; 3 left over (derived here).
    const [split] = placesOf({ length: mm(403) });
    expect(split?.[0]).toBe(5.5);
    expect(split?.at(-1)).toBe(397.5);
    expect(split).toHaveLength(50);
    const far = solved(stripOf({ length: mm(403), fit: 'far-end' }));
    expect(toMm(far.over.end)).toBe(3);
    expect(toMm(far.over.start)).toBe(0);
  });

  test('filling, the nearest pitch that leaves nothing over is taken', () => {
    // 395/49 = 8.061 is nearer to 8 than 395/50 = 7.9 (derived here).
    const { rows } = solved(stripOf({ length: mm(403), fit: 'fill' }));
    expect(toMm(rows[0]?.pitches[0] as Length)).toBeCloseTo(395 / 49, 9);
    expect(rows[0]?.count).toBe(50);
  });

  test('a loop closes on both rows, and is cut between holes', () => {
    // 501/63 = 7.952 is nearer to 8 than 501/62 = 8.081 (derived here).
    for (const rows of ['one', 'level', 'staggered'] as const) {
      const places = placesOf({ length: mm(501), fit: 'loop', rows });
      for (const row of places) {
        expect(row).toHaveLength(63);
        const over = 501 - (row.at(-1) ?? 0) + (row[0] ?? 0);
        expect(over).toBeCloseTo(501 / 63, 6);
        expect(row[0]).toBeGreaterThan(1.9);
      }
    }
  });

  test('staggered rows are measured from one end, the second half a pitch on', () => {
    const [one = [], two = []] = placesOf({ rows: 'staggered' });
    expect(two).toHaveLength(one.length - 1);
    for (const [i, at] of two.entries()) expect(at).toBeCloseTo((one[i] ?? 0) + 4, 9);
  });

  test('the middle on a hole or between two, on the middle of the strip', () => {
    for (const [middle, odd] of [
      ['hole', 1],
      ['between', 0],
    ] as const) {
      for (const fit of ['split', 'fill'] as const) {
        const { rows } = solved(stripOf({ length: mm(403), fit, middle }));
        expect((rows[0]?.count ?? 0) % 2).toBe(odd);
        expect(rows[0]?.middle?.beyond).toBe(odd ? 0 : 0.5);
        const [places = []] = placesOf({ length: mm(403), fit, middle });
        expect(((places[0] ?? 0) + (places.at(-1) ?? 0)) / 2).toBeCloseTo(201.5, 6);
      }
    }
  });

  test('bent flat, the outer row is longer: the same count, a pitch of its own', () => {
    // Round 100 mm, 20 wide, 5 in: rows at 105 and 95 (derived here: θ(R ± (W/2 − m))).
    const { rows } = solved(stripOf({ radius: mm(100), rows: 'level' }));
    expect(rows.map(({ count }) => count)).toEqual([50, 50]);
    expect(toMm(rows[0]?.pitches[0] as Length)).toBeCloseTo(8.4, 9);
    expect(toMm(rows[1]?.pitches[0] as Length)).toBeCloseTo(7.6, 9);
  });

  test('a hole stands where the margins cross: at a right angle, the margin from both edges', () => {
    const { rows } = solved(stripOf({ length: mm(500), corners: [mm(200)], rows: 'level' }));
    const [outer, inner] = rows;
    const cornerOf = (side: number) =>
      outer?.runs[side]?.marks.filter(({ kind }) => kind === 'corner') ?? [];
    expect(cornerOf(0).map(({ at }) => toMm(at))).toEqual([expect.closeTo(195, 6)]);
    expect(cornerOf(1).map(({ at }) => toMm(at))).toEqual([expect.closeTo(5, 6)]);
    expect(cornerOf(0)[0]?.label).toBe(cornerOf(1)[0]?.label);
    // The inner row, 15 from the edge.
    expect(toMm(inner?.runs[1]?.marks[0]?.at as Length)).toBeCloseTo(15, 6);
    expect(outer?.runs.map(({ datum }) => datum)).toEqual(['cut-end', 'edge-corner']);
  });

  test('strikes of an iron whose first tooth stands in the last hole', () => {
    // 25 holes, 4 prongs: three new holes a strike (blog.leathercraftlibrary.com), so 8 strikes.
    const input = { ...A_STRIP, length: mm(200) };
    const holes = solved(stripHoles(input));
    expect(holes.count).toBe(25);
    expect(strikesOf(input, holes, 4)).toMatchObject({ count: 8, fits: true });
    expect(() => strikesOf(input, holes, 1)).toThrow(RangeError);
    const filled = { ...input, length: mm(205), fit: 'fill' as const };
    expect(strikesOf(filled, solved(stripHoles(filled)), 10).fits).toBe(false);
    const single = { ...input, length: mm(8) };
    expect(strikesOf(single, solved(stripHoles(single)), 4).count).toBe(1);
  });

  test('material left: two holes of 2 mm, 6 mm apart and 6 mm from the end leave 4 and 5', () => {
    // The piece of a tear test, oocities.org/suryaprasanna/tear.html.
    const input = {
      ...A_STRIP,
      length: mm(50),
      width: mm(25),
      pitch: mm(6),
      margin: mm(9.5),
      end: mm(6),
    };
    const webs = websOf(input, solved(stripHoles({ ...input, fit: 'far-end' })));
    const clear = (place: string) => toMm(webs.find((web) => web.place === place)?.clear as Length);
    expect(clear('along')).toBe(4);
    expect(clear('end')).toBe(5);
    expect(webs.some(({ thin }) => thin)).toBe(false);
    const crowded = {
      ...A_STRIP,
      pitch: mm(3.5),
      rows: 'staggered' as const,
      width: mm(11),
      margin: mm(2),
    };
    const thin = websOf(crowded, solved(stripHoles(crowded))).filter((web) => web.thin);
    expect(thin.map(({ place }) => place)).toEqual(['along', 'edge', 'end']);
  });
});

describe('what is left where it is least (derived here)', () => {
  const clearOf = (set: Partial<StripInput>, place: WebPlace) => {
    const input = { ...A_STRIP, ...set };
    const web = websOf(input, solved(stripHoles(input))).find((one) => one.place === place);
    return web && { ...web, clear: toMm(web.clear) };
  };

  test('past the hole in a corner of 30°, by the cosine rule', () => {
    const set = { corners: [mm(200)], angle: 30 };
    const [one = 0, two = 0] = (solved(stripOf(set)).rows[0]?.pitches ?? []).map(toMm);
    const past = Math.sqrt(one ** 2 + two ** 2 - 2 * one * two * Math.cos(Math.PI / 6));
    expect(past).toBeLessThan(5);
    expect(clearOf(set, 'along')?.clear).toBeCloseTo(past - 2, 6);
    expect(clearOf({ ...set, angle: 90 }, 'along')?.clear).toBeGreaterThan(5.5);
  });

  test('one row nearer to the far edge: 1.5 of 20 less half a hole', () => {
    expect(clearOf({ margin: mm(18.5) }, 'edge')).toMatchObject({ clear: 0.5, thin: true });
  });

  test('a loop is cut, too: between two holes, or a quarter of a pitch from two rows', () => {
    expect(clearOf({ fit: 'loop', pitch: mm(5) }, 'end')).toMatchObject({ clear: 1.5, thin: true });
    const staggered = { fit: 'loop' as const, rows: 'staggered' as const };
    expect(clearOf(staggered, 'end')).toMatchObject({ clear: 1, thin: true });
  });

  test('bent, on the inner row: 5 on the middle line are 25/6 there', () => {
    const set = { length: mm(90), rows: 'level' as const, radius: mm(30) };
    const { rows } = solved(stripOf(set));
    expect(rows.map(({ ends }) => ends && toMm(ends.start))).toEqual([
      expect.closeTo(35 / 6, 9),
      expect.closeTo(25 / 6, 9),
    ]);
    // Straight across to a cut towards the centre: 25·sin(1/6).
    expect(clearOf(set, 'end')?.clear).toBeCloseTo(25 * Math.sin(1 / 6) - 1, 6);
    const thin = {
      ...set,
      length: mm(42),
      pitch: mm(9.5),
      hole: mm(3),
      margin: mm(6),
      radius: mm(34),
      fit: 'far-end' as const,
    };
    expect(clearOf(thin, 'end')?.thin).toBe(true);
  });

  test('rows that stagger away to one have nothing between them', () => {
    const single = { length: mm(9), rows: 'staggered' as const, end: mm(4) };
    expect(solved(stripOf(single)).rows).toHaveLength(1);
    expect(clearOf(single, 'rows')).toBeUndefined();
  });
});

describe('what is offered instead is taken', () => {
  const problemOf = (set: Partial<StripInput>) => {
    const outcome = stripOf(set);
    if (outcome.ok) throw new Error('there is an answer');
    return outcome.problems[0];
  };
  const offered = (set: Partial<StripInput>, key: 'needed' | 'least' | 'most') => {
    const found = new Map(Object.entries(problemOf(set))).get(key);
    if (typeof found !== 'number') throw new Error(`no ${key} is offered`);
    return found as Length;
  };

  test('the least a loop needs: three holes at half the pitch that do not touch', () => {
    expect(problemOf({ length: mm(11), fit: 'loop' })).toMatchObject({ needed: mm(12) });
    expect(solved(stripOf({ length: mm(12), fit: 'loop' })).count).toBe(3);
    const even = { fit: 'loop', middle: 'between' } as const;
    expect(problemOf({ ...even, length: mm(15) })).toMatchObject({ needed: mm(16) });
    expect(solved(stripOf({ ...even, length: mm(16) })).count).toBe(4);
    const tight = { length: mm(10), pitch: mm(4.9), hole: mm(4), margin: mm(10), width: mm(30) };
    const needed = offered({ ...tight, fit: 'loop' }, 'needed');
    expect(toMm(needed)).toBeCloseTo(12.03, 9);
    expect(stripOf({ ...tight, fit: 'loop', length: needed }).ok).toBe(true);
  });

  test('the first and the last place of a corner', () => {
    const corners = [mm(0)];
    const ends = [offered({ corners }, 'least'), offered({ corners }, 'most')];
    // The mitre of 20 at a right angle; 4, half a pitch and 5 are less.
    expect(ends.map(toMm)).toEqual([20, 380]);
    for (const at of ends) {
      expect(stripOf({ corners: [at] }).ok).toBe(true);
    }
    const sides = [mm(100), mm(140)];
    expect(stripOf({ length: mm(240), corners: sides }).ok).toBe(true);
  });

  test('a radius once round', () => {
    const least = offered({ radius: mm(30) }, 'least');
    expect(toMm(least)).toBeCloseTo(400 / (2 * Math.PI), 9);
    expect(stripOf({ radius: Math.ceil(least) as Length }).ok).toBe(true);
    expect(fieldsOf(stripOf({ radius: mm(30), fit: 'loop' }))).toEqual(['radius']);
  });

  test('a corner given twice is said to be', () => {
    expect(problemOf({ corners: [mm(100), mm(100)] })?.kind).toBe('twice');
  });
});

describe('refused, with the field', () => {
  const WRONG: [string, Partial<StripInput>, string][] = [
    ['a pitch longer than the strip', { pitch: mm(500) }, 'pitch'],
    ['holes that overlap', { pitch: mm(2) }, 'pitch'],
    ['holes that break the edge', { margin: mm(1) }, 'margin'],
    ['holes that break the other edge', { margin: mm(19.5) }, 'margin'],
    ['rows that pass each other', { margin: mm(9.5), rows: 'level' }, 'margin'],
    ['staggered rows that touch', { margin: mm(9.9), pitch: mm(3), rows: 'staggered' }, 'margin'],
    [
      'staggered rows side by side along corners',
      { margin: mm(9.9), rows: 'staggered', corners: [mm(200)] },
      'margin',
    ],
    ['a hole on the cut end', { end: mm(0) }, 'end'],
    ['a hole that breaks the cut end', { end: mm(1) }, 'end'],
    [
      'a pitch that filling brings below the punch',
      { length: mm(11), pitch: mm(3), end: mm(4.7), fit: 'fill' },
      'length',
    ],
    [
      'holes that touch on the inner row of a bend',
      {
        length: mm(34),
        radius: mm(11),
        margin: mm(3),
        hole: mm(3),
        rows: 'level',
      },
      'pitch',
    ],
    [
      'a staggered loop that no straight cut passes',
      { fit: 'loop', pitch: mm(4), rows: 'staggered' },
      'pitch',
    ],
    [
      'holes that touch across a sharp corner',
      { corners: [mm(200)], angle: 20, hole: mm(3), margin: mm(6) },
      'pitch',
    ],
    [
      'sides that cross each other',
      { length: mm(600), corners: [mm(250), mm(400)], angle: 40 },
      'corners',
    ],
    ['a cut end in the mitre of a corner', { corners: [mm(100)], angle: 20 }, 'corners'],
    ['no room for a corner', { length: mm(30), corners: [mm(15)] }, 'length'],
    ['nothing of width', { width: mm(0) }, 'width'],
    ['ends that leave nothing', { end: mm(201) }, 'end'],
    ['a loop of one hole', { length: mm(11), fit: 'loop' }, 'length'],
    ['a bend with no inner edge', { radius: mm(10) }, 'radius'],
    ['bent and turned', { radius: mm(100), corners: [mm(100)] }, 'radius'],
    ['a corner past the end', { corners: [mm(400)] }, 'corners'],
    ['corners out of order', { corners: [mm(200), mm(100)] }, 'corners'],
    ['corners nearer than a hole', { corners: [mm(100), mm(112)], margin: mm(6) }, 'corners'],
    ['no such corner', { corners: [mm(100)], angle: 170 }, 'angle'],
    ['more holes than anyone counts', { length: mm(20_000), pitch: mm(2.5) }, 'pitch'],
  ];
  test.each(WRONG)('%s', (_, set, field) => {
    expect(fieldsOf(stripOf(set))).toEqual([field]);
  });
});

const lengths = (least: number, most: number) =>
  fc.integer({ min: least * 8000, max: most * 8000 }).map((units) => units as Length);

const anyStrip: fc.Arbitrary<StripInput> = fc.record({
  length: lengths(5, 3000),
  width: lengths(4, 80),
  pitch: lengths(2, 40),
  margin: lengths(1, 20),
  hole: lengths(1, 5),
  rows: fc.constantFrom<Rows>('one', 'level', 'staggered'),
  fit: fc.constantFrom<Fit>('split', 'far-end', 'fill', 'loop'),
  middle: fc.constantFrom<Middle>('any', 'hole', 'between'),
  end: fc.option(lengths(0, 40), { nil: undefined }),
  radius: fc.option(lengths(10, 900), { nil: undefined }),
  corners: fc.constant([]),
  angle: fc.constant(90),
});

describe('laws', () => {
  test('holes are even, in order and on the strip; ends and spaces add up to its length', () => {
    fc.assert(
      fc.property(anyStrip, (input) => {
        const outcome = stripHoles(input);
        if (!outcome.ok) return;
        for (const { runs, count, pitches, across } of outcome.value.rows) {
          const [run] = runs;
          const places = run?.marks.map(({ at }) => at) ?? [];
          expect(places).toHaveLength(count);
          const stretch =
            input.radius === undefined
              ? 1
              : (input.radius + input.width / 2 - across) / input.radius;
          const long = input.length * stretch;
          expect(places[0] ?? 0).toBeGreaterThanOrEqual(0);
          expect(places.at(-1) ?? 0).toBeLessThanOrEqual(long + 0.01);
          const pitch = pitches[0] ?? 0;
          for (const [i, at] of places.entries()) {
            expect(Math.abs(at - (places[0] ?? 0) - i * pitch)).toBeLessThan(0.01);
          }
        }
      }),
    );
  });

  test('a kept pitch is kept, and one more hole would not fit', () => {
    fc.assert(
      fc.property(anyStrip, fc.constantFrom<Fit>('split', 'far-end'), (drawn, fit) => {
        const input: StripInput = { ...drawn, fit, middle: 'any', radius: undefined };
        const outcome = stripHoles(input);
        if (!outcome.ok) return;
        const { over } = outcome.value;
        expect(outcome.value.rows[0]?.pitches[0]).toBe(input.pitch);
        expect(over.start + over.end).toBeLessThan(input.pitch + 0.01);
        expect(Math.min(over.start, over.end)).toBeGreaterThan(-0.01);
      }),
    );
  });

  test('of all counts, filling and closing take the one that changes the pitch least', () => {
    fc.assert(
      fc.property(anyStrip, fc.constantFrom<Fit>('fill', 'loop'), (drawn, fit) => {
        const input: StripInput = { ...drawn, fit, radius: undefined };
        const outcome = stripHoles(input);
        if (!outcome.ok || outcome.value.rows[0]?.count === 1) return;
        const { count = 0, pitches } = outcome.value.rows[0] ?? {};
        const off = Math.abs((pitches?.[0] ?? 0) - input.pitch);
        const end = input.end ?? input.pitch / 2;
        const touching = input.hole * (fit === 'loop' && input.rows === 'staggered' ? 2 : 1);
        const parity = { any: undefined, hole: 1, between: 0 }[input.middle];
        // Brute force over every count.
        for (let n = fit === 'loop' ? 3 : 2; n < 2000; n++) {
          if (parity !== undefined && n % 2 !== parity) continue;
          const own = fit === 'loop' ? input.length / n : (input.length - 2 * end) / (n - 1);
          if (own < Math.max(touching + 80, input.pitch / 2)) break;
          expect(Math.abs(own - input.pitch), `${n} instead of ${count}`).toBeGreaterThan(
            off - 0.01,
          );
        }
      }),
    );
  });

  test('at corners each row has its hole at its own distance from both edges', () => {
    const angle = fc.integer({ min: 30, max: 150 });
    fc.assert(
      fc.property(lengths(60, 300), lengths(60, 300), angle, (one, two, degrees) => {
        const corner = one;
        const input: StripInput = {
          ...A_STRIP,
          length: (one + two) as Length,
          corners: [corner],
          angle: degrees,
          rows: 'level',
        };
        const outcome = stripHoles(input);
        if (!outcome.ok) return;
        const φ = (degrees * Math.PI) / 180;
        for (const { runs, across } of outcome.value.rows) {
          const before = runs[0]?.marks.at(-1)?.at ?? 0;
          const after = runs[1]?.marks[0]?.at ?? 0;
          // From the corner, along the first edge back and along the second on; inside is to the left.
          const along = corner - before;
          const place = { x: -along, y: across };
          const second = { x: -Math.cos(φ), y: Math.sin(φ) };
          const on = place.x * second.x + place.y * second.y;
          const off = Math.abs(place.x * second.y - place.y * second.x);
          expect(on).toBeCloseTo(after, 1);
          expect(off).toBeCloseTo(across, 1);
        }
      }),
    );
  });

  test('nothing that can be typed makes it throw, or gives what is no number', () => {
    const anyLength = fc
      .integer({ min: -8_000_000, max: 80_000_000 })
      .map((units) => units as Length);
    const wild = fc.record({
      length: anyLength,
      width: anyLength,
      pitch: anyLength,
      margin: anyLength,
      hole: anyLength,
      rows: fc.constantFrom<Rows>('one', 'level', 'staggered'),
      fit: fc.constantFrom<Fit>('split', 'far-end', 'fill', 'loop'),
      middle: fc.constantFrom<Middle>('any', 'hole', 'between'),
      end: fc.option(anyLength, { nil: undefined }),
      radius: fc.option(anyLength, { nil: undefined }),
      corners: fc.array(anyLength, { maxLength: 3 }),
      angle: fc.double({ min: -400, max: 400 }),
    });
    fc.assert(
      fc.property(wild, (input) => {
        const outcome = stripHoles(input);
        if (!outcome.ok) {
          expect(outcome.problems.every(({ field }) => field in input)).toBe(true);
          return;
        }
        const places = outcome.value.rows.flatMap(({ runs }) => runs.flatMap(({ marks }) => marks));
        expect(places.every(({ at }) => Number.isFinite(at) && at >= -0.01)).toBe(true);
        expect(outcome.value.count).toBeLessThanOrEqual(4000);
      }),
    );
  });
});
