import { Order } from '../../screens/garment/order/order.tsx';
import type { HandProps } from './hand-props.ts';
import { keepInHand } from './in-hand.ts';

type Props = HandProps & {
  to: (draft: Readonly<Record<string, string>>) => void;
  onDone: () => void;
};

/** All steps of the garment in hand, and the order of its works. */
export function OrderPlace(props: Props) {
  const { state, bench, hand, said, onAgain, store, id, to, onDone } = props;
  const takeInHand = (home: string) => {
    keepInHand(store, id, home);
    onDone();
  };
  return (
    <Order
      {...{ state, bench, said, onAgain, onDone }}
      onAct={hand.act}
      onInHand={takeInHand}
      onNote={(home) => to({ n: home })}
    />
  );
}
