import type { FunctionComponent } from 'preact';

import { useLoaded } from '../../controls/use-loaded.ts';
import { Waiting } from './waiting.tsx';

interface Props<Part> {
  /** The same function each time. */
  load: () => Promise<FunctionComponent<Part>>;
  onHome: () => void;
  /** What the part is given once it is there. */
  give: Part;
}

/** A part of the app that is fetched when first wanted. */
export function Later<Part extends object>({ load, onHome, give }: Props<Part>) {
  const loaded = useLoaded(load);
  if (loaded.state !== 'here') return <Waiting loaded={loaded} onHome={onHome} />;
  return <loaded.value {...give} />;
}
