import type { ButtonholeQuote } from '../../../sewing/sources/buttonholes.ts';
import type { Quote } from './published-words.ts';

/** What is published of buttonholes, and of cloth past the centre line. */
export const buttonholeQuotes: Readonly<Record<ButtonholeQuote, Quote>> = {
  'buttonhole-as-the-button': {
    says: 'length = diameter + thickness',
    source: 'a teaching page on buttonholes',
  },
  'buttonhole-and-an-eighth': {
    says: 'length = diameter + thickness + 1/8 in',
    source: 'two teaching pages, 2008 and 2010',
  },
  'buttonhole-by-girth': {
    says: 'length = half the girth + 1/8 in',
    source: 'Guide C-231, extension sheet',
  },
  'buttonhole-diameter': {
    says: 'length = diameter',
    source: 'Encyclopedia of Needlework, handbook',
  },
  'buttonhole-round': {
    says: 'length = 1 1/4 × diameter, for a round button',
    source: 'Textiles and Clothing, textbook',
  },
  'buttonhole-diameter-and-an-eighth': {
    says: 'length = diameter + 1/8 in',
    source: 'a sewing reference book, chapter 7',
  },
  'buttonhole-past-centre': {
    says: 'a horizontal buttonhole starts 1/8 in (3 mm) past the centre line toward the edge',
    source: 'Guide C-231, extension sheet',
  },
  'buttonhole-above-button': {
    says: 'a vertical buttonhole lies on the centre line, the button within its top 1/8 in',
    source: 'a sewing reference book, chapter 7; tailoring standards, p. 24',
  },
  'overlap-half-and-quarter': {
    says: 'at least half the diameter + 1/4 in',
    source: 'tailoring standards, p. 24',
  },
  'overlap-three-quarters': {
    says: 'at least 3/4 of the diameter',
    source: 'a sewing reference book, chapter 7',
  },
  'overlap-diameter': {
    says: 'at least the diameter',
    source: 'a teaching page on button stands',
  },
  'overlap-small-button': {
    says: '1 1/2 × the diameter, for buttons of about 3/8 in',
    source: 'a teaching page on button stands',
  },
};
