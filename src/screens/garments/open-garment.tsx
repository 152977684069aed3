import { useState } from 'preact/hooks';
import { garmentListWords as listWords } from '#words/garment-list-words.ts';
import { garmentWords as words } from '#words/garment-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Garment, inOrder, STAGES } from '../../garment/garment.ts';
import type { GarmentDeeds } from './deeds.ts';
import { Fetched } from './fetched.tsx';
import { KeptRow } from './kept-row.tsx';
import { NameForm } from './name-form.tsx';
import { useDrawn } from './use-drawn.ts';

interface Props {
  garment: Garment;
  bench: Bench;
  deeds: GarmentDeeds;
}

/** The garment that is open: its stages in order, what is kept at each, what was taken off. */
export function OpenGarment({ garment, bench, deeds }: Props) {
  const drawn = useDrawn(garment.kept.length);
  const first = inOrder(garment).slice(0, drawn);
  return (
    <>
      {garment.invented && <p>{listWords.invented}</p>}
      {garment.kept.length === 0 ? (
        <p>{listWords.nothingKept}</p>
      ) : (
        <button type="button" class="plain main wide" onClick={() => deeds.follow(garment)}>
          {listWords.followAll}
        </button>
      )}
      {STAGES.map((stage) => {
        const there = first.filter((kept) => kept.stage === stage);
        if (there.length === 0) return null;
        return (
          <section key={stage} aria-label={words.stages[stage]}>
            <h3>{words.stages[stage]}</h3>
            <ul>
              {there.map((kept) => (
                <KeptRow key={kept.id} garment={garment} kept={kept} bench={bench} deeds={deeds} />
              ))}
            </ul>
          </section>
        );
      })}
      <Whole garment={garment} deeds={deeds} />
      {garment.takenOff.length > 0 && <Fetched load={loadTakenOff} give={{ garment, deeds }} />}
    </>
  );
}

const loadTakenOff = () => import('./taken-off.tsx').then((part) => part.TakenOff);

/** What is done with the garment as a whole. */
function Whole({ garment, deeds }: Omit<Props, 'bench'>) {
  const [renaming, setRenaming] = useState(false);
  if (renaming) {
    return (
      <NameForm
        label={words.name}
        first={garment.name}
        deed={words.rename}
        onName={(name) => {
          deeds.rename(garment, name);
          setRenaming(false);
        }}
      />
    );
  }
  return (
    <div class="keys">
      <button type="button" class="plain" onClick={() => setRenaming(true)}>
        {words.rename}
      </button>
      <button type="button" class="plain" onClick={() => deeds.copy(garment)}>
        {listWords.copy}
      </button>
      <button type="button" class="plain" onClick={() => deeds.remove(garment)}>
        {words.remove}
      </button>
    </div>
  );
}
