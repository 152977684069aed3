import type { Field } from '../../calculation/calculation.ts';
import type { FieldRead } from '../../calculation/schema.ts';
import { exactLength } from '../../lengths/length.ts';
import { takenFrom, takenLength, takenNumber } from '../../lengths/taken.ts';
import { type FieldText, isLetter, partAt } from './field-text.ts';
import { type NoSource, type Places, type Source, sourceOf } from './links.ts';
import type { NodeField } from './node.ts';
import { withReadings } from './readings.ts';
import type { Trouble } from './result.ts';
import { same } from './same.ts';

type Failed = Extract<FieldRead, { ok: false }>['fault'];

/** Where a field stands: on which side, and where its links lead. */
interface Site {
  side: string;
  /** Whose it is: what is in doubt of it is the same for all that read it. */
  owner: string;
  /** How sure it is is kept beside it. */
  sure?: boolean;
  places: Places;
  /** What was read of it before, where it takes nothing. */
  read: Map<string, FieldRead>;
}

/** One field of a number: what it takes, what was read of it, or what is wrong with it. */
export function nodeField(
  key: string,
  written: FieldText,
  { kind, readOf }: { kind: Field['kind']; readOf: (text: FieldText) => NodeField['read'] },
  { side, owner, sure = false, places, read: before }: Site,
): NodeField {
  const isLength = kind === 'length' || kind === 'lengths';
  const { text, read: lengths } =
    isLength && !sure ? lengthsRead(written, readOf) : { text: written, read: [] };
  const read = readOf(text);
  const bare = { key, text, read, sources: [] };
  if (text.trouble === 'damaged') return { ...bare, trouble: { kind: 'damaged', field: key } };
  if (text.trouble) return { ...bare, trouble: { kind: 'too many links', field: key } };
  if (text.taken.length + lengths.length === 0) {
    const was = before.get(key) ?? read(text.how);
    before.set(key, was);
    return was.ok
      ? { ...bare, value: was.value }
      : { ...bare, trouble: readingTrouble(key, text, was.fault) };
  }
  if (kind === 'text')
    return { ...bare, trouble: { kind: 'kinds', field: key, part: partOf(text, 0) } };
  const sources: Source[] = [];
  for (const [i, part] of text.taken.entries()) {
    const source = sourceOf(part, side, places, `p:${owner}:${key}:${i}`);
    if ('gone' in source) return { ...bare, trouble: goneTrouble(key, source, partOf(text, i)) };
    sources.push(source);
  }
  for (const [i, one] of lengths.entries()) {
    const put = { ...one, reading: `r:${owner}:${key}:${i}` };
    sources.push({ kind: 'length', keys: [], total: false, put });
  }
  const field = { ...bare, sources };
  const loose = isLength ? looseCount(field) : undefined;
  if (loose === undefined) return field;
  return { ...bare, trouble: { kind: 'kinds', field: key, part: partOf(text, loose) } };
}

/**
 * The lengths of a field that were read, each to be moved to its ends; none where the text doesn't
 * mean the same with them as numbers of their own, as the centimetres of "1 m 46 ± 0.1 cm".
 */
function lengthsRead(
  written: FieldText,
  readOf: (text: FieldText) => NodeField['read'],
): ReturnType<typeof withReadings> {
  const found = withReadings(written);
  if (found.read.length === 0) return found;
  const taken = [
    ...written.taken.map(() => ONE.length),
    ...found.read.map(({ value }) => takenLength(exactLength(value))),
  ];
  const how = { ...written.how, taken: takenFrom(taken) };
  const [as, by] = [written, found.text].map((text) => readOf(text)(how));
  return same(as?.ok && as.value, by?.ok && by.value) ? found : { text: written, read: [] };
}

/**
 * The letter of a count that stands in a sum of lengths as if it were one: put as a length it
 * would be read, where a factor would not.
 */
function looseCount({ text, read, sources }: NodeField): number | undefined {
  const found = sources.findIndex(({ kind }, i) => {
    if (kind === 'length' || kind === 'run') return false;
    const all = sources.map((one, j) => ONE[one.kind === 'length' || i === j ? 'length' : 'count']);
    return read({ ...text.how, taken: takenFrom(all) }).ok;
  });
  return found < 0 ? undefined : found;
}

const ONE = { length: takenLength(exactLength(1)), count: takenNumber(1) };

/** The part of a field that a letter stands for, from 0. */
export function partOf(text: FieldText, letter: number): number {
  const at = [...text.text].flatMap((one, i) => (isLetter(one, text) ? [i] : []))[letter];
  return partAt(text, at ?? 0);
}

function goneTrouble(field: string, source: NoSource, part: number): Trouble {
  if (!source.gone) return { kind: 'kinds', field, part };
  return { kind: 'waits', field, for: source.for, root: source.for, gone: source.gone };
}

/** A letter that was not understood was: a count where a length belongs, or a run in a sum. */
export function readingTrouble(field: string, text: FieldText, fault: Failed): Trouble {
  if (fault === 'unknown option') return { kind: 'damaged', field };
  if (fault.kind === 'empty') return { kind: 'not given', field };
  const part = partAt(text, fault.at);
  const kinds = fault.kind === 'length-for-number' || isLetter(fault.text, text);
  return kinds ? { kind: 'kinds', field, part } : { kind: 'reading', field, part, fault };
}
