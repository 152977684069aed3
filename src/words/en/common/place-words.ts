import type { Datum } from '../../../sewing/run.ts';

const PLACES: Readonly<Record<Datum, string>> = {
  zero: 'from zero',
  'top-edge': 'from the top edge',
  'raw-edge': 'from the raw edge',
  'raw-corner': 'from the raw corner',
  'first-hole': 'from the first hole',
  'cut-end': 'from the cut end',
  'hole-before': 'from the first row’s last hole before them',
  'edge-corner': 'from the corner of the edge',
  'strip-begins': 'from where the strip begins on it',
  'elastic-meets': 'from where the elastic’s ends meet in it',
};

/** Where a place on a run is measured from. */
export function placeWords(datum: Datum): string {
  return PLACES[datum];
}
