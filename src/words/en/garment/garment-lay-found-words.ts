/** What a lay comes to, and how its length fell while it was looked for. */
export const layFoundWords = {
  buy: 'Buy',
  takes: 'Takes',
  sold: (length: string) => `(${length})`,
  /** Where what to buy stands above it. */
  takesOf: (length: string) => `Takes ${length}`,
  used: (share: string) => `${share} % used`,
  pattern: (repeat: string) =>
    `Pieces begin alike in the pattern; one repeat of ${repeat} more is bought, since the shop cuts anywhere in it.`,
  bias: (long: string) =>
    `Bias strips are cut beyond the pieces, from ${long} more of the whole width.`,
  rest: (parts: readonly string[]) => parts.join(' · '),
  /** The last is the best. */
  fell: (lengths: readonly string[]) => `Found: ${lengths.join(' → ')}`,
  chart: (first: string, last: string, seconds: string) =>
    `The length fell from ${first} to ${last} in ${seconds} s`,
  seconds: (seconds: string) => `${seconds} s`,
};
