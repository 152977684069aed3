import { useEffect, useMemo, useState } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import { garmentWords } from '#words/garment/garment-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Drawing } from '../../calculation/drawing.ts';
import { DRAWINGS } from '../../calculations/list.ts';
import type { State } from '../../garment/actions/state.ts';
import { GarmentSheet } from '../../screens/garment/sheet/sheet.tsx';
import type { Store } from '../../storage/store.ts';
import { PAPER_SERVICES } from '../paper/paper-services.ts';
import { useHand } from './hand.ts';
import { useNotKept } from './not-kept.ts';

interface Props {
  store: Store;
  bench: Bench;
  /** The garment. */
  id: string;
  onLeave: () => void;
}

/** A garment on paper, once it is read and its drawings are fetched. */
export function SheetPlace({ store, bench, id, onLeave }: Props) {
  const { state, failed, trouble } = useHand(store, id);
  const why = useNotKept(failed ?? trouble);
  const fetched = useDrawings(state);
  const day = useMemo(() => new Date().toLocaleDateString(undefined, { dateStyle: 'long' }), []);
  if (state && fetched) {
    return (
      <GarmentSheet {...{ state, bench, day, onLeave, ...fetched }} services={PAPER_SERVICES} />
    );
  }
  return (
    <div class="waiting">
      <p role={why === '' ? 'status' : 'alert'}>{why || words.reading}</p>
      <button type="button" class="plain" onClick={onLeave}>
        {garmentWords.back}
      </button>
    </div>
  );
}

interface Fetched {
  drawings: ReadonlyMap<string, Drawing>;
  missing: boolean;
}

/** The drawings of all works; those that can't be fetched are left out, and that is said. */
function useDrawings(state: State | undefined): Fetched | undefined {
  const [fetched, setFetched] = useState<Fetched>();
  const ids = state && [...state.answer.works.values()].map(({ work }) => work.calculation);
  const wanted = ids && [...new Set(ids)].sort().join(' ');
  useEffect(() => {
    if (wanted === undefined) return;
    let gone = false;
    const known = wanted.split(' ').filter((one) => Object.hasOwn(DRAWINGS, one));
    const all = known.map(async (one) => [one, await DRAWINGS[one]?.().catch(() => undefined)]);
    void Promise.all(all).then((pairs) => {
      const here = pairs.filter((pair): pair is [string, Drawing] => pair[1] !== undefined);
      if (!gone) setFetched({ drawings: new Map(here), missing: here.length < known.length });
    });
    return () => {
      gone = true;
    };
  }, [wanted]);
  return fetched;
}
