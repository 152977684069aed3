import { describe, expect, test } from 'vitest';
import { gapsOf } from '../../../src/tape/numbers/spaced.ts';
import { patch } from '../made/made-rows.ts';

const [WIDTH, TALL, APART] = [1200, 40, 160];
/** Log-grey: how much darker ink is than its ground, in one column in the middle of each digit. */
const INK = 0.8;

/** Numbers of two digits that leave so much room between them, and what else stands there. */
function printOf(gaps: readonly number[], between: (at: number, x: number) => number = () => 0) {
  const values = new Float32Array(WIDTH * TALL);
  const before = new Uint8Array(WIDTH * TALL);
  const darken = (x: number, ink: number) => {
    for (let y = 0; y < TALL; y++) values[y * WIDTH + x] = -ink;
  };
  const numbers = gaps.map((gap, at) => {
    const left = 20 + at * APART;
    const parts = [patch(left, 24, TALL), patch(left + 24 + gap, 24, TALL)];
    for (const { x0 } of parts) for (let x = x0 + 10; x < x0 + 14; x++) darken(x, INK);
    for (let x = 0; x < gap; x++) darken(left + 24 + x, between(at, x));
    return { parts, gap: gap >= 12 };
  });
  return { numbers, print: { width: WIDTH, values, before, ground: values.map(() => 0) } };
}

const told = ({ numbers, print }: ReturnType<typeof printOf>) => gapsOf(numbers, TALL, print);

describe('numbers whose digits stand apart', () => {
  test('lack none where all of them do, and nothing stands between', () => {
    expect(told(printOf([20, 22, 19, 21, 20]))).toEqual([false, false, false, false, false]);
  });

  test('lack one where few of them do, or so wide a gap that a digit fits in', () => {
    expect(told(printOf([20, 6, 5, 6, 6, 6]))).toEqual([true, false, false, false, false, false]);
    expect(told(printOf([20, 20, 20]))).toEqual([true, true, true]);
    expect(told(printOf([32, 33, 31, 32, 32]))).toEqual([true, true, true, true, true]);
    const one = told(printOf([20, 20, 34, 20, 20]));
    expect(one).toEqual([false, false, true, false, false]);
  });

  test('lack one where a trace of it is left, or a line was wiped there', () => {
    const faint = printOf([20, 20, 20, 20, 20], (_, x) => (x === 10 ? 0.3 * INK : 0));
    expect(told(faint)).toEqual([true, true, true, true, true]);
    const lined = printOf([20, 20, 20, 20, 20]);
    for (const { parts } of lined.numbers) lined.print.before[5 * WIDTH + parts[0]!.x1 + 9] = 1;
    expect(told(lined)).toEqual([true, true, true, true, true]);
  });

  test('of one digit say nothing about the others', () => {
    const { numbers, print } = printOf([20, 20, 20, 20, 20]);
    const single = numbers.map(({ parts }) => ({ parts: parts.slice(0, 1), gap: false }));
    expect(gapsOf([...numbers, ...single], TALL, print)).toEqual(Array(10).fill(false));
  });
});
