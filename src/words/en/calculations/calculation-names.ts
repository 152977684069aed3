/**
 * What each calculation is called: on its own page too, unless that says more. One that is on the list
 * and not here, or here and not on the list, doesn't compile.
 */
export const CALCULATION_NAMES = {
  convert: 'Inches and centimetres',
  fit: 'Fit: ease and girth',
  opening: 'Does it pass: head, hand, hips',
  vent: 'Room at the hip, vent',
  shrinkage: 'Shrinkage',
  thread: 'Thread',
  sizes: 'Stitches, buttons, needles',
  piece: 'Piece to cut',
  shares: 'Sharing a change',
  darts: 'Darts between two girths',
  dart: 'One dart',
  repeat: 'Stripes and checks',
  pleats: 'Pleats',
  gathers: 'Gathers and frills',
  zones: 'Gathers in zones',
  tiers: 'Tiers of frills',
  tucks: 'Tucks',
  facing: 'Facing',
  elastic: 'Elastic and its casing',
  cord: 'Drawstring and its casing',
  flare: 'Flare, godets, another length',
  circle: 'Circles, flounces and gores',
  curve: 'Curves, slants, squaring',
  bias: 'Bias strips',
  seam: 'Seam',
  collar: 'Collar',
  band: 'Waistband and cuff',
  match: 'Matching two edges',
  placket: 'Placket and zip',
  pocket: 'Pocket and its place',
  parts: 'Equal parts',
  hem: 'Hem',
  slant: 'Slanted hem, left and right',
  level: 'Hem levelled from the floor',
  corner: 'Mitred corner',
  closures: 'Closures',
  grouped: 'Groups, laps, loops',
  buttonhole: 'Buttonhole',
  edging: 'Edging strips',
  outline: 'Holes round an outline',
  centre: 'Centre by counting',
  lacing: 'Lacing',
  binding: 'Binding and piping',
  crossing: 'Crossing strips',
};

/** The calculations there are, by their addresses. */
export type CalculationId = keyof typeof CALCULATION_NAMES;

/** What is called so; undefined of an address that is no calculation's. */
export function calculationName(id: string): string | undefined {
  return Object.hasOwn(CALCULATION_NAMES, id) ? CALCULATION_NAMES[id as CalculationId] : undefined;
}
