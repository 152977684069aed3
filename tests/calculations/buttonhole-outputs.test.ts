import { expect, test } from 'vitest';
import { buttonholeOutputs } from '../../src/calculations/buttonhole/outputs.ts';
import { inches } from '../../src/lengths/length.ts';
import { lookUpIn } from './given.ts';

const buttonhole = lookUpIn(buttonholeOutputs);
const button = { diameter: '1 in', thickness: '1/4 in', holeRule: 'diameter-thickness' };

// sewing.about.com, aa060399 (a teaching page): a 1 in button, 1/4 in thick, takes 1 1/4 in,
// 1/8 in toward the edge of the centre line and 1 1/8 in the other side of it.
test('gives the hole of a 1 in button and where it lies', () => {
  const across = buttonhole({ ...button, holeWay: 'horizontal' });
  expect(across.inches('length', 'past-centre', 'inside-centre')).toEqual([1.25, 1 / 8, 1.125]);
  expect(across.of('above-button')).toEqual({ state: 'absent', by: 'holeWay' });
  const along = buttonhole({ ...button, holeWay: 'vertical' });
  expect(along.inches('length', 'above-button', 'below-button')).toEqual([1.25, 1 / 8, 1.125]);
  expect(along.of('past-centre')).toEqual({ state: 'absent', by: 'holeWay' });
});

// By the rules on the page, of a 1 in button: 1/2 + 1/4, 3/4, and the whole of it.
test('gives the cloth past the centre line by the least rule and by every rule', () => {
  expect(buttonhole(button).inches('overlap-least', 'overlap-most')).toEqual([3 / 4, 1]);
});

// By hand: marked 3/16 in past the line, a hole of 1 1/4 in ends 1 1/16 in the other way; marked
// at 1 1/8 in there too, it is cut 1 5/16 in long.
test('a start marked elsewhere moves the end, and both make the length that is cut', () => {
  const draft = { ...button, holeWay: 'horizontal' };
  const start = { 'past-centre': inches(3 / 16) };
  const one = buttonhole(draft, { steps: start });
  expect(one.inches('inside-centre', 'length')).toEqual([1.0625, 1.25]);
  const both = buttonhole(draft, { steps: { ...start, 'inside-centre': inches(1.125) } });
  expect(both.inches('length')).toEqual([1.3125]);
  // Marks of a hole that lay along the edge are of an earlier plan.
  const other = buttonhole(draft, { steps: { 'above-button': inches(1 / 2) } });
  expect(other.inches('inside-centre', 'length')).toEqual([1.125, 1.25]);
});
