import { useRef, useState } from 'preact/hooks';
import { later } from '../../controls/parts.tsx';
import { steady } from '../../controls/steady.tsx';
import { useSame } from '../../controls/use-same.ts';
import type { FieldPlace } from '../../garment/actions/typing.ts';
import { isMade } from '../../garment/next/next.ts';
import { readHome } from '../../garment/record/home.ts';
import { WorkView } from '../../screens/garment/works/work-view.tsx';
import { Fetched } from '../../screens/garments/fetched.tsx';
import type { HandProps } from './hand-props.ts';
import { keepInHand } from './in-hand.ts';
import { useWorkParts } from './work-parts.tsx';

const Stale = later(() =>
  import('../../screens/garment/materials/stale-lay.tsx').then((part) => part.StaleLay),
);
const loadTape = () => import('./field-tape.tsx').then((part) => part.FieldTape);

type Props = HandProps & {
  work: string;
  to: (draft: Readonly<Record<string, string>>) => void;
  onDone: () => void;
};

/** A work of the garment in hand, open; or one of its fields being read off a tape. */
export function WorkPlace(props: Props) {
  const { state, work, bench, hand, store, id, said, onAgain, to, onDone } = props;
  const parts = useWorkParts(state, work);
  const since = useRef(state.log.at(-1)?.id ?? 0).current;
  const [read, setRead] = useState<FieldPlace>();
  const next = state.answer.steps.find(
    (step) => readHome(step.home).id === work && !isMade(step) && step.ready,
  );
  const follow = useSame(() => {
    if (next) keepInHand(store, id, next.home);
    onDone();
  });
  const leave = useSame(onDone);
  const decide = useSame((home: string) => to({ d: home }));
  if (read) {
    const back = () => setRead(undefined);
    const give = { state, bench, place: read, onAct: hand.act, onDone: back };
    return <Fetched load={loadTape} onLeave={back} give={give} />;
  }
  return (
    <View
      {...{ state, work, bench, since, Stale }}
      {...parts}
      refused={hand.refused}
      unkept={hand.trouble || hand.failed ? said : undefined}
      onAgain={onAgain}
      onAct={hand.act}
      onDecide={decide}
      onFollow={next && follow}
      onRead={setRead}
      onDone={leave}
    />
  );
}

/** That something came onto the disk changes nothing of an open work: it isn't drawn anew for that. */
const View = steady(WorkView);
