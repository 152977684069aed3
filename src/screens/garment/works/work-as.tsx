import { useState } from 'preact/hooks';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { State } from '../../../garment/actions/state.ts';
import { hasFacts } from '../../../garment/actions/works.ts';
import { piecesOf } from '../../../garment/work-out/pieces-of.ts';
import { sideName } from '../said/names.ts';
import { NameForm } from './name-form.tsx';
import type { Do } from './use-typing.ts';

interface Props {
  state: State;
  work: string;
  onDo: Do;
  onBack: () => void;
}

/** Further times that are offered beside once, and left and right. */
const TIMES = [2, 3, 4, 5, 6];

/** Each way a work can be done, as the names of its sides: none of what is done once. */
const SIDES: readonly (readonly string[])[] = [
  [],
  words.leftRight,
  ...TIMES.map((times) => Array.from({ length: times }, (_, i) => String(i + 1))),
];

/** What a work is called, and how often it is done: left and right, or several times. */
export function WorkAs({ state, work, onDo, onBack }: Props) {
  const known = state.answer.sound.works.get(work);
  const was = known?.sides ?? [];
  const [sides, setSides] = useState(was);
  const many = piecesOf(state.answer, work, [was[0] ?? '']);
  const each = many?.each[0] ?? 1;
  // What is made has its side as its home: of other sides it would be nobody's.
  const fixed = hasFacts(state, work);
  const isOther = !isSame(sides, was);
  const keep = (name: string) => {
    const to = isOther && { sides: sides.length > 0 ? sides : undefined };
    onDo({ do: 'say', of: 'works', ids: [work], set: { name, ...to } });
    onBack();
  };
  const own = SIDES.some((one) => isSame(one, was)) ? [] : [was];
  return (
    <NameForm first={known?.name ?? ''} deed={words.keep} onName={keep} onBack={onBack}>
      {fixed ? (
        <p>{words.oftenFixed}</p>
      ) : (
        <>
          <fieldset class="chips" aria-label={words.often}>
            {[...SIDES, ...own].map((one) => (
              <button
                type="button"
                key={one.join()}
                aria-pressed={isSame(one, sides)}
                onClick={() => setSides(one)}
              >
                {words.oftenAs(one.map(sideName))}
              </button>
            ))}
          </fieldset>
          {many && sides.length > 1 && (
            <p role="status">{words.oftenMakes(many.output.name, each, each * sides.length)}</p>
          )}
        </>
      )}
    </NameForm>
  );
}

function isSame(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((side, i) => side === other[i]);
}
