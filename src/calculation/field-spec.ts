import type { Length } from '../lengths/length.ts';
import { ZERO } from '../lengths/length.ts';
import type { Read } from '../lengths/read-fault.ts';
import { readLength } from '../lengths/read-length.ts';
import { readLengths } from '../lengths/read-lengths.ts';
import { readCount, readNumber } from '../lengths/read-number.ts';
import type { Taken } from '../lengths/taken.ts';
import type { Run } from '../sewing/run.ts';
import type { Measure } from '../sewing/sources/usual.ts';
import type { Bench } from './bench.ts';
import type { Field } from './calculation.ts';

/** What is typed in the fields, as a condition asks for it: by the field itself, so that no name can be mistyped. */
export type Ask = (field: FieldSpec<unknown>) => string;

/** Whether something holds for what is typed. */
export type Condition = (ask: Ask) => boolean;

/** A choice's values and what they are called, in order. */
export type Choices<Value extends string = string> = Readonly<Record<Value, string>>;

/** What a field starts with: the same on every bench, or of one length round numbers of each unit. */
export type Start = string | { readonly cm: string; readonly mm: string; readonly in: string };

/** What may be said of any field. */
export interface About {
  start?: Start;
  /** Asked for only then; at other times nothing is read of it. */
  when?: Condition;
  /** Shown after all others then, beside what it belongs to for what is chosen. */
  last?: Condition;
  /** Which measure of the bench it holds, for what is unusual to be asked about. */
  usual?: Measure | ((ask: Ask) => Measure);
  /** Of a field that may be left out: when it may not, and which field it then comes after. */
  needed?: { readonly when: Condition; readonly after: FieldSpec<unknown> };
  /** Another label than its own; undefined where its own holds. */
  label?: (ask: Ask) => string | undefined;
  /** What is taken there from elsewhere is a run of marks. */
  takesRun?: true;
  /** Of a length that may be smaller or larger where something made lacks or has some: an allowance, a hem, an end. */
  givesWay?: true;
  /** What an edge of a piece takes: allowances of works are offered first. */
  edge?: true;
  /** Of a choice whose options change: whether one that isn't offered just now is one of it. */
  known?: (value: string) => boolean;
}

/** How what stands in a field is to be read. */
export interface Reading extends Pick<Bench, 'unit' | 'decimalMark'> {
  /** Numbers taken from elsewhere, each where its letter stands in the text. */
  taken?: Taken;
  /** Runs taken from elsewhere, by the places of their letters. */
  runs?: ReadonlyMap<number, Run>;
}

/** One field of a calculation, and the value that is read of it. */
export interface FieldSpec<Value> extends About {
  readonly kind: Field['kind'];
  /** Shown when it is empty: then it may be left out, and nothing is read of it. */
  readonly hint?: string;
  /** What a choice may be, for what is chosen of others so far. */
  readonly choices?: (ask: Ask) => Choices;
  read(typed: string, how: Reading): Read<{ readonly value: Value }>;
  /** What it is where it isn't asked for, or was left out. */
  readonly none: Value | undefined;
}

type Asked = About & { when?: undefined };
type AskedThen = About & { when: Condition };

/** What was read of texts that take nothing: a key pressed in one field reads all of them again. */
const readBefore = new Map<string, ReturnType<typeof readLength>>();
const MOST_HELD = 500;

function readsLength(typed: string, { unit, decimalMark, taken }: Reading) {
  if (taken) return readLength(typed, unit, decimalMark, taken);
  const key = `${unit} ${decimalMark} ${typed}`;
  const before = readBefore.get(key);
  if (before) return before;
  if (readBefore.size >= MOST_HELD) readBefore.clear();
  const read = readLength(typed, unit, decimalMark);
  readBefore.set(key, read);
  return read;
}

const readsCount = (typed: string, { taken }: Reading) => readCount(typed, taken);

const readsNumber = (typed: string, { taken }: Reading) => readNumber(typed, taken);

/** A length that is needed. */
export function length(about: Asked): FieldSpec<Length>;
export function length(about: AskedThen): FieldSpec<Length | undefined>;
export function length(about: About): FieldSpec<Length | undefined> {
  return { kind: 'length', read: readsLength, none: undefined, ...about };
}

/** A length that may be left out. @param hint what it then is, shown in its place */
export function maybeLength(hint: string, about: About = {}): FieldSpec<Length | undefined> {
  return { kind: 'length', read: readsLength, none: undefined, hint, ...about };
}

