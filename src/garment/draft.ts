import type { Draft } from '../calculation/calculation.ts';
import { madeKey, planKey, readMade, writeMade } from '../calculation/made.ts';
import type { Kept } from './garment.ts';

/** Beside what is measured now, a draft says what was when it was opened from a garment. */
export function wasKey(run: number): string {
  return madeKey(run).replace('made', 'was');
}

/**
 * What was typed, with what is measured of its marks, as its calculation takes it.
 * @param plans of its runs, which the measures belong to
 */
export function draftOf(kept: Kept, plans: readonly string[] = []): Draft {
  const measured = kept.runs.flatMap((run, i) => {
    const pairs = Object.entries(run.made).filter(([, typed]) => typed !== '');
    const text = pairs.reduce((so, [label, typed]) => writeMade(readMade(so), label, typed), '');
    return [
      [madeKey(i), text],
      [wasKey(i), text],
      ...(text !== '' && plans[i] !== undefined ? [[planKey(i), plans[i]]] : []),
    ];
  });
  return { ...kept.draft, ...Object.fromEntries(measured) };
}
