/** What a cloth eases in: common practice, no source. */
export const clothEaseWords = {
  firm: 'Firmly woven, 3 %',
  medium: 'Medium, 6 %',
  soft: 'Soft wool, 10 %',
  own: 'My own figure',
};
