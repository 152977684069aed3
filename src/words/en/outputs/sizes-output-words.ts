/** What a size gives to other work. */
export const sizesOutputWords = {
  stitch: 'Stitch length',
  perInch: 'Stitches to the inch',
  button: 'Button, across',
  sold: 'Nearest button sold, across',
  needle: 'Needle, metric size',
};
