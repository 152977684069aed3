import { decisionWords as words } from '#words/garment/garment-decision-words.ts';
import type { Cause } from '../../../garment/actions/cause.ts';
import { at, type Edit } from '../../../garment/actions/slots.ts';
import type { State } from '../../../garment/actions/state.ts';
import { homeOf, readHome } from '../../../garment/record/home.ts';
import type { Fact } from '../../../garment/record/record.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import { fieldName, numberName, quantityName } from '../said/names.ts';
import { partsText } from '../said/parts-text.ts';
import { slotName } from '../said/refused-words.ts';
import type { Telling } from '../said/told-words.ts';
import { handText } from '../said/value-text.ts';

/** What brought a conflict, and what taking it back is called. */
export interface CauseSaid {
  said: string;
  takeBack: string;
  hint: string | undefined;
}

/** Something that changed, in words: what it is now, and what it was. */
interface Turned {
  name: string;
  now: string;
  was: string;
  difference?: string;
}

export function causeSaid(telling: Telling, state: State, cause: Cause): CauseSaid {
  const turned = cause.change.edits
    .map((one) => turnedBy(telling, state, cause, one))
    .find((one) => one && one.now !== '' && one.was !== '');
  if (!turned) {
    const [first] = cause.change.edits;
    const name = slotName(telling, first?.slot ?? []);
    return { said: words.changed(name), takeBack: words.takeBackOf(name), hint: undefined };
  }
  const { name, now, was, difference } = turned;
  const goes = difference === undefined ? '' : ` ${words.where(difference)}`;
  return {
    said: `${words.isNow(name, now, was)}${goes}`,
    takeBack: words.takeBack(now),
    hint: words.takeBackHint(was),
  };
}

function turnedBy(telling: Telling, state: State, { without }: Cause, edit: Edit) {
  const { slot, before, after } = edit;
  const [map, id = '', part] = slot;
  if (map === 'facts') return ofFact(telling, state, without, slot);
  if (map === 'quantities') return ofQuantity(telling, state.answer, without.answer, id);
  if (map !== 'works' || (part !== 'fields' && part !== 'own')) return undefined;
  const [side = '', field = ''] = part === 'own' ? slot.slice(3) : ['', slot[3]];
  return {
    name: fieldName(telling, id, side, field),
    now: fieldSaid(telling, id, field, after),
    was: fieldSaid(telling, id, field, before),
  };
}

function ofQuantity(telling: Telling, now: Answer, was: Answer, id: string): Turned | undefined {
  const kind = now.sound.quantities.get(id)?.kind ?? 'length';
  const [is, before] = [now, was].map((one) => one.values.get(homeOf(id)));
  if (!is?.ok || !before?.ok) return undefined;
  if (typeof is.value !== 'number' || typeof before.value !== 'number') return undefined;
  const say = (value: number) => handText(kind, value, telling.bench);
  return {
    name: quantityName(telling, id),
    now: say(is.value),
    was: say(before.value),
    ...(kind === 'length' && { difference: say(Math.abs(is.value - before.value)) }),
  };
}

/** A measure: of a quantity, or of something made. */
function ofFact(
  telling: Telling,
  state: State,
  without: State,
  slot: readonly string[],
): Turned | undefined {
  const place = slot.slice(0, 2);
  const fact = (at(state.record, place) ?? at(without.record, place)) as Fact | undefined;
  if (!fact) return undefined;
  const { id, key } = readHome(fact.home);
  if (key === '') return ofQuantity(telling, state.answer, without.answer, id);
  const kind = state.answer.nodes.get(fact.home)?.kind ?? 'length';
  const said = (one: unknown) => {
    const its = one as Fact | undefined;
    return its ? handText(kind, its.measured ?? its.shown, telling.bench) : '';
  };
  return {
    name: numberName(telling, fact.home),
    now: said(at(state.record, place)),
    was: said(at(without.record, place)),
  };
}

/** What stands in a field: an option by its label, a length with its unit. */
function fieldSaid({ answer, ...telling }: Telling, id: string, key: string, parts: unknown) {
  const seen = answer.works.get(id);
  const gives = typeof seen?.gives === 'object' ? seen.gives : undefined;
  const draft = seen?.sides[0]?.draft ?? {};
  const field = gives?.fields.asked.fields(draft).find((one) => one.key === key);
  const text = partsText({ answer, ...telling }, parts, field?.kind === 'length');
  if (field?.kind !== 'choice') return text;
  return field.options.find(({ value }) => value === text)?.label ?? text;
}
