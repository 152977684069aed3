import { madeKey, planKey, readMade, wasKey, writeMade } from '../calculation/made.ts';
import type { Held } from '../calculation/page.ts';
import type { Kept } from './garment.ts';

/**
 * What was typed, with what is measured of its marks, as its calculation takes it.
 * @param plans of its runs, which the measures belong to
 */
export function draftOf(kept: Kept, plans: readonly string[] = []): Held {
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
