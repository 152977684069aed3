import { phoneWords } from '#words/phone/phone-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { Settings } from '../../screens/settings/settings.tsx';
import type { StoreFault } from '../../storage/store.ts';
import { CHOICES } from '../start/settings.ts';

interface Props {
  bench: Bench;
  onBench: (bench: Bench) => void;
  storeFault: StoreFault | undefined;
  onLeave: () => void;
}

const loadLicences = () => import('virtual:licences').then(({ PARTS }) => PARTS);

/** The settings with what each may be. */
export function SettingsPlace({ storeFault, ...props }: Props) {
  const said = storeFault && phoneWords.store[storeFault];
  return <Settings {...props} choices={CHOICES} said={said} loadLicences={loadLicences} />;
}
