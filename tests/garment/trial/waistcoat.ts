import { homeOf } from '../../../src/garment/record/home.ts';
import { mm } from '../../../src/lengths/length.ts';
import { garmentOf, output, quantity, typed } from './garments.ts';

export const HOOKS = homeOf('hooks', '', 'marks');
export const HOLES = homeOf('strip', '', 'holes');

/** The demo garment of the design, invented: seven hooks on the front edge, an armhole strip of holes. */
export const waistcoat = garmentOf({
  quantities: {
    front: { name: 'Front edge', kind: 'length', rank: 1, parts: typed('46.3') },
    armhole: {
      name: 'Armhole, round',
      kind: 'length',
      rank: 2,
      parts: typed('62.4'),
      plusMinus: mm(2),
    },
  },
  works: {
    hooks: {
      name: 'Hooks',
      calculation: 'closures',
      rank: 1,
      fields: {
        opening: [quantity('front')],
        count: typed('7'),
        top: typed('1.2'),
        bottom: typed('2.5'),
        by: typed('count'),
        ends: typed('given'),
      },
    },
    strip: {
      name: 'Armhole strip',
      calculation: 'toy-strip',
      rank: 2,
      fields: {
        length: [quantity('armhole')],
        pitch: typed('8', 'mm'),
        end: typed('0.4'),
        fit: typed('fill'),
        rows: typed('one'),
      },
    },
    lace: {
      name: 'Lace',
      calculation: 'toy-lace',
      rank: 3,
      fields: { holes: [output('strip', 'count')], gap: typed('8', 'mm'), tails: typed('10') },
    },
  },
});
