import { useEffect } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { State } from '../../garment/actions/state.ts';
import type { Next } from '../../garment/next/next.ts';
import { stepsMade } from '../../garment/next/work-lines.ts';
import { stepSaid } from '../../screens/garment/home/key.tsx';
import type { LastHome } from '../../screens/garment/home/last-home.tsx';
import type { Store } from '../../storage/store.ts';
import type { Hand } from './hand.ts';
import { benchSaid, withLastHome } from './last-homes.ts';
import { LAST_HOME_KEY } from './open-keys.ts';

/** Keeps what home says once all is on the disk, so that the next start can show it at once. */
export function useLastHome(
  store: Store,
  hand: Hand,
  state: State,
  next: Next,
  bench: Bench,
): void {
  const { answer, record } = state;
  const { made, of } = stepsMade(answer);
  const last: LastHome | undefined =
    next.kind === 'step'
      ? {
          ...stepSaid(answer, next, bench),
          ...{
            garment: record.id,
            name: record.name,
            made: words.made(made, of),
            hand: bench.hand,
            bench: benchSaid(bench),
            changed: record.changed,
            edits: record.edits,
          },
        }
      : undefined;
  const text = JSON.stringify(last);
  useEffect(() => {
    // Without it the next start shows the number a little later.
    if (hand.waiting > 0) return;
    const keep = (kept: unknown) => withLastHome(kept, record.id, last);
    store.change(LAST_HOME_KEY, keep).catch(() => undefined);
  }, [store, text, hand.waiting === 0]);
}
