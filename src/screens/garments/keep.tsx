import { useState } from 'preact/hooks';
import { garmentKeepWords as keepWords } from '#words/garment-keep-words.ts';
import { garmentWords as words } from '#words/garment-words.ts';
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
}

interface Props {
  garments: readonly Pick<Garment, 'id' | 'name'>[];
  first: KeepWish;
  hand: 'right' | 'left';
  said: string | undefined;
  onKeep: (wish: KeepWish) => void;
  onLeave: () => void;
}

/** Keeps a calculation on a garment, under a name. */
export function KeepScreen({ garments, first, hand, said, onKeep, onLeave }: Props) {
  const [wish, setWish] = useState(first);
  const missing = wish.name.trim() === '' || (wish.garment === '' && wish.newName.trim() === '');
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
        {missing && <p>{words.nameMissing}</p>}
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
        </form>
      </main>
      <nav class="actions" aria-label={keepWords.keep}>
        <button type="button" onClick={onLeave}>
          {words.back}
        </button>
        <button type="button" class="main" disabled={missing} onClick={() => onKeep(wish)}>
          {keepWords.keepIt}
        </button>
      </nav>
    </div>
  );
}
