import { useMemo } from 'preact/hooks';
import { decisionWords as words } from '#words/garment/garment-decision-words.ts';
import { adopt } from '../../../controls/adopt.ts';
import { NotDone } from '../../../controls/not-done.tsx';
import { Rich } from '../../../controls/rich.tsx';
import { type Cause, causeOf } from '../../../garment/actions/cause.ts';
import { allowedAt } from '../../../garment/actions/decide.ts';
import { MeasureEntry } from '../parts/measure-entry.tsx';
import { numberName, workName } from '../said/names.ts';
import workCss from '../works/garment-work.css?inline';
import { causeSaid } from './cause-words.ts';
import css from './decision.css?inline';
import { AllowKey, useAllow } from './decision-allow.tsx';
import type { DecisionProps } from './decision-props.ts';
import { DecisionTakeUps } from './decision-take-ups.tsx';
import { DecisionWays } from './decision-ways.tsx';
import { MadeOtherwise } from './made-otherwise.tsx';
import { RowDots } from './row-dots.tsx';
import { WhatIsAsked } from './what-is-asked.tsx';

adopt(workCss);
adopt(css);

/** What is made otherwise than asked: every way to go on, with its numbers, before one is taken. */
export function Decision(props: DecisionProps) {
  const { state, home, bench, onOpen, onDone } = props;
  const { answer } = state;
  const step = answer.steps.find((one) => one.home === home);
  const result = answer.values.get(home);
  const row = result?.ok && typeof result.value === 'object' ? result : undefined;
  const conflict = answer.conflicts.find((one) => one.home === home);
  const cause = useMemo(() => causeOf(state, home), [state, home]);
  const telling = { answer, bench };
  const node = answer.nodes.get(home);
  const id = node?.id ?? '';
  const { allow, ...allowing } = useAllow(allowedAt(state, home));
  if (allowing.types) {
    return (
      <div class="bench garment-work" data-hand={bench.hand}>
        <div class="reading">
          <header>
            <h1>{numberName(telling, home)}</h1>
          </header>
          <div class="scroll decision-what">
            <WhatIsAsked {...{ state, home, bench, conflict, cause }} />
          </div>
        </div>
        <MeasureEntry
          {...{ bench, kind: 'length', label: words.allowing, deed: words.allowIt }}
          onKeep={allowing.keep}
          onLeave={allowing.leave}
        />
      </div>
    );
  }
  return (
    <div class="decision" data-hand={bench.hand}>
      <main>
        <header>
          <h1>{numberName(telling, home)}</h1>
          {step && row && <span class="how-many">{words.made(step.made, step.of)}</span>}
        </header>
        <NotDone said={props.unkept} onAgain={props.onAgain} />
        {row && typeof row.value === 'object' && (
          <RowDots row={{ run: row.value, made: row.made ?? [] }} />
        )}
        <WhatIsAsked {...{ state, home, bench, conflict, cause }} />
        <div class="ways">
          <DecisionWays {...props} conflict={conflict} allow={allow} />
          <DecisionTakeUps {...props} />
          {conflict && node?.kind !== 'count' && (
            <AllowKey allow={allow} bench={bench} onType={allowing.type} />
          )}
          <MadeOtherwise {...props} facts={conflict?.facts ?? []} />
          {cause && conflict?.rule !== 'only' && <TakeBack {...props} cause={cause} />}
          <button type="button" onClick={() => onOpen(id)}>
            {words.open(workName(telling, id))}
          </button>
          <button type="button" onClick={onDone}>
            {words.later}
          </button>
        </div>
      </main>
    </div>
  );
}

/** Takes back the one change that brought it. */
function TakeBack({ state, bench, cause, onAct, onDone }: DecisionProps & { cause: Cause }) {
  const { takeBack, hint } = causeSaid({ answer: state.answer, bench }, state, cause);
  const press = () => {
    onAct({ do: 'undo', change: cause.change.id, now: Date.now() });
    onDone();
  };
  return (
    <button type="button" onClick={press}>
      <Rich text={takeBack} />
      {hint && (
        <small>
          <Rich text={hint} />
        </small>
      )}
    </button>
  );
}
