import { useMemo } from 'preact/hooks';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { Rich } from '../../../controls/rich.tsx';
import { linksFor, type Offered } from '../../../garment/actions/links-for.ts';
import type { State } from '../../../garment/actions/state.ts';
import { isFactorNext } from '../../../garment/actions/typed-parts.ts';
import type { FieldPlace } from '../../../garment/actions/typing.ts';
import { linkName } from '../said/names.ts';
import type { OpenField } from './open-work.ts';
import { takenText } from './taken-text.ts';

interface Props {
  state: State;
  field: OpenField<FieldPlace>;
  bench: Bench;
  onTake: (offered: Offered) => void;
  onBack: () => void;
}

/** All that a field can take of the garment, with its number of now: one press takes it. */
export function FromGarment({ state, field, bench, onTake, onBack }: Props) {
  const factor = isFactorNext(field.text);
  const offered = useMemo(() => linksFor(state, field.place, factor), [state, field.place, factor]);
  return (
    <fieldset class="choices offered" data-hand={bench.hand} aria-label={words.fromGarment}>
      {offered.length === 0 && <p>{words.nothingFits}</p>}
      {offered.map((one) => (
        <button type="button" key={JSON.stringify(one.link)} onClick={() => onTake(one)}>
          <span>{nameOf(state, one)}</span>
          <b>
            <Rich text={takenText(one, bench)} />
          </b>
        </button>
      ))}
      <button type="button" class="go" onClick={onBack}>
        {words.back}
      </button>
    </fieldset>
  );
}

function nameOf({ answer }: State, { link, of }: Offered): string {
  if (of !== 'total') return linkName({ answer }, link);
  const { of: _, ...bare } = link as Extract<Offered['link'], { work: string }>;
  return `${linkName({ answer }, bare)}, ${words.total}`;
}
