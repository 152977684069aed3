import { useMemo } from 'preact/hooks';
import { decisionWords as words } from '#words/garment/garment-decision-words.ts';
import { Rich } from '../../../controls/rich.tsx';
import { type TakeUp, takeUps } from '../../../garment/actions/take-up.ts';
import { changedNumbers } from '../said/changed-numbers.ts';
import { fieldName, numberName, quantityName } from '../said/names.ts';
import { handText } from '../said/value-text.ts';
import type { DecisionProps } from './decision-props.ts';

type Props = Pick<DecisionProps, 'state' | 'home' | 'bench' | 'onAct' | 'onDone'>;

/** How many of the numbers that follow are named. */
const NAMED = 2;

/** What could take up what is lacking or over, each with all it changes: one press types it there. */
export function DecisionTakeUps({ state, home, bench, onAct, onDone }: Props) {
  const ways = useMemo(() => takeUps(state, home), [state, home]);
  return (
    <>
      {ways.map((way) => {
        const { place, parts } = way;
        const take = () => {
          onAct({ do: 'choose', place, parts, now: Date.now() });
          onDone();
        };
        return (
          <button type="button" class="way" key={JSON.stringify(place)} onClick={take}>
            {words.takeUp(nameOf(way, state))}
            <small>
              <Rich text={priceOf(way, { state, bench })} />
            </small>
          </button>
        );
      })}
    </>
  );
}

function nameOf({ place }: TakeUp, { answer }: DecisionProps['state']): string {
  if ('quantity' in place) return quantityName({ answer }, place.quantity);
  return fieldName({ answer }, place.work, place.side ?? '', place.field);
}

/** What it is then, and what follows from it. */
function priceOf(
  { place, before, after, answer }: TakeUp,
  { state, bench }: Pick<Props, 'state' | 'bench'>,
): string {
  const say = (length: number) => handText('length', length, bench);
  const own = 'quantity' in place ? place.quantity : '';
  const changed = changedNumbers(state.answer, answer, own, bench);
  const more = changed.length - NAMED;
  return words.price([
    words.instead(say(after), say(before)),
    ...changed
      .slice(0, NAMED)
      .map((one) => words.follows(numberName(state, one.key), one.before, one.after)),
    ...(more > 0 ? [words.andFollows(more)] : []),
  ]);
}
