import { measuresWords as words } from '#words/garment/garment-measures-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { State } from '../../../garment/actions/state.ts';
import { type FieldPlace, pendingOf } from '../../../garment/actions/typing.ts';
import { isLengthIn, isSame, type OpenField, textAt } from './open-work.ts';

/** The one field of a quantity. */
export const VALUE = 'value';

/** Opens a quantity as it stands, or as it is being typed; undefined where it isn't there any more. */
export function openQuantity(
  state: State,
  id: string,
  bench: Bench,
): { fields: [OpenField<FieldPlace>] } | undefined {
  const quantity = state.answer.sound.quantities.get(id);
  if (!quantity) return undefined;
  const place = { quantity: id };
  const pending = pendingOf(state.record);
  const parts = pending && isSame(pending.place, place) ? pending.parts : quantity.parts;
  const { kind, name } = quantity;
  // The places of a run are typed as a list.
  const typed = kind === 'run' ? 'lengths' : kind;
  const field = { key: VALUE, kind: typed, label: words.number(name) } as const;
  return {
    fields: [{ field, place, ...textAt(parts, typed, bench, isLengthIn(state, '')), own: false }],
  };
}
