import type { Garment, Kept } from './garment.ts';

/**
 * What is to be asked about before something is kept: that the same is on the garment
 * already, as another tab may have kept it, or that it has been changed there since.
 *
 * @param kept what is to be kept
 * @param seen what it is to be kept in place of, as it was seen; undefined when it is new
 */
export function inTheWay(
  garment: Garment,
  kept: Kept,
  seen: Kept | undefined,
): 'there' | 'changed' | undefined {
  const before = garment.kept.find(({ id }) => id === kept.id);
  if (!before) return garment.kept.some((one) => isSame(one, kept)) ? 'there' : undefined;
  const changed = seen && !sameTyping(before, seen) && !sameTyping(before, kept);
  return changed ? 'changed' : undefined;
}

/** Under another name, or at another stage, it is meant to be there a second time. */
function isSame(one: Kept, other: Kept): boolean {
  const alike = one.name === other.name && one.stage === other.stage;
  return alike && one.calculation === other.calculation && sameTyping(one, other);
}

function sameTyping({ draft: one }: Kept, { draft: other }: Kept): boolean {
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && one[key] === other[key])
  );
}
