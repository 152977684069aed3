import type { BodyMeasureId } from './body-measures.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-people-words.ts`. */
export type PeopleQuote = 'grown-ups' | 'neck-base';

/** Between which one in a hundred is less and one in a hundred is more; of women, of men, or of both. */
export interface Spread {
  women?: readonly [least: number, most: number];
  men?: readonly [least: number, most: number];
  /** The survey took it a little otherwise than the standard does. */
  alike?: true;
}

/** How one measure stands to another: less it, or by it. */
export interface Relation extends Spread {
  of: BodyMeasureId;
  to: BodyMeasureId;
  as: 'less' | 'by';
}

/** What was measured of grown-ups: measures and differences in cm, shares as plain numbers. */
export interface Survey {
  spreads: Readonly<Partial<Record<BodyMeasureId, Spread>>>;
  relations: readonly Relation[];
}

/**
 * First and 99th percentile of measures of grown-ups, and of how one stands to another.
 *
 * Reference: computed from the records of ANSUR II, the US Army Anthropometric Survey of 2012 (public
 * release, 1,986 women and 4,082 men from 17 up). Soldiers: the upper ends are low for civilians, and no
 * child is among them. The survey's waist is at the navel, its upper arm flexed, its sleeve straight (from
 * memory of its measurer's guide).
 */
export const GROWN_UPS: Quoted<Survey, PeopleQuote> = {
  quote: 'grown-ups',
  grade: 'manual',
  value: {
    spreads: {
      height: { women: [148.3, 177.8], men: [160.2, 192.7] },
      'bust-girth': { women: [78.4, 116] },
      'chest-girth': { men: [87.3, 127.6] },
      // Of the survey's chest, at its fullest: the end below is high for it.
      'upper-chest-girth': { women: [78.4, 116], men: [87.3, 127.6], alike: true },
      'waist-girth': { women: [66.5, 111.5], men: [72.5, 121.4], alike: true },
      'natural-waist-girth': { women: [66.5, 111.5], men: [72.5, 121.4], alike: true },
      'hip-girth': { women: [86.7, 120.6], men: [86.2, 121.8] },
      'neck-girth': { women: [29.1, 38.4], men: [34.6, 46.7] },
      'neck-base-girth': { women: [32.9, 42.3], men: [38.1, 50.2] },
      'head-girth': { women: [52.1, 61.1], men: [53.8, 61.4] },
      'upper-arm-girth': { women: [24.4, 38.8], men: [28, 44.8], alike: true },
      'forearm-girth': { women: [22.5, 31.2], men: [26.3, 36.5] },
      'wrist-girth': { women: [13.8, 17.4], men: [15.6, 19.8] },
      'hand-girth': { women: [16.7, 20.7], men: [18.9, 23.7] },
      'hand-breadth': { women: [7, 8.7], men: [7.8, 9.9] },
      'thigh-girth': { women: [49.5, 75.7], men: [49.7, 77.4] },
      'lower-thigh-girth': { women: [32.9, 50.1], men: [34.3, 49.1] },
      'calf-girth': { women: [31.3, 45.2], men: [33, 46.7] },
      'ankle-girth': { women: [18.5, 25.5], men: [19.8, 26.8] },
      'heel-girth': { women: [27.7, 34.8], men: [30.7, 38.5] },
      'foot-length': { women: [21.9, 27.6], men: [24.2, 30.2] },
      'shoulder-length': { women: [11.4, 16], men: [12.5, 17.5] },
      'shoulder-breadth': { women: [32.2, 40.6], men: [37.1, 46.3] },
      'shoulder-girth': { women: [91.5, 115.6], men: [103.9, 134.1] },
      'back-width': { women: [33.1, 45.7], men: [38.1, 52.3] },
      'back-waist-length': { women: [36.5, 49.4], men: [41.5, 54.8], alike: true },
      'cervical-to-wrist': { women: [71.9, 89.7], men: [80.5, 99], alike: true },
      'arm-length': { women: [47.8, 61.1], men: [52.3, 67], alike: true },
      'inside-leg-length': { women: [68.5, 88.8], men: [74.7, 96] },
      'total-crotch-length': { women: [52.7, 72.3], men: [52.3, 73.9], alike: true },
      'trunk-circumference': { women: [139.4, 174.5], men: [146.8, 188] },
      'cervical-height': { women: [126.3, 153.3], men: [137.3, 167.7] },
      'arm-span': { women: [148.2, 186], men: [162.8, 202.9] },
    },
    relations: [
      {
        of: 'cervical-height',
        to: 'height',
        as: 'by',
        women: [0.84, 0.872],
        men: [0.847, 0.879],
      },
      {
        of: 'inside-leg-length',
        to: 'height',
        as: 'by',
        women: [0.447, 0.515],
        men: [0.45, 0.519],
      },
      {
        of: 'back-waist-length',
        to: 'height',
        as: 'by',
        women: [0.231, 0.297],
        men: [0.243, 0.306],
        alike: true,
      },
      {
        of: 'arm-length',
        to: 'height',
        as: 'by',
        women: [0.31, 0.361],
        men: [0.313, 0.363],
        alike: true,
      },
      { of: 'head-girth', to: 'neck-girth', as: 'less', women: [17.5, 28.5], men: [11.6, 22.5] },
      { of: 'head-girth', to: 'neck-base-girth', as: 'less', women: [13.8, 24.3], men: [8, 19] },
      {
        of: 'hip-girth',
        to: 'waist-girth',
        as: 'less',
        women: [0.9, 28.9],
        men: [-6.3, 19.3],
        alike: true,
      },
      {
        of: 'waist-girth',
        to: 'hip-girth',
        as: 'by',
        women: [0.72, 0.99],
        men: [0.8, 1.06],
        alike: true,
      },
      { of: 'arm-span', to: 'height', as: 'by', women: [0.96, 1.09], men: [0.97, 1.1] },
      { of: 'bust-girth', to: 'waist-girth', as: 'less', women: [-4.9, 20.3], alike: true },
      { of: 'chest-girth', to: 'waist-girth', as: 'less', men: [-1.6, 23.3], alike: true },
      { of: 'bust-girth', to: 'hip-girth', as: 'by', women: [0.81, 1.07] },
      { of: 'chest-girth', to: 'hip-girth', as: 'by', men: [0.93, 1.16] },
      { of: 'neck-girth', to: 'bust-girth', as: 'by', women: [0.304, 0.4] },
      { of: 'neck-girth', to: 'chest-girth', as: 'by', men: [0.333, 0.421] },
      { of: 'hand-girth', to: 'wrist-girth', as: 'less', women: [1.8, 4.6], men: [2.1, 5.2] },
      {
        of: 'wrist-girth',
        to: 'hand-girth',
        as: 'by',
        women: [0.765, 0.903],
        men: [0.766, 0.898],
      },
      { of: 'heel-girth', to: 'ankle-girth', as: 'less', women: [6.1, 12.3], men: [8.8, 14.4] },
    ],
  },
};

/**
 * How many of them have a head that passes round the base of the neck: none.
 *
 * Reference: the same records.
 */
export const HEADS_THAT_PASS: Quoted<0, PeopleQuote> = {
  value: 0,
  quote: 'neck-base',
  grade: 'manual',
};
