import { placeOf } from '../as-made.ts';
import type { Fact, Garment, Work } from '../record/record.ts';
import { numberOf } from '../record/sound.ts';
import { typingOf } from '../record/typing-of.ts';
import { factThere, type PageParts } from './keep.ts';

/**
 * Whether a mark that a page measured was measured elsewhere meanwhile.
 * @param opened what the page saw measured when it was opened, in 1/8000 mm
 */
export function isMeasuredTwice(
  record: Garment,
  parts: PageParts,
  opened: readonly string[],
): boolean {
  const seen = opened.map(placeOf);
  return Object.values(parts.facts).some((fact) => {
    const there = factThere(record, fact as Fact)?.[1];
    const theirs = there?.measured;
    return theirs !== undefined && theirs !== numberOf(fact as Fact) && !seen.includes(theirs);
  });
}

/** Whether the same is on a garment already, under the same name. */
export function isThere(record: Garment, parts: PageParts): boolean {
  return (['works', 'quantities'] as const).some((map) =>
    Object.values(parts[map]).some((one) =>
      Object.values(record[map]).some((other) => isSame(one, other)),
    ),
  );
}

function isSame(one: unknown, other: unknown): boolean {
  const [a, b] = [one, other].map((it) => Object(it) as Partial<Work>) as [
    Partial<Work>,
    Partial<Work>,
  ];
  return (
    a.name === b.name && a.calculation === b.calculation && !b.off && typingOf(a) === typingOf(b)
  );
}
