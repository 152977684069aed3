import type { MaterialProps } from '../../screens/garment/materials/material-one.tsx';
import { MaterialsScreen } from '../../screens/garment/materials/materials.tsx';
import { Fetched } from '../../screens/garments/fetched.tsx';
import type { HandProps } from './hand-props.ts';

type Props = HandProps & {
  to: (draft: Readonly<Record<string, string>>) => void;
  onDone: () => void;
};

const loadOne = () =>
  import('../../screens/garment/materials/material-one.tsx').then((part) => part.MaterialOne);

function One(give: MaterialProps) {
  return <Fetched load={loadOne} onLeave={give.onBack} give={give} />;
}

/** Everything to have at hand for the garment in hand. */
export function MaterialsPlace(props: Props) {
  const { state, bench, hand, said, onAgain, to, onDone } = props;
  const onLay = (id: string) => to({ w: 'lay', m: id });
  return (
    <MaterialsScreen {...{ state, bench, said, onAgain, One, onLay, onDone }} onAct={hand.act} />
  );
}
