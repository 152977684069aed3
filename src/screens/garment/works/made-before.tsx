import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import { Rich } from '../../../controls/rich.tsx';
import { numberName } from '../said/names.ts';
import { handText } from '../said/value-text.ts';
import type { MadeProps } from './made-number.tsx';

/** A step, or a whole row, that was made before the app knew: what stands in for its number, and what can be done about it. */
export function MadeBefore({ state, home, fact, bench, onDo, onName, onBack }: MadeProps) {
  const { answer } = state;
  const node = answer.nodes.get(home);
  const result = answer.values.get(home);
  const name = numberName({ answer, here: node?.id }, home);
  const value = result?.ok ? result.value : undefined;
  const plan =
    typeof value === 'object'
      ? words.marks(value.marks.length)
      : handText(node?.kind ?? 'length', value ?? 0, bench, node?.output?.step);
  return (
    <section class="panel made" aria-label={name}>
      <h2>{name}</h2>
      <p>
        <Rich text={words.beforeLead(plan)} />
      </p>
      <div class="actions">
        <button type="button" onClick={onBack}>
          {words.back}
        </button>
        <button
          type="button"
          onClick={() => {
            onDo({ do: 'unmake', fact });
            onBack();
          }}
        >
          {words.notBefore}
        </button>
        <button type="button" onClick={onName}>
          {words.nameIt}
        </button>
      </div>
    </section>
  );
}
