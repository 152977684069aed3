import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import { garmentWords } from '#words/garment/garment-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Store } from '../../storage/store.ts';
import type { Address } from '../start/use-address.ts';
import { rememberOpen } from './deeds.ts';
import { useHand } from './hand.ts';
import { HandPlaces } from './hand-places.tsx';
import { useNotKept } from './not-kept.ts';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  /** The garment. */
  id: string;
  /** What the app says by itself. */
  news?: ComponentChildren;
  /** What is shown until it is read. */
  meanwhile?: ComponentChildren;
  onLeave: () => void;
}

/** A garment in hand: its home, a work of it, its measures, or a decision, as the address says. */
export function OpenPlace(props: Props) {
  const { store, id, bench } = props;
  const hand = useHand(store, id);
  const why = useNotKept(hand.failed ?? hand.trouble);
  const said = why === '' ? undefined : why;
  const here = hand.state !== undefined;
  useEffect(() => {
    if (here) void rememberOpen(store, id);
  }, [store, id, here]);
  if (hand.state) return <HandPlaces {...props} hand={hand} state={hand.state} said={said} />;
  if (said === undefined && props.meanwhile) return <>{props.meanwhile}</>;
  return (
    <div class="garments" data-hand={bench.hand}>
      <main>
        <h1>{garmentWords.title}</h1>
        <p role={said === undefined ? 'status' : 'alert'}>{said ?? words.reading}</p>
      </main>
      <nav class="actions" aria-label={garmentWords.title}>
        <button type="button" onClick={props.onLeave}>
          {garmentWords.back}
        </button>
      </nav>
    </div>
  );
}
