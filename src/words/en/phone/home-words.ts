/** The home screen. `index.html` is made from these words too, so that it reads before any script. */
export const homeWords = {
  name: 'Thumbrule',
  lead: 'The number first, then the cut.',
  about: 'Everything stays on this phone.',
  calculations: 'What to work out',
  unknown: (address: string) => `There is nothing at “${address}”. Choose below.`,
};

/** Every screen that home leads to, in the order of the work. */
export const SCREEN_WORDS = {
  convert: 'Inches and centimetres',
  seam: 'Seam allowance',
  pleats: 'Pleats',
  hem: 'Hem',
  closures: 'Closures',
  centre: 'Centre by counting',
  edging: 'Edging strips',
  find: 'Find more',
  tape: 'Read a tape',
  garments: 'Garments',
  settings: 'Settings',
};
