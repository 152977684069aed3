/** Keeping a calculation on a garment. */
export const garmentKeepWords = {
  keep: 'Keep on a garment',
  garment: 'On which garment',
  side: 'Which side was measured',
  sideMissing: 'Say which side was measured; nothing is kept before.',
  keepIt: 'Keep it',
  measured: (item: string, label: string, typed: string) => `${item} ${label} at ${typed}`,
  leftOut: (measures: string) =>
    `Measured on another plan than this one, and not taken along: ${measures}.`,
};
