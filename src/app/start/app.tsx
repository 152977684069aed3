import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';

import type { Bench } from '../../calculation/bench.ts';
import { type Store, StoreError, type StoreFault } from '../../storage/store.ts';
import type { Offline } from '../offline/watch.ts';
import { CalculationPlace } from './calculation-place.tsx';
import { type Last, saveLast } from './last.ts';
import { Later } from './later.tsx';
import { loaderOf } from './registry.ts';
import { showTheme } from './theme.ts';
import { useAddress } from './use-address.ts';

interface Props {
  store: Store;
  bench: Bench;
  last: Last;
  storeFault: StoreFault | undefined;
}

const loadPlaces = () => import('./places.tsx').then((part) => part.Places);
export const loadHome = () => import('../places/home-place.tsx').then((part) => part.homePlace);

/** The whole app: the screen the address names, and what all screens share. */
export function App({ store, ...first }: Props) {
  const [bench, setBench] = useState(first.bench);
  // Read where a screen opens, so a change of it shows nothing anew.
  const { current: last } = useRef({ ...first.last });
  const [storeFault, setStoreFault] = useState(first.storeFault);
  const [offline, setOffline] = useState<Offline>({});
  const keep = (work: Promise<void>) =>
    work.then(
      () => setStoreFault(undefined),
      (error: unknown) => setStoreFault(error instanceof StoreError ? error.fault : 'refused'),
    );
  const address = useAddress(({ screen, draft }) => {
    // With the unit its bare numbers are in: the bench may be set to another by then.
    const query = new URLSearchParams({ u: bench.unit, ...draft }).toString();
    last[screen] = query;
    void keep(saveLast(store, screen, query));
  });
  // Before it is painted: no page is seen by day in a workshop at night.
  useLayoutEffect(() => showTheme(bench.theme), [bench.theme]);
  const hear = (news: Offline) => setOffline((old) => ({ ...old, ...news }));
  useEffect(() => {
    // Fetched after the first screen: nothing of it is needed for an answer.
    import('../offline/watch.ts').then(
      (part) => part.watch(store, address.flush, hear),
      () => hear({ block: 'incomplete' }),
    );
  }, []);

  const { route } = address;
  const open = (screen: string) => address.go({ screen, mode: '', draft: {} });
  const home = () => open('');
  const give = { store, address, bench, last, setBench, keep, storeFault, onHome: home };
  if (/^(settings|garments|tape|find)$/.test(route.screen)) {
    return <Later load={loadPlaces} onHome={home} give={give} />;
  }
  const atHome = (
    <Later
      load={loadHome}
      onHome={home}
      give={{
        ...give,
        screen: route.screen,
        offline,
        onOpen: open,
        hear,
      }}
    />
  );
  if (route.screen === '') return atHome;
  return (
    <CalculationPlace
      store={store}
      key={route.screen}
      load={loaderOf(route.screen)}
      address={address}
      last={last[route.screen]}
      bench={bench}
      onHome={home}
      nowhere={atHome}
    />
  );
}
