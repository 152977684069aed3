import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxOf, type Outline, signedArea } from '../../../src/lay/outline.ts';
import type { FileAsked } from '../../../src/lay/pieces/file/file-problem.ts';
import { readSvg } from '../../../src/lay/pieces/file/read-svg.ts';

/** What a curve of some 120 mm may lack in area, at two hundredths of a millimetre. */
const CURVED = 2.4;

const MM = 'width="300mm" height="200mm" viewBox="0 0 300 200"';
const svg = (body: string, root = MM) =>
  `<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" ${root}>${body}</svg>`;

function shapes(text: string, asked?: FileAsked) {
  const found = readSvg(text, asked);
  if (!found.ok) throw new Error(JSON.stringify(found.problem));
  return found.shapes;
}

const outline = (body: string, root = MM): Outline => shapes(svg(body, root))[0]!.outline;
const area = (body: string, root = MM) => signedArea(outline(body, root));

function problem(text: string) {
  const found = readSvg(text);
  return found.ok ? undefined : found.problem;
}

test('every basic shape of the standard is read as large as it is', () => {
  expect(outline('<rect x="10" y="20" width="30" height="40"/>')).toEqual(
    expect.arrayContaining([
      [10, -20],
      [40, -20],
      [40, -60],
      [10, -60],
    ]),
  );
  // Areas: π r², π a b, and of a rectangle with round corners w h − (4 − π) rx ry.
  expect(area('<circle cx="50" cy="50" r="40"/>')).toBeCloseTo(Math.PI * 1600, -1);
  expect(area('<ellipse cx="50" cy="50" rx="40" ry="20"/>')).toBeCloseTo(Math.PI * 800, -1);
  const rounded = 60 * 40 - (4 - Math.PI) * 10 * 5;
  expect(Math.abs(area('<rect width="60" height="40" rx="10" ry="5"/>') - rounded)).toBeLessThan(2);
  expect(area('<polygon points="0,0 100,0 0,50"/>')).toBe(2500);
  expect(area('<polyline points="0 0 100 0 0 50 0 0"/>')).toBe(2500);
});

test('all commands of a path draw what the standard says, absolute and relative', () => {
  // The same outline, written in every straight command.
  for (const d of [
    'M10 10 L110 10 L110 60 L10 60 Z',
    'm10,10 100,0 0,50 -100,0z',
    'M10 10H110V60H10Z',
    'M10 10h100v50h-100z',
    'M10-10M10 10h1e2v5e1h-100z',
  ]) {
    expect(area(`<path d="${d}"/>`), d).toBe(5000);
  }
  // Under a parabola of one control point: two thirds of the triangle's… base 100, rise 50: 2/3 × 100 × 50.
  const parabola = (2 / 3) * 100 * 50;
  expect(Math.abs(area('<path d="M0 100Q50 0 100 100Z"/>') - parabola)).toBeLessThan(CURVED);
  // The same parabola as a cubic: controls two thirds of the way to the one control.
  const cubic = 'M0 100C33.333333 33.333333 66.666667 33.333333 100 100Z';
  expect(Math.abs(area(`<path d="${cubic}"/>`) - parabola)).toBeLessThan(CURVED);
  // S and T mirror the control before: two waves below each other enclose the same.
  const smooth = area('<path d="M0 100q50 -100 100 0t100 0V180H0Z"/>');
  expect(smooth).toBeCloseTo(area('<path d="M0 100q50 -100 100 0q50 100 100 0V180H0Z"/>'), 9);
  expect(smooth).toBeCloseTo(200 * 80, 0);
  const wave = area('<path d="M0 100c20 -40 80 -40 100 0s80 40 100 0V180H0Z"/>');
  expect(wave).toBeCloseTo(200 * 80, 0);
  // Half circles of r 50, by both flags, written without a space between them.
  expect(area('<path d="M0 100A50 50 0 01100 100Z"/>')).toBeCloseTo((Math.PI * 2500) / 2, -1);
  expect(boxOf(outline('<path d="M0 100a50 50 0 0 0 100 0z"/>')).y0).toBeCloseTo(-150, 1);
  // Three quarters of a circle, and its one quarter, between the same ends.
  const large = area('<path d="M50 0A50 50 0 1 1 0 50Z"/>');
  expect(large).toBeCloseTo(0.75 * Math.PI * 2500 + 1250, -1);
  expect(area('<path d="M50 0A50 50 0 0 1 0 50Z"/>')).toBeCloseTo(Math.PI * 625 - 1250, -1);
});

