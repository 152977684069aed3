import { CALCULATION_NAMES } from './calculation-names.ts';

/** What is asked of a binding. */
export const bindingWords = {
  title: CALCULATION_NAMES.binding,
  labels: {
    finish: 'Finish',
    width: 'Finished width',
    seam: 'Seam allowance',
    cord: 'Cord, through it',
    straight: 'Straight edges, each length',
    outLong: 'Curves outward, each length',
    outRadius: 'Their radius, one for each',
    inLong: 'Curves inward, each length',
    inRadius: 'Their radius, one for each',
    corners: 'Corners, degrees inside the piece',
    ends: 'Ends',
    endTurn: 'Turned in at each end',
    join: 'Join, each edge',
    thickness: 'Strip’s cloth thick',
    edgeThick: 'Edge thick, all layers',
  },
  finishes: {
    single: 'Binding, single',
    double: 'Binding, double',
    band: 'Band, sewn on double',
    seam: 'Bound seam allowance',
    cord: 'Piping with a cord',
    flat: 'Piping, flat',
  },
  shows: 'Piping that shows',
  ends: { open: 'Two ends', ring: 'Joined all round' },
  none: 'none',
  notGiven: 'not given',
  noCorners: 'none; as 90; 90; 270 goes in',
  beside: 'Bias strips for it',
};
