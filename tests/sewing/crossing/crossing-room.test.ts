import { describe, expect, test } from 'vitest';
import { exactLength, type Length, mm, toMm } from '../../../src/lengths/length.ts';
import type { Crossed, StripAcross } from '../../../src/sewing/crossing/crossing-holes.ts';
import { meetingAt } from '../../../src/sewing/crossing/crossing-room.ts';
import { crossing } from '../../../src/sewing/crossing/strip-crossing.ts';
import { STRIP } from '../edging/strip-across.ts';
import { fieldsOf, solved } from '../outcomes.ts';

// All worked out here, on a drawing of one crossing: nothing is published on it.

/** One row on the middle line: holes at 8i along, nothing across. */
const MIDDLE: StripAcross = { ...STRIP, rows: 'one', margin: mm(10) };
/** No hole of it comes near a crossing. */
const BARE: StripAcross = { ...MIDDLE, pitch: mm(400), phase: mm(200) };

const laidOver = (input: Partial<Crossed>) =>
  solved(crossing({ lower: MIDDLE, upper: MIDDLE, angle: 90, hole: mm(2), ...input }));

test('shared up to a quarter of a hole, clear from two holes on, and not a unit either way', () => {
  const at = (away: number) => meetingAt(away ** 2, mm(2));
  expect([at(mm(0.5)), at(mm(0.5) + 1)]).toEqual(['shared', 'clash']);
  expect([at(mm(4) - 1), at(mm(4))]).toEqual(['clash', 'clear']);
});

describe('the room between new holes', () => {
  const pair = (rows: StripAcross['rows'], apart: number, pitch: number, phase = 0) => ({
    ...STRIP,
    rows,
    margin: mm(10 - apart / 2),
    pitch: mm(pitch),
    phase: mm(phase),
  });

  test.each([
    ['level rows 3 apart', pair('level', 3, 8, 1), 90, 3],
    ['3 apart and half of 8 on: 3, 4, 5', pair('staggered', 3, 8, 1), 90, 5],
    ['rows further apart than the pitch', pair('level', 6, 4), 90, 4],
    ['slanted, the one row begins holes before the other', pair('level', 2.6, 3), 30, 2.6],
    ['slanted the other way', pair('level', 2.6, 3), 150, 2.6],
    ['slanted and staggered', pair('staggered', 2, 3), 30, 2.5],
    ['slanted the other way and staggered', pair('staggered', 2, 3), 150, 2.5],
  ])('%s', (_, upper, angle, room) => {
    const { asLaid } = laidOver({ lower: BARE, upper, angle, hole: mm(1) });
    expect(toMm(asLaid.room as Length)).toBeCloseTo(room, 6);
  });
});

test.each([
  ['the first', 21.5, 150],
  ['the second', 1.5, 30],
])(
  'rows 20 apart on a slant, %s ends before the other begins: 20 along and 20 across',
  (_, phase, angle) => {
    const rows = { rows: 'staggered' as const, width: mm(30), margin: mm(5), pitch: mm(40) };
    const { asLaid } = laidOver({ lower: BARE, upper: { ...rows, phase: mm(phase) }, angle });
    expect(asLaid.holes).toHaveLength(2);
    expect(toMm(asLaid.room as Length)).toBeCloseTo(20 * Math.SQRT2, 6);
  },
);

test('nearer to the edge than a hole, clear, is told; just a hole is not', () => {
  // At 7 and −9 across a strip 20 wide: 3 and 1 from the edges, less half a hole of 2.
  const { holes } = laidOver({ upper: { ...MIDDLE, pitch: mm(16), phase: mm(7) } }).asLaid;
  expect(holes.map(({ across, nearEdge }) => [Math.round(toMm(across)), nearEdge])).toEqual([
    [-9, true],
    [7, false],
  ]);
});

test('a hole on the very edge is over the strip', () => {
  const { holes } = laidOver({ upper: { ...MIDDLE, pitch: mm(20), phase: mm(10) } }).asLaid;
  expect(holes.map(({ across }) => Math.round(toMm(across)))).toEqual([-10, 10]);
});