test('each part of a path that closes is a shape, and goes on from where it began', () => {
  const [one, other] = shapes(svg('<path id="a" d="M0 0h50v50h-50z l0 -30 h-20 z m100 0h9v9z"/>'));
  expect(signedArea(one!.outline)).toBe(2500);
  expect(signedArea(other!.outline)).toBe(300);
  expect(shapes(svg('<path id="a" d="M0 0h50v50h-50z l0 -30 h-20 z m100 0h9v9z"/>'))).toHaveLength(
    3,
  );
});

test('units are as the file says: a square of 10 units, in mm', () => {
  const side = (root: string, asked?: FileAsked) => {
    const [found] = shapes(svg('<rect width="10" height="10"/>', root), asked);
    const { x0, x1 } = boxOf(found!.outline);
    return x1 - x0;
  };
  // CSS Values and Units: 1 in = 2.54 cm = 96 px = 72 pt = 6 pc.
  expect(side('width="10cm" height="10cm" viewBox="0 0 100 100"')).toBeCloseTo(10, 9);
  expect(side('width="1in" height="1in" viewBox="0 0 10 10"')).toBeCloseTo(25.4, 9);
  expect(side('width="96px" height="96px" viewBox="0 0 10 10"')).toBeCloseTo(25.4, 9);
  expect(side('width="300mm" height="200mm"')).toBeCloseTo((10 * 25.4) / 96, 9);
  // The drawing keeps its shape where the page has another, unless the file says otherwise.
  expect(side('width="200mm" height="100mm" viewBox="0 0 10 10"')).toBeCloseTo(100, 9);
  const stretched = 'width="200mm" height="100mm" viewBox="0 0 10 10" preserveAspectRatio="none"';
  expect(side(stretched)).toBeCloseTo(200, 9);
  expect(area('<rect width="1cm" height="10mm"/>', 'width="96px" viewBox="0 0 96 96"')).toBeCloseTo(
    100,
    9,
  );
});

test('units that are not said are asked for, and others are refused', () => {
  const square = '<rect width="10" height="10"/>';
  for (const root of ['', 'viewBox="0 0 9 9"', 'width="300" height="9"', 'width="100%"']) {
    expect(problem(svg(square, root)), root).toEqual({ kind: 'no-units' });
  }
  expect(signedArea(shapes(svg(square, ''), { unitMm: 2.5 })[0]!.outline)).toBe(625);
  expect(problem(svg(square, 'width="3em"'))).toEqual({ kind: 'other-units', said: 'em' });
  expect(problem(svg(square, 'width="3mm" viewBox="0 0 NaN 1"'))).toMatchObject({
    kind: 'no-number',
  });
  expect(problem(svg(square, 'width="3mm" viewBox="0 0 0 1"'))).toMatchObject({
    kind: 'no-number',
  });
});

test('moves and turns go from the outermost in, and names from the innermost out', () => {
  const nested = `<g id="front" transform="translate(100 0)"><g transform="rotate(90)">
    <g transform="scale(2,3) translate(5)"><path d="M0 0H10V10H0Z"/></g></g>
    <rect id="pocket" width="10" height="20" transform="matrix(0 1 -1 0 0 0)"/></g>`;
  const [one, pocket] = shapes(svg(nested));
  // By hand: (5, 0)…(15, 10), × (2, 3): (10, 0)…(30, 30), a quarter round: x −30…0, y 10…30.
  expect(one!.name).toBe('front');
  expect(boxOf(one!.outline)).toEqual({
    x0: expect.closeTo(70, 9),
    x1: expect.closeTo(100, 9),
    y0: expect.closeTo(-30, 9),
    y1: expect.closeTo(-10, 9),
  });
  expect(pocket!.name).toBe('pocket');
  const { x0, x1, y0, y1 } = boxOf(pocket!.outline);
  expect([x0, x1, y0, y1].map((at) => at + 0)).toEqual([80, 100, -10, 0]);
  // Slanted, its area stays; turned about a place, that stays.
  expect(area('<rect width="10" height="20" transform="skewX(30),skewY(0)"/>')).toBeCloseTo(200, 9);
  const about = outline(
    '<rect x="10" y="10" width="10" height="10" transform="rotate(180 10 10)"/>',
  );
  expect(boxOf(about)).toMatchObject({ x0: expect.closeTo(0, 9), y1: expect.closeTo(-0, 9) });
});

test('a file counts downwards and cloth upwards: a piece is not its own mirror', () => {
  // Seen on the page, the long end of this L points right at the bottom.
  const foot = outline('<path d="M0 0H10V90H60V100H0Z"/>');
  const right = foot.filter(([x]) => x === 60).map(([, y]) => y);
  expect(Math.max(...right)).toBe(-90);
});

