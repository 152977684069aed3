import fc from 'fast-check';
import { expect, test } from 'vitest';
import { circle } from '../../src/drawing/figure-ring.ts';
import { hemSection } from '../../src/drawing/hem-figure.ts';
import { svgOf } from '../../src/drawing/svg.ts';
import { templateFigure } from '../../src/drawing/template-figure.ts';

const parsed = (svg: string) =>
  new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;

test('one unit is a millimetre: size, view box and places', () => {
  const strip = {
    name: 'Row 1',
    datum: '',
    length: 400,
    width: 20,
    hole: 2,
    rows: [
      {
        across: 5,
        marks: [
          { at: 4, label: '1' },
          { at: 12, label: '2' },
        ],
      },
    ],
  };
  const svg = parsed(svgOf('Row 1', templateFigure(strip), 'One unit is 1 mm.'));
  const box = svg.getAttribute('viewBox')?.split(' ').map(Number) ?? [];
  expect(svg.getAttribute('width')).toBe(`${box[2]}mm`);
  expect(svg.getAttribute('height')).toBe(`${box[3]}mm`);
  // 400 × 20 and 5 of room on each side.
  expect(box).toEqual([-5, -5, 410, 30]);
  const holes = [...svg.querySelectorAll('#cut circle')];
  expect(holes.map((hole) => hole.getAttribute('cx'))).toEqual(['4', '12']);
  expect(holes.map((hole) => hole.getAttribute('r'))).toEqual(['1', '1']);
  expect(svg.querySelector('title')?.textContent).toBe('Row 1');
  expect(svg.querySelector('desc')?.textContent).toBe('One unit is 1 mm.');
});

test('a bare run has its marks as lines across', () => {
  const run = {
    name: '',
    datum: '',
    length: 100,
    width: undefined,
    hole: undefined,
    rows: [{ across: 0, marks: [{ at: 30, label: 'a' }] }],
  };
  const svg = parsed(svgOf('', templateFigure(run), ''));
  expect([...svg.querySelectorAll('#cut path')].map((path) => path.getAttribute('d'))).toEqual([
    'M30 0L30 12',
  ]);
});

test('lettering at the right edge is all in the file', () => {
  const labels = { depth: 'depth 4.5 cm', turn: 'turn 0.7 cm' };
  const hem = hemSection({ depth: 45, turn: 7, stitchUp: 43, labels });
  const svg = parsed(svgOf('Hem', hem, ''));
  const [left = 0, top = 0, width = 0, height = 0] =
    svg.getAttribute('viewBox')?.split(' ').map(Number) ?? [];
  const texts = [...svg.querySelectorAll('text')];
  expect(texts.map(({ textContent }) => textContent)).toEqual([labels.depth, labels.turn]);
  for (const text of texts) {
    const [x, y] = ['x', 'y'].map((key) => Number(text.getAttribute(key)));
    // Letters of a sans serif are 0.6 of its size at the most, on average: from memory.
    expect(x! + (text.textContent?.length ?? 0) * 3 * 0.6).toBeLessThanOrEqual(left + width);
    expect(y! - 3).toBeGreaterThanOrEqual(top);
    expect(y!).toBeLessThanOrEqual(top + height);
  }
});

test('whatever a name holds, the file is read as it was meant', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (name) => {
      const label = `<script>${name}</script>`;
      const svg = parsed(
        svgOf(name, [circle({ x: 1, y: 2 }, 1), { label, at: { x: 0, y: 0 } }], name),
      );
      expect(svg.tagName).toBe('svg');
      expect(svg.querySelector('script')).toBeNull();
      expect(svg.querySelectorAll('text')).toHaveLength(1);
    }),
  );
});
