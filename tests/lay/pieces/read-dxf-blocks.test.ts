import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxOf, signedArea } from '../../../src/lay/outline.ts';
import { CURVE_MM } from '../../../src/lay/pieces/file/file-problem.ts';
import { readDxf } from '../../../src/lay/pieces/file/read-dxf.ts';

/** Pairs of lines, as the DXF reference has them: a group code and its value. */
const pairs = (...values: (string | number)[]) => `${values.join('\n')}\n`;
const dxf = (blocks: string, entities: string) =>
  pairs(0, 'SECTION', 2, 'HEADER', 9, '$INSUNITS', 70, 4, 0, 'ENDSEC') +
  pairs(0, 'SECTION', 2, 'BLOCKS') +
  blocks +
  pairs(0, 'ENDSEC', 0, 'SECTION', 2, 'ENTITIES') +
  entities +
  pairs(0, 'ENDSEC', 0, 'EOF');
const block = (name: string, inside: string, x = 0, y = 0) =>
  pairs(0, 'BLOCK', 8, 0, 2, name, 70, 0, 10, x, 20, y) + inside + pairs(0, 'ENDBLK', 8, 0);
const insert = (name: string, ...more: (string | number)[]) =>
  pairs(0, 'INSERT', 8, 'P', 2, name, ...more);
const line = (layer: string, x: number, y: number, u: number, v: number) =>
  pairs(0, 'LINE', 8, layer, 10, x, 20, y, 11, u, 21, v);
/** A right-angled triangle of 1/2 × 100 × 40, of lines in no order. */
const triangle = (layer: string) =>
  line(layer, 0, 0, 100, 0) + line(layer, 0, 40, 0, 0) + line(layer, 100, 0, 0, 40);

function shapes(text: string) {
  const found = readDxf(text);
  if (!found.ok) throw new Error(JSON.stringify(found.problem));
  return found.shapes;
}
const problems = (text: string) => {
  const found = readDxf(text);
  return found.ok ? found.problems : [found.problem];
};
const near = (of: number) => expect.closeTo(of, 6);

describe('blocks', () => {
  test('are drawn where they are put, turned, larger and as in a mirror; each called by its name', () => {
    const front = block('FRONT', triangle('1') + triangle('8'), 10, 0);
    const found = shapes(
      dxf(front, insert('FRONT', 10, 200, 20, 50, 41, 2, 42, 2, 50, 90) + insert('FRONT', 41, -1)),
    );
    expect(found.map(({ name }) => name)).toEqual([
      ...['FRONT · 1', 'FRONT · 8', 'FRONT · 1', 'FRONT · 8'],
    ]);
    // From its base, 10 along: twice as large, and what ran right now runs up.
    expect(boxOf(found[0]!.outline)).toEqual({
      ...{ x0: near(200 - 80), x1: near(200), y0: near(50 - 20), y1: near(50 + 180) },
    });
    expect(signedArea(found[0]!.outline)).toBeCloseTo(4 * 2000, 6);
    expect(boxOf(found[2]!.outline)).toMatchObject({ x0: near(-90), x1: near(10) });
    expect(signedArea(found[2]!.outline)).toBeCloseTo(2000, 6);
  });

  test('within blocks, on layer 0 called by the block, on the back of the sheet mirrored', () => {
    const blocks = block('A', triangle('0')) + block('B', insert('A', 10, 5, 20, 7));
    const [one] = shapes(dxf(blocks, insert('B', 210, 0, 220, 0, 230, -1)));
    expect(one?.name).toBe('A');
    // Names of blocks are the same in large and small letters (the DXF reference, symbol names).
    expect(shapes(dxf(block('a', triangle('0')), insert('A')))).toHaveLength(1);
    expect(boxOf(one!.outline)).toEqual({
      ...{ x0: near(-105), x1: near(-5), y0: near(7), y1: near(47) },
    });
  });

  test('put twice are two, and their lines are not joined with each other', () => {
    // Each is half a square: put beside each other their ends meet, and close nothing.
    const half = block('H', line('0', 0, 0, 50, 0) + line('0', 50, 0, 50, 50));
    const both = insert('H') + insert('H', 10, 50, 20, 50, 50, 180);
    expect(problems(dxf(half, both))).toEqual([{ kind: 'nothing-closed', open: 2 }]);
  });

  test('that are missing, in rows and columns, or turned in space are said; so is no number', () => {
    const one = block('A', triangle('0'));
    const unknown = { kind: 'unknown-curve', name: 'P', curve: 'INSERT' };
    expect(problems(dxf(one, insert('Z')))).toEqual([unknown]);
    expect(problems(dxf(one, insert('A', 70, 3, 44, 9)))).toEqual([unknown]);
    expect(problems(dxf(one, insert('A', 210, 1, 220, 0, 230, 0)))).toEqual([unknown]);
    expect(problems(dxf(one, insert('A', 41, 'x')))).toEqual([{ kind: 'no-number', name: 'P' }]);
  });

  test('in themselves, or by heaps within heaps, end in a problem', () => {
    expect(problems(dxf(block('A', insert('A')), insert('A')))).toMatchObject([
      { kind: 'too-deep' },
    ]);
    const heap = Array.from({ length: 12 }, (_, i) =>
      block(`B${i}`, insert(`B${i + 1}`).repeat(9)),
    );
    expect(problems(dxf(heap.join(''), insert('B0')))).toMatchObject([
      { kind: 'too-many', what: 'parts' },
    ]);
  });
});

