import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Kind } from '../../../calculation/output.ts';
import type { State } from '../../../garment/actions/state.ts';
import type { Link } from '../../../garment/record/record.ts';
import { linkName } from '../said/names.ts';
import { NameForm } from './name-form.tsx';
import type { Do } from './use-typing.ts';

interface Props {
  state: State;
  link: Link;
  kind: Kind;
  onDo: Do;
  onBack: () => void;
}

/** Gives a found number a name of its own: a quantity that follows it. */
export function NameIt({ state, link, kind, onDo, onBack }: Props) {
  const found = linkName({ answer: state.answer }, link);
  const keep = (name: string) => {
    const ranks = [...state.answer.sound.quantities.values()].map(({ rank }) => rank);
    const rank = Math.max(0, ...ranks) + 1;
    const it = { name, kind, rank, parts: [{ link }] };
    onDo({ do: 'add', to: 'quantities', id: crypto.randomUUID(), it });
    onBack();
  };
  return (
    <NameForm
      first={found}
      lead={<p>{words.nameLead(found)}</p>}
      deed={words.nameIt}
      onName={keep}
      onBack={onBack}
    />
  );
}
