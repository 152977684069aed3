import { useState } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment-home-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { Action } from '../../garment/actions/act.ts';
import type { State } from '../../garment/actions/state.ts';
import type { Next } from '../../garment/next/next.ts';
import { numberOf, stepWords } from './say.ts';

interface Props {
  state: State;
  next: Extract<Next, { kind: 'step' }>;
  bench: Bench;
  onAct: (action: Action) => void;
  onDone: () => void;
  onMeasure: () => void;
  onPassOver: (() => void) | undefined;
  onOpen: () => void;
  onSpeak: (words: string) => void;
}

/** What else there is to do with the next step, beside making it as it is shown. */
export function StepMore(props: Props) {
  const { state, next, bench, onAct, onDone } = props;
  const { answer } = state;
  const { home } = next.step;
  const [upTo, setUpTo] = useState(false);
  const kind = answer.nodes.get(home)?.kind;
  const isLength = kind === 'length' || kind === 'run';
  const said = stepWords(answer, next.step);
  const make = (upTo: number) => {
    const press = { home, id: crypto.randomUUID(), tape: tapeStep(bench), now: Date.now() };
    onAct({ do: 'make', ...press, upTo });
    onDone();
  };
  const isRow = next.mark !== undefined && (next.step.of ?? 0) > next.mark.rank + 1;
  return (
    <section class="more" aria-label={words.more}>
      <h2>{said}</h2>
      {upTo ? (
        <UpTo {...props} onPick={(rank) => make(rank + 1)} />
      ) : (
        <div class="ways">
          {isLength && <Way words={words.otherwise} onPress={props.onMeasure} />}
          {isRow && <Way words={words.upTo} onPress={() => setUpTo(true)} />}
          {props.onPassOver && <Way words={words.passOver} onPress={props.onPassOver} />}
          <Way words={words.work} onPress={props.onOpen} />
          <Way
            words={words.speak}
            onPress={() => props.onSpeak(`${said}. ${numberOf(kind, next.value, bench)}`)}
          />
        </div>
      )}
      <button type="button" class="plain" onClick={onDone}>
        {words.close}
      </button>
    </section>
  );
}

function Way({ words: face, onPress }: { words: string; onPress: () => void }) {
  return (
    <button type="button" class="plain" onClick={onPress}>
      {face}
    </button>
  );
}

/** Which mark of the row is the last one that is made already. */
function UpTo({ state, next, bench, onPick }: Props & { onPick: (rank: number) => void }) {
  const result = state.answer.values.get(next.step.home);
  const marks = result?.ok && typeof result.value === 'object' ? result.value.marks : [];
  const open = marks.flatMap((mark, rank) =>
    result?.ok && result.made?.[rank] === undefined ? [{ mark, rank }] : [],
  );
  return (
    <>
      <p>{words.upToWhich}</p>
      <div class="ways">
        {open.map(({ mark, rank }) => (
          <Way
            key={rank}
            words={`${mark.label} · ${numberOf('run', mark.at, bench)}`}
            onPress={() => onPick(rank)}
          />
        ))}
      </div>
    </>
  );
}
