import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import { numberName } from '../said/names.ts';
import { handText } from '../said/value-text.ts';
import type { MadeProps } from './made-number.tsx';
import { MadePanel } from './made-panel.tsx';

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
    <MadePanel
      {...{ name, fact, onDo, onName, onBack }}
      said={words.beforeLead(plan)}
      takeBack={words.notBefore}
    />
  );
}
