import type { Bench } from '../../src/calculation/bench.ts';

/** A bench as new, but for what a test sets. */
export function benchOf(set: Partial<Bench> = {}): Bench {
  return {
    hand: 'right',
    unit: 'cm',
    metric: '1mm',
    inch: '1/16in',
    theme: 'paper',
    voice: 'off',
    decimalMark: '.',
    keys: 'pad',
    ...set,
  };
}
