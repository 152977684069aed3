import type { Bench } from '../controls/bench.ts';
import { useLoaded } from '../controls/use-loaded.ts';
import { CHOICES } from './settings.ts';
import { Waiting } from './waiting.tsx';

interface Props {
  bench: Bench;
  onBench: (bench: Bench) => void;
  onHome: () => void;
}

const load = async () => (await import('../screens/settings.tsx')).Settings;

/** The settings, fetched when first opened. */
export function SettingsPlace({ bench, onBench, onHome }: Props) {
  const loaded = useLoaded(load);
  if (loaded.state !== 'here') return <Waiting loaded={loaded} onHome={onHome} />;
  const Settings = loaded.value;
  return <Settings bench={bench} choices={CHOICES} onBench={onBench} onLeave={onHome} />;
}
