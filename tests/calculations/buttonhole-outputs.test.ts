import { expect, test } from 'vitest';
import { buttonhole } from '../../src/calculations/buttonhole/buttonhole.ts';
import { buttonholeOutputs } from '../../src/calculations/buttonhole/outputs.ts';
import { inches } from '../../src/lengths/length.ts';
import { answerTo } from '../screens/helpers.tsx';
import { givenBy, lookUpIn } from './given.ts';

const look = lookUpIn(buttonholeOutputs);
const button = { diameter: '1 in', thickness: '1/4 in', holeRule: 'diameter-thickness' };

// sewing.about.com, aa060399 (a teaching page): a 1 in button, 1/4 in thick, takes 1 1/4 in,
// 1/8 in toward the edge of the centre line and 1 1/8 in the other side of it.
test('gives the hole of a 1 in button and where it lies', () => {
  const across = look({ ...button, holeWay: 'horizontal' });
  expect(across.inches('length', 'past-centre', 'inside-centre')).toEqual([1.25, 1 / 8, 1.125]);
  expect(across.of('above-button')).toEqual({ state: 'absent', by: 'holeWay' });
  const along = look({ ...button, holeWay: 'vertical' });
  expect(along.inches('length', 'above-button', 'below-button')).toEqual([1.25, 1 / 8, 1.125]);
  expect(along.of('past-centre')).toEqual({ state: 'absent', by: 'holeWay' });
});

// By the rules on the page, of a 1 in button: 1/2 + 1/4, 3/4, and the whole of it.
test('gives the cloth past the centre line by the least rule and by every rule', () => {
  expect(look(button).inches('overlap-least', 'overlap-most')).toEqual([3 / 4, 1]);
});

// By hand: marked 3/16 in past the line, a hole of 1 1/4 in ends 1 1/16 in the other way; marked
// at 1 1/8 in there too, it is cut 1 5/16 in long.
test('a start marked elsewhere moves the end, and both make the length that is cut', () => {
  const draft = { ...button, holeWay: 'horizontal' };
  const start = { 'past-centre': inches(3 / 16) };
  const one = look(draft, { steps: start });
  expect(one.inches('inside-centre', 'length')).toEqual([1.0625, 1.25]);
  const both = look(draft, { steps: { ...start, 'inside-centre': inches(1.125) } });
  expect(both.inches('length')).toEqual([1.3125]);
  // Marks of a hole that lay along the edge are of an earlier plan.
  const other = look(draft, { steps: { 'above-button': inches(1 / 2) } });
  expect(other.inches('inside-centre', 'length')).toEqual([1.125, 1.25]);
});

// The button of the page above, at 2, 5 and 8 in: along the edge each hole begins 1/8 in above its button.
test('a row follows its buttons, level with them or from above each', () => {
  const row = { ...button, follow: '2 in; 5 in; 8 in' };
  expect(givenBy(buttonholeOutputs, { ...row, holeWay: 'horizontal' })).toMatchObject({
    row: [50.8, 127, 203.2],
    count: 3,
  });
  expect(givenBy(buttonholeOutputs, { ...row, holeWay: 'vertical' }).row).toEqual([
    47.625, 123.825, 200.025,
  ]);
  expect(givenBy(buttonholeOutputs, { ...row, offset: '1 in' }).row).toEqual([76.2, 152.4, 228.6]);
  expect(givenBy(buttonholeOutputs, button).row).toBe('absent by follow');
  const close = { ...button, holeWay: 'vertical', follow: '2 in; 3 in' };
  expect(givenBy(buttonholeOutputs, close).row).toEqual(['follow']);
});

test('its page says it of each, and marks the row', () => {
  const { headline, sentence, runs } = answerTo(buttonhole, { ...button, follow: '5; 13; 21' });
  expect(headline.after).toBe('long, each of 3');
  expect(sentence).toMatch(/^Each lies level with its button, from the same zero/);
  expect(runs.map(({ name }) => name)).toEqual(['Where each buttonhole lies']);
  expect(answerTo(buttonhole, button).headline.after).toBe('long');
});
