import { placeOf } from '../as-made.ts';
import { checksum } from '../checksum.ts';
import type { Fact, Garment, Work } from '../record/record.ts';
import { numberOf } from '../record/sound.ts';
import { factThere, type PageParts, plain } from './keep.ts';

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

/** What is typed of a work or a quantity, in eight letters and digits: others as soon as a character of it is. */
export function typingOf(one: unknown): string {
  const { fields, parts } = Object(one) as Record<string, unknown>;
  const pairs = Object.entries(Object(fields ?? { parts }) as Record<string, unknown>);
  const sorted = pairs.sort(([a], [b]) => (a < b ? -1 : 1));
  return checksum(sorted.map(([key, it]) => `${key} ${plain(it)}`).join(' '));
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
