import { exactLength } from '../../lengths/length.ts';
import { type TakenNumber, takenFrom, takenLength, takenNumber } from '../../lengths/taken.ts';
import type { Run } from '../../sewing/run.ts';
import { NOTHING } from '../rows/points.ts';
import type { Source } from './links.ts';
import type { NodeField } from './node.ts';
import { partOf, readingTrouble } from './node-field.ts';
import { type Nothing, nothing, type Trouble, type Value } from './result.ts';
import { same } from './same.ts';

/** How many values a field takes. */
export function sourceCount({ sources }: NodeField): number {
  return sources.reduce((sum, { keys, put }) => sum + (put ? 1 : keys.length), 0);
}

/**
 * One field at these values of what it takes.
 * @param base what they are when no reading is moved to its end
 */
export function fieldAt(
  field: NodeField,
  values: readonly Value[],
  base: readonly Value[],
): { ok: true; value: unknown } | Nothing {
  const { key, text, sources } = field;
  if (sources.length === 0) return { ok: true, value: field.value };
  const taken: TakenNumber[] = [];
  const runs = new Map<number, Run>();
  let next = 0;
  for (const [i, source] of sources.entries()) {
    const end = next + (source.put ? 1 : source.keys.length);
    const one = oneOf(source, values.slice(next, end), base.slice(next, end));
    next = end;
    if (one === undefined) return nothing(differ(field, i));
    if (typeof one === 'object') runs.set(i, one);
    else taken[i] = source.kind === 'length' ? takenLength(exactLength(one)) : takenNumber(one);
  }
  const read = field.read({ ...text.how, taken: takenFrom(taken), runs });
  return read.ok ? read : nothing(readingTrouble(key, text, read.fault));
}

function differ(field: NodeField, letter: number): Trouble {
  return { kind: 'sides differ', field: field.key, part: partOf(field.text, letter) };
}

/**
 * The total, or the number on which all agree; undefined where they don't. Those that agree and
 * of which one is moved to the end of its reading are taken there.
 */
export function oneOf(
  { total }: Source,
  values: readonly Value[],
  base: readonly Value[],
): Value | undefined {
  if (total) return values.reduce<number>((sum, value) => sum + Number(value), 0);
  if (!base.every((value) => agree(value, base[0]))) return undefined;
  return values.find((value, i) => !agree(value, base[i])) ?? values[0];
}

function agree(a: Value, b: Value | undefined): boolean {
  const numbers = typeof a === 'number' && typeof b === 'number';
  return numbers ? Math.abs(a - b) < NOTHING : same(a, b);
}
