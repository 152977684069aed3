import { useState } from 'preact/hooks';
import type { Bench } from '../../calculation/bench.ts';
import type { LastHome } from '../../screens/garment/home/last-home.tsx';
import { Fetched } from '../../screens/garments/fetched.tsx';
import type { Store } from '../../storage/store.ts';
import type { Address } from '../start/use-address.ts';
import { loadLastHome, loadOpen } from './ahead.ts';
import { GarmentsListPlace } from './garments-list-place.tsx';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  onHome: () => void;
}

const loadSheet = () => import('./sheet-place.tsx').then((loaded) => loaded.SheetPlace);
const loadShare = () => import('./share-place.tsx').then((loaded) => loaded.SharePlace);
const loadReceive = () => import('./receive-place.tsx').then((loaded) => loaded.ReceivePlace);

/** The garments on this phone, one of them, or one that is handed on. */
export function GarmentsPlace(props: Props) {
  const { store, address, bench } = props;
  const { mode, draft } = address.route;
  const [backup, setBackup] = useState<File>();
  const [opening, setOpening] = useState<LastHome>();
  const { g: id = '' } = draft;
  const toList = () => address.go({ screen: 'garments', mode: '', draft: {} });
  const toOpen = () => address.go({ screen: 'garments', mode: 'open', draft: { ...draft } });
  switch (mode) {
    case 'sheet': {
      const give = { store, bench, id, onLeave: toOpen };
      return <Fetched key={id} load={loadSheet} onLeave={toOpen} give={give} />;
    }
    case 'share': {
      const give = { store, bench, id, onLeave: toList };
      return <Fetched key={id} load={loadShare} onLeave={toList} give={give} />;
    }
    case 'receive': {
      const onBackup = (file: File) => {
        setBackup(file);
        toList();
      };
      const give = { store, address, bench, hash: location.hash, onLeave: toList, onBackup };
      return <Fetched load={loadReceive} onLeave={toList} give={give} />;
    }
    case 'open':
    case 'follow': {
      const meanwhile = opening?.garment === id && (
        <Fetched load={loadLastHome} give={{ last: opening }} />
      );
      const give = { store, address, bench, id, meanwhile, onLeave: toList };
      return <Fetched key={draft.g} load={loadOpen} onLeave={toList} {...{ give, meanwhile }} />;
    }
    default:
      return <GarmentsListPlace {...props} backup={backup} onOpening={setOpening} />;
  }
}
