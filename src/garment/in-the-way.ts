import { checksum } from './checksum.ts';
import type { Garment, Kept, KeptRun, Stage } from './garment.ts';

/** What something kept was when it was last seen, as far as keeping it anew puts something else there. */
export interface Seen {
  /** Of what was typed, `typingOf` it. */
  typing: string;
  stage: Stage;
}

/** A draft, in eight letters and digits: others as soon as a field or a character of it is. */
export function typingOf(draft: Kept['draft']): string {
  const pairs = Object.entries(draft);
  return checksum(JSON.stringify(pairs.sort(([one], [other]) => (one < other ? -1 : 1))));
}

/**
 * What is to be asked about before something is kept: that the same is on the garment
 * already, as another tab may have kept it, or that it has been changed there since.
 *
 * @param kept what is to be kept
 * @param seen what it is to be kept in place of; undefined when it is new
 */
export function inTheWay(
  garment: Garment,
  kept: Kept,
  seen: Seen | undefined,
): 'there' | 'changed' | undefined {
  const before = garment.kept.find(({ id }) => id === kept.id);
  if (!before) return garment.kept.some((one) => isSame(one, kept)) ? 'there' : undefined;
  const isStill = ({ typing, stage }: Seen) =>
    typingOf(before.draft) === typing && before.stage === stage;
  const isThere = isStill({ typing: typingOf(kept.draft), stage: kept.stage });
  return !seen || isStill(seen) || isThere ? undefined : 'changed';
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
  return (
    alike && one.calculation === other.calculation && typingOf(one.draft) === typingOf(other.draft)
  );
}
