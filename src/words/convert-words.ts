/** Inches and centimetres, stitches, buttons, needles. */
export const convertWords = {
  title: 'Inches and centimetres',
  length: 'Length',
  sentence: (exact: string, off: string | undefined, more: boolean) =>
    off === undefined
      ? `Exactly ${exact}, just on a mark of your tape.`
      : `Exactly ${exact}. The mark on your tape is ${off} ${more ? 'more' : 'less'}.`,
  metricTape: 'On the centimetre tape',
  inchTape: 'On the inch tape',
  justOn: (mark: string) => `${mark}, just on the mark`,
  nearest: (mark: string, off: string, past: boolean) =>
    `${mark} and ${off} ${past ? 'past it' : 'short of it'}`,
  inMm: 'In millimetres',
  inInches: 'In inches',
  inLines: 'In button lines (1/40 in)',
  fromInches: (inches: string, inch: string, mm: string) => `${inches} × ${inch} = ${mm}.`,
  fromMm: (mm: string, inch: string, inches: string) => `${mm} ÷ ${inch} = ${inches} inches.`,
  source: 'The inch is 25.4 mm exactly since 1959 (NBS Circular 572, addendum of 1960).',
  negative: 'Length: this comes out below zero. Check what is taken away.',
  beside: 'Stitches, buttons, needles',
};
