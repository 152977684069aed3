import { schemaWords } from '#words/common/schema-words.ts';
import type { Read } from '../lengths/read-fault.ts';
import type { Bench } from './bench.ts';
import type { Calculation, Draft, Fault, Field } from './calculation.ts';
import type { Ask, Choices, FieldSpec, Reading, Start } from './field-spec.ts';
import type { PageKey } from './page-keys.ts';

type Specs = Readonly<Record<string, FieldSpec<unknown>>>;

/** What is read of the fields: of one that isn't asked for, or was left out, undefined where that can be. */
export type InputOf<All extends Specs> = {
  readonly [Key in keyof All]: All[Key] extends FieldSpec<infer Value> ? Value : never;
};

/**
 * What is typed for the maker, by the fields' names: by others it doesn't compile. The names are
 * those of a calculation's own fields, or of another one's labels.
 */
export type Typed<Named> = Partial<Record<keyof Named & string, string>>;

export type InputRead<Input> = { ok: true; value: Input } | { ok: false; faults: readonly Fault[] };

/** What was read of one field, or why nothing was. */
export type FieldRead = { ok: true; value: unknown } | { ok: false; fault: ValueFault };

/** The fields of a calculation, each written once: what they start with, how they are shown and read follows. */
export interface Schema<All extends Specs> {
  readonly specs: All;
  /** What a calculation has of its fields. */
  readonly asked: Pick<Calculation, 'start' | 'fields' | 'ever' | 'measureOf'>;
  /** All that is asked for, or everything that could not be read of it. */
  read(draft: Draft, bench: Bench): InputRead<InputOf<All>>;
  /** The same of some fields alone, whatever the others hold. */
  readSome(some: readonly string[], draft: Draft, bench: Bench): InputRead<Partial<InputOf<All>>>;
  /** One field alone, as its text is to be read: what is chosen and given elsewhere is asked. */
  readOne(key: string, typed: string, ask: Ask, how: Reading): FieldRead;
  /** Whether a field is asked for, by what is chosen so far. */
  asksFor(key: string, ask: Ask): boolean;
  /** What no build up to this one knows: fields there aren't, and options no choice has. */
  unknown(draft: Draft): readonly Fault[];
  /** What types these fields, none of which can be mistyped. */
  typing(of: { readonly [Key in keyof All]?: string }): Draft;
  /** What can be said of a draft for what it asks: conditions of the fields. */
  asks(draft: Draft): Ask;
}

/**
 * @param labels what each field is called
 * @param specs the fields in the order they are shown in
 * @param past what earlier builds had as fields here: older addresses and records hold it, and it is passed over
 */
export function schema<const All extends Specs>(
  labels: { readonly [Key in keyof All]: string },
  specs: All & { readonly [Key in keyof All as Extract<Key, PageKey>]: never },
  past: readonly string[] = [],
): Schema<All> {
  const keys = Object.keys(specs);
  const keyOf = new Map<FieldSpec<unknown>, string>(keys.map((key) => [specOf(key), key]));
  const asks = (draft: Draft): Ask => {
    // A choice asks for others, and every field for the same few.
    const asked = new Map<FieldSpec<unknown>, string>();
    const ask: Ask = (spec) => {
      const before = asked.get(spec);
      if (before !== undefined) return before;
      const key = keyOf.get(spec);
      if (key === undefined) throw new Error('a condition asks for a field of another calculation');
      const typed = draft[key];
      const said = spec.choices ? chosenOf(typed, spec, ask) : (typed ?? '');
      asked.set(spec, said);
      return said;
    };
    return ask;
  };
  return {
    specs,
    asks,
    asked: { start, fields, ever, measureOf },
    typing: (of) => of as Draft,
    read: (draft, bench) => {
      const unknown = unknownFields(draft);
      const read = readSome(keys, draft, bench);
      const faults = [...unknown, ...(read.ok ? [] : read.faults)];
      return faults.length > 0 ? { ok: false, faults } : (read as InputRead<InputOf<All>>);
    },
    readSome,
    readOne: (key, typed, ask, how) => readOf(specOf(key), typed, ask, how),
    asksFor: (key, ask) => isAsked(specOf(key), ask),
    unknown: (draft) => [...unknownFields(draft), ...unknownOptions(draft)],
  };

  function readSome(
    some: readonly string[],
    draft: Draft,
    bench: Bench,
  ): InputRead<Partial<InputOf<All>>> {
    const ask = asks(draft);
    const faults: Fault[] = [];
    const read = some.map((key) => {
      const value = readOf(specOf(key), draft[key] ?? '', ask, bench);
      if (value.ok) return [key, value.value] as const;
      faults.push({ field: key, why: whyOf(key, draft[key] ?? '', value.fault, ask) });
      return [key, undefined] as const;
    });
    if (faults.length > 0) return { ok: false, faults };
    return { ok: true, value: Object.fromEntries(read) as Partial<InputOf<All>> };
  }

  function start(bench: Bench): Draft {
    const ask = asks({});
    return Object.fromEntries(keys.map((key) => [key, startOf(specOf(key), bench, ask)]));
  }

  function fields(draft: Draft): Field[] {
    const ask = asks(draft);
    const shown = keys.filter((key) => isAsked(specOf(key), ask));
    const isLast = (key: string) => specOf(key).last?.(ask) ?? false;
    const asked = [...shown.filter((key) => !isLast(key)), ...shown.filter(isLast)];
    const after = new Map(asked.map((key) => [key, afterWhich(specOf(key), ask)]));
    const needed = asked.filter((key) => after.get(key));
    const following = (key: string) => needed.filter((one) => after.get(one) === specOf(key));
    return asked
      .filter((key) => !after.get(key))
      .flatMap((key) => [key, ...following(key)])
      .map((key) => fieldOf(key, ask));
  }

  function ever(draft: Draft): Field[] {
    const ask = asks(draft);
    const other = keys.filter((key) => !isAsked(specOf(key), ask));
    return [...fields(draft), ...other.map((key) => fieldOf(key, ask))];
  }

  function measureOf(key: string, draft: Draft) {
    const usual = Object.hasOwn(specs, key) ? specOf(key).usual : undefined;
    return typeof usual === 'function' ? usual(asks(draft)) : usual;
  }

  function specOf(key: string): FieldSpec<unknown> {
    return specs[key] as FieldSpec<unknown>;
  }

  function labelOf(key: string, ask: Ask): string {
    return specOf(key).label?.(ask) ?? (labels[key as keyof All] as string);
  }

  function fieldOf(key: string, ask: Ask): Field {
    const { kind, choices } = specOf(key);
    const hint = hintOf(specOf(key), ask);
    const base = { key, label: labelOf(key, ask), ...(hint !== undefined && { hint }) };
    if (kind !== 'choice') return { kind, ...base };
    const options = Object.entries(choices?.(ask) ?? {});
    return { kind, ...base, options: options.map(([value, label]) => ({ value, label })) };
  }

  function unknownFields(draft: Draft): Fault[] {
    const unknown = Object.keys(draft).filter(
      // One that was emptied has been left out.
      (key) =>
        draft[key] !== '' &&
        !(Object.hasOwn(specs, key) || key === TAPED_BEFORE || past.includes(key)),
    );
    return unknown.map((field) => ({
      field,
      why: { of: 'words', words: schemaWords.unknownField(field), unknown: true },
    }));
  }

  function unknownOptions(draft: Draft): Fault[] {
    const ask = asks(draft);
    return keys.flatMap((key): Fault[] => {
      const spec = specOf(key);
      const typed = draft[key] ?? '';
      if (!spec.choices || Object.hasOwn(spec.choices(ask), ask(spec))) return [];
      return [{ field: key, why: whyOf(key, typed, 'unknown option', ask) }];
    });
  }

  function whyOf(key: string, typed: string, fault: ValueFault, ask: Ask): Fault['why'] {
    if (fault !== 'unknown option') return { of: 'reading', fault };
    const offered = Object.values(specOf(key).choices?.(ask) ?? {});
    return { of: 'words', words: schemaWords.unknownOption(labelOf(key, ask), typed, offered) };
  }
}

