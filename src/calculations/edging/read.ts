import type { Bench } from '../../calculation/bench.ts';
import type { Draft } from '../../calculation/calculation.ts';
import type { DraftReader } from '../../calculation/draft.ts';
import { countOf, lengthsOf, numberOf } from '../../calculation/draft-numbers.ts';
import { isGiven } from '../../calculation/fields.ts';
import type { Length } from '../../lengths/length.ts';
import type { StripInput } from '../../sewing/strip.ts';
import { edgingFields, fitOf, middleOf, rowsOf } from './fields.ts';

/** What was typed of a strip, its iron and its pieces. */
export interface EdgingInput {
  strip: StripInput;
  teeth: number | undefined;
  stock: Length | undefined;
  crossings: readonly Length[];
}

/** Reads only the fields that are shown; undefined when something could not be read. */
export function edgingInput(
  read: DraftReader,
  draft: Draft,
  bench: Bench,
): EdgingInput | undefined {
  const shown = new Set(edgingFields(draft).map(({ key }) => key));
  const maybe = (key: string) => (shown.has(key) ? read.maybeLength(key) : undefined);
  const list = (key: string) =>
    shown.has(key) && isGiven(draft, key) ? lengthsOf(read, key, bench) : [];
  const needed = (['length', 'pitch', 'width', 'margin', 'hole'] as const).map(read.length);
  const angle = shown.has('angle') ? numberOf(read, 'angle') : 90;
  const rest = { end: maybe('end'), radius: maybe('radius'), corners: list('corners') };
  const teeth = isGiven(draft, 'teeth') ? countOf(read, 'teeth') : undefined;
  const more = { teeth, stock: maybe('stock'), crossings: list('crossings') };
  if (read.faults.length > 0 || angle === undefined) return undefined;
  // What could not be read has left a fault.
  const [length, pitch, width, margin, hole] = needed as [Length, Length, Length, Length, Length];
  const strip = {
    length,
    pitch,
    width,
    margin,
    hole,
    rows: rowsOf(draft),
    fit: fitOf(draft),
    middle: shown.has('middle') ? middleOf(draft) : 'any',
    angle,
    ...rest,
  } as const;
  return { strip, ...more };
}
