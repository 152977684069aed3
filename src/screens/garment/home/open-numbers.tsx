import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { Rich } from '../../../controls/rich.tsx';
import type { Action } from '../../../garment/actions/act.ts';
import { readHome } from '../../../garment/record/home.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import { numberName } from '../said/names.ts';
import { numberAt } from '../said/say.ts';

interface Props {
  answer: Answer;
  /** Keys of numbers that can still change. */
  open: readonly string[];
  bench: Bench;
  onAct: (action: Action) => void;
}

/** Numbers that may still change before a cut; one press says that they are final. */
export function OpenNumbers({ answer, open, bench, onAct }: Props) {
  return (
    <>
      <ul>
        {open.map((key) => (
          <li key={key}>
            <span>{numberName({ answer }, key)}</span>
            <b>
              <Rich text={said(key)} />
            </b>
          </li>
        ))}
      </ul>
      <button type="button" class="plain" onClick={sayFinal}>
        {words.final}
      </button>
    </>
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
    const result = answer.values.get(key);
    if (!result?.ok) return words.waitsFor;
    const { value, state } = result;
    const number =
      typeof value === 'number' ? numberAt(answer, key, value, bench) : String(value.marks.length);
    return state === 'made before' ? `${number} · ${words.isBefore}` : number;
  }
}
