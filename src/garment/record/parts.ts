import type { Link } from './record.ts';
import { isObject } from './sound-values.ts';

export function isLink(read: unknown): read is Link {
  if (!isObject(read)) return false;
  const { quantity, work, output, of } = read;
  if (typeof quantity === 'string') return true;
  const side = of === undefined || typeof of === 'string';
  return typeof work === 'string' && typeof output === 'string' && side;
}

/**
 * Where a part of a field leads, or led before something was put in the link's place. A record may
 * hold anything there: nothing of what can't be read.
 */
export function linkOf(part: unknown): Link | undefined {
  if (!isObject(part)) return undefined;
  const link = 'link' in part ? part.link : part.was;
  return isLink(link) ? link : undefined;
}

/** Whether a field, which may hold anything, takes something where a link leads. */
export function takesLink(parts: unknown): boolean {
  return Array.isArray(parts) && parts.some((part) => isObject(part) && 'link' in part);
}
