/** What is in the way of a lay, or is to be known of it. */
export const layWarnedWords = {
  noWidth: 'Say how wide the cloth is, without its selvedges, under “Cloth, nap”.',
  wide: (piece: string, by: string) =>
    `${piece} is ${by} wider than the cloth is here: take wider cloth, or cut the piece in two with a seam.`,
  wideFolded: (piece: string, by: string) =>
    `${piece} is ${by} wider than the cloth folded in two: lay the cloth open, or take wider cloth.`,
  tooMany: (count: string, most: string) =>
    `${count} pieces are more than can be laid at once: at most ${most}. Lay them on two cloths.`,
  fitsNowhere:
    'The pieces fit nowhere: something that stays where it is, or a distance that is too wide, leaves no room.',
  failed: 'The search stopped by itself. Press to go on; what was found is kept.',
  cutApart: (pieces: readonly string[]) =>
    `Cut already, without a lay of the cloth as it lies: ${pieces.join(', ')}. What that took is added to the length to buy.`,
  patternFolded:
    'Folded, the pattern of the layer below isn’t seen: this lay doesn’t follow it, and Materials count whole repeats a row instead. Lay the cloth open to have it followed.',
  offRepeat: (one: string) => `${one} begins elsewhere in the pattern than the others.`,
  lostToFlaws: (long: string) =>
    `Flaws leave no room on the first ${long} of the cloth, which is bought all the same: cut that off and measure from there, or take out a flaw under “Cloth, nap”.`,
  otherSize: (pieces: readonly string[]) =>
    `Laid in a shape that isn’t as large as the garment cuts it now: ${pieces.join(', ')}. Look at it under “Cloth, nap”, in the shapes of the pieces.`,
  wasted: (pieces: readonly string[]) =>
    `An odd one through two layers leaves its twin over: ${pieces.join(', ')}.`,
  waiting: (count: number) =>
    count === 1
      ? 'One piece waits for a number and isn’t laid.'
      : `${count} pieces wait for a number and aren’t laid.`,
  over: (one: string, other: string) =>
    `${one} lies over ${other}: find a lay around it, or let it go.`,
  near: (one: string, other: string) => `${one} lies too near to ${other}, or over it.`,
  onFlaw: (one: string) => `${one} lies on a flaw, or too near to it.`,
  off: (one: string) => `${one} lies off the cloth, or off the fold.`,
  noShape: (piece: string, why: string) => `${piece} has no shape that can be laid. ${why}`,
  shapeNotFetched:
    'What works the shapes out couldn’t be fetched: go back, and open this again with a connection.',
};