describe('the shift with most room', () => {
  // Across the lower holes 1 off them, one each 12: most room with 6 to either side of the middle.
  const off = (phase: number, pitch = 12, side = 1) => ({
    ...STRIP,
    rows: 'one' as const,
    margin: mm(10 - side),
    pitch: mm(pitch),
    phase: mm(phase),
  });

  test.each([
    ['on to 6, between two that are tried first', 4.33, 1.67],
    ['back to 6, which is nearly a pitch on', 6.02, 11.98],
  ])('%s', (_, phase, shift) => {
    const { best, otherPitch } = laidOver({ upper: off(phase) });
    expect(toMm(best.shift)).toBeCloseTo(shift, 6);
    expect(toMm(best.room as Length)).toBeCloseTo(Math.hypot(1, 6), 6);
    expect(best.clashes).toBe(0);
    expect(otherPitch).toBeUndefined();
  });

  test('where the new holes are nearest to each other it is furthest from those made', () => {
    // 3 apart, midway between lower holes that are 4 away: 1.5 to either side of their line.
    const { best } = laidOver({ upper: off(0.2, 3, 4), hole: mm(1) });
    expect(toMm(best.room as Length)).toBeCloseTo(3, 6);
    expect(toMm(best.shift)).toBeCloseTo(1.3, 6);
  });
});

describe('more holes than anyone looks at', () => {
  // 1000 and 20 of strip, at 3 each: 340 holes a row; on a slant of 30° twice as many. 400 are the most.
  test.each([
    ['two rows', 'level' as const, 90, 5.1],
    ['two rows on a slant', 'level' as const, 30, 10.2],
    ['one row on a slant', 'one' as const, 30, 5.1],
  ])('%s: the pitch that is asked for will do, and less will not', (_, rows, angle, least) => {
    const at = (pitch: number) =>
      crossing({
        lower: { ...STRIP, pitch: mm(100) },
        upper: { ...STRIP, width: mm(1000), rows, pitch: exactLength(pitch) as Length },
        angle,
        hole: mm(2),
      });
    const refused = at(mm(3));
    if (refused.ok) throw new Error('that is too many');
    const [told] = refused.problems;
    expect(told).toMatchObject({ kind: 'too-close', field: 'upperPitch', most: 400 });
    const asked = told && 'least' in told ? Number(told.least) : Number.NaN;
    expect(asked / mm(1)).toBeCloseTo(least, 9);
    expect(fieldsOf(at(Math.ceil(asked - 1e-6) + 1))).toEqual([]);
    expect(fieldsOf(at(Math.ceil(asked) - 2))).toEqual(['upperPitch']);
  });
});

test('400 holes across are looked at', () => {
  // 980 and 20 at 2.5.
  const upper = { ...MIDDLE, width: mm(980), pitch: mm(2.5) };
  expect(crossing({ lower: MIDDLE, upper, angle: 90, hole: mm(2) }).ok).toBe(true);
});

describe('how far in from the edge', () => {
  const at = (set: Partial<StripAcross>) =>
    crossing({ lower: { ...STRIP, ...set }, upper: STRIP, angle: 90, hole: mm(2) });

  // One row: to half a hole from the other edge. Staggered at 3: rows √(2² − 1.5²) apart touch.
  test.each([
    ['one' as const, 8, 19],
    ['level' as const, 8, 9],
    ['staggered' as const, 3, (20 - Math.sqrt(1.75)) / 2],
    ['staggered' as const, 4, 10],
  ])('rows %s at %s', (rows, pitch, most) => {
    const refused = at({ rows, pitch: mm(pitch), margin: mm(19.5) });
    if (refused.ok) throw new Error('that breaks the other edge');
    expect(refused.problems).toMatchObject([{ kind: 'not-under', field: 'margin' }]);
    const [told] = refused.problems;
    const under = told && 'under' in told ? Number(told.under) : Number.NaN;
    expect(under / mm(1)).toBeCloseTo(most, 9);
    const margin = (units: number) => at({ rows, pitch: mm(pitch), margin: units as Length });
    expect(fieldsOf(margin(Math.ceil(under)))).toEqual(['margin']);
    expect(fieldsOf(margin(Math.ceil(under) - 1))).toEqual([]);
  });

  test('a strip of nothing is told by its own field, and so is an angle with its range', () => {
    const none = { width: mm(0), pitch: mm(0), margin: mm(0) };
    expect(fieldsOf(at(none))).toEqual(['width', 'pitch', 'margin']);
    const upper = { ...STRIP, ...none };
    expect(fieldsOf(crossing({ lower: STRIP, upper, angle: 90, hole: mm(2) }))).toEqual([
      ...['upperWidth', 'upperPitch', 'upperMargin'],
    ]);
    const angled = (angle: number) => crossing({ lower: STRIP, upper: STRIP, angle, hole: mm(2) });
    expect([angled(20).ok, angled(160).ok]).toEqual([true, true]);
    expect(angled(19.9)).toMatchObject({ problems: [{ given: 19.9, least: 20, most: 160 }] });
  });
});
