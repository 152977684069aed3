import { useEffect, useState } from 'preact/hooks';
import { measuresWords as words } from '#words/garment/garment-measures-words.ts';
import { garmentWorkWords as workWords } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { FieldTile } from '../../../controls/field-tile.tsx';
import type { State } from '../../../garment/actions/state.ts';
import type { FieldPlace } from '../../../garment/actions/typing.ts';
import { FromGarment } from '../works/from-garment.tsx';
import { LinkTile } from '../works/link-tile.tsx';
import { openQuantity, VALUE } from '../works/open-quantity.ts';
import type { OpenField } from '../works/open-work.ts';
import { namesIn } from '../works/taken-text.ts';
import { type Do, useTyping } from '../works/use-typing.ts';
import { WorkKeys } from '../works/work-fields.tsx';

interface Props {
  state: State;
  id: string;
  bench: Bench;
  /** A sum: what there is to take is shown first. */
  sum: boolean;
  onDo: Do;
  onDone: () => void;
}

/** Types a number of the garment, or makes it a sum of others. */
export function MeasureTyping({ state, id, bench, sum, onDo, onDone }: Props) {
  const open = openQuantity(state, id, bench);
  const typing = useTyping({ state, open, bench, onDo });
  const [listed, setListed] = useState(sum);
  useEffect(() => typing.pick(VALUE), []);
  const [one] = open?.fields ?? [];
  if (!one) return null;
  const done = () => {
    typing.close();
    onDone();
  };
  const taken = (link: Parameters<typeof typing.take>[0]) => {
    typing.take(link);
    setListed(false);
  };
  return (
    <>
      <div class="actions">
        <button type="button" aria-expanded={listed} onClick={() => setListed(!listed)}>
          {workWords.fromGarment}
        </button>
        <button type="button" class="main" onClick={done}>
          {words.done}
        </button>
      </div>
      <div class="tiles one">
        <Tile state={state} one={one} bench={bench} typing={{ ...typing, next: done }} />
      </div>
      {listed ? (
        <FromGarment
          state={state}
          field={one}
          bench={bench}
          onTake={taken}
          onBack={() => setListed(false)}
        />
      ) : (
        <WorkKeys one={one} bench={bench} typing={{ ...typing, next: done }} />
      )}
    </>
  );
}

interface TileProps {
  state: State;
  one: OpenField<FieldPlace>;
  bench: Bench;
  typing: Pick<ReturnType<typeof useTyping>, 'type' | 'pick' | 'next'>;
}

function Tile({ state, one, bench, typing }: TileProps) {
  const { field, text, taken } = one;
  const tile = {
    ...{ field, text, bench, current: true, wrong: undefined },
    ...{ onText: typing.type, onPick: typing.pick, onNext: typing.next },
  };
  return taken.length > 0 ? (
    <LinkTile {...tile} names={namesIn(state, one, bench)} />
  ) : (
    <FieldTile {...tile} />
  );
}
