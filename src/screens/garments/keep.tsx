import { useState } from 'preact/hooks';
import { garmentKeepWords as keepWords } from '#words/garment/garment-keep-words.ts';
import { garmentWords as words } from '#words/garment/garment-words.ts';
import { adopt } from '../../controls/adopt.ts';
import { LONGEST_NAME } from '../../garment/garment.ts';
import type { Garment } from '../../garment/record/record.ts';
import css from './garments.css?inline';

adopt(css);

/** What the maker says of a calculation to be kept. */
export interface KeepWish {
  name: string;
  /** An id, or nothing for a new garment of the name given. */
  garment: string;
  newName: string;
  /** Which side of its work was measured. */
  side?: string;
}

interface Props {
  garments: readonly Pick<Garment, 'id' | 'name'>[];
  first: KeepWish;
  hand: 'right' | 'left';
  said: string | undefined;
  /** The sides of the work it was kept as, where something was measured. */
  sides: readonly string[];
  onKeep: (wish: KeepWish) => void;
  onLeave: () => void;
}

/** Keeps a calculation on a garment, under a name. */
export function KeepScreen({ garments, first, hand, said, sides, onKeep, onLeave }: Props) {
  const [wish, setWish] = useState(first);
  const nameless = wish.name.trim() === '' || (wish.garment === '' && wish.newName.trim() === '');
  // Under another name, or elsewhere, it is a new work without sides.
  const inPlace = wish.name === first.name && wish.garment === first.garment;
  const asksSide = inPlace && sides.length > 0;
  // On the wrong side a measure would bend what is still to be made there: none is taken unsaid.
  const sideless = asksSide && wish.side === undefined;
  const keep = () => {
    const { side, ...whole } = wish;
    onKeep(asksSide ? wish : whole);
  };
  const text = (key: 'name' | 'newName', label: string) => (
    <label>
      {label}
      <span class="keys">
        <input
          type="text"
          value={wish[key]}
          maxLength={LONGEST_NAME}
          autoComplete="off"
          onInput={(event) => setWish({ ...wish, [key]: event.currentTarget.value })}
        />
      </span>
    </label>
  );
  return (
    <div class="garments" data-hand={hand}>
      <main>
        <h1>{keepWords.keep}</h1>
        {said !== undefined && (
          <p class="warning" role="status">
            {said}
          </p>
        )}
        {nameless && <p>{words.nameMissing}</p>}
        {sideless && <p>{keepWords.sideMissing}</p>}
        <form class="lower" onSubmit={(event) => event.preventDefault()}>
          {text('name', words.name)}
          <label>
            {keepWords.garment}
            <span class="keys">
              <select
                value={wish.garment}
                onChange={(event) => setWish({ ...wish, garment: event.currentTarget.value })}
              >
                {garments.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
                <option value="">{words.newGarment}</option>
              </select>
            </span>
          </label>
          {wish.garment === '' && text('newName', words.newGarment)}
          {asksSide && (
            <KeptSide
              sides={sides}
              chosen={wish.side}
              onSide={(side) => setWish({ ...wish, side })}
            />
          )}
        </form>
      </main>
      <nav class="actions" aria-label={keepWords.keep}>
        <button type="button" onClick={onLeave}>
          {words.back}
        </button>
        <button type="button" class="main" disabled={nameless || sideless} onClick={keep}>
          {keepWords.keepIt}
        </button>
      </nav>
    </div>
  );
}

interface SideProps {
  sides: readonly string[];
  chosen: string | undefined;
  onSide: (side: string) => void;
}

/** Which side was measured: none is chosen before the maker says so. */
function KeptSide({ sides, chosen, onSide }: SideProps) {
  return (
    <fieldset class="sides">
      <legend>{keepWords.side}</legend>
      {sides.map((side) => (
        <label key={side}>
          <input type="radio" name="side" checked={side === chosen} onChange={() => onSide(side)} />
          {side}
        </label>
      ))}
    </fieldset>
  );
}
