import { decisionWords as words } from '#words/garment/garment-decision-words.ts';
import { conflictWords } from '#words/garment/garment-trouble-words.ts';
import { Rich } from '../../../controls/rich.tsx';
import type { Cause } from '../../../garment/actions/cause.ts';
import { numberOf } from '../../../garment/record/sound.ts';
import { askedKey } from '../../../garment/work-out/node.ts';
import type { Conflict } from '../../../garment/work-out/told.ts';
import { type Telling, troubleWords } from '../said/told-words.ts';
import { handText } from '../said/value-text.ts';
import { causeSaid } from './cause-words.ts';
import type { DecisionProps } from './decision-props.ts';
import { askedText } from './way-words.ts';

type Props = Pick<DecisionProps, 'state' | 'home' | 'bench'> & {
  conflict: Conflict | undefined;
  cause: Cause | undefined;
};

/** How many marks that are off are told each for itself. */
const MOST_TOLD = 3;

/** What is made and stays, why it differs, and what is asked now. */
export function WhatIsAsked({ state, home, bench, conflict, cause }: Props) {
  const { answer } = state;
  const telling: Telling = { answer, bench };
  const made = answer.sound.facts.get(home)?.length ?? 0;
  const isRow = answer.nodes.get(home)?.form === 'row';
  const lines = [
    ...whyWords({ telling, state, home, conflict, cause }),
    askedLine(telling, home),
    ...(conflict?.rule === 'changed' ? [conflictWords.ruleChanged] : []),
  ];
  return (
    <div class="what">
      <p>
        <strong>{isRow ? words.stay(made) : words.stays}</strong>
      </p>
      {lines.map((line) => (
        <p key={line}>
          <Rich text={line} />
        </p>
      ))}
    </div>
  );
}

interface Why extends Omit<Props, 'bench'> {
  telling: Telling;
}

/** What made it differ: a rule of the app, a change, or that it was made elsewhere. */
function whyWords({ telling, state, home, conflict, cause }: Why): string[] {
  if (conflict?.rule === 'only') return [conflictWords.ruleOnly];
  if (cause) return [causeSaid(telling, state, cause).said];
  const off = marksOff(telling, home, conflict?.facts ?? []);
  if (off.length > 0) return off;
  return telling.answer.nodes.get(home)?.form === 'row' ? [words.unknown] : [];
}

/** Marks that were measured elsewhere than they were to be. */
function marksOff({ answer, bench }: Telling, home: string, facts: readonly string[]): string[] {
  const say = (at: number) => handText('length', at, bench);
  const off = (answer.sound.facts.get(home) ?? []).flatMap(({ id, fact }) =>
    fact.mark && facts.includes(id) && Math.abs(numberOf(fact) - fact.plan) > fact.tape / 2
      ? [words.mark(fact.mark.rank + 1, say(numberOf(fact)), say(fact.plan))]
      : [],
  );
  const more = off.length - MOST_TOLD;
  return more > 0 ? [...off.slice(0, MOST_TOLD), words.more(more)] : off;
}

function askedLine(telling: Telling, home: string): string {
  const { answer, bench } = telling;
  const asked = answer.values.get(askedKey(home));
  if (!asked) return words.askedNothing;
  if (!asked.ok) return troubleWords(telling, askedKey(home), asked.trouble);
  const { value } = asked;
  if (typeof value === 'object') return words.askedNow(askedText(value, bench));
  const node = answer.nodes.get(home);
  const made = node?.form === 'fact' ? numberOf(node.fact.fact) : value;
  const { kind = 'length', output } = node ?? {};
  // What is made lies where it lies; what is asked is rounded as its step is.
  return words.number(handText(kind, made, bench), handText(kind, value, bench, output?.step));
}
