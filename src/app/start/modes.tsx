import { useEffect } from 'preact/hooks';

import type { Bench } from '../../calculation/bench.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import type { PageState } from '../../calculation/page.ts';
import type { Store } from '../../storage/store.ts';
import { Later } from './later.tsx';

interface Props {
  store: Store;
  calculation: Calculation;
  state: PageState;
  bench: Bench;
  mode: string;
  onState: (state: PageState) => void;
  /** Another mode of the same calculation; '' is the calculation itself. */
  onMode: (mode: string, state?: PageState) => void;
}

const loadOtherUnit = () =>
  import('../places/other-unit-place.tsx').then((part) => part.OtherUnitPlace);
const loadKeep = () => import('../garment/keep-place.tsx').then((part) => part.KeepPlace);
const loadFollow = () => import('../places/follow-place.tsx').then((part) => part.FollowPlace);
const loadGlass = () => import('../paper/glass-place.tsx').then((part) => part.GlassPlace);
const loadPaper = () => import('../paper/paper-place.tsx').then((part) => part.PaperPlace);
const loadTape = () => import('../tape/tape-place.tsx').then((part) => part.TapePlace);

/**
 * A calculation in another mode than being worked out: kept, followed, counted, put on paper
 * or on the glass, read off a tape; or typed on a bench of another unit.
 */
export function Modes({ mode, onMode, ...same }: Props) {
  const onLeave = () => onMode('');
  const onDone = (next: PageState) => onMode('', next);
  const { state } = same;
  if (state.page.u !== same.bench.unit) {
    return <Later load={loadOtherUnit} onHome={onLeave} give={same} />;
  }
  switch (mode) {
    case 'keep':
      return <Later load={loadKeep} onHome={onLeave} give={{ ...same, onDone }} />;
    case 'tape':
      return <Later load={loadTape} onHome={onLeave} give={{ ...same, onMode }} />;
    case 'paper':
      return <Later load={loadPaper} onHome={onLeave} give={{ ...same, onLeave }} />;
    case 'glass':
      return <Later load={loadGlass} onHome={onLeave} give={{ ...same, onLeave }} />;
    case 'follow':
    case 'count': {
      const counting = mode === 'count' && same.calculation.tally === true;
      const onTape = (into: string) =>
        onMode('tape', { ...state, page: { ...state.page, taped: into } });
      return (
        <Later load={loadFollow} onHome={onLeave} give={{ ...same, counting, onLeave, onTape }} />
      );
    }
    default:
      return <Unknown onLeave={onLeave} />;
  }
}

/** An address with a mode there is not leads to the calculation itself. */
function Unknown({ onLeave }: { onLeave: () => void }) {
  useEffect(onLeave, []);
  return null;
}
