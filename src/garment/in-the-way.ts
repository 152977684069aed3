import type { Garment, Kept, KeptRun } from './garment.ts';

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

/**
 * Whether a mark was measured here since it was opened, and otherwise elsewhere meanwhile.
 *
 * @param theirs what is kept of a run by now
 * @param opened what was measured when it was opened, by label
 * @param now the same at present, here
 */
export function isMeasuredTwice(
  theirs: KeptRun | undefined,
  opened: ReadonlyMap<string, string>,
  now: ReadonlyMap<string, string>,
): boolean {
  return Object.entries(theirs?.made ?? {}).some(([label, kept]) => {
    const [was, mine] = [opened.get(label), now.get(label)];
    return mine !== was && kept !== '' && kept !== was && kept !== mine;
  });
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
