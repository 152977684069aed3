import { bodyMeasureWords as words } from '#words/body/body-measure-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { onTape } from '../../../calculation/tape-text.ts';
import { Rich } from '../../../controls/rich.tsx';
import { oddQuantity } from '../../../garment/work-out/odd-quantity.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import { upToGraduation } from '../../../lengths/graduation.ts';

interface Props {
  answer: Answer;
  id: string;
  bench: Bench;
  onRight: () => void;
}

/** What is asked about a measure that few have; once the maker says that it is right, nothing is. */
export function OddAsked({ answer, id, bench, onRight }: Props) {
  const odd = oddQuantity(answer, id);
  if (!odd) return null;
  const { past, end, beside, alike } = odd;
  const said = beside && words.measures[beside].name;
  return (
    <div class="odd">
      <p role="status">
        {end > 0 ? (
          <>
            <Rich text={words.odd(past, onTape(end, bench, upToGraduation), said)} />
            <small>{words.oddSource(alike)}</small>
          </>
        ) : (
          words.noMeasure
        )}
      </p>
      <button type="button" class="plain" onClick={onRight}>
        {words.right}
      </button>
    </div>
  );
}
