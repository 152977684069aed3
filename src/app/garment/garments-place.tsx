import type { Bench } from '../../calculation/bench.ts';
import { Fetched } from '../../screens/garments/fetched.tsx';
import type { Store } from '../../storage/store.ts';
import type { Address } from '../start/use-address.ts';
import { GarmentsListPlace } from './garments-list-place.tsx';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  onHome: () => void;
}

const loadOpen = () => import('./open-place.tsx').then((loaded) => loaded.OpenPlace);

const loadSheet = () => import('./sheet-place.tsx').then((loaded) => loaded.SheetPlace);

/** The garments on this phone, or one of them. */
export function GarmentsPlace(props: Props) {
  const { store, address, bench } = props;
  const { mode, draft } = address.route;
  if (mode === 'sheet') {
    const onOpen = () => address.go({ screen: 'garments', mode: 'open', draft: { ...draft } });
    const sheet = { store, bench, id: draft.g ?? '', onLeave: onOpen };
    return <Fetched key={draft.g} load={loadSheet} onLeave={onOpen} give={sheet} />;
  }
  if (mode !== 'open' && mode !== 'follow') return <GarmentsListPlace {...props} />;
  const onLeave = () => address.go({ screen: 'garments', mode: '', draft: {} });
  const give = { store, address, bench, id: draft.g ?? '', onLeave };
  return <Fetched key={draft.g} load={loadOpen} onLeave={onLeave} give={give} />;
}
