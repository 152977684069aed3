import type { Draft, Field } from './calculation.ts';

/** A choice's values and what they are called, in order. */
export type Choices = Readonly<Record<string, string>>;

/** Makes the fields of a calculation from what they are called. */
export function fieldsCalled<Key extends string>(labels: Readonly<Record<Key, string>>) {
  const base = (key: Key) => ({ key, label: labels[key] });
  return {
    length: (key: Key): Field => ({ kind: 'length', ...base(key) }),
    lengths: (key: Key, hint: string): Field => ({ kind: 'lengths', ...base(key), hint }),
    /** A length that may be left out. */
    optional: (key: Key, hint: string): Field => ({ kind: 'length', ...base(key), hint }),
    count: (key: Key): Field => ({ kind: 'count', ...base(key) }),
    optionalCount: (key: Key, hint: string): Field => ({ kind: 'count', ...base(key), hint }),
    number: (key: Key): Field => ({ kind: 'number', ...base(key) }),
    text: (key: Key, hint: string): Field => ({ kind: 'text', ...base(key), hint }),
    choice: (key: Key, choices: Choices): Field => ({
      kind: 'choice',
      ...base(key),
      options: Object.entries(choices).map(([value, label]) => ({ value, label })),
    }),
  };
}

/** What was chosen, or the first choice for anything unknown in an address. */
export function chosen<Value extends string>(
  draft: Draft,
  key: string,
  choices: Readonly<Record<Value, string>>,
): Value {
  const value = draft[key] ?? '';
  return (Object.hasOwn(choices, value) ? value : Object.keys(choices)[0]) as Value;
}

/** Whether anything was given that may be left out. */
export function isGiven(draft: Draft, key: string): boolean {
  return (draft[key] ?? '').trim() !== '';
}
