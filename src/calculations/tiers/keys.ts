/** Keys of the outputs of each tier, from the top. @param i counted from 0 */
export const KEYS = {
  deep: (i: number) => `deep-${i + 1}`,
  strip: (i: number) => `strip-${i + 1}`,
  along: (i: number) => `along-${i + 1}`,
  marks: (i: number) => `marks-${i + 1}`,
  edge: (i: number) => `edge-marks-${i + 1}`,
};
