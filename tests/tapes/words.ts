import type { Random } from './random.ts';

const STARTS = ['BRE', 'TUL', 'MOR', 'FEN', 'GOS', 'LAR', 'PEN', 'SIL', 'KOR', 'DAN'];
const ENDS = ['ULO', 'ATA', 'IBE', 'OGU', 'ENO', 'IRA', 'OLF', 'UME'];

/** A word that means nothing, as a maker's name would stand on a tape. */
export function inventedWord(random: Random): string {
  return random.pick(STARTS) + random.pick(ENDS);
}

/** A line of nonsense text, with numbers in it. */
export function inventedLine(random: Random, words: number): string {
  return Array.from({ length: words }, () =>
    random.chance(0.2) ? `${random.whole(1, 199)}` : inventedWord(random),
  ).join(' ');
}
