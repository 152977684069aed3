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

const loadFollow = () => import('./follow-place.tsx').then((loaded) => loaded.GarmentFollowPlace);

/** The garments on this phone, or the marks of one of them as they are followed. */
export function GarmentsPlace(props: Props) {
  const { store, address, bench } = props;
  if (address.route.mode !== 'follow') return <GarmentsListPlace {...props} />;
  const onLeave = () => address.go({ screen: 'garments', mode: '', draft: {} });
  const give = { store, address, bench, onLeave };
  return <Fetched key={address.route.draft.g} load={loadFollow} onLeave={onLeave} give={give} />;
}
