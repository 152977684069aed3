import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-ease-words.ts`. */
export type EaseQuote =
  | 'bodice'
  | 'dress-waist'
  | 'skirt-waist'
  | 'hip'
  | 'shirt-chest'
  | 'trouser-waist'
  | 'trouser-seat'
  | 'thigh'
  | 'upper-arm'
  | 'minima-larger'
  | 'minima-smaller'
  | 'stretch';

/** Wearing ease all round in inches: the least, and the most where one is given. */
export interface EaseRange {
  least: number;
  most?: number;
}

type Range = Quoted<EaseRange, EaseQuote>;

/** Of a bodice at the bust, women, woven cloth. Reference: Central Washington University, costume text, ch. 16. */
export const BODICE_EASE: Range = {
  value: { least: 1.5, most: 2 },
  quote: 'bodice',
  grade: 'manual',
};

/** Of a dress at the waist. Reference: the same. */
export const DRESS_WAIST_EASE: Range = {
  value: { least: 0.75, most: 1 },
  quote: 'dress-waist',
  grade: 'manual',
};

/** Of skirt or trousers at the waist. Reference: the same. */
export const SKIRT_WAIST_EASE: Range = {
  value: { least: 0.5, most: 0.75 },
  quote: 'skirt-waist',
  grade: 'manual',
};

/** At the hip. Reference: the same. */
export const HIP_EASE: Range = { value: { least: 2, most: 2.75 }, quote: 'hip', grade: 'manual' };

/** Of a man's shirt at the chest: fitted up to 2 1/2, classic up to 3. Reference: the same. */
export const SHIRT_CHEST_EASE: Range = {
  value: { least: 1.5, most: 3 },
  quote: 'shirt-chest',
  grade: 'manual',
};

/** Of a man's trousers at the waist. Reference: the same. */
export const TROUSER_WAIST_EASE: Range = {
  value: { least: 0.75, most: 1 },
  quote: 'trouser-waist',
  grade: 'manual',
};

/** Of a man's trousers at the seat. Reference: the same. */
export const TROUSER_SEAT_EASE: Range = {
  value: { least: 1.5, most: 2 },
  quote: 'trouser-seat',
  grade: 'manual',
};

/** Of a man's trousers at the thigh. Reference: the same. */
export const THIGH_EASE: Range = { value: { least: 1 }, quote: 'thigh', grade: 'manual' };

/** Of a woven sleeve at the upper arm. Reference: threadsmagazine.com, 2021; designloft.blogspot.com, 2008. */
export const UPPER_ARM_EASE: Range = { value: { least: 2 }, quote: 'upper-arm', grade: 'page' };

/** Least ease of bust, waist and hip, of two sources quoted on luke.lol: the larger ones. */
export const LARGER_MINIMA: Quoted<{ bust: number; waist: number; hip: number }, EaseQuote> = {
  value: { bust: 2.5, waist: 1, hip: 3 },
  quote: 'minima-larger',
  grade: 'page',
};

/** The smaller ones. Reference: the same. */
export const SMALLER_MINIMA: Quoted<{ bust: number; waist: number; hip: number }, EaseQuote> = {
  value: { bust: 2, waist: 1, hip: 2 },
  quote: 'minima-smaller',
  grade: 'page',
};

/** Of cloth that stretches: little, or none. Reference: the costume text. */
export const STRETCH_EASE: Quoted<0, EaseQuote> = { value: 0, quote: 'stretch', grade: 'manual' };
