import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Length, length, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import { hem } from '../../../src/sewing/hems/hem.ts';
import { mitre } from '../../../src/sewing/hems/mitre.ts';
import type { Run } from '../../../src/sewing/run.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const mitreOf = (depth: Length, side: Length, angle: number) =>
  mitre({ depth, side, angle, edgeStitch: ZERO, thickness: ZERO, turned: 'once' });

test('at a right angle the marks are twice the other depth (derived here: 40 and 15 → 30 and 80)', () => {
  const { alongBottom, upSide, trim } = solved(mitreOf(mm(40), mm(15), 90));
  expect(toMm(alongBottom)).toBeCloseTo(30, 6);
  expect(toMm(upSide)).toBeCloseTo(80, 6);
  // Hand Sewing Lessons, model 7: 1/4 in outside.
  expect(toInches(trim)).toBe(0.25);
});

test('the two marks of a mitre fall on each other when it is folded', () => {
  const depth = fc.integer({ min: 5, max: 80 });
  fc.assert(
    fc.property(depth, depth, fc.integer({ min: 20, max: 160 }), (a, b, angle) => {
      const outcome = mitreOf(mm(a), mm(b), angle);
      if (!outcome.ok) {
        const [problem] = outcome.problems;
        if (problem.kind !== 'not-under') throw new Error(problem.kind);
        // Just under what is said, it can be done.
        const under = mm(Math.floor((toMm(problem.under) - 1e-6) * 100) / 100);
        const mended = problem.field === 'depth' ? [under, mm(b)] : [mm(a), under];
        expect(mitreOf(mended[0] as Length, mended[1] as Length, angle).ok).toBe(true);
        return;
      }
      // Raw corner at 0; bottom edge along x, side edge at the angle; C the finished corner.
      const φ = (angle * Math.PI) / 180;
      const side = { x: Math.cos(φ), y: Math.sin(φ) };
      const along = toMm(outcome.value.alongBottom);
      const up = toMm(outcome.value.upSide);
      const corner = { x: (b + a * Math.cos(φ)) / Math.sin(φ), y: a };
      const p = { x: along, y: 0 };
      const q = { x: up * side.x, y: up * side.y };
      // Folding one onto the other keeps their distance to the corner.
      const far = (m: typeof p) => Math.hypot(m.x - corner.x, m.y - corner.y);
      expect(far(p)).toBeCloseTo(far(q), 4);
      // Each mark is as far past its fold line's foot as the raw corner is before it.
      expect(far(p)).toBeCloseTo(Math.hypot(corner.x, corner.y), 4);
    }),
  );
});

test('both edges have the other hem’s fold and the mitre as marks from the raw corner', () => {
  const { runs } = solved(mitreOf(mm(40), mm(15), 90));
  const seen = (run: Run) =>
    run.marks.map(({ at, label, kind }) => [label, kind, Number(toMm(at).toFixed(6))]);
  expect(runs.bottom.datum).toBe('raw-corner');
  // At a right angle the mark is twice the fold (derived here).
  expect(seen(runs.bottom)).toEqual([
    ['1', 'press', 15],
    ['2', 'mitre', 30],
  ]);
  expect(seen(runs.side)).toEqual([
    ['1', 'press', 40],
    ['2', 'mitre', 80],
  ]);
});

test('where three such corners meet, the mark falls on the fold (derived here: 120°, a/sin 120°)', () => {
  const { runs } = solved(mitreOf(mm(30), mm(30), 120));
  for (const run of [runs.bottom, runs.side]) {
    expect(run.marks.map(({ kind }) => kind).sort()).toEqual(['mitre', 'press']);
    for (const { at } of run.marks) expect(toMm(at)).toBeCloseTo(20 * Math.sqrt(3), 6);
    expect(toMm(run.length)).toBeCloseTo(20 * Math.sqrt(3), 3);
  }
});

test('each fold line, drawn through its mark, is its hem’s depth from the edge', () => {
  const depth = fc.integer({ min: 5, max: 80 });
  fc.assert(
    fc.property(depth, depth, fc.integer({ min: 20, max: 160 }), (a, b, angle) => {
      const outcome = mitreOf(mm(a), mm(b), angle);
      if (!outcome.ok) return;
      const { bottom, side } = outcome.value.runs;
      const sine = Math.sin((angle * Math.PI) / 180);
      const placeOf = (run: Run, kind: string) =>
        toMm(run.marks.find((mark) => mark.kind === kind)?.at ?? ZERO);
      expect(placeOf(bottom, 'press') * sine).toBeCloseTo(b, 3);
      expect(placeOf(side, 'press') * sine).toBeCloseTo(a, 3);
      for (const run of [bottom, side]) {
        const places = run.marks.map(({ at }) => at);
        expect(places).toEqual([...places].sort((one, other) => one - other));
        expect(run.length).toBeGreaterThanOrEqual(places.at(-1) ?? 0);
        expect(run.marks.map(({ label }) => label)).toEqual(['1', '2']);
      }
    }),
  );
});

