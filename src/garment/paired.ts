/**
 * Pairs each of the fewer places with one of the more, keeping their order, so that the
 * distances together are least; of equal ways the one nearer the datum. No place between
 * two pairs is nearer to either than the one it was passed over for (tests compare it with
 * every pairing there is). Derived here; the time grows with the product of both counts.
 *
 * @param few in order, as many as `many` or fewer
 * @param many in order
 * @returns for each of the few the index of its partner
 */
export function paired(few: readonly number[], many: readonly number[]): number[] {
  const width = many.length + 1;
  const takes = new Uint8Array(few.length * width);
  let before = new Float64Array(width);
  for (const [i, place] of few.entries()) {
    const now = new Float64Array(width).fill(Number.POSITIVE_INFINITY);
    for (let j = 1; j < width; j++) {
      const take = (before[j - 1] ?? 0) + Math.abs(place - (many[j - 1] ?? 0));
      const pass = now[j - 1] ?? 0;
      if (take < pass) takes[i * width + j] = 1;
      now[j] = Math.min(take, pass);
    }
    before = now;
  }
  const partners = few.map(() => 0);
  let j = many.length;
  for (let i = few.length - 1; i >= 0; i--) {
    while (takes[i * width + j] === 0) j--;
    j--;
    partners[i] = j;
  }
  return partners;
}
