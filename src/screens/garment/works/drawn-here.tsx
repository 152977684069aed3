import { useMemo } from 'preact/hooks';
import type { Bench } from '../../../calculation/bench.ts';
import type { Drawing } from '../../../calculation/drawing.ts';
import type { State } from '../../../garment/actions/state.ts';
import { homeOf } from '../../../garment/record/home.ts';
import { DrawnWork } from './drawn-work.tsx';
import { openWork } from './open-work.ts';
import { drawnOf } from './work-labels.ts';
import { givesOf } from './work-numbers.ts';

interface Props {
  state: State;
  work: string;
  side: string;
  drawing: Drawing;
  bench: Bench;
}

/** A work as it stands, drawn where it is only looked at, with the numbers that the hand makes. */
export function DrawnHere({ state, work, side, drawing, bench }: Props) {
  const drawn = useMemo(() => {
    const open = openWork(state, work, side, bench);
    return open && drawnOf(drawing, open, givesOf(open, state.answer), bench);
  }, [state, work, side, drawing, bench]);
  if (!drawn) return null;
  const steps = new Set(state.answer.steps.map(({ home }) => home));
  const dimensions = drawn.dimensions.flatMap(({ name: _, ...one }) => {
    const { by } = one;
    const key = 'given' in by ? '' : 'found' in by ? by.found : by.made;
    return steps.has(homeOf(work, side, key)) ? [one] : [];
  });
  const labelOf = () => ({ kind: 'plain', aloud: '', current: false }) as const;
  return <DrawnWork drawing={{ ...drawn, dimensions }} labelOf={labelOf} />;
}
