import { useRef, useState } from 'preact/hooks';
import type { FieldPlace } from '../../garment/actions/typing.ts';
import { isMade } from '../../garment/next/next.ts';
import { readHome } from '../../garment/record/home.ts';
import { WorkView } from '../../screens/garment/work-view.tsx';
import { Fetched } from '../../screens/garments/fetched.tsx';
import type { HandProps } from './hand-props.ts';
import { keepInHand } from './in-hand.ts';
import { useWorkParts } from './work-parts.tsx';

const loadTape = () => import('./field-tape.tsx').then((part) => part.FieldTape);

type Props = HandProps & {
  work: string;
  to: (draft: Readonly<Record<string, string>>) => void;
  onDone: () => void;
};

/** A work of the garment in hand, open; or one of its fields being read off a tape. */
export function WorkPlace(props: Props) {
  const { state, work, bench, hand, store, id, to, onDone } = props;
  const parts = useWorkParts(state, work);
  const since = useRef(state.log.at(-1)?.id ?? 0).current;
  const [read, setRead] = useState<FieldPlace>();
  const back = () => setRead(undefined);
  if (read) {
    const give = { state, bench, place: read, onAct: hand.act, onDone: back };
    return <Fetched load={loadTape} onLeave={back} give={give} />;
  }
  const next = state.answer.steps.find(
    (step) => readHome(step.home).id === work && !isMade(step) && step.ready,
  );
  const follow = () => {
    if (next) keepInHand(store, id, next.home);
    onDone();
  };
  return (
    <WorkView
      {...{ state, work, bench, since, onDone }}
      {...parts}
      refused={hand.refused}
      onAct={hand.act}
      onDecide={(home) => to({ d: home })}
      onFollow={next && follow}
      onRead={setRead}
    />
  );
}
