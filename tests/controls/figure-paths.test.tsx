import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { drawnAll } from '../../src/controls/figure-view.tsx';
import type { Figure, FigureShape } from '../../src/drawing/figure.ts';

afterEach(cleanup);

const line = (at: number, more: object = {}): FigureShape => ({
  ...{
    line: 'cut',
    points: [
      { x: at, y: 0 },
      { x: at, y: 5 },
    ],
  },
  ...more,
});

/** Each path: its look, and where it begins. */
function paths(figure: Figure): [string | null, string[]][] {
  const { container } = render(
    <svg role="img" aria-label="drawn">
      {drawnAll(figure, (point) => point)}
    </svg>,
  );
  return [...container.querySelectorAll('path')].map((path) => [
    path.getAttribute('class'),
    path.getAttribute('d')?.match(/M\d+/g) ?? [],
  ]);
}

test('lines of one look that come one after another are one path, in their order', () => {
  const figure = [line(1), line(2), line(3, { line: 'cloth' }), line(4)];
  expect(paths(figure)).toEqual([
    ['line-cut', ['M1', 'M2']],
    ['line-cloth', ['M3']],
    ['line-cut', ['M4']],
  ]);
});

test('marks that are filled stay by themselves: each covers what is under it', () => {
  expect(paths([line(1, { made: false }), line(2, { made: false })])).toHaveLength(2);
});
