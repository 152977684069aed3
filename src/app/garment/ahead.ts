import { useEffect, useRef } from 'preact/hooks';
import type { Bench } from '../../calculation/bench.ts';
import { loadAhead } from '../../controls/use-loaded.ts';
import type { Listed } from '../../garment/record/listed.ts';
import type { LastHome } from '../../screens/garment/home/last-home.tsx';
import type { Store } from '../../storage/store.ts';
import { LAST_HOME_KEY } from './open-keys.ts';

export const loadOpen = () => import('./open-place.tsx').then((loaded) => loaded.OpenPlace);
export const loadLastHome = () =>
  import('../../screens/garment/home/last-home.tsx').then((loaded) => loaded.LastHomeView);

const loadHolder = () => import('./holder.ts');
const loadIdle = () => import('../offline/when-idle.ts');
const loadHomes = () => import('./last-homes.ts');

type LastHomeOf = (id: string) => LastHome | undefined;
const NONE: LastHomeOf = () => undefined;

/**
 * Once the list is shown: fetches what opening a garment needs, and when nothing else is to be
 * done works the first one out, which is the likeliest to be opened.
 * @returns of a garment on the list what its home last said, where it is as it was then
 */
export function useAhead(store: Store, garments: readonly Listed[], bench: Bench): LastHomeOf {
  const lastHomeOf = useRef(NONE);
  const first = garments[0]?.id;
  useEffect(() => {
    if (first === undefined) return;
    let gone = false;
    const homes = async () => {
      const [kept, { lastHomeIn, isOf }] = await Promise.all([
        store.load(LAST_HOME_KEY),
        loadHomes(),
        loadAhead(loadLastHome),
      ]);
      lastHomeOf.current = (id) => {
        const last = lastHomeIn(kept, id, bench);
        const listed = garments.find((one) => one.id === id);
        return last && listed && isOf(last, listed) ? last : undefined;
      };
    };
    const work = async () => {
      await homes();
      await loadAhead(loadOpen);
      const [{ holderOf }, { whenIdle }] = await Promise.all([loadHolder(), loadIdle()]);
      whenIdle(() => gone || holderOf(store, first));
    };
    // What can't be had now is asked for when it is wanted.
    work().catch(() => undefined);
    return () => {
      gone = true;
    };
  }, [store, garments, bench]);
  return (id) => lastHomeOf.current(id);
}
