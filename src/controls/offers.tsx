import type { Draft, Offer } from './calculation.ts';
import { Rich } from './rich.tsx';

interface Props {
  offers: readonly Offer[];
  onTake: (take: Draft) => void;
}

/** Other solutions the maker may take. */
export function Offers({ offers, onTake }: Props) {
  return (
    <>
      {offers.map((offer) => (
        <button
          type="button"
          class="tile wide link"
          key={offer.words}
          onClick={() => onTake(offer.take)}
        >
          <span>
            <Rich text={offer.words} />
          </span>
        </button>
      ))}
    </>
  );
}
