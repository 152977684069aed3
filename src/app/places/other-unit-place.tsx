import { useEffect } from 'preact/hooks';

import type { Bench } from '../../calculation/bench.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { inUnitOf } from '../../calculation/other-unit.ts';
import type { PageState } from '../../calculation/page.ts';

interface Props {
  bench: Bench;
  calculation: Calculation;
  state: PageState;
  onState: (state: PageState) => void;
}

/** Numbers typed in another unit get it written out before they are shown. */
export function OtherUnitPlace({ bench, calculation, state, onState }: Props) {
  useEffect(() => onState(inUnitOf(bench, calculation, state)));
  return null;
}
