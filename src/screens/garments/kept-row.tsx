import { useState } from 'preact/hooks';
import { garmentListWords as listWords } from '#words/garment-list-words.ts';
import { garmentWords as words } from '#words/garment-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { progressOf } from '../../garment/as-made.ts';
import type { Garment, Kept } from '../../garment/garment.ts';
import type { GarmentDeeds } from './deeds.ts';
import { Fetched } from './fetched.tsx';

const loadMade = () => import('./made-list.tsx').then((part) => part.MadeList);

interface Props {
  garment: Garment;
  kept: Kept;
  bench: Bench;
  deeds: GarmentDeeds;
}

/** A calculation kept on the open garment; its planned and as-made numbers fold out. */
export function KeptRow({ garment, kept, bench, deeds }: Props) {
  const [unfolded, setUnfolded] = useState(false);
  const { marks, made, elsewhere, extra } = progressOf(kept.runs);
  return (
    <li>
      <span>
        {kept.name}
        {marks > 0 && <small>{listWords.made(made, marks, extra)}</small>}
      </span>
      <button type="button" class="plain" onClick={() => deeds.openKept(garment, kept)}>
        {listWords.open}
      </button>
      {marks > 0 && (
        <button type="button" class="plain" onClick={() => deeds.follow(garment, kept)}>
          {listWords.follow}
        </button>
      )}
      {elsewhere > 0 && (
        <button
          type="button"
          class="plain"
          aria-expanded={unfolded}
          onClick={() => setUnfolded(!unfolded)}
        >
          {listWords.elsewhere(elsewhere)}
        </button>
      )}
      <button type="button" class="plain" onClick={() => deeds.takeOff(garment, kept)}>
        {words.takeOff}
      </button>
      {unfolded && elsewhere > 0 && <Fetched load={loadMade} give={{ runs: kept.runs, bench }} />}
    </li>
  );
}
