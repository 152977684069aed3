/** What thread gives, and what the hand does for it. */
export const threadOutputWords = {
  ratio: 'Thread to seam',
  thread: 'Thread',
  needle: 'Needle thread',
  other: 'Bobbin or looper thread',
  spools: 'Spools',
  ready: 'Lay the spools ready, all of one dye lot',
  fills: 'Bobbins',
  wind: 'Wind the bobbins',
  hand: 'Threads for sewing by hand',
  cut: 'Cut the threads to sew with',
};
