import { cm, cutAlong, type Demo, from, ofBody, ofPieces, own, text, typed } from './demo.ts';

/** Round the chest, with ease. */
const ROUND = from({ work: 'fit', output: 'wanted' });
const BOTH = { sides: ['left', 'right'] } as const;

/**
 * Its cut pieces, with their allowances, as large as their works cut them. By hand: necklines come to 9 and 12 round
 * each half, shoulders to 15.5, the front edge to 71 between neck and hem; the cap of a sleeve is as long as the armhole.
 */
const PIECES = ofPieces({
  back: cutAlong(
    [0, 22.8],
    [4.5, 8, -1.5],
    [30, 0],
    [78.9, 0],
    [78.9, 63],
    [30, 63, -1.5],
    [4.5, 55],
    [0, 40.2, -2],
  ),
  fronts: {
    ...cutAlong([5, 0, -1.5], [0, 10.5], [5, 25.2, -2], [30, 34.5], [78.9, 34.5], [78.9, 0]),
    pair: true,
  },
  arms: {
    ...cutAlong(
      [10, 0],
      [61, 7],
      [61, 44],
      [10, 51, -0.8],
      [3.5, 39, 0.85],
      [0, 25.5, 0.85],
      [3.5, 12, -0.8],
    ),
    pair: true,
  },
});

/**
 * A shirt with sleeves and cuffs, for a choir. Invented, as is its wearer. Its pieces go by the chest with ease, its
 * cuffs by the wrist, done left and right; each sleeve's edge is gathered to its cuff, and buttonholes follow the
 * buttons. Of it the seams are felled.
 */
export const SHIRT: Demo = {
  quantities: {
    chest: ofBody(1, '104', 'chest-girth'),
    wrist: ofBody(2, '17.5', 'wrist-girth'),
    front: own(3, '71'),
    neck: own(4, '12'),
    nape: own(5, '9'),
    sleeve: own(6, '34'),
  },
  works: [
    {
      id: 'fit',
      calculation: 'fit',
      fields: { ...typed('of=shirt-chest&ease=16'), body: from({ quantity: 'chest' }) },
    },
    {
      id: 'back',
      calculation: 'piece',
      fields: {
        ...typed('length=76&top=1.5&bottom=1.4&side=1.5&count=1'),
        width: [...ROUND, text(' ÷ 2')],
      },
    },
    {
      id: 'fronts',
      calculation: 'piece',
      fields: {
        ...typed('length=76&top=1.5&bottom=1.4&side=1.5&count=2'),
        width: [...ROUND, text(' ÷ 4 + 1.5')],
      },
    },
    {
      id: 'arms',
      calculation: 'piece',
      fields: typed('width=48&length=58&top=1.5&bottom=1.5&side=1.5&count=2'),
    },
    {
      id: 'seams',
      calculation: 'seam',
      fields: typed('what=finish&given=1.5&finish=felled&under=0.3&turn=0.6'),
    },
    {
      id: 'collar',
      calculation: 'collar',
      fields: {
        ...typed('deep=7&stand=3&past=1.5&seam=1&under=1 mm'),
        front: from({ quantity: 'neck' }),
        back: from({ quantity: 'nape' }),
      },
    },
    {
      id: 'cuffs',
      calculation: 'band',
      ...BOTH,
      fields: {
        ...typed('what=cuff&ease=4&opens=back&overlap=0&underlap=2&wide=6&make=fold&seam=1'),
        girth: from({ quantity: 'wrist' }),
        edge: from({ quantity: 'sleeve' }),
      },
    },
    {
      id: 'plackets',
      calculation: 'placket',
      ...BOTH,
      fields: typed('way=lap&by=given&open=11&width=1.5&seam=0.6&extra=1.3'),
    },
    {
      id: 'sleeves',
      calculation: 'gathers',
      ...BOTH,
      fields: {
        ...typed('by=strip&ring=open&ends=1&parts=4&top=1.5&cloth=&deep='),
        edge: from({ work: 'cuffs', output: 'round' }),
        strip: from({ quantity: 'sleeve' }),
      },
    },
    {
      id: 'buttons',
      calculation: 'closures',
      fields: {
        ...typed('count=7&top=1.2&bottom=12&item=button&width=1.1'),
        opening: from({ quantity: 'front' }),
      },
    },
    {
      id: 'holes',
      calculation: 'buttonhole',
      fields: {
        ...typed('diameter=18 L&thickness=3 mm&holeWay=vertical'),
        follow: from({ work: 'buttons', output: 'marks' }),
      },
    },
    { id: 'hem', calculation: 'hem', fields: typed('depth=0.7&style=narrow&turn=0.7') },
    {
      id: 'thread',
      calculation: 'thread',
      fields: {
        ...typed('stitch=lock&by=table&end=3&waste=15'),
        seams: from({ quantity: 'chest' }, { quantity: 'front' }, { quantity: 'front' }),
      },
    },
  ],
  cloth: { said: { width: cm(150) }, lay: { pieces: PIECES } },
  made: ['seams'],
};
