import { outlineWords as words } from '#words/garment/garment-outline-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { Deed } from '../parts/deed.tsx';
import { valueText } from '../said/value-text.ts';
import type { OutlineShown } from './outline-shown.ts';
import type { PieceSet, Typing } from './outlines-props.ts';

interface Props {
  one: OutlineShown;
  bench: Bench;
  /** All pieces lie the same way on this cloth. */
  nap: boolean;
  say: (set: PieceSet) => void;
  onType: (typing: Typing) => void;
}

/** How a piece may lie on its cloth. */
export function LyingDeeds({ one, bench, nap, say, onType }: Props) {
  const { said, fold } = one;
  const { oneWay, tilt = 0, pair, match } = said;
  const text = (of: number) => valueText('length', of, bench);
  return (
    <>
      <Deed
        words={words.endForEnd}
        {...(nap && !oneWay && { hint: words.napKeeps })}
        on={!oneWay}
        onPress={() => say({ oneWay: oneWay ? undefined : true })}
      />
      {!fold && (
        <>
          <Deed
            words={words.tilt(String(tilt))}
            hint={words.tiltHint}
            onPress={() => onType({ what: 'tilt' })}
          />
          <Deed
            words={words.pair}
            on={pair === true}
            onPress={() => say({ pair: pair ? undefined : true })}
          />
        </>
      )}
      <Deed
        words={match ? words.matchAt(text(match[0]), text(match[1])) : words.match}
        hint={words.matchHint}
        onPress={() => onType({ what: 'match' })}
      />
    </>
  );
}
