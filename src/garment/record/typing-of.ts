import { checksum } from '../checksum.ts';
import { isObject } from './sound-values.ts';

/** What is typed of a work or a quantity, in eight letters and digits: others as soon as a character of it is. */
export function typingOf(one: unknown): string {
  const { fields, parts } = Object(one) as Record<string, unknown>;
  const pairs = Object.entries(Object(fields ?? { parts }) as Record<string, unknown>);
  const sorted = pairs.sort(([a], [b]) => (a < b ? -1 : 1));
  return checksum(sorted.map(([key, it]) => `${key} ${plain(it)}`).join(' '));
}

/** Parts as text, to compare them by. */
export function plain(parts: unknown): string {
  if (!Array.isArray(parts)) return JSON.stringify(parts) ?? '';
  return JSON.stringify(
    parts.map((part) => (isObject(part) && 'text' in part ? [part.text, part.unit] : part)),
  );
}
