/** What is written on the drawing beside an answer stands clear of its lines, where a reader looks for it. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import type { Figure } from '../../src/drawing/figure.ts';
import { layFigure } from '../../src/drawing/figure-layout.ts';
import { benchOf } from '../controls/helpers.ts';
import { crosses } from '../drawing/crosses.ts';
import { overlap } from '../drawing/dimension-faults.ts';
import { draftsNear } from './any-drafts.ts';

/** Labels that a line runs through, or that lie on each other. */
function faultsOf(figure: Figure): string[] {
  const { place, labels } = layFigure(figure);
  const lines = figure.flatMap((shape) =>
    'line' in shape ? [{ style: shape.line, points: shape.points.map(place) }] : [],
  );
  const over = labels.flatMap((one, i) =>
    labels.slice(i + 1).flatMap((box) => (overlap(one, box) ? [`${one.text} on ${box.text}`] : [])),
  );
  const through = labels.flatMap((box) =>
    lines.flatMap(({ style, points }) => (crosses(points, box) ? [`${box.text} on ${style}`] : [])),
  );
  return [...over, ...through];
}

/** Their labels are the numbers of marks, or names, on what is drawn: they stand on it. */
const ON_MARKS = ['edging', 'lacing', 'crossing', 'pleats'];
const others = Object.keys(CALCULATIONS).filter((id) => !ON_MARKS.includes(id));

test.each(others)('%s: no line of its drawing runs through a label', async (id) => {
  const page = await CALCULATIONS[id]?.();
  if (!page) throw new Error(`no page of ${id}`);
  const bench = benchOf();
  fc.assert(
    fc.property(draftsNear(page), (set) => {
      const work = page.work({ ...page.start(bench), ...set }, bench);
      if (!work.ok) return;
      const figures = work.answer.figures ?? [];
      expect(figures.flatMap(({ draw }) => faultsOf(draw()))).toEqual([]);
    }),
    { numRuns: 200, seed: 1512 },
  );
});
