/** The next number as it was when the garment was left, while it is worked out again. */
export const lastHomeWords = {
  key: 'The next step',
  wait: '…',
};
