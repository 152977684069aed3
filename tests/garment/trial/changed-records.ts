import type { Garment } from '../../../src/garment/record/record.ts';
import type { Dice } from './dice.ts';

const NAME = /\b([qwnf])(\d+)\b/g;

/** A record with other ids, other times, and its maps in another order; and what renames an answer alike. */
export function renamed(record: Garment, d: Dice) {
  const text = JSON.stringify(record);
  const names = [...new Set(text.match(NAME) ?? [])];
  const numbers = names.map((_, i) => 10_000 + i).sort(() => d.next() - 0.5);
  const other = new Map(names.map((name, i) => [name, `${name[0]}${numbers[i]}`]));
  const name = (said: string) => said.replace(NAME, (one) => other.get(one) ?? one);
  const mixed = (it: unknown): unknown => {
    if (Array.isArray(it)) return it.map(mixed);
    if (typeof it !== 'object' || it === null) return it;
    const entries = Object.entries(it).map(([key, value]): [string, unknown] => [
      key,
      key === 'when' || key === 'changed' ? 7 : mixed(value),
    ]);
    return Object.fromEntries(entries.sort(() => d.next() - 0.5));
  };
  return { record: mixed(JSON.parse(name(text))) as Garment, name };
}

const LENGTHS = new Set([
  'shown',
  'plan',
  'tape',
  'measured',
  'plusMinus',
  'tolerance',
  'put',
  'pitch',
]);

/** A record with every length in it twice as long; numbers typed as counts are doubled, too. */
export function doubled(record: Garment): Garment {
  return twice(record) as Garment;
}

function twice(it: unknown, key = ''): unknown {
  if (typeof it === 'number') return LENGTHS.has(key) || key === 'asked' ? 2 * it : it;
  if (key === 'text' && typeof it === 'string') {
    return /×/.test(it) ? it : it.replace(/\d+(\.\d+)?/g, (number) => String(2 * Number(number)));
  }
  if (key === 'points') {
    return (it as [number, number][]).map(([rank, at]) => [rank, 2 * at]);
  }
  if (Array.isArray(it)) return it.map((one) => twice(one));
  if (typeof it !== 'object' || it === null) return it;
  return Object.fromEntries(Object.entries(it).map(([name, one]) => [name, twice(one, name)]));
}

const JUNK: readonly unknown[] = [
  null,
  [],
  {},
  '',
  'x',
  -1,
  1e300,
  Number.NaN,
  [[]],
  true,
  0,
  0.5,
  '__proto__',
  'w1',
  { link: {} },
  [{ link: { work: 'w1', output: 'toString' } }],
  [{ text: '9'.repeat(150), unit: 'cm' }],
  [{ text: '\ue000 + 1', unit: 'cm' }],
];

/** A record with something in it that isn't what it should be. */
export function damaged(record: Garment, d: Dice): unknown {
  const copy = structuredClone(record) as unknown as Record<string, unknown>;
  for (let k = d.int(1, 6); k > 0; k--) {
    let it = copy;
    for (let depth = d.int(1, 6); depth > 0; depth--) {
      const inner = Object.values(it).filter((one) => typeof one === 'object' && one !== null);
      if (inner.length > 0) it = d.of(inner) as Record<string, unknown>;
    }
    const keys = Object.keys(it);
    // A copy: what is damaged next may lie in it.
    if (keys.length > 0) it[d.of(keys)] = structuredClone(d.of(JUNK));
  }
  return copy;
}
