import { offerWords } from '#words/common/mark-words.ts';
import { asDecimals, asThousands } from '#words/common/read-words.ts';
import type { Draft, Fault, Offer, Work } from '../calculation/calculation.ts';
import { Rich } from './rich.tsx';

interface Props {
  work: Work;
  draft: Draft;
  onTake: (take: Draft) => void;
  onMode: (mode: string) => void;
}

/** Other solutions the maker may take, and where the marks may go at true size. */
export function Offers({ work, draft, onTake, onMode }: Props) {
  const { offers, runs, figures = [] } = work.ok ? work.answer : meantBy(work.faults, draft);
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

/**
 * What mends a fault by a press: what a number with a mark that may group thousands can mean;
 * and leaving out what is no field.
 */
function meantBy(faults: readonly Fault[], draft: Draft) {
  const offers = faults.flatMap(({ field, why }): Offer[] => {
    if (why.of === 'words' && why.unknown) {
      return [{ words: offerWords.leaveOut(field), take: { [field]: '' } }];
    }
    if (why.of !== 'reading' || why.fault.kind !== 'thousands-unclear') return [];
    const { at, text } = why.fault;
    const typed = draft[field] ?? '';
    return [asThousands(text), asDecimals(text)].map((meant) => {
      const written = typed.slice(0, at) + meant + typed.slice(at + text.length);
      return { words: offerWords.meant(written), take: { [field]: written } };
    });
  });
  return { offers, runs: [], figures: [] };
}
