import { useState } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment-home-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Action } from '../../garment/actions/act.ts';
import { readNow } from '../../garment/actions/make.ts';
import type { Next } from '../../garment/next/next.ts';
import { readHome } from '../../garment/record/home.ts';
import { openBefore } from '../../garment/work-out/before-cut.ts';
import type { Answer } from '../../garment/work-out/work-out.ts';
import { numberName } from './names.ts';
import { numberOf } from './say.ts';

type StepNext = Extract<Next, { kind: 'step' }>;

/**
 * Whether a step that can't be undone is to be checked first: asked once a row, and again only when
 * a number it uses has changed.
 */
export function useChecks(answer: Answer, next: Next) {
  const [seen, setSeen] = useState<Readonly<Record<string, string>>>({});
  const step = next.kind === 'step' && !next.step.step.undoable ? next.step : undefined;
  const home = step?.home ?? '';
  const uses = step ? usedBy(answer, home) : '';
  const first = step !== undefined && seen[home] !== uses && !isBegunSo(answer, home);
  return {
    first,
    shown: step !== undefined && !first && step.made === 0,
    show: () => setSeen((was) => ({ ...was, [home]: uses })),
  };
}

/** Whether its last mark was made of the same numbers: it was looked at then, perhaps before a reload. */
function isBegunSo(answer: Answer, home: string): boolean {
  const last = answer.sound.facts.get(home)?.at(-1)?.fact;
  return last !== undefined && last.read !== '' && last.read === readNow(answer, home);
}

/** Every number a step uses, near or far, as one text that changes with each. */
function usedBy(answer: Answer, home: string): string {
  const met = new Set(answer.sources(home));
  for (const key of met) for (const source of answer.sources(key)) met.add(source);
  const own = readHome(home).id;
  const values = [...met]
    .filter((key) => readHome(key).id !== own)
    .map((key) => [key, valueAt(answer, key)]);
  const fields = answer.works.get(own)?.sides.map(({ draft }) => draft);
  return JSON.stringify([values, fields]);
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
}

/** What to look at before a cut, a punch or a trim: the caution, and the numbers it hangs on. */
export function Checks({ answer, next, bench, onAct }: Props) {
  const { home, step } = next.step;
  const open = openBefore(answer, home).filter((key) => valueAt(answer, key) !== null);
  return (
    <section class="checks" role="alert">
      <h2>{words.checks}</h2>
      {step.caution !== undefined && <p>{step.caution}</p>}
      {open.length > 0 && (
        <>
          <p>{words.hangs}</p>
          <ul>
            {open.map((key) => (
              <li key={key}>
                <span>{numberName({ answer }, key)}</span>
                <b>{said(key)}</b>
              </li>
            ))}
          </ul>
          <button type="button" class="plain" onClick={sayFinal}>
            {words.final}
          </button>
        </>
      )}
    </section>
  );

  /** One press says it of all that can still change. */
  function sayFinal() {
    const ids = [...new Set(open.map((key) => readHome(key).id))];
    const isQuantity = (id: string) => answer.sound.quantities.has(id);
    for (const of of ['quantities', 'works'] as const) {
      const some = ids.filter((id) => isQuantity(id) === (of === 'quantities'));
      const set = { final: true } as const;
      if (some.length > 0) onAct({ do: 'say', of, ids: some, set, now: Date.now() });
    }
  }

  function said(key: string): string {
    const value = valueAt(answer, key);
    const kind = answer.nodes.get(key)?.kind;
    if (typeof value === 'number') return numberOf(kind, value, bench);
    return String(value?.marks.length ?? '');
  }
}
