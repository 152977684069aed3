/** An edge that a head, a hand, a heel or the hips have to pass. */
export const openingWords = {
  title: 'Does it pass?',
  labels: {
    body: 'Head, round',
    edge: 'Edge all round, closed',
    ease: 'To spare',
    slit: 'Opening there is',
    way: 'The opening',
    below: 'Garment round, further down',
    down: 'How far down that is',
    passes: 'What passes',
  },
  passes: { head: 'Head', hand: 'Hand', heel: 'Heel', hips: 'Hips', other: 'Other' },
  body: {
    hand: 'Hand, round',
    heel: 'Heel and ankle, round',
    hips: 'Hips, round',
    other: 'What passes, round',
  },
  way: { seam: 'Left open in a seam', slit: 'Slit cut into the piece' },
  none: 'not known yet',
  notGiven: 'not given',
};
