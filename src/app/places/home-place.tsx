import type { Bench } from '../../calculation/bench.ts';
import { useLoaded } from '../../controls/use-loaded.ts';
import { LastHomeView } from '../../screens/garment/home/last-home.tsx';
import { Home } from '../../screens/home.tsx';
import type { Store, StoreFault } from '../../storage/store.ts';
import { handOver } from '../garment/hand-over.ts';
import { lastHomeOf, lookUpOpen, useOpenGarment } from '../garment/open-garment.ts';
import type { Offline } from '../offline/watch.ts';
import type { Address } from '../start/use-address.ts';
import { Waiting } from '../start/waiting.tsx';
import { Notice, PhoneNews, RestoreKey } from './phone-news.tsx';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  /** What the address asks for: nothing, all there is, or what isn’t there. */
  screen: string;
  offline: Offline;
  storeFault: StoreFault | undefined;
  onOpen: (screen: string) => void;
  /** Takes what has changed of how the app stands. */
  hear: (news: Offline) => void;
}

/** Where all calculations are, also while a garment is open. */
const ALL = 'all';

const loadOpen = () => import('../garment/open-place.tsx').then((part) => part.OpenPlace);

/** Home, once it is known which garment is open. */
export const homePlace = lookUpOpen().then(() => HomePlace);

/** Home: the garment that is open, else the calculations, with what there is to say of this phone. */
function HomePlace({ store, address, bench, screen, onOpen, ...news }: Props) {
  const open = useOpenGarment(store);
  if (open !== undefined && screen === '') {
    return <OpenHome {...{ store, address, bench, onOpen, ...news }} id={open} />;
  }
  const receive = (file: File) => {
    handOver(file);
    address.go({ screen: 'garments', mode: 'receive', draft: {} });
  };
  const unknown = screen === '' || screen === ALL ? undefined : screen;
  return (
    <Home
      hand={bench.hand}
      unknown={unknown}
      onOpen={onOpen}
      first={open === undefined && <RestoreKey onFile={receive} />}
    >
      <PhoneNews offline={news.offline} fault={news.storeFault} onDismiss={() => read(news.hear)} />
    </Home>
  );
}

type OpenProps = Omit<Props, 'screen' | 'storeFault'> & { id: string };

/** The garment that is open: until it is worked out, what its home last said. */
function OpenHome({ store, address, bench, id, offline, onOpen, hear }: OpenProps) {
  const loaded = useLoaded(loadOpen);
  const last = lastHomeOf(id, bench);
  const meanwhile = last && <LastHomeView last={last} />;
  const onLeave = () => onOpen(ALL);
  if (loaded.state !== 'here') {
    const waits = loaded.state === 'loading' && meanwhile;
    return waits || <Waiting loaded={loaded} onHome={onLeave} />;
  }
  const news = <Notice offline={offline} onDismiss={() => read(hear)} />;
  return <loaded.value {...{ store, address, bench, id, meanwhile, news, onLeave }} />;
}

/** What the app said by itself has been read, or is wanted later. */
function read(hear: Props['hear']): void {
  hear({ firstReady: false, update: undefined });
}