/** Which field a tape was read for, as older addresses call it: passed over where no field is called so. */
const TAPED_BEFORE = 'into';

type ValueFault = Extract<Read<object>, { ok: false }>['fault'] | 'unknown option';

function isAsked({ when }: FieldSpec<unknown>, ask: Ask): boolean {
  return !when || when(ask);
}

/** Which field it is needed after, where it may not be left out. */
function afterWhich({ needed }: FieldSpec<unknown>, ask: Ask): FieldSpec<unknown> | undefined {
  return needed?.when(ask) ? needed.after : undefined;
}

/** Shown when it is empty; undefined where it may not be. */
function hintOf(spec: FieldSpec<unknown>, ask: Ask): string | undefined {
  return afterWhich(spec, ask) ? undefined : spec.hint;
}

/** What is chosen; what is known and not offered just now is the first that is, as is nothing. */
function chosenOf(typed: string | undefined, spec: FieldSpec<unknown>, ask: Ask): string {
  const offered = spec.choices?.(ask) ?? {};
  if (typed !== undefined && Object.hasOwn(offered, typed)) return typed;
  const start = typeof spec.start === 'string' ? spec.start : '';
  const first = Object.hasOwn(offered, start) ? start : (Object.keys(offered)[0] ?? '');
  return typed === undefined || typed === '' || knows(spec, typed) ? first : typed;
}

function knows({ known }: FieldSpec<unknown>, typed: string): boolean {
  return known?.(typed) ?? false;
}

function readOf(spec: FieldSpec<unknown>, typed: string, ask: Ask, how: Reading): FieldRead {
  if (spec.choices) {
    const chosen = ask(spec);
    const offered: Choices = spec.choices(ask);
    if (!isAsked(spec, ask)) return { ok: true, value: chosenOf(undefined, spec, ask) };
    if (!Object.hasOwn(offered, chosen)) return { ok: false, fault: 'unknown option' };
    return { ok: true, value: chosen };
  }
  const leftOut = hintOf(spec, ask) !== undefined && typed.trim() === '';
  if (!isAsked(spec, ask) || leftOut) return { ok: true, value: spec.none };
  return spec.read(typed, how);
}

function startOf(spec: FieldSpec<unknown>, { unit }: Bench, ask: Ask): string {
  return spec.choices ? chosenOf(undefined, spec, ask) : startIn(spec.start ?? '', unit);
}

/** What a field starts with on a bench of a unit: of one length in round numbers of each unit, that one. */
export function startIn(start: Start, unit: Bench['unit']): string {
  if (typeof start === 'string') return start;
  return unit === 'in' ? start.in : unit === 'mm' ? start.mm : start.cm;
}
