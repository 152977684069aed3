import type { Given } from '../../calculation/output.ts';

/** What a calculation read, in a few letters: others where it read something else. */
export function readDigest({ fields, takes, made }: Given): string {
  let sum = 0x811c9dc5;
  const text = JSON.stringify([sorted(fields), sorted(takes), sorted(made)]);
  for (let i = 0; i < text.length; i++) {
    sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  }
  return (sum >>> 0).toString(36);
}

function sorted(record: Readonly<Record<string, unknown>>): unknown[] {
  return Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1));
}
