import type { Bench } from '../controls/bench.ts';
import { Fetched } from '../screens/garments/fetched.tsx';
import type { Store } from '../storage/store.ts';
import { GarmentsListPlace } from './garments-list-place.tsx';
import type { Address } from './use-address.ts';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  onHome: () => void;
}

const loadFollow = () =>
  import('./garment-follow-place.tsx').then((loaded) => loaded.GarmentFollowPlace);

/** The garments on this phone, or the marks of one of them as they are followed. */
export function GarmentsPlace(props: Props) {
  const { store, address, bench } = props;
  if (address.route.mode !== 'follow') return <GarmentsListPlace {...props} />;
  const onLeave = () => address.go({ screen: 'garments', mode: '', draft: {} });
  const give = { store, address, bench, onLeave };
  return <Fetched key={address.route.draft.g} load={loadFollow} onLeave={onLeave} give={give} />;
}
