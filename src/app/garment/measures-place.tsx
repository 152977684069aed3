import { useState } from 'preact/hooks';
import { later } from '../../controls/parts.tsx';
import { Measures } from '../../screens/garment/measures/measures.tsx';
import { Fetched } from '../../screens/garments/fetched.tsx';
import type { HandProps } from './hand-props.ts';

const Laid = later(() =>
  import('../../screens/garment/materials/laid-length.tsx').then((part) => part.LaidLength),
);
const loadTape = () => import('./field-tape.tsx').then((part) => part.FieldTape);

type Props = HandProps & {
  /** The number that is wanted. */
  first: string | undefined;
  /** It is read off a tape, and then the hand goes on. */
  read: boolean;
  onDone: () => void;
};

/** The numbers of a garment itself; or one of them being read off a tape. */
export function MeasuresPlace(props: Props) {
  const { state, bench, hand, said, onAgain, first, read, onDone } = props;
  const [reads, setReads] = useState(read ? first : undefined);
  if (reads !== undefined && state.answer.sound.quantities.has(reads)) {
    const back = read ? onDone : () => setReads(undefined);
    const give = { state, bench, place: { quantity: reads }, onAct: hand.act, onDone: back };
    return <Fetched load={loadTape} onLeave={back} give={give} />;
  }
  return (
    <Measures
      {...{ state, bench, said, onAgain, first, onDone, Laid }}
      onAct={hand.act}
      onRead={setReads}
    />
  );
}
