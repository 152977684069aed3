import { useState } from 'preact/hooks';
import { shownOn } from '../../../garment/actions/make.ts';
import { besides, type Next } from '../../../garment/next/next.ts';
import { homeOf, readHome } from '../../../garment/record/home.ts';
import type { GarmentStep } from '../../../garment/work-out/told.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';

/** Steps that are made with one press, as left and right are that lie on each other. */
export interface Together {
  /** Those that can be made along with the one that is next. */
  can: readonly GarmentStep[];
  /** Those that are. */
  also: readonly GarmentStep[];
  turn: () => void;
}

/** Whether the next step is made on all sides at once: until the maker says otherwise, or the step is another. */
export function useTogether(answer: Answer, next: Next, tape: number): Together {
  const [on, setOn] = useState<string>();
  if (next.kind !== 'step') return { can: [], also: [], turn: () => undefined };
  const { home } = next.step;
  const node = answer.nodes.get(home);
  const can = besides(answer, next, (value) => shownOn(tape, node, value));
  const { id, key } = readHome(home);
  const ofAll = homeOf(id, '', key);
  const turn = () => setOn((was) => (was === ofAll ? undefined : ofAll));
  return { can, also: on === ofAll ? can : [], turn };
}
