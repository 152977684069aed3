import type { FieldSpec } from '../../calculation/field-spec.ts';
import { startIn } from '../../calculation/schema.ts';
import { readHome } from '../record/home.ts';
import { type FieldText, NO_TEXT } from './field-text.ts';
import type { Answer } from './work-out.ts';

/**
 * Whether a work stands on the numbers its calculation begins with, and on nothing else: not one of
 * them was typed, read or linked, none is said to be final, and nothing of it is made. What it gives
 * is an example then, and none of this garment's. An invented garment is an example as it is.
 */
export function isUntouched(
  { works, sound }: Pick<Answer, 'works' | 'sound'>,
  id: string,
): boolean {
  const seen = works.get(id);
  if (!seen?.outputs || seen.work.final || sound.invented) return false;
  const typed = Object.entries(seen.outputs.fields.specs).filter(([, { choices }]) => !choices);
  if (!typed.some(([, { start = '' }]) => start !== '')) return false;
  const all = seen.sides.every(({ texts }) =>
    typed.every(([key, spec]) => isStart(spec, texts.get(key))),
  );
  if (!all) return false;
  return ![...sound.facts.keys(), ...sound.before.keys()].some((home) => readHome(home).id === id);
}

function isStart({ start = '' }: FieldSpec<unknown>, typed: FieldText = NO_TEXT): boolean {
  const { text, how, taken, trouble } = typed;
  return !trouble && taken.length === 0 && text === startIn(start, how.unit);
}
