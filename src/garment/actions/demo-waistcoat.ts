import { mm } from '../../lengths/length.ts';
import { type Demo, from, ofBody, own, typed } from './demo.ts';

/**
 * A waistcoat for a village brass band. Invented, as is its wearer. Its side seams and front hems
 * are made, and three of its hooks: the third lower than asked, and the rest share it.
 */
export const WAISTCOAT: Demo = {
  quantities: {
    front: own(1, '46.3'),
    round: own(2, '62.4', { plusMinus: mm(2) }),
    chest: ofBody(3, '98', 'chest-girth'),
    waist: ofBody(4, '88.5', 'natural-waist-girth'),
    nape: ofBody(5, '47', 'back-waist-length'),
  },
  works: [
    { id: 'side', calculation: 'seam', fields: typed('what=finish&given=1.5&finish=french') },
    { id: 'fronts', calculation: 'hem', fields: typed('depth=2&style=unequal&turn=0.7') },
    {
      id: 'back',
      calculation: 'hem',
      fields: typed('depth=2&turn=0.7&shape=rise&chord=40&rise=5'),
    },
    {
      id: 'hooks',
      calculation: 'closures',
      fields: { ...typed('count=7&top=1.2&bottom=2.5'), opening: from({ quantity: 'front' }) },
    },
    {
      id: 'strip',
      calculation: 'edging',
      fields: {
        ...typed('pitch=8 mm&rows=one&fit=fill&end=0.4'),
        length: from({ quantity: 'round' }),
      },
    },
    {
      id: 'lace',
      calculation: 'lacing',
      fields: {
        ...typed('kind=outside&pitch=8 mm&start=middle&tail=10'),
        holes: from({ work: 'strip', output: 'count' }),
        margin: from({ work: 'strip', output: 'margin' }),
      },
    },
    {
      id: 'fit',
      calculation: 'fit',
      fields: { ...typed('of=shirt-chest&ease=8'), body: from({ quantity: 'chest' }) },
    },
  ],
  made: ['side', 'fronts'],
  row: {
    ...{ work: 'hooks', output: 'marks', way: 'spread' },
    marks: [undefined, undefined, mm(158)],
  },
};
