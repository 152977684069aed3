import { useEffect } from 'preact/hooks';

import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import { inUnitOf } from '../../calculation/other-unit.ts';

interface Props {
  bench: Bench;
  calculation: Calculation;
  draft: Draft;
  onDraft: (draft: Draft) => void;
}

/** Numbers typed in another unit get it written out before they are shown. */
export function OtherUnitPlace({ bench, calculation, draft, onDraft }: Props) {
  useEffect(() => onDraft(inUnitOf(bench, calculation, draft)));
  return null;
}