test('lines drawn apart are joined where their ends meet', () => {
  const sides = `<g id="yoke"><line id="l1" x2="40"/><line id="l2" x1="40" y1="30" x2="40"/>
    <polyline points="40 30 10 30.02 0 30"/><path id="l3" d="M0 30V0.01"/></g>`;
  const found = shapes(svg(sides));
  expect(found).toHaveLength(1);
  expect(signedArea(found[0]!.outline)).toBeCloseTo(1200, -1);
  // Of two groups nothing is joined: a seam may touch a cutting line.
  expect(
    problem(svg(`<g id="a"><path d="M0 0H9"/></g><g id="b"><path d="M9 0V9H0V0"/></g>`)),
  ).toEqual({
    kind: 'nothing-closed',
    open: 2,
  });
});

test('what is hidden, or only defined, is no piece; what is drawn by reference is said', () => {
  const square = '<rect id="a" width="10" height="10"/>';
  const found = readSvg(
    svg(`<defs>${square}</defs><g display="none">${square}</g><text>so</text>
    <g style="fill:red;display:none">${square}</g><clipPath>${square}</clipPath>
    <use id="u" href="#a"/>${square}<path d="M0 0L9 9"/>`),
  );
  expect(found).toMatchObject({
    ok: true,
    shapes: [{ name: 'a' }],
    open: 1,
    problems: [{ kind: 'unknown-curve', name: 'u', curve: 'use' }],
  });
});

test('damaged and hostile files are problems, with the place', () => {
  expect(problem('')).toEqual({ kind: 'damaged', line: 1 });
  expect(problem('%PDF-1.7')).toEqual({ kind: 'damaged', line: 1 });
  expect(problem('<html></html>')).toEqual({ kind: 'damaged', line: 1 });
  expect(problem(`<svg ${MM}>\n<g>\n</svg>`)).toEqual({ kind: 'damaged', line: 3 });
  expect(problem(`<svg ${MM}>\n<path d="M0 0`)).toEqual({ kind: 'damaged', line: 2 });
  expect(problem(svg('<path id="b" d="M0 0 L NaN 9 Z"/>'))).toEqual({
    kind: 'no-number',
    name: 'b',
  });
  expect(problem(svg('<path id="b" d="M0 0H1e999V9Z"/>'))).toEqual({
    kind: 'no-number',
    name: 'b',
  });
  expect(problem(svg('<path id="b" d="M0 0H1e9V9Z"/>'))).toMatchObject({
    kind: 'no-piece',
    name: 'b',
    problem: { kind: 'out-of-range' },
  });
  expect(problem(svg('<path id="b" d="M0 0H9V9H3V-3Z"/>'))).toMatchObject({
    kind: 'no-piece',
    name: 'b',
    problem: { kind: 'crosses' },
  });
  expect(problem(svg('<rect width="-5" height="9"/>'))).toMatchObject({ kind: 'no-number' });
  expect(problem(svg('<rect width="5" height="9" transform="rotate(a)"/>'))).toMatchObject({
    kind: 'no-number',
  });
  expect(problem(svg('<path d="M0 0H9V9"/>'))).toEqual({ kind: 'nothing-closed', open: 1 });
  const apart = [1, 2, 3].map((x) => `<path d="M${x} 0v9"/>`).join('');
  expect(problem(svg(apart))).toEqual({ kind: 'nothing-closed', open: 3 });
});

test('the kind of a document is read over, unless it declares what would change the drawing', () => {
  const inside = '<rect width="40" height="50"/>';
  const kind = (said: string) => svg(inside).replace('<svg', `<!DOCTYPE ${said}\n<svg`);
  // As the standard itself writes it (W3C, SVG 1.1, 1.3).
  const named =
    'svg PUBLIC "-//W3C//DTD SVG 1.1//EN"\n "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd"';
  for (const plain of [
    ...['svg>', `${named}>`, 'svg SYSTEM "a>b[c.dtd" >', `${named} [ ]>`, 'svg [<?a ]>?>]>'],
    `${named} [ <!ATTLIST svg xmlns:a CDATA #IMPLIED> <!ELEMENT a ANY> ]>`,
    'svg [ <!-- <!ENTITY a "b"> ]> --> ] >',
  ]) {
    expect(shapes(kind(plain))).toHaveLength(1);
  }
  for (const declares of [
    'svg [ <!ENTITY ns "http://www.w3.org/2000/svg"> ]>',
    `${named} [<!ENTITY % a SYSTEM "a.dtd"> %a; ]>`,
    'svg [ %a; ]>',
    'svg [ <!ATTLIST rect transform CDATA "scale(2)"> ]>',
  ]) {
    expect(problem(kind(declares))).toEqual({ kind: 'hostile' });
  }
  for (const torn of ['>', 'svg', 'svg [', 'svg "', 'svg PUBLIC "a" [ <!-- ]>', 'svg a b>']) {
    expect(problem(kind(torn))).toMatchObject({ kind: 'damaged' });
  }
});

