import { namelessWords } from '#words/garment/garment-trouble-words.ts';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { Offered } from '../../../garment/actions/links-for.ts';
import { todays } from '../../../garment/actions/put.ts';
import type { State } from '../../../garment/actions/state.ts';
import type { FieldPlace } from '../../../garment/actions/typing.ts';
import { linkOf } from '../../../garment/record/parts.ts';
import { linkName } from '../said/names.ts';
import { foundText, offText } from '../said/value-text.ts';
import type { LinkName } from './link-text.ts';
import type { OpenField } from './open-work.ts';

/** What a number of the garment is now, with how sure it is. */
export function takenText(
  {
    kind,
    value,
    plusMinus = 0,
    bound,
  }: Pick<Offered, 'kind' | 'value' | 'bound'> & { plusMinus?: number },
  bench: Bench,
): string {
  if (value === undefined) return words.waiting;
  if (typeof value === 'object') return words.marks(value.marks.length);
  const text = foundText(kind, value, bench, bound && { bound });
  return plusMinus > 0 ? words.plusMinus(text, offText(kind, plusMinus, bench)) : text;
}

/** What each letter of a field is called, with its number of now. */
export function namesIn(
  state: State,
  { taken, place }: OpenField<FieldPlace>,
  bench: Bench,
): LinkName[] {
  const { answer } = state;
  return taken.map((part) => {
    const now = 'link' in part ? todays(state, part, ('work' in place && place.side) || '') : part;
    const link = linkOf(part);
    const name = link ? linkName({ answer }, link) : namelessWords.output;
    const number = 'put' in now ? takenText({ ...now, value: now.put }, bench) : words.waiting;
    return { name: 'link' in part ? name : words.from(name), number };
  });
}
