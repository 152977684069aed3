import type { Refused } from '../../garment/actions/state.ts';
import { MadeToIt } from '../../screens/garment/decision/made-to-it.tsx';
import type { HandProps } from './hand-props.ts';

type Props = HandProps & { asks: Extract<Refused, { why: 'made to it' }> };

/** Asks before a change is taken back that something was made to. */
export function MadeToPlace({ state, bench, hand, asks }: Props) {
  const now = Date.now();
  return (
    <MadeToIt
      {...{ state, bench, asks }}
      onUndo={() => hand.act({ do: 'undo', change: asks.change, sure: true, now })}
      onLeave={() => hand.act({ do: 'settle', now })}
    />
  );
}
