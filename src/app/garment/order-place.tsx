import { Order } from '../../screens/garment/order/order.tsx';
import type { HandProps } from './hand-props.ts';
import { keepInHand } from './in-hand.ts';

type Props = HandProps & {
  to: (draft: Readonly<Record<string, string>>) => void;
  onDone: () => void;
};

/** All steps of the garment in hand, and the order of its works. */
export function OrderPlace({ state, bench, hand, said, store, id, to, onDone }: Props) {
  const takeInHand = (home: string) => {
    keepInHand(store, id, home);
    onDone();
  };
  return (
    <Order
      {...{ state, bench, said, onDone }}
      onAct={hand.act}
      onInHand={takeInHand}
      onNote={(home) => to({ n: home })}
    />
  );
}
