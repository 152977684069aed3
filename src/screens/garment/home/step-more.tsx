import { useState } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import { type Bench, tapeStep } from '../../../calculation/bench.ts';
import type { Action } from '../../../garment/actions/act.ts';
import type { State } from '../../../garment/actions/state.ts';
import { lastPress } from '../../../garment/actions/undo.ts';
import { afterNext, type Next } from '../../../garment/next/next.ts';
import { readHome } from '../../../garment/record/home.ts';
import { sideName } from '../said/names.ts';
import { numberAt, numberOf, stepWords } from '../said/say.ts';
import type { HomeWay } from './home-way.ts';
import type { Together } from './use-together.ts';

interface Props {
  state: State;
  next: Extract<Next, { kind: 'step' }>;
  bench: Bench;
  together: Together;
  onAct: (action: Action) => void;
  onInHand: (home: string) => void;
  onGo: (way: HomeWay) => void;
  onDone: () => void;
  onMeasure: () => void;
  onSpeak: (words: string) => void;
}

/** What else there is to do with the next step, beside making it as it is shown. */
export function StepMore(props: Props) {
  const { state, next, bench, together, onAct, onDone } = props;
  const { home } = next.step;
  const [upTo, setUpTo] = useState(false);
  const now = Date.now();
  const act = (action: Action) => {
    onAct(action);
    onDone();
  };
  const make = (upTo: number) => {
    const press = { home, id: crypto.randomUUID(), tape: tapeStep(bench), now };
    const also = together.also.map((step) => step.home);
    act({ do: 'make', ...press, upTo, ...(also.length > 0 && { also }) });
  };
  return (
    <section class="more" aria-label={words.more}>
      <h2>{stepWords(state.answer, next.step, together.also)}</h2>
      {upTo ? (
        <UpTo {...props} onPick={(rank) => make(rank + 1)} />
      ) : (
        <div class="ways">
          {waysFor(props, act, () => setUpTo(true)).map(([face, press]) => (
            <Way key={face} words={face} onPress={press} />
          ))}
        </div>
      )}
      <button type="button" class="plain" onClick={onDone}>
        {words.close}
      </button>
    </section>
  );
}

type WayOut = readonly [face: string, press: () => void];

/** What can be done with the step, in the order a thumb would look for it. */
function waysFor(props: Props, act: (action: Action) => void, onUpTo: () => void): WayOut[] {
  const { state, next, bench, together, onDone, onGo } = props;
  const { answer } = state;
  const { home, passed, of = 0, made } = next.step;
  const { id } = readHome(home);
  const now = Date.now();
  const kind = answer.nodes.get(home)?.kind;
  const isLength = kind === 'length' || kind === 'run';
  const said = stepWords(answer, next.step, together.also);
  const also = [...together.can].map((step) => readHome(step.home).side);
  const sides = words.sides([readHome(home).side, ...also].map(sideName));
  const turn = () => {
    together.turn();
    onDone();
  };
  const over = (passes: boolean) => {
    props.onInHand(passes ? (afterNext(answer, home) ?? home) : home);
    act({ do: 'pass', home, over: passes, now });
  };
  const before = () => {
    const homes = [home, ...together.also.map((step) => step.home)];
    act({ do: 'make before', homes, id: crypto.randomUUID(), now });
  };
  const last = lastPress(state);
  const passes = !passed && afterNext(answer, home) !== undefined;
  const isRow = next.mark !== undefined && of > next.mark.rank + 1;
  const ways: readonly (WayOut | false)[] = [
    isLength && [next.mark ? words.elsewhere : words.otherwise, props.onMeasure],
    isRow && [words.upTo, onUpTo],
    also.length > 0 && [together.also.length > 0 ? words.singly : words.together(sides), turn],
    made === 0 && [words.before, before],
    passes && [words.passOver, () => over(true)],
    last !== undefined && [words.backOne, () => act({ do: 'undo', change: last.id, now })],
    [words.note, () => onGo({ to: 'note', home })],
    [words.work, () => onGo({ to: 'work', work: id })],
    [words.speak, () => props.onSpeak(`${said}. ${numberAt(answer, home, next.value, bench)}`)],
  ];
  return ways.filter((way): way is WayOut => way !== false);
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
