import { useState } from 'preact/hooks';
import { OUTPUTS } from '../../calculations/list.ts';
import { AddScreen } from '../../screens/garment/add/add.tsx';
import { notKept, part } from './deeds.ts';
import type { HandProps } from './hand-props.ts';
import { newWork } from './new-work.ts';

type Props = HandProps & {
  to: (draft: Readonly<Record<string, string>>) => void;
  onDone: () => void;
};

/** What can be added to the garment in hand; what is added opens. */
export function AddPlace(props: Props) {
  const { state, bench, hand, said, onAgain, address, to, onDone } = props;
  const [failed, setFailed] = useState<string>();
  const off = [...state.answer.sound.works].flatMap(([id, work]) =>
    work.off ? [{ id, name: work.name }] : [],
  );
  const putBack = (work: string) => {
    hand.act({ do: 'put back', work, now: Date.now() });
    to({ w: work });
  };
  const add = async (calculation: string, name: string) => {
    try {
      const work = crypto.randomUUID();
      const it = await part(newWork(calculation, name, state.record, bench));
      hand.act({ do: 'add', to: 'works', id: work, it, now: Date.now() });
      to({ w: work });
    } catch (error) {
      setFailed(await notKept(error));
    }
  };
  return (
    <AddScreen
      name={state.record.name}
      bench={bench}
      said={failed ?? said}
      onAgain={failed === undefined ? onAgain : undefined}
      onAdd={(calculation, name) => void add(calculation, name)}
      offers={(id) => id in OUTPUTS}
      off={off}
      onPutBack={putBack}
      onMeasure={() => to({ w: 'measures' })}
      onMaterials={() => to({ w: 'materials' })}
      onLay={() => to({ w: 'lay' })}
      onAll={() => address.go({ screen: 'all', mode: '', draft: {} })}
      onLeave={onDone}
    />
  );
}
