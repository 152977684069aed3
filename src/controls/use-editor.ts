import { useMemo, useRef, useState } from 'preact/hooks';

import type { Draft, Field } from '../calculation/calculation.ts';
import type { Fresh } from './pad-keys.ts';

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
  const field = fields[at];

  // The same functions from first to last, so that what they are given to can stay as it is.
  const latest = useRef({ draft, fields, onDraft, field, open });
  latest.current = { draft, fields, onDraft, field, open };
  const stable = useMemo(() => {
    const pick = (next: string) => {
      const now = latest.current;
      if (next === now.field?.key && now.open) return;
      setKey(next);
      setFresh('all');
      setOpen(true);
    };
    return {
      pick,
      toggle: () => setOpen((was) => !was),
      next: () => {
        const now = latest.current;
        const at = now.fields.findIndex(({ key }) => key === now.field?.key);
        const after = now.fields[(at + 1) % now.fields.length];
        if (after) pick(after.key);
      },
      type: (of: string, text: string, then: Fresh) => {
        setFresh(then);
        latest.current.onDraft({ ...latest.current.draft, [of]: text });
      },
    };
  }, []);
  return { field, fresh, open, ...stable };
}