/** A length that goes with another one: asked for, and needed, where that isn't left out. */
export function lengthBeside(
  first: FieldSpec<unknown>,
  hint: string,
  about: About = {},
): FieldSpec<Length | undefined> {
  const known = first.when ? all(first.when, given(first)) : given(first);
  return maybeLength(hint, { when: known, needed: { when: known, after: first }, ...about });
}

/** A length that is nothing where it is left out. */
export function lengthOrNone(hint: string, about: About = {}): FieldSpec<Length> {
  return { kind: 'length', read: readsLength, none: ZERO, hint, ...about };
}

/** Lengths parted by semicolons; there may be none. */
export function lengths(hint: string, about: About = {}): FieldSpec<readonly Length[]> {
  const read = (typed: string, { unit, decimalMark, taken }: Reading) => {
    const all = readLengths(typed, unit, decimalMark, taken);
    return all.ok ? { ok: true as const, value: all.values } : all;
  };
  return { kind: 'lengths', read, none: [], hint, ...about };
}

/** A whole number that is needed. */
export function count(about: Asked): FieldSpec<number>;
export function count(about: AskedThen): FieldSpec<number | undefined>;
export function count(about: About): FieldSpec<number | undefined> {
  return { kind: 'count', read: readsCount, none: undefined, ...about };
}

/** A whole number that may be left out. */
export function maybeCount(hint: string, about: About = {}): FieldSpec<number | undefined> {
  return { kind: 'count', read: readsCount, none: undefined, hint, ...about };
}

/** A number that is needed. */
export function number(about: Asked): FieldSpec<number>;
export function number(about: AskedThen): FieldSpec<number | undefined>;
export function number(about: About): FieldSpec<number | undefined> {
  return { kind: 'number', read: readsNumber, none: undefined, ...about };
}

/** A number that may be left out. */
export function maybeNumber(hint: string, about: About = {}): FieldSpec<number | undefined> {
  return { kind: 'number', read: readsNumber, none: undefined, hint, ...about };
}

/** Plain numbers parted by semicolons; there may be none. Nothing between two semicolons is nothing. */
export function numbers(hint: string, about: About = {}): FieldSpec<readonly number[]> {
  const read = (typed: string, { taken }: Reading): Read<{ value: readonly number[] }> => {
    const value: number[] = [];
    let start = 0;
    for (const item of typed.split(';')) {
      const one = readNumber(item, taken);
      if (one.ok) value.push(one.value);
      else if (one.fault.kind !== 'empty') {
        return { ok: false, fault: { ...one.fault, at: start + one.fault.at } };
      }
      start += item.length + 1;
    }
    return { ok: true, value };
  };
  return { kind: 'text', read, none: [], hint, ...about };
}

/** A text, read by the calculation itself. */
export function text(hint: string, about: About = {}): FieldSpec<string> {
  const read = (typed: string) => ({ ok: true as const, value: typed });
  return { kind: 'text', read, none: '', hint, ...about };
}

/** One of several; the first of them to begin with, unless another is given. */
export interface ChoiceSpec<Value extends string> extends FieldSpec<Value> {
  /** Whether one of these is chosen. */
  is(...values: readonly Value[]): Condition;
}

export function choice<Value extends string>(
  options: Choices<Value> | ((ask: Ask) => Partial<Choices<Value>>),
  about: About & { start?: NoInfer<Value> } = {},
): ChoiceSpec<Value> {
  const offered = typeof options === 'function' ? options : () => options;
  // What isn't offered just now isn't there at all, rather than undefined.
  const choices = offered as (ask: Ask) => Choices;
  const spec: ChoiceSpec<Value> = {
    kind: 'choice',
    choices,
    // What it may be depends on other fields: the schema looks it up.
    read: (typed) => ({ ok: true, value: typed as Value }),
    none: undefined,
    is:
      (...values) =>
      (ask) =>
        values.includes(ask(spec) as Value),
    ...about,
  };
  return spec;
}

/** Whether anything is typed in a field that may be left out. */
export function given(field: FieldSpec<unknown>): Condition {
  return (ask) => ask(field).trim() !== '';
}

export function not(condition: Condition): Condition {
  return (ask) => !condition(ask);
}

export function all(...conditions: readonly Condition[]): Condition {
  return (ask) => conditions.every((one) => one(ask));
}

export function either(...conditions: readonly Condition[]): Condition {
  return (ask) => conditions.some((one) => one(ask));
}
