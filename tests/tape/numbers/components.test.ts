import fc from 'fast-check';
import { expect, test } from 'vitest';
import { components } from '../../../src/tape/numbers/components.ts';

function inkOf(drawing: readonly string[]) {
  return Uint8Array.from(drawing.join(''), (mark) => (mark === '#' ? 1 : 0));
}

test('patches that touch at a corner are one, with their edges and area', () => {
  const drawing = ['##...', '..#..', '....#', '.#..#'];
  const { labels, components: found } = components(inkOf(drawing), 5, 4);
  expect(found).toEqual([
    { id: 1, x0: 0, x1: 2, y0: 0, y1: 1, width: 3, height: 2, middleX: 1, middleY: 0.5, area: 3 },
    { id: 2, x0: 4, x1: 4, y0: 2, y1: 3, width: 1, height: 2, middleX: 4, middleY: 2.5, area: 2 },
    { id: 3, x0: 1, x1: 1, y0: 3, y1: 3, width: 1, height: 1, middleX: 1, middleY: 3, area: 1 },
  ]);
  expect([...labels]).toEqual([1, 1, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 2, 0, 3, 0, 0, 2]);
});

/** A second, slow way: every pixel takes the least label around it until nothing changes. */
function spread(ink: readonly boolean[], width: number): number[] {
  const labels = ink.map((on, at) => (on ? at + 1 : 0));
  for (let changed = true; changed; ) {
    changed = false;
    labels.forEach((label, at) => {
      labels.forEach((other, near) => {
        const across = Math.abs((at % width) - (near % width));
        const down = Math.abs(Math.floor(at / width) - Math.floor(near / width));
        if (!label || !other || across > 1 || down > 1 || other >= labels[at]!) return;
        labels[at] = other;
        changed = true;
      });
    });
  }
  return labels;
}

test('the same patches as by spreading labels', () => {
  const sizes = fc.integer({ min: 1, max: 8 });
  const picture = sizes.chain((width) =>
    fc.tuple(fc.constant(width), fc.array(fc.boolean(), { minLength: width, maxLength: 48 })),
  );
  fc.assert(
    fc.property(picture, ([width, pixels]) => {
      const ink = pixels.slice(0, pixels.length - (pixels.length % width));
      const { labels, components: found } = components(
        Uint8Array.from(ink, Number),
        width,
        ink.length / width,
      );
      const expected = spread(ink, width);
      const names = [...new Set(expected.filter(Boolean))];
      expect([...labels]).toEqual(expected.map((label) => names.indexOf(label) + 1));
      expect(found.map(({ area }) => area)).toEqual(
        names.map((name) => expected.filter((label) => label === name).length),
      );
    }),
  );
});
