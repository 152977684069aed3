import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { Band } from '../../sewing/bands/band.ts';
import { timesWide } from '../../sewing/bands/band.ts';
import type { BandAsked } from './fields.ts';

/** Interfacing without seams: how many, and how large each. */
export interface Interfacing {
  count: number;
  long: ExactLength;
  wide: ExactLength;
}

/** What is interfaced of a band: half of it or all; of two pieces one or both. */
export function interfacingOf(
  { interfaced, make, wide }: Pick<BandAsked, 'interfaced' | 'make' | 'wide'>,
  { finished }: Band,
): Interfacing | undefined {
  if (interfaced === 'none') return undefined;
  const whole = interfaced === 'whole';
  if (make === 'two') return { count: whole ? 2 : 1, long: finished, wide };
  const all = timesWide(make) * wide;
  return { count: 1, long: finished, wide: exactLength(whole ? all : all / 2) };
}
