import type { Bench } from '../controls/bench.ts';
import { Settings } from '../screens/settings/settings.tsx';
import { CHOICES } from './settings.ts';

interface Props {
  bench: Bench;
  onBench: (bench: Bench) => void;
  onLeave: () => void;
}

const loadLicences = () => import('virtual:licences').then(({ PARTS }) => PARTS);

/** The settings with what each may be. */
export function SettingsPlace(props: Props) {
  return <Settings {...props} choices={CHOICES} loadLicences={loadLicences} />;
}
