import { useEffect, useMemo, useState } from 'preact/hooks';
import { garmentKeepWords as words } from '#words/garment/garment-keep-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { recordOf } from '../../calculation/made.ts';
import type { PageState } from '../../calculation/page.ts';
import type { Listed } from '../../garment/record/listed.ts';
import { typingOf } from '../../garment/record/typing-of.ts';
import { KeepScreen, type KeepWish } from '../../screens/garments/keep.tsx';
import { loadList } from '../../storage/garment-list.ts';
import { GarmentError, type GarmentFault } from '../../storage/garments.ts';
import type { Store } from '../../storage/store.ts';
import { askToPersist, loadOpen, notKept, part } from './deeds.ts';
import { loadOpened, type Opened } from './opened.ts';
import { typedOn } from './page-kept.ts';

interface Props {
  store: Store;
  calculation: Calculation;
  state: PageState;
  bench: Bench;
  /** Back to the calculation, with where it is kept now if it was. */
  onDone: (state: PageState) => void;
}

/** Keeps what is typed on a garment: as something new, or in place of what it was kept as. */
export function KeepPlace({ store, calculation, state, bench, onDone }: Props) {
  const { draft, page } = state;
  const [garments, setGarments] = useState<readonly Listed[]>();
  const [from, setFrom] = useState<Opened>();
  const [open, setOpen] = useState('');
  const [said, setSaid] = useState<string>();
  /** Why the last press kept nothing: a second one may be the maker's answer to it. */
  const [asked, setAsked] = useState<GarmentFault>();
  useEffect(() => {
    const load = async () => {
      const list = await loadList(store);
      setOpen(await loadOpen(store, list.garments));
      setFrom(await loadOpened(store, page.kept));
      setGarments(list.garments);
    };
    load().catch((error: unknown) => {
      setGarments([]);
      return notKept(error).then(setSaid);
    });
  }, [store]);
  const isShown = garments !== undefined;
  useEffect(() => {
    if (!isShown) return;
    // While the form is filled in. What can't be had now is asked for again by the press.
    keeping()
      .then(({ readyToKeep }) => readyToKeep(calculation))
      .catch(() => undefined);
  }, [isShown, calculation]);
  const leftOut = useMemo(
    () => leftOutOf(calculation, { draft, page }, bench),
    [calculation, draft, page, bench],
  );
  if (!garments) return null;

  const keep = async (wish: KeepWish) => {
    const inPlace = from && wish.name === from.kept.name && wish.garment === from.garment.id;
    const again = inPlace ? { id: from.id, seen: page.seen || typingOf(from.kept) } : undefined;
    try {
      const { keepOn } = await keeping();
      onDone(await keepOn(store, { calculation, state, bench, wish, again, asked }));
      askToPersist();
    } catch (error) {
      setAsked(error instanceof GarmentError ? error.fault : undefined);
      setSaid(await notKept(error));
    }
  };
  const isThere = garments.some(({ id }) => id === open);
  return (
    <KeepScreen
      garments={garments}
      first={{
        name: from?.kept.name ?? calculation.title,
        garment: from?.garment.id ?? (isThere ? open : (garments[0]?.id ?? '')),
        newName: '',
      }}
      hand={bench.hand}
      said={said ?? leftOut}
      sides={from && isMeasured(calculation, state, bench) ? sidesOf(from.kept) : NONE}
      onKeep={(wish) => void keep(wish)}
      onLeave={() => onDone(state)}
    />
  );
}

const keeping = () => part(import('./keep-on.ts'));

const NONE: readonly string[] = [];

function sidesOf(kept: Opened['kept']): readonly string[] {
  return ('sides' in kept && kept.sides) || NONE;
}

/** Whether a mark of the page was measured since it was kept. */
function isMeasured(calculation: Calculation, state: PageState, bench: Bench): boolean {
  return typedOn(calculation, state, bench).runs.some(({ made }) => Object.keys(made).length > 0);
}

/** What was measured on another plan than the one on the page, in words. */
function leftOutOf(
  calculation: Calculation,
  { draft, page }: PageState,
  bench: Bench,
): string | undefined {
  const work = calculation.work(draft, bench);
  const runs = work.ok ? work.answer.runs : [];
  const measures = runs.flatMap(({ run, item }, i) =>
    [...recordOf(page, i, run).refused.values()].flatMap((made) =>
      [...made].map(([label, typed]) => words.measured(item, label, typed)),
    ),
  );
  return measures.length > 0 ? words.leftOut(measures.join(', ')) : undefined;
}
