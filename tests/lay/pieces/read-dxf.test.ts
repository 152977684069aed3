import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxOf, signedArea } from '../../../src/lay/outline.ts';
import type { FileAsked } from '../../../src/lay/pieces/file/file-problem.ts';
import { readDxf } from '../../../src/lay/pieces/file/read-dxf.ts';

/** Pairs of lines, as the DXF reference has them: a group code and its value. */
const pairs = (...values: (string | number)[]) => `${values.join('\n')}\n`;

const dxf = (entities: string, units: number | undefined = 4) =>
  pairs(0, 'SECTION', 2, 'HEADER', 9, '$ACADVER', 1, 'AC1015') +
  (units === undefined ? '' : pairs(9, '$INSUNITS', 70, units)) +
  pairs(0, 'ENDSEC', 0, 'SECTION', 2, 'ENTITIES') +
  entities +
  pairs(0, 'ENDSEC', 0, 'EOF');

const line = (layer: string, x: number, y: number, u: number, v: number) =>
  pairs(0, 'LINE', 8, layer, 10, x, 20, y, 30, 0, 11, u, 21, v, 31, 0);

type Corner = [x: number, y: number, bulge?: number];

const light = (layer: string, closed: 0 | 1, corners: readonly Corner[], more = '') =>
  pairs(0, 'LWPOLYLINE', 8, layer, 90, corners.length, 70, closed) +
  more +
  corners.map(([x, y, bulge = 0]) => pairs(10, x, 20, y, 42, bulge)).join('');

const SQUARE: Corner[] = [
  [0, 0],
  [100, 0],
  [100, 50],
  [0, 50],
];

function read(text: string, asked?: FileAsked) {
  const found = readDxf(text, asked);
  if (!found.ok) throw new Error(JSON.stringify(found.problem));
  return found;
}

const shapes = (text: string, asked?: FileAsked) => read(text, asked).shapes;
const area = (text: string) => signedArea(shapes(text)[0]!.outline);

function problem(text: string) {
  const found = readDxf(text);
  return found.ok ? undefined : found.problem;
}

test('closed polylines of both kinds are shapes, called by their layer', () => {
  const old =
    pairs(0, 'POLYLINE', 8, 'BACK', 66, 1, 70, 1, 10, 0, 20, 0) +
    SQUARE.map(([x, y]) => pairs(0, 'VERTEX', 8, 'BACK', 10, x, 20, y)).join('') +
    // A vertex that only guides a curve lies on no outline.
    pairs(0, 'VERTEX', 8, 'BACK', 70, 16, 10, 900, 20, 900) +
    pairs(0, 'SEQEND', 8, 'BACK');
  const found = shapes(dxf(light('FRONT', 1, SQUARE) + old));
  expect(found.map(({ name }) => name)).toEqual(['FRONT', 'BACK']);
  expect(found[0]!.outline).toEqual(SQUARE);
  expect(found[1]!.outline).toEqual(SQUARE);
});

test('a bulge is the tangent of a quarter of the angle: 1 is half a circle', () => {
  // A bow to the right of its way, above 0, lies outside of what runs counter-clockwise.
  const half = (Math.PI * 25 ** 2) / 2;
  const bowed = (bulge: number): Corner[] =>
    SQUARE.map((at, i) => (i === 1 ? [at[0], at[1], bulge] : at));
  expect(area(dxf(light('A', 1, bowed(1))))).toBeCloseTo(5000 + half, -1);
  expect(area(dxf(light('A', 1, bowed(-1))))).toBeCloseTo(5000 - half, -1);
  expect(boxOf(shapes(dxf(light('A', 1, bowed(1))))[0]!.outline).x1).toBeCloseTo(125, 1);
  // A quarter of a circle: tan 22.5°; its segment is (r² / 2) (π / 2 − 1) with r = 50 / √2.
  const quarter = (1250 / 2) * (Math.PI / 2 - 1);
  const found = area(dxf(light('A', 1, bowed(Math.tan(Math.PI / 8)))));
  expect(Math.abs(found - 5000 - quarter)).toBeLessThan(1.2);
});

