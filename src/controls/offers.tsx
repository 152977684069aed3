import { offerWords } from '../words/mark-words.ts';
import type { Answer, Draft } from './calculation.ts';
import { Rich } from './rich.tsx';

interface Props {
  answer: Answer;
  onTake: (take: Draft) => void;
  onMode: (mode: string) => void;
}

/** Other solutions the maker may take, and where the marks may go at true size. */
export function Offers({ answer, onTake, onMode }: Props) {
  const { offers, runs, figures = [] } = answer;
  const drawn = runs.length + figures.length > 0;
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
      {runs.length > 0 && (
        <button type="button" class="tile link" onClick={() => onMode('glass')}>
          {offerWords.glass}
        </button>
      )}
      {drawn && (
        <button type="button" class="tile link" onClick={() => onMode('paper')}>
          {offerWords.paper}
        </button>
      )}
    </>
  );
}
