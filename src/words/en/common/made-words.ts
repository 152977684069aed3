/** Asking where a mark was really made, wherever it is asked. */
export const madeWords = {
  measured: (item: string) => `${item}: where it really is`,
};