test('an angle no corner has is refused, and so is a hem that passes the other’s end', () => {
  expect(fieldsOf(mitreOf(mm(40), mm(15), 5))).toEqual(['angle']);
  expect(fieldsOf(mitreOf(mm(40), mm(15), Number.NaN))).toEqual(['angle']);
  expect(fieldsOf(mitreOf(mm(80), mm(10), 150))).toEqual(['depth']);
  expect(fieldsOf(mitreOf(mm(40), ZERO, 90))).toEqual(['side']);
  expect(fieldsOf(mitreOf(mm(-1), mm(15), 90))).toEqual(['depth']);
  expect(fieldsOf(mitreOf(mm(10), mm(80), 150))).toEqual(['side']);
  for (const angle of [20, 160]) expect(mitreOf(mm(40), mm(40), angle).ok).toBe(true);
  for (const angle of [19.9, 160.1]) expect(mitreOf(mm(40), mm(40), angle).ok).toBe(false);
});

test('stitching beyond the shallower hem is refused', () => {
  const plan = { depth: mm(40), side: mm(15), angle: 90, thickness: ZERO, turned: 'once' } as const;
  expect(mitre({ ...plan, edgeStitch: mm(14.9) }).ok).toBe(true);
  expect(fieldsOf(mitre({ ...plan, edgeStitch: mm(15) }))).toEqual(['edgeStitch']);
  expect(fieldsOf(mitre({ ...plan, edgeStitch: mm(-1) }))).toEqual(['edgeStitch']);
});

test('a mark by a hair on the wrong side of the raw corner is refused', () => {
  const hair = mitreOf(length(100_002), length(70_712), 135); // less than 0 by a quarter of a unit
  expect(fieldsOf(hair)).toEqual(['depth']);
});

// A fold line is in the middle of its fold (hem-folds.ts): felt of 2 mm turned once folds 0.43 mm
// nearer the raw edge, over one layer 0.14 mm further in (derived by hand), the mark twice that.
test.each([
  ['once', -0.858],
  ['twice', -0.858],
  ['equal', 0.283],
] as const)('felt of 2 mm, turned %s: each mark moves by %d mm', (turned, moved) => {
  const felt = { depth: mm(40), side: mm(15), angle: 90, edgeStitch: ZERO, thickness: mm(2) };
  const { alongBottom, upSide, foldLines } = solved(mitre({ ...felt, turned }));
  expect(toMm(alongBottom)).toBeCloseTo(30 + moved, 3);
  expect(toMm(upSide)).toBeCloseTo(80 + moved, 3);
  expect(toMm(foldLines.bottom)).toBeCloseTo(40 + moved / 2, 3);
});

test('at a right angle the fold lines are those of the two hems turned alone', () => {
  const part = fc.integer({ min: 40_000, max: 400_000 });
  fc.assert(
    fc.property(part, part, fc.nat(16_000), fc.boolean(), (a, b, thick, equal) => {
      const [depth, side, thickness] = [a, b, thick].map(length) as [Length, Length, Length];
      const corner = { depth, side, angle: 90, edgeStitch: ZERO, thickness };
      const turned = equal ? ('equal' as const) : ('once' as const);
      const { runs } = solved(mitre({ ...corner, turned }));
      const alone = (of: Length) => {
        const one = { depth: of, turn: equal ? of : ZERO, thickness, edgeStitch: ZERO };
        const { hemLine, foldTo } = solved(hem(one));
        // Twice: from the first fold, half the way to the line that fold is laid on.
        return equal ? foldTo.second / 2 : hemLine;
      };
      const fold = (run: Run) => run.marks.find(({ kind }) => kind === 'press')?.at ?? ZERO;
      expect(fold(runs.bottom)).toBeCloseTo(alone(side), 3);
      expect(fold(runs.side)).toBeCloseTo(alone(depth), 3);
    }),
    { seed: 1205 },
  );
});

test('cloth too thick for its folds is refused', () => {
  const felt = { depth: mm(40), side: mm(15), angle: 90, edgeStitch: ZERO };
  expect(fieldsOf(mitre({ ...felt, thickness: mm(16), turned: 'once' }))).toEqual(['thickness']);
  expect(fieldsOf(mitre({ ...felt, thickness: mm(7), turned: 'equal' }))).toEqual(['thickness']);
  expect(fieldsOf(mitre({ ...felt, thickness: mm(-1), turned: 'once' }))).toEqual(['thickness']);
});
