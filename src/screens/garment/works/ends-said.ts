import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import { readHome } from '../../../garment/record/home.ts';
import type { Value } from '../../../garment/work-out/result.ts';
import { fieldName, numberName, quantityName } from '../said/names.ts';
import type { Telling } from '../said/told-words.ts';
import type { Gives } from './work-numbers.ts';

/** So many are said: more would hide what is to be done. */
const MOST_SAID = 3;

/**
 * Where a length that was read or measured makes another count of something at an end of its ±, or
 * leaves no answer there: which, and at which end. Each end once, of the first number it changes.
 */
export function endsSaid(telling: Telling, gives: readonly Gives[]): string[] {
  const said = new Map<string, string>();
  for (const { output, result } of gives) {
    if (!result.ok || !(output.kind === 'run' || output.kind === 'count')) continue;
    const now = countOf(result.value);
    for (const [reading, pair] of Object.entries(result.ends)) {
      for (const [end, value] of pair.entries()) {
        const key = `${end} ${reading}`;
        const other = value === null ? undefined : countOf(value);
        if (other === now || said.has(key)) continue;
        said.set(
          key,
          words.atEnd(output.name, now, other, readingName(telling, reading), end === 1),
        );
      }
    }
  }
  return [...said.values()].slice(0, MOST_SAID);
}

function countOf(value: Value): number {
  return typeof value === 'object' ? value.marks.length : value;
}

/** What was read: a number of the garment, something measured, or what stands in a field. */
function readingName(telling: Telling, reading: string): string {
  const { sound } = telling.answer;
  const [kind, ...rest] = reading.split(':');
  if (kind === 'q') return quantityName(telling, rest.join(':'));
  if (kind === 'f') {
    const id = rest.join(':');
    const made = [...sound.facts].find(([, all]) => all.some((one) => one.id === id));
    return made ? numberName(telling, made[0]) : words.otherReadings;
  }
  if (kind !== 'r' && kind !== 'p') return words.otherReadings;
  const [field = ''] = rest.slice(-2);
  const { id, side } = readHome(rest.slice(0, -2).join(':'));
  return fieldName(telling, id, side, field);
}
