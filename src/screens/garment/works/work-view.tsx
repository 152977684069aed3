import { useMemo } from 'preact/hooks';
import type { Bench } from '../../../calculation/bench.ts';
import type { Calculation } from '../../../calculation/calculation.ts';
import type { Drawing } from '../../../calculation/drawing.ts';
import { adopt } from '../../../controls/adopt.ts';
import type { Action } from '../../../garment/actions/act.ts';
import type { Refused, State } from '../../../garment/actions/state.ts';
import css from './garment-work.css?inline';
import { useWork } from './use-work.ts';
import { WorkHand, type WorkWays } from './work-hand.tsx';
import { placedOn } from './work-labels.ts';
import { WorkReading } from './work-reading.tsx';
import { lacksOf } from './work-said.ts';

adopt(css);

export interface WorkViewProps extends WorkWays {
  state: State;
  work: string;
  bench: Bench;
  /** The calculation of the work, and how it is drawn, as far as they are there. */
  page: Calculation | undefined;
  drawing: Drawing | 'awaited' | undefined;
  onAct: (action: Action) => void;
  since?: number | undefined;
  /** Why the last thing wasn't done. */
  refused: Refused | undefined;
  /** Why what was typed is not on the disk yet, in words. */
  unkept?: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain?: (() => void) | undefined;
}

/** A work of a garment, opened in place: its drawing, on which its fields are, and what it gives. */
export function WorkView(props: WorkViewProps) {
  const { state, work, bench, refused, unkept, onAgain, Stale } = props;
  const { hand, drawn } = useWork(props);
  const lacks = useMemo(
    () => lacksOf({ answer: state.answer, bench, here: work }, work, hand.gives),
    [state, bench, work, hand],
  );
  return (
    <div class="bench garment-work" data-hand={bench.hand}>
      <WorkReading
        {...{ hand, drawn, refused, unkept, onAgain, lacks, Stale }}
        onDecide={props.onDecide}
      />
      <WorkHand
        {...{ hand, lacks, Stale }}
        placed={placedOn(drawn.picture).join(' ')}
        drawn={drawn.picture !== undefined}
        onDone={props.onDone}
        onFollow={props.onFollow}
        onRead={props.onRead}
      />
    </div>
  );
}
