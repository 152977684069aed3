import { useMemo, useState } from 'preact/hooks';
import { laySheetWords as words } from '#words/garment/lay-sheet-words.ts';
import { paperWords } from '#words/paper/paper-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { PaperServices } from '../../../controls/paper-services.ts';
import type { LayJob } from '../../../drawing/lay-job.ts';
import { layPages } from '../../../drawing/lay-pages.ts';
import { lettersLacking } from '../../../drawing/paper-letters.ts';
import { layPaperWords } from './lay-paper-words.ts';
import { MARGIN, SeenSheet, usualSize } from './seen-sheet.tsx';

export interface LaySheetProps {
  job: LayJob;
  bench: Bench;
  services: PaperServices;
  onBack: () => void;
}

/** A lay on paper, seen before it is printed. */
export function LaySheet({ job, bench, services, onBack }: LaySheetProps) {
  const [size, setSize] = useState(usualSize(bench));
  const laid = useMemo(
    () => layPages(job, { size, margin: MARGIN }, layPaperWords(bench)),
    [job, size, bench],
  );
  const lacking = lettersLacking([job.title, ...job.pieces.map((one) => one.heading)].join(''));
  const said = [
    ...(laid.ok ? [words.pages(laid.pages.length)] : []),
    ...(lacking === '' ? [] : [paperWords.lacking(lacking)]),
  ];
  return (
    <SeenSheet
      {...{ bench, laid, services, size }}
      heading={words.title}
      said={said.join(' ')}
      named={words.page}
      title={job.title}
      about={{ choose: paperWords.size, leave: words.title }}
      onSize={setSize}
      onLeave={onBack}
    />
  );
}
