import { useEffect, useState } from 'preact/hooks';
import { garmentWords as words } from '#words/garment-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Logged, loadGarment } from '../../storage/garments.ts';
import type { Store } from '../../storage/store.ts';
import type { Address } from '../start/use-address.ts';
import { notKept } from './deeds.ts';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  /** The garment. */
  id: string;
  /** The work that is open; undefined at the garment's home. */
  work: string | undefined;
  onLeave: () => void;
}

/** One garment, open. */
export function OpenPlace({ store, bench, id, onLeave }: Props) {
  const [logged, setLogged] = useState<Logged>();
  const [said, setSaid] = useState<string>();
  useEffect(() => {
    loadGarment(store, id).then(setLogged, (error) => notKept(error).then(setSaid));
  }, [store, id]);
  return (
    <div class="garments" data-hand={bench.hand}>
      <main>
        <h1>{logged?.record.name ?? words.title}</h1>
        {said !== undefined && <p role="alert">{said}</p>}
      </main>
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={onLeave}>
          {words.back}
        </button>
      </nav>
    </div>
  );
}
