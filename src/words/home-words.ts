/** The home screen. `index.html` is made from these words too, so that it reads before any script. */
export const homeWords = {
  name: 'Thumbrule',
  lead: 'The number first, then the cut.',
  about: 'Bench arithmetic for one hand. Everything stays on this phone.',
  calculations: 'What to work out',
  unknown: (address: string) => `There is nothing at “${address}”. Choose below.`,
};

/** Every screen that home leads to, in the order of the work: its title, and what it is for. */
export const SCREEN_WORDS = {
  convert: { title: 'Inches and centimetres', about: 'Any length, on both tapes' },
  seam: { title: 'Seam allowance', about: 'What each finish takes' },
  hem: { title: 'Hem', about: 'Turn-up, lines, curves, corners' },
  closures: { title: 'Closures', about: 'Hooks, buttons, snaps, evenly placed' },
  sizes: { title: 'Stitches, buttons, needles', about: 'Sizes in the other system' },
  settings: { title: 'Settings', about: 'Hand, units, tape, light, voice' },
};
