/** A lay that was found, and doesn’t hold any more. */
export const layStaleWords = {
  /** Of the length of a lay, as a number of the garment. */
  holds: 'for these sizes',
  gone: 'the lay is not there any more',
  goneFrom: 'The lay it is the length of is not there any more.',
  atField: (field: string, said: string) => `${field}: ${said}`,
  stale: (pieces: readonly string[], cloth: boolean, long: string) =>
    `The lay of ${long} was found for other sizes (${[...pieces, ...(cloth ? ['the cloth, or what is held on it'] : [])].join(', ')}): lay the pieces again.`,
};
