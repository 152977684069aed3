/** What a binding gives, and what the hand does for it. */
export const bindingOutputWords = {
  long: 'Strip, how long',
  strip: 'Strip cut wide',
  cut: 'Cut the strip',
  pleats: 'Pleats at corners, along the strip',
  pleat: 'Mark on the strip where each corner’s pleat begins',
  stitch: 'Stitch line, from the edge',
  sew: 'Sew the strip on, from a straight part',
  finished: 'Finished width, in front',
  fold: 'Fold it over the edge, press, and sew it down',
  stretch: 'The fold stretches outward, %',
  ease: 'The fold eases inward, %',
};
