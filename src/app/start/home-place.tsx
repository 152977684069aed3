import type { Bench } from '../../calculation/bench.ts';
import { Home } from '../../screens/home.tsx';
import type { Store, StoreFault } from '../../storage/store.ts';
import { lookUpOpen, useOpenGarment } from '../garment/open-garment.ts';
import type { Offline } from '../offline/watch.ts';
import { Later } from './later.tsx';
import { Notice, PhoneNews } from './phone-news.tsx';
import type { Address } from './use-address.ts';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  /** The address that led nowhere, if one did. */
  unknown: string | undefined;
  offline: Offline;
  fault: StoreFault | undefined;
  onOpen: (screen: string) => void;
  onDismiss: () => void;
}

/** Where all calculations are, also while a garment is open. */
const ALL = 'all';

const loadOpen = () => import('../garment/open-place.tsx').then((part) => part.OpenPlace);

/** Home, once it is known which garment is open. */
export const homePlace = lookUpOpen().then(() => HomePlace);

/** Home: the garment that is open, else the calculations, with what there is to say of this phone. */
function HomePlace({ store, address, bench, unknown, onOpen, ...news }: Props) {
  const open = useOpenGarment(store);
  if (open !== undefined && unknown === undefined) {
    const give = { store, address, bench, id: open, onLeave: () => onOpen(ALL) };
    const { offline, onDismiss } = news;
    return (
      <Later
        load={loadOpen}
        onHome={() => onOpen(ALL)}
        give={{ ...give, news: <Notice offline={offline} onDismiss={onDismiss} /> }}
      />
    );
  }
  return (
    <Home hand={bench.hand} unknown={unknown === ALL ? undefined : unknown} onOpen={onOpen}>
      <PhoneNews {...news} />
    </Home>
  );
}
