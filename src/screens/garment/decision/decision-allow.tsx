import { useState } from 'preact/hooks';
import { decisionWords as words } from '#words/garment/garment-decision-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { Rich } from '../../../controls/rich.tsx';
import { valueText } from '../said/value-text.ts';

interface KeyProps {
  /** How far off the maker lets what is made be, in 1/8000 mm. */
  allow: number | undefined;
  bench: Bench;
  onType: () => void;
}

/** Says how far off something may be and still be fine. */
export function AllowKey({ allow, bench, onType }: KeyProps) {
  const said = !allow ? undefined : valueText('length', allow, bench);
  return (
    <button type="button" onClick={onType}>
      <Rich text={said === undefined ? words.allow : words.allowed(said)} />
      <small>{said === undefined ? words.allowHint : words.allowedHint}</small>
    </button>
  );
}

/** What the maker allows at a home: kept there before, or typed now for the way that is taken. */
export function useAllow(kept: number | undefined) {
  const [allow, setAllow] = useState(kept);
  const [types, setTypes] = useState(false);
  return {
    ...{ allow, types },
    type: () => setTypes(true),
    leave: () => setTypes(false),
    keep: (length: number) => {
      // Either way: a sign says nothing. None takes what was allowed before away.
      setAllow(Math.abs(length));
      setTypes(false);
    },
  };
}
