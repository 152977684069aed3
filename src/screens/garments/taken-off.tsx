import { garmentAsideWords as words } from '#words/garment-aside-words.ts';
import type { Garment } from '../../garment/garment.ts';
import type { GarmentDeeds } from './deeds.ts';

interface Props {
  garment: Garment;
  deeds: GarmentDeeds;
}

/** What was taken off a garment, to be put back. */
export function TakenOff({ garment, deeds }: Props) {
  return (
    <section aria-label={words.takenOff}>
      <h3>{words.takenOff}</h3>
      <ul>
        {garment.takenOff.map((kept, place) => (
          <li key={place}>
            <span>{kept.name}</span>
            <button type="button" class="plain" onClick={() => deeds.putBack(garment, kept)}>
              {words.putBack}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
