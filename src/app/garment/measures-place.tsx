import { Measures } from '../../screens/garment/measures.tsx';
import type { HandProps } from './hand-props.ts';

type Props = HandProps & {
  /** The number that is wanted. */
  first: string | undefined;
  onDone: () => void;
};

/** The numbers of a garment itself. */
export function MeasuresPlace({ state, bench, hand, said, first, onDone }: Props) {
  return <Measures {...{ state, bench, said, first, onDone }} onAct={hand.act} />;
}
