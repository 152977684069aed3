import { useState } from 'preact/hooks';

import type { Draft, Field } from './calculation.ts';
import type { Fresh } from './pad-props.ts';

export type Editor = ReturnType<typeof useEditor>;

/** Which field is being typed, and whether the next digit starts it anew. */
export function useEditor(fields: readonly Field[], draft: Draft, onDraft: (draft: Draft) => void) {
  const [key, setKey] = useState(fields[0]?.key ?? '');
  const [fresh, setFresh] = useState<Fresh>('all');
  const [open, setOpen] = useState(true);
  const at = Math.max(
    0,
    fields.findIndex((field) => field.key === key),
  );
  const pick = (next: string) => {
    if (next === key && open) return;
    setKey(next);
    setFresh('all');
    setOpen(true);
  };
  return {
    field: fields[at],
    fresh,
    open,
    pick,
    toggle: () => setOpen(!open),
    next: () => pick(fields[(at + 1) % fields.length]?.key ?? key),
    type: (field: string, text: string, then: Fresh) => {
      setFresh(then);
      onDraft({ ...draft, [field]: text });
    },
  };
}
