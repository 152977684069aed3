import type { FunctionComponent } from 'preact';
import type { Bench } from '../../../calculation/bench.ts';
import type { State } from '../../../garment/actions/state.ts';
import type { Parts } from '../../../garment/record/record.ts';

interface StaleProps {
  state: State;
  bench: Bench;
  /** The material whose lay it is. */
  lay: string;
  /** The field that takes its length, where it isn't said in the field itself. */
  field?: string;
}

/** What says that a lay doesn't hold any more; nothing while it does. Fetched where a field takes one's length. */
export type StaleLay = FunctionComponent<StaleProps>;

/** The materials whose lays' lengths are taken, also by numbers of the garment that take them. */
export function laysTaken({ answer: { sound } }: State, taken: Parts): string[] {
  const met = new Set<string>();
  const lays = new Set<string>();
  const look = (parts: Parts) => {
    for (const part of parts) {
      if (!('link' in part && 'quantity' in part.link) || met.has(part.link.quantity)) continue;
      met.add(part.link.quantity);
      const quantity = sound.quantities.get(part.link.quantity);
      if (quantity?.lay !== undefined) lays.add(quantity.lay);
      look(quantity?.parts ?? []);
    }
  };
  look(taken);
  return [...lays];
}
