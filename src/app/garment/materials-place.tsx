import type { MaterialProps } from '../../screens/garment/material-one.tsx';
import { MaterialsScreen } from '../../screens/garment/materials.tsx';
import { Fetched } from '../../screens/garments/fetched.tsx';
import type { HandProps } from './hand-props.ts';

type Props = HandProps & { onDone: () => void };

const loadOne = () =>
  import('../../screens/garment/material-one.tsx').then((part) => part.MaterialOne);

function One(give: MaterialProps) {
  return <Fetched load={loadOne} onLeave={give.onBack} give={give} />;
}

/** Everything to have at hand for the garment in hand. */
export function MaterialsPlace({ state, bench, hand, said, onDone }: Props) {
  return <MaterialsScreen {...{ state, bench, said, One, onDone }} onAct={hand.act} />;
}
