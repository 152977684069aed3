import { TAPE_CLASSES } from '../sources/tape-classes.ts';

/**
 * How far off a new tape itself may be at a length, in mm either way, by its class.
 * Source: `TAPE_CLASSES`. A worn or stretched cloth tape may be off by more.
 *
 * @param mm the length read, 0 or more
 */
export function tapeTolerance(mm: number): Readonly<Record<'II' | 'III', number>> {
  const metres = Math.max(1, Math.ceil(mm / 1000));
  const { II, III } = TAPE_CLASSES.value;
  // In tenths: 0.3 + 0.2 × 2 is to be 0.7, not nearly so.
  const most = ({ fixed, perMetre }: typeof II) =>
    Math.round(10 * fixed + 10 * perMetre * metres) / 10;
  return { II: most(II), III: most(III) };
}
