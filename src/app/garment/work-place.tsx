import { WorkView } from '../../screens/garment/work-view.tsx';
import type { HandProps } from './hand-places.tsx';
import { useWorkParts } from './work-parts.tsx';

/** A work of the garment in hand, open. */
export function WorkPlace(props: HandProps & { work: string; onDone: () => void }) {
  const { state, work, bench, hand, onDone } = props;
  const parts = useWorkParts(state, work);
  return (
    <WorkView
      {...{ state, work, bench, onDone }}
      {...parts}
      refused={hand.refused}
      onAct={hand.act}
    />
  );
}
