import { expect, test } from 'vitest';
import { lacingOutputs } from '../../src/calculations/lacing/outputs.ts';
import { givenBy } from './given.ts';

// The design's own sum (derived here): over the edge 5 + √(8² + 5²) + 2 × 3 = 20.434 mm a pitch,
// 2.554 × the edge, which lies within 2½ to 3½ that are published. 50 holes are 49 stitches, 3 mm
// through the first hole, and two tails of 100 mm.
const ROW = { kind: 'edge', holes: '50', pitch: '8 mm', margin: '5 mm', thickness: '3 mm' };
const STITCH = 5 + Math.hypot(8, 5) + 6;

test('a row of 50 holes over the edge takes 120.4 cm of lace in one piece', () => {
  const { holes, ...given } = givenBy(lacingOutputs, ROW);
  expect(given.lace).toBeCloseTo(49 * STITCH + 3 + 200, 4);
  expect(given).toMatchObject({
    'lace-all': given.lace,
    pieces: 1,
    piece: given.lace,
    'lace-2': 'absent by holes2',
    'to-first': 'absent by start',
  });
  expect(holes).toHaveLength(50);
});

test('a second row has a lace of its own, and both are bought together', () => {
  const given = givenBy(lacingOutputs, { ...ROW, holes2: '49' });
  expect(given['lace-2']).toBeCloseTo(48 * STITCH + 3 + 200, 4);
  expect(given['lace-all']).toBeCloseTo(97 * STITCH + 6 + 400, 4);
  expect(givenBy(lacingOutputs, { ...ROW, holes2: '1' })).toMatchObject({
    'lace-2': ['holes2'],
    'lace-all': 'waits for lace-2',
  });
});

test('from the middle its two halves are all of it; with two needles there is no middle', () => {
  const given = givenBy(lacingOutputs, { ...ROW, start: 'middle' });
  expect(Number(given['to-first']) + Number(given['to-last'])).toBeCloseTo(Number(given.lace), 4);
  const saddle = givenBy(lacingOutputs, { ...ROW, kind: 'saddle', start: 'middle' });
  expect(saddle['to-first']).toBe('absent by kind');
});

test('steps of one’s own that can’t be read are a fault of theirs', () => {
  expect(givenBy(lacingOutputs, { ...ROW, kind: 'own', own: '0 1 front; nothing' }).lace).toContain(
    'own',
  );
});