test('circles, and lines and arcs whose ends meet, close', () => {
  expect(area(dxf(pairs(0, 'CIRCLE', 8, 'A', 10, 5, 20, 5, 40, 40)))).toBeCloseTo(
    Math.PI * 1600,
    -1,
  );
  // A slot: two lines and two half circles, in no order and not all one way round.
  const slot =
    line('A', 0, 0, 100, 0) +
    pairs(0, 'ARC', 8, 'A', 10, 0, 20, 20, 40, 20, 50, 90, 51, 270) +
    line('A', 0, 40, 100, 40) +
    pairs(0, 'ARC', 8, 'A', 10, 100, 20, 20, 40, 20, 50, 270, 51, 90);
  expect(area(dxf(slot))).toBeCloseTo(4000 + Math.PI * 400, -1);
  const many = Array.from(
    { length: 40 },
    (_, i) => line(`P${i}`, 0, 0, 9, 0) + line(`P${i}`, 9, 0, 0, 9) + line(`P${i}`, 0, 9, 0, 0),
  );
  expect(shapes(dxf(many.join('')))).toHaveLength(40);
  // Two layers are never joined: what is sewn may end where something is cut.
  expect(
    problem(dxf(line('A', 0, 0, 9, 0) + line('B', 9, 0, 0, 9) + line('B', 0, 9, 0, 0))),
  ).toEqual({
    kind: 'nothing-closed',
    open: 2,
  });
});

test('units are as the file says, and are asked for where it says none', () => {
  const side = (units: number) => boxOf(shapes(dxf(light('A', 1, SQUARE), units))[0]!.outline).x1;
  // The DXF reference on $INSUNITS: 1 inches, 2 feet, 4 millimetres, 5 centimetres, 6 metres, 14 decimetres.
  expect([1, 2, 4, 5, 14].map(side)).toEqual([2540, 30480, 100, 1000, 10_000]);
  expect(problem(dxf(light('A', 1, SQUARE), 0))).toEqual({ kind: 'no-units' });
  const unsaid = dxf(light('A', 1, SQUARE), undefined).replace('9\n$INSUNITS\n70\n4\n', '');
  expect(problem(unsaid)).toEqual({ kind: 'no-units' });
  expect(signedArea(shapes(unsaid, { unitMm: 2 })[0]!.outline)).toBe(20_000);
  expect(problem(dxf(light('A', 1, SQUARE), 20))).toEqual({
    kind: 'other-units',
    said: '$INSUNITS 20',
  });
});

test('what lies on the back of the sheet is mirrored, and what is turned in space is said', () => {
  const back = light(
    'A',
    1,
    [
      [0, 0],
      [100, 0],
      [0, 50],
    ],
    pairs(210, 0, 220, 0, 230, -1),
  );
  expect(boxOf(shapes(dxf(back))[0]!.outline)).toEqual({
    x0: -100,
    y0: 0,
    x1: expect.closeTo(0, 9),
    y1: 50,
  });
  expect(problem(dxf(light('A', 1, SQUARE, pairs(210, 0.5, 220, 0, 230, 0.5))))).toMatchObject({
    kind: 'unknown-curve',
  });
});

test('curves that are not read are said with their layer, beside what is read', () => {
  const found = read(
    dxf(
      light('A', 1, SQUARE) +
        pairs(0, 'SPLINE', 8, 'SLEEVE', 70, 8, 71, 3) +
        pairs(0, 'INSERT', 8, 'B', 2, 'BLOCK') +
        pairs(0, 'TEXT', 8, 'T', 1, 'cut 2') +
        light('PAPER', 1, SQUARE, pairs(67, 1)) +
        light('HIDDEN', 1, SQUARE, pairs(60, 1)),
    ),
  );
  expect(found.shapes).toHaveLength(1);
  expect(found.problems).toEqual([
    { kind: 'unknown-curve', name: 'SLEEVE', curve: 'SPLINE' },
    { kind: 'unknown-curve', name: 'B', curve: 'INSERT' },
  ]);
});

