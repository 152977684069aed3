import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { beyondOf, type Way } from '../../sewing/pieces/piece-input.ts';
import type { PieceFound } from './read.ts';

/** What was cut gives less than is wanted. */
export interface Lack {
  way: Way;
  by: ExactLength;
  wanted: Length;
  /** What its edges take that way. */
  takes: ExactLength;
}

/** The ways in which what was cut gives too little. */
export function lacks({ asked, input, plan }: PieceFound): Lack[] {
  if (input.given === 'finished') return [];
  const ways = [
    ['width', plan.across, asked.wantedWidth],
    ['length', plan.along, asked.wantedLength],
  ] as const;
  return ways.flatMap(([way, sized, wanted]) => {
    if (!sized || wanted === undefined || wanted <= sized.gives) return [];
    const takes = exactLength(sized.times * sized.takes);
    return [{ way, by: exactLength(wanted - sized.gives), wanted, takes }];
  });
}

/** Whether its sides stand square on its bottom. */
export function isSquare({ input: { angle } }: PieceFound): boolean {
  return angle === 90;
}

/** Whether no edge takes anything. */
export function takesNothing({ input }: PieceFound): boolean {
  return Object.values(beyondOf(input)).every((one) => one === 0);
}
