import type { EaseQuote } from '../../../sewing/sources/ease.ts';
import type { Quote } from './published-words.ts';

const course = 'a costume course’s text, chapter 16';
const quoted = 'a page that quotes two sources';

/** What is published of wearing ease. */
export const easeQuotes: Readonly<Record<EaseQuote, Quote>> = {
  bodice: { says: 'a bodice has 1 1/2 to 2 in at the bust, in woven cloth', source: course },
  'dress-waist': { says: 'a dress has 3/4 to 1 in at the waist', source: course },
  'skirt-waist': { says: 'skirts and trousers have 1/2 to 3/4 in at the waist', source: course },
  hip: { says: '2 to 2 3/4 in at the hip', source: course },
  'shirt-chest': {
    says: 'a man’s shirt has 1 1/2 to 2 1/2 in at the chest fitted, up to 3 in classic',
    source: course,
  },
  'trouser-waist': { says: 'a man’s trousers have 3/4 to 1 in at the waist', source: course },
  'trouser-seat': { says: 'a man’s trousers have 1 1/2 to 2 in at the seat', source: course },
  thigh: { says: 'a man’s trousers have at least 1 in at the thigh', source: course },
  'upper-arm': {
    says: 'a woven sleeve is at least 2 in wider than the upper arm',
    source: 'a sewing magazine’s page, 2021; a drafting page, 2008',
  },
  'minima-larger': {
    says: 'at least 2 1/2 in at the bust, 1 in at the waist, 3 in at the hip',
    source: quoted,
  },
  'minima-smaller': {
    says: 'at least 2 in at the bust, 1 in at the waist, 2 in at the hip',
    source: quoted,
  },
  stretch: { says: 'cloth that stretches has little or no ease', source: course },
};
