import { useState } from 'preact/hooks';
import { decisionWords as words } from '#words/garment/garment-decision-words.ts';
import { Rich } from '../../../controls/rich.tsx';
import { numberOf } from '../../../garment/record/sound.ts';
import { handText } from '../said/value-text.ts';
import type { DecisionProps } from './decision-props.ts';

type Props = Pick<DecisionProps, 'state' | 'home' | 'bench' | 'onMeasure'> & {
  /** Those that differ from what is asked. */
  facts: readonly string[];
};

/** Says of what is made that it is elsewhere: of one at once, of several after asking which. */
export function MadeOtherwise({ state, home, bench, facts, onMeasure }: Props) {
  const [asks, setAsks] = useState(false);
  const [only] = facts;
  if (only === undefined) return null;
  const made = (state.answer.sound.facts.get(home) ?? []).filter(({ id }) => facts.includes(id));
  return (
    <>
      <button
        type="button"
        aria-expanded={facts.length > 1 ? asks : undefined}
        onClick={() => (facts.length > 1 ? setAsks(!asks) : onMeasure(only))}
      >
        {words.otherwise}
        <small>{made.some(({ fact }) => fact.mark) ? words.otherwiseHint : words.cameHint}</small>
      </button>
      {asks && <p>{words.which}</p>}
      {asks &&
        made.map(({ id, fact }) => (
          <button type="button" key={id} onClick={() => onMeasure(id)}>
            <Rich
              text={words.one(
                (fact.mark?.rank ?? 0) + 1,
                handText('length', numberOf(fact), bench),
              )}
            />
          </button>
        ))}
    </>
  );
}
