import { isMade } from '../../garment/next/next.ts';
import { readHome } from '../../garment/record/home.ts';
import { WorkView } from '../../screens/garment/work-view.tsx';
import type { HandProps } from './hand-places.tsx';
import { keepInHand } from './in-hand.ts';
import { useWorkParts } from './work-parts.tsx';

type Props = HandProps & {
  work: string;
  to: (draft: Readonly<Record<string, string>>) => void;
  onDone: () => void;
};

/** A work of the garment in hand, open. */
export function WorkPlace(props: Props) {
  const { state, work, bench, hand, store, id, to, onDone } = props;
  const parts = useWorkParts(state, work);
  const next = state.answer.steps.find(
    (step) => readHome(step.home).id === work && !isMade(step) && step.ready,
  );
  const follow =
    next &&
    (() => {
      keepInHand(store, id, next.home);
      onDone();
    });
  return (
    <WorkView
      {...{ state, work, bench, onDone }}
      {...parts}
      refused={hand.refused}
      onAct={hand.act}
      onDecide={(home) => to({ d: home })}
      onFollow={follow}
    />
  );
}