const spline = (
  degree: number,
  knots: readonly number[],
  control: readonly (readonly number[])[],
) =>
  pairs(0, 'SPLINE', 8, 'S', 70, 8, 71, degree, 72, knots.length, 73, control.length) +
  knots.map((knot) => pairs(40, knot)).join('') +
  control.map(([x = 0, y = 0]) => pairs(10, x, 20, y, 30, 0)).join('');

describe('splines', () => {
  test('of one span are Bézier curves: the area under this one is 0.6 × 100 × 30', () => {
    const arch = [
      [0, 0],
      [0, 30],
      [100, 30],
      [100, 0],
    ];
    const found = shapes(
      dxf('', spline(3, [0, 0, 0, 0, 1, 1, 1, 1], arch) + line('S', 100, 0, 0, 0)),
    );
    // x = 100 (3t² − 2t³) and y = 90 t (1 − t): 18 × 100 × 30 / 30, by integration.
    expect(Math.abs(signedArea(found[0]!.outline) - 1800)).toBeLessThan(100 * CURVE_MM);
  });

  test('run within the tolerance of the curve that its base functions make, whatever its knots', () => {
    let given = 0;
    const step = fc.integer({ min: 0, max: 4 });
    const place = fc.tuple(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 0, max: 500 }));
    const curve = fc
      .integer({ min: 2, max: 5 })
      .chain((degree) =>
        fc.tuple(
          fc.constant(degree),
          fc.array(place, { minLength: degree + 1, maxLength: degree + 6 }),
          fc.array(step, { minLength: 20, maxLength: 20 }),
        ),
      );
    fc.assert(
      fc.property(
        curve,
        fc.double({ min: 0, max: 1, noNaN: true }),
        ([degree, control, steps], at) => {
          // Its ends are where its first and its last control point are.
          const inner = control.length - degree - 1;
          const middle = steps
            .slice(0, inner + 1)
            .map((_, i, all) => all.slice(0, i + 1).reduce((sum, by) => sum + by + 1, 0));
          const end = middle.at(-1) ?? 1;
          const knots = [
            ...Array<number>(degree + 1).fill(0),
            ...middle.slice(0, inner),
            ...Array<number>(degree + 1).fill(end),
          ];
          const back = line(
            'S',
            ...(control.at(-1) as [number, number]),
            ...(control[0] as [number, number]),
          );
          const found = readDxf(dxf('', spline(degree, knots, control) + back));
          // One that crosses itself is no piece.
          if (!found.ok) return;
          given++;
          const u = at * end;
          const [x, y] = [0, 1].map((axis) =>
            control.reduce((sum, of, i) => sum + (of[axis] ?? 0) * baseOf(i, degree, u, knots), 0),
          );
          const outline = found.shapes[0]!.outline;
          const away = Math.min(
            ...outline.map((a, i) =>
              fromWay([x ?? 0, y ?? 0], a, outline[(i + 1) % outline.length]!),
            ),
          );
          expect(away).toBeLessThan(CURVE_MM + 1e-6);
        },
      ),
      { numRuns: 300 },
    );
    expect(given).toBeGreaterThan(30);
  });

  test('by weights that differ, or by the places they run through, are said; half a one has no number', () => {
    const arch = [
      [0, 0],
      [9, 30],
      [90, 0],
    ];
    const whole = spline(2, [0, 0, 0, 1, 1, 1], arch);
    const said = { kind: 'unknown-curve', name: 'S', curve: 'SPLINE' };
    expect(problems(dxf('', whole + pairs(41, 1, 41, 2, 41, 1)))).toEqual([said]);
    expect(problems(dxf('', pairs(0, 'SPLINE', 8, 'S', 71, 3, 11, 0, 21, 0)))).toEqual([said]);
    expect(problems(dxf('', spline(2, [0, 0, 1, 1, 1], arch)))).toEqual([
      { kind: 'no-number', name: 'S' },
    ]);
    expect(problems(dxf('', whole + pairs(41, 2, 41, 2, 41, 2)))).toEqual([
      { kind: 'nothing-closed', open: 1 },
    ]);
  });
});

/** By the recursion of Cox and de Boor; its last span holds its end. */
function baseOf(i: number, degree: number, u: number, knots: readonly number[]): number {
  const [from, to] = [knots[i]!, knots[i + 1]!];
  if (degree === 0) {
    const last = u === knots.at(-1) && to === u && from < to;
    return (from <= u && u < to) || last ? 1 : 0;
  }
  const part = (over: number, under: number) => (under === 0 ? 0 : over / under);
  return (
    part(u - from, knots[i + degree]! - from) * baseOf(i, degree - 1, u, knots) +
    part(knots[i + degree + 1]! - u, knots[i + degree + 1]! - to) *
      baseOf(i + 1, degree - 1, u, knots)
  );
}

function fromWay(
  [x, y]: readonly [number, number],
  [ax, ay]: readonly [number, number],
  [bx, by]: readonly [number, number],
): number {
  const [u, v] = [bx - ax, by - ay];
  const t = Math.min(1, Math.max(0, ((x - ax) * u + (y - ay) * v) / (u * u + v * v || 1)));
  return Math.hypot(x - ax - t * u, y - ay - t * v);
}
