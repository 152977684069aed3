/** Inches and centimetres, as far as the first answer says. */
export const convertWords = {
  title: 'Inches and centimetres',
  length: 'Length',
  sentence: (exact: string, rounded: boolean, off: string | undefined, more: boolean) =>
    `${rounded ? 'Nearly' : 'Exactly'} ${exact}${
      off === undefined
        ? ', just on a mark of your tape.'
        : `. The mark on your tape is ${off} ${more ? 'more' : 'less'}.`
    }`,
  negative: 'Length: this comes out below zero. Check what is taken away.',
  beside: 'Stitches, buttons, needles',
};