test('damaged files are problems, with the line or the layer', () => {
  expect(problem('')).toEqual({ kind: 'damaged', line: 1 });
  expect(problem('<svg/>')).toEqual({ kind: 'damaged', line: 1 });
  expect(problem(pairs(0, 'SECTION', 2, 'ENTITIES', 'x', 'y'))).toEqual({
    kind: 'damaged',
    line: 5,
  });
  expect(problem(pairs(0, 'SECTION', 99999, 'y'))).toEqual({ kind: 'damaged', line: 3 });
  const whole = dxf(light('A', 1, SQUARE));
  expect(shapes(whole.replaceAll('\n', '\r\n'))).toHaveLength(1);
  const torn = (x: string) => dxf(light('A', 1, SQUARE).replace('10\n100\n', `10\n${x}\n`));
  expect(problem(torn('NaN'))).toEqual({ kind: 'no-number', name: 'A' });
  expect(problem(torn(''))).toEqual({ kind: 'no-number', name: 'A' });
  expect(problem(torn('1e999'))).toEqual({ kind: 'no-number', name: 'A' });
  expect(problem(torn('1e9'))).toMatchObject({
    kind: 'no-piece',
    problem: { kind: 'out-of-range' },
  });
  expect(problem(dxf(pairs(0, 'CIRCLE', 8, 'A', 10, 5, 20, 5, 40, -1)))).toEqual({
    kind: 'no-number',
    name: 'A',
  });
  expect(problem(dxf(''))).toEqual({ kind: 'nothing-closed', open: 0 });
});

test('of a file without its end all is read that is known to be whole, and the rest is said', () => {
  const brokenOff = [{ kind: 'broken-off' }];
  const of = (text: string) => {
    const { shapes: found, problems } = read(text);
    return [found.map(({ name }) => name), problems];
  };
  const begun = (entities: string) => dxf(entities).slice(0, -pairs(0, 'ENDSEC', 0, 'EOF').length);
  const both = begun(light('A', 1, SQUARE) + light('B', 1, SQUARE));
  const closed = both + pairs(0, 'ENDSEC');
  // Hand-cut: the last line is missing, or what old systems end a text with stands for it.
  for (const end of ['', '\n', '\n\n\n', '\u001a', '  0', pairs(0, 'SECTION', 2, 'OBJECTS')]) {
    expect(of(closed + end)).toEqual([['A', 'B'], []]);
  }
  // The last part may have lost corners, or digits: it is no piece.
  for (const text of [both, both.slice(0, -3), both.slice(0, -9)]) {
    expect(of(text)).toEqual([['A'], brokenOff]);
  }
  expect(of(`${both}0\nENDSE`)).toEqual([['A', 'B'], brokenOff]);
  const old = pairs(0, 'POLYLINE', 8, 'C', 66, 1, 70, 1);
  const corners = SQUARE.map(([x, y]) => pairs(0, 'VERTEX', 8, 'C', 10, x, 20, y)).join('');
  expect(of(begun(light('A', 1, SQUARE) + old + corners))).toEqual([['A'], brokenOff]);
  const again = pairs(0, 'SECTION', 2, 'ENTITIES') + light('C', 1, SQUARE);
  expect(of(closed + again)).toEqual([['A', 'B'], brokenOff]);
  expect(problem(begun(light('A', 1, SQUARE)))).toEqual({ kind: 'broken-off' });
  expect(problem(pairs(0, 'SECTION', 2, 'HEADER', 9, '$INSUNITS'))).toMatchObject({
    kind: 'damaged',
  });
  expect(problem(pairs(0, 'SECTION', 2, 'BLOCKS') + light('A', 1, SQUARE))).toMatchObject({
    kind: 'damaged',
  });
});

