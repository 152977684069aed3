import { type Measure, USUAL, type UsualSource } from './sources/usual.ts';

/** What is outside the usual: which end of the range it is past, and where that end is. */
export interface Unusual {
  past: 'least' | 'most';
  /** A length in 1/8000 mm, or a plain number, as the measure is. */
  end: number;
  source: UsualSource;
}

/**
 * Whether a value is outside what its measure commonly is; undefined where it is usual.
 * Nothing at all is never unusual: where it can't be, the calculation refuses it.
 *
 * @param value a length in 1/8000 mm, or a plain number, as the measure is
 */
export function unusual(measure: Measure, value: number): Unusual | undefined {
  const { least, most, source } = USUAL[measure];
  if (value > most) return { past: 'most', end: most, source };
  return value > 0 && value < least ? { past: 'least', end: least, source } : undefined;
}
