import { expect, test } from 'vitest';
import { bodyMeasureWords as words } from '#words/body/body-measure-words.ts';
import { bentThrough, pointsOf } from '../../src/drawing/bent-line.ts';
import { bodyFigure } from '../../src/drawing/body-figure.ts';
import { boundsOf } from '../../src/drawing/figure.ts';
import { MEASURE_LINES } from '../../src/drawing/measure-lines.ts';
import { BODY_MEASURES, type BodyMeasureId } from '../../src/sewing/sources/body-measures.ts';

const EVERY = Object.keys(BODY_MEASURES) as BodyMeasureId[];

test.each(EVERY)('%s has its words, and the tape lies where the body is drawn', (id) => {
  const { name, where, also } = words.measures[id];
  for (const text of [name, where, also]) expect(text).toMatch(/\S/);
  const { body, level, tape } = bodyFigure(id);
  expect(tape.length).toBeGreaterThan(0);
  const [drawn, taped] = [boundsOf(body), boundsOf([...tape, ...level])];
  for (const at of [...Object.values(drawn), ...Object.values(taped)]) {
    expect(Number.isFinite(at)).toBe(true);
  }
  const near = 8; // what hangs straight to the floor hangs in front of the body
  expect(taped.x).toBeGreaterThan(drawn.x - near);
  expect(taped.x + taped.width).toBeLessThan(drawn.x + drawn.width + near);
  expect(taped.y).toBeGreaterThanOrEqual(drawn.y - 1);
  expect(taped.y + taped.height).toBeLessThanOrEqual(drawn.y + drawn.height + 2);
});

test('a girth goes round: half of it in front, half behind', () => {
  const rings = EVERY.filter((id) => MEASURE_LINES[id].ring);
  expect(rings.length).toBeGreaterThan(15);
  for (const id of rings) {
    expect(BODY_MEASURES[id].group).toBe('girths');
    expect(bodyFigure(id).tape.map((shape) => 'line' in shape && shape.line)).toEqual([
      'move',
      'behind',
    ]);
  }
});

test('names are each one’s own', () => {
  const names = EVERY.map((id) => words.measures[id].name);
  expect(new Set(names).size).toBe(names.length);
});

test('a bent line goes through its points', () => {
  const points = pointsOf('0 0, 3 1, 4 5.5');
  expect(points).toEqual([
    { x: 0, y: 0 },
    { x: 3, y: 1 },
    { x: 4, y: 5.5 },
  ]);
  for (const point of points) expect(bentThrough(points)).toContainEqual(point);
});
