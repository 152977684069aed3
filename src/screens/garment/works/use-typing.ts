import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Bench } from '../../../calculation/bench.ts';
import type { Fresh } from '../../../controls/pad-keys.ts';
import { useAlike } from '../../../controls/use-alike.ts';
import type { Action } from '../../../garment/actions/act.ts';
import type { Offered } from '../../../garment/actions/links-for.ts';
import type { State } from '../../../garment/actions/state.ts';
import { partsOf, withTaken } from '../../../garment/actions/typed-parts.ts';
import { type FieldPlace, pendingOf } from '../../../garment/actions/typing.ts';
import { letterOf } from '../../../lengths/taken.ts';
import { isSame, type OpenField } from './open-work.ts';

/** What the maker does, without the time it is done at. */
export type Deed = Action extends infer One
  ? One extends Action
    ? Omit<One, 'now'>
    : never
  : never;
export type Do = (deed: Deed) => void;

/** What is open: a work, or a quantity, which has one field. */
interface Open<Place extends FieldPlace> {
  fields: readonly OpenField<Place>[];
}

interface Typing<Place extends FieldPlace> {
  state: State;
  open: Open<Place> | undefined;
  bench: Bench;
  onDo: Do;
}

/**
 * Which field of an open work is typed into. What is typed is pending until the maker goes on: to the
 * next field, to another, out of the work, or away from the page.
 */
export function useTyping<Place extends FieldPlace>(now: Typing<Place>) {
  const [at, setAt] = useState<{ key: string; fresh: Fresh } | undefined>(() => pendingField(now));
  const latest = useRef({ ...now, at });
  latest.current = { ...now, at };
  const stable = useMemo(() => {
    const settle = () => {
      const { state, onDo } = latest.current;
      if (state.record.pending !== undefined) onDo({ do: 'settle' });
    };
    const pick = (key: string) => {
      if (key === latest.current.at?.key) return;
      settle();
      setAt({ key, fresh: 'all' });
    };
    return {
      settle,
      pick,
      next() {
        const { open, at } = latest.current;
        const fields = open?.fields ?? [];
        const here = fields.findIndex(({ field }) => field.key === at?.key);
        const after = fields[(here + 1) % fields.length];
        if (after && after.field.key !== at?.key) pick(after.field.key);
        else settle();
      },
      close() {
        settle();
        setAt(undefined);
      },
      type: (key: string, text: string, fresh: Fresh) => {
        const { bench, onDo } = latest.current;
        const one = fieldOf(latest.current.open, key);
        if (!one) return;
        setAt({ key, fresh });
        const kind = one.field.kind === 'choice' ? 'choose' : 'type';
        onDo({ do: kind, place: one.place, parts: partsOf(text, one.taken, bench) });
      },
      /** Takes something of the garment: settled at once, but within what is still being typed. */
      take: ({ link }: Offered) => {
        const { bench, state, open, at, onDo } = latest.current;
        const one = at && fieldOf(open, at.key);
        if (!one) return;
        const text = withTaken(one.text, letterOf(one.taken.length), at.fresh === 'all');
        const parts = partsOf(text, [...one.taken, { link }], bench);
        const pending = pendingOf(state.record);
        const within = pending !== undefined && isSame(pending.place, one.place);
        setAt({ ...at, fresh: 'number' });
        onDo({ do: within ? 'type' : 'link', place: one.place, parts });
      },
    };
  }, []);
  useEffect(() => {
    const hidden = () => document.visibilityState === 'hidden' && stable.settle();
    document.addEventListener('visibilitychange', hidden);
    return () => {
      document.removeEventListener('visibilitychange', hidden);
      stable.settle();
    };
  }, [stable]);
  const field = at && fieldOf(now.open, at.key);
  return useAlike({ field, fresh: at?.fresh ?? ('all' as Fresh), ...stable });
}

function fieldOf<Place extends FieldPlace>(
  open: Open<Place> | undefined,
  key: string,
): OpenField<Place> | undefined {
  return open?.fields.find(({ field }) => field.key === key);
}

/** What was being typed when the page was left goes on. */
function pendingField<Place extends FieldPlace>({
  state,
  open,
}: Typing<Place>): { key: string; fresh: Fresh } | undefined {
  const pending = pendingOf(state.record);
  const one = pending && open?.fields.find(({ place }) => isSame(place, pending.place));
  return one && { key: one.field.key, fresh: 'no' };
}
