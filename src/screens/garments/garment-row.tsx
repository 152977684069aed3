import { useState } from 'preact/hooks';
import { garmentListWords as listWords } from '#words/garment/garment-list-words.ts';
import { garmentWords as words } from '#words/garment/garment-words.ts';
import type { Listed } from '../../garment/record/listed.ts';
import type { GarmentDeeds } from './deeds.ts';
import { NameForm } from './name-form.tsx';

interface Props {
  garment: Listed;
  /** Its further deeds are shown. */
  unfolded: boolean;
  onUnfold: (unfolded: boolean) => void;
  deeds: GarmentDeeds;
}

/** A garment by its name: a press opens it, another shows what else can be done with it. */
export function GarmentRow({ garment, unfolded, onUnfold, deeds }: Props) {
  const { id, name, works, facts } = garment;
  return (
    <article aria-label={name}>
      <h2>
        <button type="button" onClick={() => deeds.open(id)}>
          {name}
          <small>{listWords.holds(works, facts)}</small>
        </button>
        <button
          type="button"
          class="plain more"
          aria-expanded={unfolded}
          aria-label={listWords.more(name)}
          onClick={() => onUnfold(!unfolded)}
        />
      </h2>
      {unfolded && <Whole garment={garment} deeds={deeds} onDone={() => onUnfold(false)} />}
    </article>
  );
}

type WholeProps = Pick<Props, 'garment' | 'deeds'> & { onDone: () => void };

/** What is done with a garment as a whole. */
function Whole({ garment, deeds, onDone }: WholeProps) {
  const [renaming, setRenaming] = useState(false);
  if (renaming) {
    return (
      <NameForm
        label={words.name}
        first={garment.name}
        deed={words.rename}
        onName={(name) => {
          deeds.rename(garment, name);
          onDone();
        }}
      />
    );
  }
  const deed = (label: string, act: (garment: Listed) => void) => (
    <button
      type="button"
      class="plain"
      onClick={() => {
        act(garment);
        onDone();
      }}
    >
      {label}
    </button>
  );
  return (
    <div class="keys">
      <button type="button" class="plain" onClick={() => setRenaming(true)}>
        {words.rename}
      </button>
      {deed(listWords.handOn, deeds.share)}
      {deed(listWords.copy, deeds.copy)}
      {deed(listWords.putAway, deeds.putAway)}
    </div>
  );
}
