import { CALCULATION_NAMES } from './calculation-names.ts';

/** Room at the hip, and the vent it takes. */
export const ventWords = {
  title: CALCULATION_NAMES.vent,
  labels: {
    hip: 'Hip, round',
    ease: 'Ease wanted',
    seat: 'Garment at the hip, round',
    hem: 'Garment at the hem, round',
    down: 'Top edge to hip',
    long: 'Top edge to hem',
    stride: 'Round both legs, stepping',
    top: 'Garment at the top edge',
    bodyTop: 'Body at the top edge',
  },
  asHip: 'not asked for',
  notGiven: 'not given',
};
