import { Home } from '../../screens/home.tsx';
import type { StoreFault } from '../../storage/store.ts';
import type { Offline } from '../offline/watch.ts';
import { PhoneNews } from './phone-news.tsx';

interface Props {
  hand: 'right' | 'left';
  /** The address that led nowhere, if one did. */
  unknown: string | undefined;
  offline: Offline;
  fault: StoreFault | undefined;
  onOpen: (screen: string) => void;
  onDismiss: () => void;
}

/** The home screen with what there is to say of this phone. */
export function HomePlace({ hand, unknown, onOpen, ...news }: Props) {
  return (
    <Home hand={hand} unknown={unknown} onOpen={onOpen}>
      <PhoneNews {...news} />
    </Home>
  );
}
