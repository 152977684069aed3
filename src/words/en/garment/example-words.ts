/** Of a work whose numbers are those it began with. */
export const exampleWords = {
  short: 'example numbers',
  said: 'An example: the numbers it began with. Put in your own first.',
};
