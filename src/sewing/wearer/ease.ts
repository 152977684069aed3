import { type ExactLength, inches, type Length } from '../../lengths/length.ts';
import {
  BODICE_EASE,
  DRESS_WAIST_EASE,
  type EaseQuote,
  type EaseRange,
  HIP_EASE,
  LARGER_MINIMA,
  SHIRT_CHEST_EASE,
  SKIRT_WAIST_EASE,
  SMALLER_MINIMA,
  THIGH_EASE,
  TROUSER_SEAT_EASE,
  TROUSER_WAIST_EASE,
  UPPER_ARM_EASE,
} from '../sources/ease.ts';
import type { Quoted } from '../sources/published.ts';

/** Where ease is published for. */
export const EASE_PLACES = [
  'bust',
  'dress-waist',
  'skirt-waist',
  'hip',
  'shirt-chest',
  'trouser-waist',
  'trouser-seat',
  'thigh',
  'upper-arm',
  'other',
] as const;
export type EasePlace = (typeof EASE_PLACES)[number];

/** What one source gives for a place. */
export interface PublishedEase {
  quote: EaseQuote;
  least: Length;
  most: Length | undefined;
}

const minimum = (
  { quote, value }: typeof LARGER_MINIMA,
  of: 'bust' | 'waist' | 'hip',
): PublishedEase => ({ quote, least: inches(value[of]), most: undefined });

const range = ({ quote, value: { least, most } }: Quoted<EaseRange, EaseQuote>): PublishedEase => ({
  quote,
  least: inches(least),
  most: most === undefined ? undefined : inches(most),
});

const minima = (of: 'bust' | 'waist' | 'hip') => [
  minimum(SMALLER_MINIMA, of),
  minimum(LARGER_MINIMA, of),
];

/** What is published of wearing ease at a place, in woven cloth; several where sources differ. */
export function publishedEase(place: EasePlace): readonly PublishedEase[] {
  switch (place) {
    case 'bust':
      return [range(BODICE_EASE), ...minima('bust')];
    case 'dress-waist':
      return [range(DRESS_WAIST_EASE), ...minima('waist')];
    case 'skirt-waist':
      return [range(SKIRT_WAIST_EASE), ...minima('waist')];
    case 'hip':
      return [range(HIP_EASE), ...minima('hip')];
    case 'shirt-chest':
      return [range(SHIRT_CHEST_EASE)];
    case 'trouser-waist':
      return [range(TROUSER_WAIST_EASE)];
    case 'trouser-seat':
      return [range(TROUSER_SEAT_EASE)];
    case 'thigh':
      return [range(THIGH_EASE)];
    case 'upper-arm':
      return [range(UPPER_ARM_EASE)];
    case 'other':
      return [];
  }
}

/**
 * How an ease stands to what is published: less than nothing, under every least that is given, between the
 * leasts of sources that differ, or as much as all of them ask. Cloth that stretches needs little or none.
 */
export type EaseVerdict = 'none' | 'under' | 'disputed' | 'enough' | 'unpublished';

export function easeVerdict(
  place: EasePlace,
  cloth: 'woven' | 'stretch',
  ease: ExactLength,
): EaseVerdict {
  if (cloth === 'stretch') return 'enough';
  if (ease < 0) return 'none';
  const leasts = publishedEase(place).map(({ least }) => least);
  if (leasts.length === 0) return 'unpublished';
  if (ease < Math.min(...leasts)) return 'under';
  return ease < Math.max(...leasts) ? 'disputed' : 'enough';
}
