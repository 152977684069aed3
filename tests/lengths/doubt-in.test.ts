import { expect, test } from 'vitest';
import { doubtIn } from '../../src/lengths/doubt-in.ts';
import { mm } from '../../src/lengths/length.ts';

test.each([
  ['46.32 ± 0.02 cm', mm(0.2)],
  ['463.2 ±0.2 mm', mm(0.2)],
  ['46,32 ± 0,02 cm', mm(0.2)],
  ['18.2 ± 0.5 in', mm(12.7)],
  ['46.32 cm', undefined],
  ['46.32 ± cm', undefined],
  ['46.32 ± 0 cm', undefined],
  ['', undefined],
])('how sure “%s” is', (text, doubt) => {
  const mark = text.includes(',') ? ',' : '.';
  expect(doubtIn(text, 'cm', mark)).toBe(doubt);
});
