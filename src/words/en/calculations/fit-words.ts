import type { EasePlace } from '../../../sewing/wearer/ease.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const of: Readonly<Record<EasePlace, string>> = {
  bust: 'Bodice, bust',
  'dress-waist': 'Dress, waist',
  'skirt-waist': 'Skirt or trousers, waist',
  hip: 'Hip',
  'shirt-chest': 'Man’s shirt, chest',
  'trouser-waist': 'Man’s trousers, waist',
  'trouser-seat': 'Man’s trousers, seat',
  thigh: 'Man’s trousers, thigh',
  'upper-arm': 'Sleeve, upper arm',
  other: 'Other',
};

/** Ease: finished girth from the body, and from the pieces back. */
export const fitWords = {
  title: CALCULATION_NAMES.fit,
  labels: {
    body: 'Body, all round',
    of: 'Where',
    ease: 'Ease wanted',
    cloth: 'Cloth',
    pieces: 'Widths of all pieces',
    allowances: 'Of these, allowances',
    taken: 'Lapped, darts, pleats',
    seams: 'Seams all round',
    edge: 'Each edge let out by',
    darts: 'Darts all round',
    dart: 'Each dart takes less by',
  },
  of,
  cloth: { woven: 'Woven, gives nothing', stretch: 'Stretches' },
  notCut: 'not known yet',
  finishedWidths: 'none, finished widths',
  nothing: 'nothing',
  notGiven: 'not given',
  asCut: 'nothing',
  body: 'body',
  pieces: 'pieces',
};
