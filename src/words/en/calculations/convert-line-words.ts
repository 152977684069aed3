/** The further lines of a length in both systems, and how it was got. */
export const convertLineWords = {
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
};
