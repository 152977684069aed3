import { useMemo } from 'preact/hooks';

import type { Bench } from '../controls/bench.ts';
import type { Calculation, Draft } from '../controls/calculation.ts';
import { Paper } from '../screens/paper/paper.tsx';
import type { PaperServices } from '../screens/paper/services.ts';
import { makePdf } from './paper-maker.ts';
import { safeName, saveFile } from './save-file.ts';

interface Props {
  calculation: Calculation;
  draft: Draft;
  bench: Bench;
  onDraft: (draft: Draft) => void;
  onLeave: () => void;
}

const SERVICES: PaperServices = { makePdf, save: saveFile, share: shareFiles() };

/** A calculation's marks on paper; what is chosen of the paper is in the draft. */
export function PaperPlace({ calculation, draft, bench, onDraft, onLeave }: Props) {
  const work = useMemo(() => calculation.work(draft, bench), [calculation, draft, bench]);
  return (
    <Paper
      title={calculation.title}
      answer={work.ok ? work.answer : undefined}
      bench={bench}
      draft={draft}
      services={SERVICES}
      onDraft={onDraft}
      onLeave={onLeave}
    />
  );
}

/** Where the phone takes files of this kind from an app. */
function shareFiles(): PaperServices['share'] {
  const probe = new File([''], 'template.pdf', { type: 'application/pdf' });
  if (!navigator.canShare?.({ files: [probe] })) return undefined;
  return (name, file) =>
    navigator.share({ files: [new File([file], safeName(name), { type: file.type })] });
}
