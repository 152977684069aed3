import type { FieldSpec } from '../../calculation/field-spec.ts';
import { startIn } from '../../calculation/schema.ts';
import { readHome } from '../record/home.ts';
import type { Parts } from '../record/record.ts';
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
  const { fields, own = {} } = seen.work;
  if (Object.keys(own).length > 0) return false;
  const typed = Object.entries(seen.outputs.fields.specs).filter(([, { choices }]) => !choices);
  if (!typed.some(([, { start = '' }]) => start !== '')) return false;
  if (!typed.every(([key, spec]) => isStart(spec, fields[key]))) return false;
  return ![...sound.facts.keys(), ...sound.before.keys()].some((home) => readHome(home).id === id);
}

function isStart({ start = '' }: FieldSpec<unknown>, parts: Parts = []): boolean {
  const [part, ...more] = parts;
  if (!part) return start === '';
  return more.length === 0 && 'text' in part && part.text === startIn(start, part.unit);
}
