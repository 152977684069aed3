import { cm, type Demo, from, ofBody, own, typed } from './demo.ts';

/**
 * A gathered skirt with a waistband and a placket, for a market stall. Invented, as is its wearer. Its waistband
 * goes by the waist, its placket by what has to pass over the hips, its width by the band it is gathered to.
 * Of it the waistband is cut and marked.
 */
export const SKIRT: Demo = {
  quantities: {
    waist: ofBody(1, '72', 'natural-waist-girth'),
    hips: ofBody(2, '99', 'hip-girth'),
    long: own(3, '62'),
    cloth: own(4, '140'),
  },
  works: [
    {
      id: 'band',
      calculation: 'band',
      fields: {
        ...typed('what=waist&ease=2&opens=side&underlap=3&wide=3.5&seam=1.5&interfaced=half'),
        girth: from({ quantity: 'waist' }),
      },
    },
    {
      id: 'placket',
      calculation: 'placket',
      fields: {
        ...typed('way=lap&by=passes&ease=2&width=2&seam=0.6&extra=1.3'),
        body: from({ quantity: 'hips' }),
        edge: from({ work: 'band', output: 'round' }),
      },
    },
    { id: 'hem', calculation: 'hem', fields: typed('depth=3&style=unequal&turn=1') },
    {
      id: 'gathers',
      calculation: 'gathers',
      fields: {
        ...typed('by=ratio&ratio=2.2&ring=closed&parts=4&seam=1.5&top=1.5'),
        edge: from({ work: 'band', output: 'round' }),
        cloth: from({ quantity: 'cloth' }),
        deep: from({ quantity: 'long' }),
        hem: from({ work: 'hem', output: 'allowance' }),
      },
    },
    {
      id: 'hole',
      calculation: 'buttonhole',
      fields: typed('diameter=24 L&thickness=3 mm&holeWay=horizontal'),
    },
    {
      id: 'thread',
      calculation: 'thread',
      fields: {
        ...typed('stitch=lock&by=table&end=3&waste=15'),
        seams: from(
          { work: 'gathers', output: 'strip' },
          { work: 'gathers', output: 'strip' },
          { work: 'band', output: 'long' },
          { work: 'band', output: 'long' },
        ),
      },
    },
  ],
  cloth: { said: { width: cm(140) }, lay: {} },
  made: ['band'],
};