test('a file cut anywhere gives no shape but those of the whole file', () => {
  const rows = [0, 60, 120].map((up) => SQUARE.map(([x, y]): Corner => [x, y + up, 0.1]));
  const whole = dxf(rows.map((row, i) => light(String(i), 1, row)).join(''));
  const all = shapes(whole);
  fc.assert(
    fc.property(fc.integer({ min: 0, max: whole.length }), (at) => {
      const found = readDxf(whole.slice(0, at));
      if (!found.ok) return;
      expect(found.shapes).toEqual(all.slice(0, found.shapes.length));
      if (found.shapes.length < all.length) {
        expect(found.problems).toEqual([{ kind: 'broken-off' }]);
      }
    }),
  );
});

test('lines of no length among others are passed over', () => {
  const sides = SQUARE.map(([x, y], i) => {
    const [u, v] = SQUARE[(i + 1) % 4]!;
    return line('A', x, y, u, v) + line('A', x, y, x, y);
  });
  expect(read(dxf(sides.join('')))).toMatchObject({ problems: [], open: 0 });
  expect(area(dxf(sides.join('')))).toBe(5000);
});

test('heaps end in a problem, soon', () => {
  const bows = Array.from({ length: 200_000 }, (_, i): Corner => [i, i % 2, 1e6]);
  const lines = (count: number, of: (i: number) => string) =>
    Array.from({ length: count }, (_, i) => of(i)).join('');
  const star = lines(9900, (i) => line('A', 100 * Math.cos(i), 100 * Math.sin(i), 0, 0));
  const ends = lines(9900, (i) => line('A', i, 100, (i % 2) * 0.09, 0));
  const heaps = [
    [dxf(star), 'no-piece'],
    [dxf(ends), 'nothing-closed'],
    [dxf(light('A', 1, bows)), 'too-many'],
    [dxf(light('A', 1, SQUARE).repeat(2000)), 'too-many'],
    [dxf(line('A', 0, 0, 9, 9).repeat(100_000)), 'too-many'],
    ['0\n'.repeat(5_000_000), 'damaged'],
    ['9'.repeat(10_000_000), 'damaged'],
    [' '.repeat(20_000_001), 'too-large'],
  ] as const;
  for (const [text, kind] of heaps) {
    const from = process.cpuUsage();
    expect(problem(text)?.kind, text.slice(0, 60)).toBe(kind);
    // Its own work, however busy the machine is; in microseconds.
    expect(process.cpuUsage(from).user, text.slice(0, 60)).toBeLessThan(5e6);
  }
});

test('ten thousand bent files are read or refused, and never throw', () => {
  const whole = dxf(
    light('A', 1, [
      [0, 0, 0.4],
      [90, 0],
      [90, 50, -1],
    ]) +
      pairs(0, 'CIRCLE', 8, 'B', 10, 5, 20, 5, 40, 9) +
      line('C', 0, 0, 9, 0) +
      pairs(0, 'ARC', 8, 'C', 10, 0, 20, 0, 40, 9, 50, 0, 51, 90) +
      pairs(0, 'POLYLINE', 8, 'D', 70, 1, 0, 'VERTEX', 10, 1, 20, 1, 42, 2, 0, 'SEQEND'),
  ).split('\n');
  const scrap = fc.constantFrom(
    '',
    '0',
    '10',
    '20',
    '42',
    '70',
    'NaN',
    '1e999',
    '-1e308',
    '5e-324',
    'VERTEX',
    'SEQEND',
    'EOF',
    '__proto__',
    '$INSUNITS',
    '\u0000',
  );
  const bends = fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(2), scrap), {
    minLength: 1,
    maxLength: 4,
  });
  let given = 0;
  const law = fc.property(bends, (all) => {
    const lines = [...whole];
    for (const [at, out, put] of all) lines.splice(at, out, put);
    const found = readDxf(lines.join('\n'));
    if (!found.ok) return typeof found.problem.kind === 'string';
    given++;
    return found.shapes.every(({ outline }) => outline.every(([x, y]) => Number.isFinite(x + y)));
  });
  fc.assert(law, { seed: 18, numRuns: 10_000 });
  expect(given).toBeGreaterThan(50);
});
