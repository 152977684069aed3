import type { HolePlace } from '../../../sewing/hole-place.ts';

const PARTS: Readonly<Record<number, string>> = {
  0.125: '1/8',
  0.25: '1/4',
  0.375: '3/8',
  0.5: 'half',
  0.625: '5/8',
  0.75: '3/4',
  0.875: '7/8',
};

/** A place on a row of holes, in words. */
function place({ hole, beyond }: HolePlace): string {
  if (beyond === 0) return `hole ${hole}`;
  const part = PARTS[beyond] ?? String(beyond);
  return beyond === 0.5
    ? `between holes ${hole} and ${hole + 1}`
    : `${part} of the way from hole ${hole} to ${hole + 1}`;
}

/** What is said of punched holes, wherever they are. */
export const holeWords = {
  place,
  rows: { one: 'One', level: 'Two, level', staggered: 'Two, staggered' },
  punch:
    'Punch on end grain or board, square to the leather, never towards or above the hand behind.',
};
