/** Asking where a mark was really made, or what a length came to, wherever it is asked. */
export const madeWords = {
  measured: (item: string) => `${item}: where it really is`,
  came: (item: string) => `${item}: what it really measures`,
};
