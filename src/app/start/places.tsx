import type { Bench } from '../../calculation/bench.ts';
import type { Store, StoreFault } from '../../storage/store.ts';
import type { Last } from './last.ts';
import { Later } from './later.tsx';
import { saveBench } from './save-bench.ts';
import type { Address } from './use-address.ts';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  last: Last;
  setBench: (bench: Bench) => void;
  /** Says it when something could not be kept. */
  keep: (work: Promise<void>) => Promise<void>;
  /** Why the last of it could not be kept. */
  storeFault: StoreFault | undefined;
  onHome: () => void;
}

const loadSettings = () =>
  import('../places/settings-place.tsx').then((part) => part.SettingsPlace);
const loadGarments = () =>
  import('../garment/garments-place.tsx').then((part) => part.GarmentsPlace);
const loadFind = () => import('../../screens/find/find.tsx').then((part) => part.FindScreen);
const loadTape = () => import('../tape/tape-alone.tsx').then((part) => part.TapeAlone);

/** The screens that are no calculation. */
export function Places(props: Props) {
  const { onHome, bench, storeFault } = props;
  const onBench = (next: Bench) => {
    props.setBench(next);
    void props.keep(saveBench(props.store, bench, next));
  };
  switch (props.address.route.screen) {
    case 'settings':
      return (
        <Later
          load={loadSettings}
          onHome={onHome}
          give={{ bench, onBench, storeFault, onLeave: onHome }}
        />
      );
    case 'garments':
      return <Later load={loadGarments} onHome={onHome} give={props} />;
    case 'find': {
      const onOpen = (screen: string) => props.address.go({ screen, mode: '', draft: {} });
      return (
        <Later
          load={loadFind}
          onHome={onHome}
          give={{ hand: bench.hand, onOpen, onLeave: onHome }}
        />
      );
    }
    default:
      return <Later load={loadTape} onHome={onHome} give={props} />;
  }
}
