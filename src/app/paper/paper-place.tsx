import { useEffect, useMemo, useState } from 'preact/hooks';

import { drawnAnswer } from '../../calculation/as-made.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import type { PageState } from '../../calculation/page.ts';
import { Paper } from '../../screens/paper/paper.tsx';
import type { Store } from '../../storage/store.ts';
import { PAPER_SERVICES } from './paper-services.ts';

interface Props {
  store: Store;
  calculation: Calculation;
  state: PageState;
  bench: Bench;
  onState: (state: PageState) => void;
  onLeave: () => void;
}

/** A calculation's marks on paper; what is chosen of the paper is in the page's state. */
export function PaperPlace({ store, calculation, state, bench, onState, onLeave }: Props) {
  const { draft, page } = state;
  const name = useKeptName(store, page.kept) ?? calculation.title;
  const answer = useMemo(() => {
    const work = calculation.work(draft, bench);
    return work.ok ? drawnAnswer(work.answer, page, bench) : undefined;
  }, [calculation, draft, page, bench]);
  return (
    <Paper
      title={calculation.title}
      name={name}
      answer={answer}
      bench={bench}
      page={page}
      services={PAPER_SERVICES}
      onPage={(to) => onState({ draft, page: to })}
      onLeave={onLeave}
    />
  );
}

/** The garment and the name a calculation is kept under, once they are known. */
function useKeptName(store: Store, place: string | undefined): string | undefined {
  const [name, setName] = useState<string>();
  useEffect(() => {
    if (place === undefined) return;
    // Only what was opened from a garment needs to know of garments.
    import('../garment/kept-name.ts')
      .then((kept) => kept.keptName(store, place))
      // Without storage the pages are called by their calculation.
      .then(setName, () => undefined);
  }, [store, place]);
  return name;
}
