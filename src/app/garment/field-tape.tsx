import type { Bench } from '../../calculation/bench.ts';
import type { Action } from '../../garment/actions/act.ts';
import type { State } from '../../garment/actions/state.ts';
import { partsOf } from '../../garment/actions/typed-parts.ts';
import type { FieldPlace } from '../../garment/actions/typing.ts';
import { fieldName } from '../../screens/garment/said/names.ts';
import { TapeScreen } from '../../screens/tape/tape-screen.tsx';
import { TAPE_SERVICES } from '../tape/tape-services.ts';

interface Props {
  state: State;
  bench: Bench;
  place: FieldPlace;
  onAct: (action: Action) => void;
  onDone: () => void;
}

/** A tape read for a field of a garment: what it reads takes the place of what stood there. */
export function FieldTape({ state: { answer }, bench, place, onAct, onDone }: Props) {
  const name =
    'quantity' in place
      ? fieldName({ answer }, place.quantity, '', '')
      : fieldName({ answer, here: place.work }, place.work, '', place.field);
  const onUse = (text: string) => {
    onAct({ do: 'choose', place, parts: partsOf(text, [], bench), now: Date.now() });
    onDone();
  };
  return (
    <TapeScreen
      bench={bench}
      field={name}
      uses={[{ name, onUse }]}
      services={TAPE_SERVICES}
      onLeave={onDone}
    />
  );
}