test('a style sheet that turns or scales stops the reading: nothing tells what it is said of', () => {
  const styled = (rule: string) =>
    svg(`<style>${rule}</style><rect class="a" width="40" height="50"/>`);
  const stops = { kind: 'unknown-curve', name: '', curve: 'style: transform' };
  for (const rule of ['.a{transform:scale(2)}', '<![CDATA[ rect { fill:none; scale : 2 } ]]>']) {
    expect(problem(styled(rule))).toEqual(stops);
  }
  for (const rule of ['', '.a{fill:none}', '.a{transform-box:fill-box;text-transform:none}']) {
    expect(shapes(styled(rule))).toHaveLength(1);
  }
});

test('bombs and heaps end in a problem, soon', () => {
  const bomb = `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]><svg ${MM}>&b;</svg>`;
  const heaps = [
    [bomb, 'hostile'],
    [`<!DOCTYPE svg${' '.repeat(3_000_000)}[`, 'damaged'],
    [`<!DOCTYPE svg [${'<!ELEMENT a ANY> '.repeat(200_000)}`, 'damaged'],
    [svg('<g>'.repeat(100_000)), 'too-deep'],
    [svg('<rect width="9" height="9"/>'.repeat(2000)), 'too-many'],
    [svg(`<path d="M0 0${'L1 1 2 0 '.repeat(500_000)}Z"/>`), 'too-many'],
    [svg(`<path d="M0 0${'C9e9 9e9 1 1 2e9 0 '.repeat(200_000)}Z"/>`), 'too-many'],
    [svg(`<path d="M0 0${' '.repeat(5_000_000)}!"/>`), 'no-number'],
    [svg(`<g transform="${'translate(1)'.repeat(300_000)}(" />`), 'no-number'],
    [svg(`<g ${'a="" '.repeat(1_000_000)}/>`), 'damaged'],
    [`<svg ${MM}>${'<!--'.repeat(1_000_000)}`, 'damaged'],
    ['<'.repeat(5_000_000), 'damaged'],
    [' '.repeat(20_000_001), 'too-large'],
  ] as const;
  for (const [text, kind] of heaps) {
    const from = process.cpuUsage();
    expect(problem(text)?.kind, text.slice(0, 90)).toBe(kind);
    // Its own work, however busy the machine is; in microseconds.
    expect(process.cpuUsage(from).user, text.slice(0, 90)).toBeLessThan(5e6);
  }
});

test('ten thousand files made of scraps are read or refused, and never throw', () => {
  const scrap = fc.constantFrom(
    '<svg ',
    MM,
    '>',
    '</svg>',
    '<g ',
    '</g>',
    '/>',
    '<path d="',
    'M0 0',
    'h9v9z',
    'a5 5 0 01',
    '9 9',
    'NaN',
    '1e999',
    '-.5.5',
    '"',
    ' ',
    '<rect ',
    'width="9mm" ',
    'height="1e400" ',
    'transform="',
    'rotate(',
    ')',
    'matrix(0 0 0 0 0 0)',
    '&a;',
    '<![CDATA[',
    ']]>',
    '<!--',
    'Q',
    'T5',
    's1 1 5',
    'viewBox="0 0 1 1"',
    '<use/>',
    '<polygon points="',
    '0,0 9,0 9,9',
    'id="__proto__"',
    'c-9-9-9-9e9',
    'constructor(',
    '\u0000',
    '＜',
  );
  const body = fc.array(scrap, { maxLength: 14 }).map((parts) => parts.join(''));
  const stroke = fc.constantFrom(
    'M0 0',
    'h9',
    'v9',
    'z',
    'L30 5',
    'q9 9 0 20',
    't5 9',
    'a5 9 3 0140 4',
    'C1 2 3 4 50 6',
    'e',
    '-.5.5',
  );
  const path = fc
    .array(stroke, { maxLength: 9 })
    .map((parts) => svg(`<path d="M1 1${parts.join('')}"/>`));
  const whole = svg(
    '<g transform="rotate(9)"><path id="a" d="M0 0H40a9 9 0 01-9 9z"/></g><circle r="9"/>',
  );
  const bent = fc
    .tuple(fc.nat(whole.length), fc.nat(9), scrap)
    .map(([at, out, put]) => whole.slice(0, at) + put + whole.slice(at + out));
  const file = fc.oneof(
    body,
    body.map((inside) => svg(inside)),
    path,
    bent,
  );
  let read = 0;
  const law = fc.property(file, (text) => {
    const found = readSvg(text);
    if (!found.ok) return typeof found.problem.kind === 'string';
    read++;
    return found.shapes.every(({ outline: all }) => all.every(([x, y]) => Number.isFinite(x + y)));
  });
  fc.assert(law, { seed: 18, numRuns: 10_000 });
  expect(read).toBeGreaterThan(50);
});
