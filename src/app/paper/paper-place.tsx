import { useEffect, useMemo, useState } from 'preact/hooks';

import { drawnAnswer } from '../../calculation/as-made.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import { Paper } from '../../screens/paper/paper.tsx';
import type { PaperServices } from '../../screens/paper/services.ts';
import type { Store } from '../../storage/store.ts';

interface Props {
  store: Store;
  calculation: Calculation;
  draft: Draft;
  bench: Bench;
  onDraft: (draft: Draft) => void;
  onLeave: () => void;
}

// What makes and hands over files is fetched when it is asked for: choosing comes before.
const loadFiles = () => import('./save-file.ts');
const SERVICES: PaperServices = {
  makePdf: (...job) => import('./paper-maker.ts').then(({ makePdf }) => makePdf(...job)),
  save: (name, file) => loadFiles().then(({ saveFile }) => saveFile(name, file)),
  share: canShare()
    ? (name, file) => loadFiles().then(({ shareFile }) => shareFile(name, file))
    : undefined,
};

/** A calculation's marks on paper; what is chosen of the paper is in the draft. */
export function PaperPlace({ store, calculation, draft, bench, onDraft, onLeave }: Props) {
  const name = useKeptName(store, draft.kept) ?? calculation.title;
  const answer = useMemo(() => {
    const work = calculation.work(draft, bench);
    return work.ok ? drawnAnswer(work.answer, draft, bench) : undefined;
  }, [calculation, draft, bench]);
  return (
    <Paper
      title={calculation.title}
      name={name}
      answer={answer}
      bench={bench}
      draft={draft}
      services={SERVICES}
      onDraft={onDraft}
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
      .then(({ keptName }) => keptName(store, place))
      // Without storage the pages are called by their calculation.
      .then(setName, () => undefined);
  }, [store, place]);
  return name;
}

/** Whether the phone takes files of this kind from an app. */
function canShare(): boolean {
  const probe = new File([''], 'template.pdf', { type: 'application/pdf' });
  return navigator.canShare?.({ files: [probe] }) ?? false;
}
