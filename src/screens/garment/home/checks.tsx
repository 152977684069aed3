import { useState } from 'preact/hooks';
import { exampleWords } from '#words/garment/example-words.ts';
import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { Action } from '../../../garment/actions/act.ts';
import { readNow } from '../../../garment/actions/make.ts';
import type { Next } from '../../../garment/next/next.ts';
import { homeOf, readHome } from '../../../garment/record/home.ts';
import { openBefore } from '../../../garment/work-out/before-cut.ts';
import { isUntouched } from '../../../garment/work-out/untouched.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import { OpenNumbers } from './open-numbers.tsx';

type StepNext = Extract<Next, { kind: 'step' }>;

/**
 * Whether a step that can't be undone is to be checked first: asked once a row, and once of left and
 * right where they use the same numbers; again only when one of those has changed.
 */
export function useChecks(answer: Answer, next: Next) {
  const [seen, setSeen] = useState<Readonly<Record<string, string>>>({});
  const [at, setAt] = useState<string>();
  const step = next.kind === 'step' && !next.step.step.undoable ? next.step : undefined;
  const home = step?.home ?? '';
  const { id, key } = readHome(home);
  const ofAll = homeOf(id, '', key);
  const uses = step ? usedBy(answer, home) : '';
  const first = step !== undefined && seen[ofAll] !== uses && !isMadeSo(answer, home);
  return {
    first,
    shown: step !== undefined && !first && step.made === 0 && at === home,
    show: () => {
      setSeen((was) => ({ ...was, [ofAll]: uses }));
      setAt(home);
    },
  };
}

/** Whether its last mark, or the same step of another side, was made of the same numbers: it was looked at then, perhaps before a reload. */
function isMadeSo(answer: Answer, home: string): boolean {
  const { id, key } = readHome(home);
  const read = readNow(answer, home);
  const sides = answer.works.get(id)?.sides ?? [];
  return sides.some(({ side }) => {
    const last = answer.sound.facts.get(homeOf(id, side, key))?.at(-1)?.fact;
    return last !== undefined && last.read !== '' && last.read === read;
  });
}

/** Every number a step uses, near or far, as one text that changes with each. */
function usedBy(answer: Answer, home: string): string {
  const met = new Set(answer.sources(home));
  for (const key of met) for (const source of answer.sources(key)) met.add(source);
  const { id, side } = readHome(home);
  const values = [...met]
    .filter((key) => readHome(key).id !== id)
    .map((key) => [key, valueAt(answer, key)]);
  const own = answer.works.get(id)?.sides.find((one) => one.side === side);
  return JSON.stringify([values, own?.draft]);
}

function valueAt({ values }: Answer, key: string) {
  const result = values.get(key);
  return result?.ok ? result.value : null;
}

interface Props {
  answer: Answer;
  next: StepNext;
  bench: Bench;
  onAct: (action: Action) => void;
  onWork: (work: string) => void;
}

/** What to look at before a cut, a punch or a trim: the caution, and the numbers it hangs on. */
export function Checks({ answer, next, bench, onAct, onWork }: Props) {
  const { home, step } = next.step;
  const { id } = readHome(home);
  const open = openBefore(answer, home).filter((key) => valueAt(answer, key) !== null);
  return (
    <section class="checks" role="alert">
      <h2>{words.checks}</h2>
      {step.caution !== undefined && <p>{step.caution}</p>}
      {isUntouched(answer, id) && (
        <>
          <p class="warning">{exampleWords.said}</p>
          <button type="button" class="plain" onClick={() => onWork(id)}>
            {words.work}
          </button>
        </>
      )}
      {open.length > 0 && (
        <>
          <p>{words.hangs}</p>
          <OpenNumbers {...{ answer, open, bench, onAct }} />
        </>
      )}
    </section>
  );
}
