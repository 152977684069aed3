import { useMemo, useState } from 'preact/hooks';
import { laySheetWords as words } from '#words/garment/lay-sheet-words.ts';
import { paperWords } from '#words/paper/paper-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { adopt } from '../../../controls/adopt.ts';
import { MakePdf } from '../../../controls/make-pdf.tsx';
import { Choice } from '../../../controls/paper-choice.tsx';
import type { PaperServices } from '../../../controls/paper-services.ts';
import type { LayJob } from '../../../drawing/lay-job.ts';
import { layPages } from '../../../drawing/lay-pages.ts';
import type { PaperSize } from '../../../drawing/paper-job.ts';
import { lettersLacking } from '../../../drawing/paper-letters.ts';
import { layPaperWords } from './lay-paper-words.ts';
import { Pages } from './pages.tsx';
import css from './sheet.css?inline';

adopt(css);

export interface LaySheetProps {
  job: LayJob;
  bench: Bench;
  services: PaperServices;
  onBack: () => void;
}

/** Margins that any printer keeps to, in mm. */
const MARGIN = 10;

/** A lay on paper, seen before it is printed. */
export function LaySheet({ job, bench, services, onBack }: LaySheetProps) {
  const [size, setSize] = useState<PaperSize>(bench.unit === 'in' ? 'letter' : 'a4');
  const laid = useMemo(
    () => layPages(job, { size, margin: MARGIN }, layPaperWords(bench)),
    [job, size, bench],
  );
  const lacking = lettersLacking([job.title, ...job.pieces.map((one) => one.heading)].join(''));
  return (
    <div class="paper sheet" data-hand={bench.hand}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0}>
        <h1>{words.title}</h1>
        <p role="status">
          {laid.ok && words.pages(laid.pages.length)}
          {lacking !== '' && ` ${paperWords.lacking(lacking)}`}
        </p>
        {laid.ok && <Pages pages={laid.pages} named={words.page} />}
      </main>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <section class="choose" tabIndex={0} aria-label={paperWords.size}>
        <Choice
          legend={paperWords.size}
          name="paper"
          options={paperWords.sizes}
          chosen={size}
          onChoose={(value) => setSize(value as PaperSize)}
        />
      </section>
      {laid.ok && (
        <div class="make">
          <MakePdf title={job.title} pages={laid.pages} services={services} />
        </div>
      )}
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={onBack}>
          {paperWords.leave}
        </button>
      </nav>
    </div>
  );
}
