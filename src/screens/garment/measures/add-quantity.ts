import type { State } from '../../../garment/actions/state.ts';
import type { Quantity } from '../../../garment/record/record.ts';
import type { MeasureKind } from './measure-name.tsx';
import type { MeasuresProps } from './measures-props.ts';

interface New {
  name: string;
  kind: MeasureKind;
  /** How many were added just before it, which `state` doesn't hold yet. */
  after?: number;
  more?: Pick<Quantity, 'body' | 'measure'>;
}

/** Adds a number after all others, still to be given; its id. */
export function addQuantity(
  { state, bench, onAct }: Pick<MeasuresProps, 'state' | 'bench' | 'onAct'>,
  { name, kind, after = 0, more }: New,
): string {
  const ranks = [...state.answer.sound.quantities.values()].map(({ rank }) => rank);
  const rank = ranks.reduce((most, one) => Math.max(most, one), 0) + 1 + after;
  const it = { name, kind, rank, parts: [{ text: '', unit: bench.unit }], ...more };
  const id = crypto.randomUUID();
  onAct({ do: 'add', to: 'quantities', id, it, now: Date.now() });
  return id;
}

/** The measures of the body that are among the numbers. */
export function measuresIn({ answer }: State): ReadonlySet<string> {
  const all = [...answer.sound.quantities.values()];
  return new Set(all.flatMap(({ measure }) => measure ?? []));
}
