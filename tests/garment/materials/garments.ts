import { type Action, act } from '../../../src/garment/actions/act.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { withKeys } from '../../../src/garment/actions/with-keys.ts';
import { type MaterialNow, materialsOf } from '../../../src/garment/materials/materials.ts';
import type { Fields, Work } from '../../../src/garment/record/record.ts';
import { garmentOf, typed } from '../trial/garments.ts';
import { KNOWN } from '../trial/known.ts';

/** A work with what is typed in it, `count=7&top=1.2`, and the rest as its calculation begins. */
export function work(calculation: string, query = '', more?: Partial<Work>): Work {
  const pairs = query.split('&').filter(Boolean);
  const fields: Fields = Object.fromEntries(
    pairs.map((pair) => {
      const [key = '', value = ''] = pair.split('=');
      return [key, typed(value)];
    }),
  );
  return { name: calculation, calculation, rank: 0, older: 2, ...more, fields };
}

/** Works of a garment, in their order, with what is said of its materials. */
export function garment(
  works: Readonly<Record<string, Work>>,
  materials?: Readonly<Record<string, unknown>>,
): State {
  const ranked = Object.entries(works).map(([id, one], rank) => [id, { ...one, rank }]);
  const record = garmentOf({ works: Object.fromEntries(ranked) });
  return begin(withKeys({ ...record, ...(materials && { materials }) }, KNOWN), KNOWN);
}

export const doing = (state: State, ...actions: readonly Action[]): State =>
  actions.reduce((so, action) => act(so, action).state, state);

export const materials = ({ record, answer }: State) => materialsOf(record, answer);

export function one(state: State, id: string): MaterialNow {
  const { all } = materials(state);
  const found = all.find((each) => each.id === id);
  if (!found) throw new Error(`no ${id} among ${all.map((each) => each.id)}`);
  return found;
}
