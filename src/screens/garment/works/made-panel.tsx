import type { ComponentChildren } from 'preact';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import { Rich } from '../../../controls/rich.tsx';
import type { Do } from './use-typing.ts';

interface Props {
  name: string;
  /** What is known of it, in words. */
  said: string;
  /** What it stands on: taken back, it is not made. */
  fact: string;
  /** What taking it back is called. */
  takeBack: string;
  onDo: Do;
  onName: () => void;
  onBack: () => void;
  /** What else can be done about it. */
  children?: ComponentChildren;
}

/** Something that is made: what is known of it, and what can be done about it. */
export function MadePanel({ name, said, fact, takeBack, onDo, onName, onBack, children }: Props) {
  return (
    <section class="panel made" aria-label={name}>
      <h2>{name}</h2>
      <p>
        <Rich text={said} />
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
          {takeBack}
        </button>
        <button type="button" onClick={onName}>
          {words.nameIt}
        </button>
        {children}
      </div>
    </section>
  );
}
