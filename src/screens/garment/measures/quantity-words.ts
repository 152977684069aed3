import { measuresWords as words } from '#words/garment/garment-measures-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { homeOf } from '../../../garment/record/home.ts';
import type { Quantity } from '../../../garment/record/record.ts';
import { plusMinus } from '../../../garment/work-out/doubt.ts';
import type { Result } from '../../../garment/work-out/result.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import { partsText } from '../said/parts-text.ts';
import { isTaken, sureQuantity } from '../said/quantity-text.ts';
import { type Telling, troubleWords } from '../said/told-words.ts';
import { offText, sureText } from '../said/value-text.ts';

/** The number of a quantity as text, with how sure it is; a dash where there is none. */
export function quantityNumber(
  { kind, parts }: Pick<Quantity, 'kind' | 'parts'>,
  result: Result | undefined,
  bench: Bench,
): string {
  if (!result?.ok) return words.noNumber;
  if (typeof result.value === 'object') return words.marks(result.value.marks.length);
  const off = plusMinus(result);
  if (off === 0) return sureQuantity({ kind, parts }, result.value, bench);
  return words.plusMinus(...sureText(kind, result.value, off, bench));
}

/** Where a quantity is from, and what is said of it; or why it has no number. */
export function quantitySource(telling: Telling, id: string, quantity: Quantity): string {
  const { answer } = telling;
  const result = answer.values.get(homeOf(id));
  const why = result?.ok === false ? troubleWords(telling, homeOf(id), result.trouble) : '';
  return words.source([
    why || originWords(telling, id, quantity),
    quantity.body ? words.body : '',
    quantity.final ? words.final : '',
    result?.ok && result.undecided ? words.undecided : '',
  ]);
}

function originWords(telling: Telling, id: string, quantity: Quantity) {
  const { parts, kind, lay, plusMinus: off = 0 } = quantity;
  if (measureOf(telling.answer, id)) return words.measured;
  if (lay !== undefined) return words.laid;
  if (isTaken(parts)) return words.sum(partsText(telling, parts, kind === 'length'));
  return off > 0 ? words.read(offText(kind, off, telling.bench)) : words.typed;
}

/** The id of what was measured of a quantity; undefined while it is typed, read or a sum. */
export function measureOf({ sound }: Answer, id: string): string | undefined {
  return sound.facts.get(homeOf(id))?.at(-1)?.id;
}
