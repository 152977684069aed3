import { useEffect, useState } from 'preact/hooks';

import type { Bench } from '../controls/bench.ts';
import { useLoaded } from '../controls/use-loaded.ts';
import { type Store, StoreError, type StoreFault } from '../storage/store.ts';
import { CalculationPlace } from './calculation-place.tsx';
import { type Last, saveLast } from './last.ts';
import { Later } from './later.tsx';
import type { Offline } from './offline-watch.ts';
import { loaderOf } from './registry.ts';
import { saveBench } from './settings.ts';
import { showTheme } from './theme.ts';
import { useAddress } from './use-address.ts';
import { Waiting } from './waiting.tsx';

interface Props {
  store: Store;
  bench: Bench;
  last: Last;
  storeFault: StoreFault | undefined;
}

const loadSettings = () => import('./settings-place.tsx').then((part) => part.SettingsPlace);
const loadGarments = () => import('./garments-place.tsx').then((part) => part.GarmentsPlace);
export const loadHome = () => import('./home-place.tsx').then((part) => part.HomePlace);

/** The whole app: the screen the address names, and what all screens share. */
export function App({ store, ...first }: Props) {
  const [bench, setBench] = useState(first.bench);
  const [last, setLast] = useState(first.last);
  const [storeFault, setStoreFault] = useState(first.storeFault);
  const [offline, setOffline] = useState<Offline>({});
  const keep = (work: Promise<void>) =>
    work.then(
      () => setStoreFault(undefined),
      (error: unknown) => setStoreFault(error instanceof StoreError ? error.fault : 'refused'),
    );
  const address = useAddress(({ screen, draft }) => {
    setLast((old) => ({ ...old, [screen]: new URLSearchParams(draft).toString() }));
    void keep(saveLast(store, screen, draft));
  });
  useEffect(() => showTheme(bench.theme), [bench.theme]);
  const hear = (news: Offline) => setOffline((old) => ({ ...old, ...news }));
  useEffect(() => {
    // Fetched after the first screen: nothing of it is needed for an answer.
    import('./offline-watch.ts').then(
      ({ watch }) => watch(store, address.flush, hear),
      () => hear({ block: 'incomplete' }),
    );
  }, []);
  const Home = useLoaded(loadHome);

  const { route } = address;
  const open = (screen: string) => address.go({ screen, mode: '', draft: {} });
  const home = () => open('');
  if (route.screen === 'settings') {
    const onBench = (next: Bench) => {
      setBench(next);
      void keep(saveBench(store, next));
    };
    return <Later load={loadSettings} onHome={home} give={{ bench, onBench, onLeave: home }} />;
  }
  if (route.screen === 'garments') {
    return (
      <Later load={loadGarments} onHome={home} give={{ store, address, bench, onHome: home }} />
    );
  }
  const atHome =
    Home.state === 'here' ? (
      <Home.value
        hand={bench.hand}
        unknown={route.screen === '' ? undefined : route.screen}
        offline={offline}
        fault={storeFault}
        onOpen={open}
        onDismiss={() => hear({ firstReady: false, update: undefined })}
      />
    ) : (
      <Waiting loaded={Home} onHome={home} />
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
