import type { ComponentChildren } from 'preact';
import { paperWords } from '#words/paper/paper-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { adopt } from '../../../controls/adopt.ts';
import { MakePdf } from '../../../controls/make-pdf.tsx';
import { Choice } from '../../../controls/paper-choice.tsx';
import type { PaperServices } from '../../../controls/paper-services.ts';
import type { PaperOutcome, PaperSize } from '../../../drawing/paper-job.ts';
import { Pages } from './pages.tsx';
import css from './sheet.css?inline';

adopt(css);

/** Margins that any printer keeps to, in mm. */
export const MARGIN = 10;

export const usualSize = ({ unit }: Bench): PaperSize => (unit === 'in' ? 'letter' : 'a4');

interface SeenSheetProps {
  bench: Bench;
  heading: string;
  /** How many pages there are, or why there are none. */
  said: string;
  laid: PaperOutcome;
  /** What a page is called. */
  named: (page: number, pages: number) => string;
  /** What the file is called. */
  title: string;
  /** What is chosen, and left, here. */
  about: { choose: string; leave: string };
  size: PaperSize;
  onSize: (size: PaperSize) => void;
  services: PaperServices;
  onLeave: () => void;
  /** What else is chosen. */
  children?: ComponentChildren;
}

/** Pages seen before they are printed, with what can be chosen of them. */
export function SeenSheet(props: SeenSheetProps) {
  const { bench, laid, title, about, services } = props;
  return (
    <div class="paper sheet" data-hand={bench.hand}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0}>
        <h1>{props.heading}</h1>
        <p role="status">{props.said}</p>
        {laid.ok && <Pages pages={laid.pages} named={props.named} />}
      </main>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <section class="choose" tabIndex={0} aria-label={about.choose}>
        <Choice
          legend={paperWords.size}
          name="paper"
          options={paperWords.sizes}
          chosen={props.size}
          onChoose={(value) => props.onSize(value as PaperSize)}
        />
        {props.children}
      </section>
      {laid.ok && (
        <div class="make">
          <MakePdf title={title} pages={laid.pages} services={services} />
        </div>
      )}
      <nav class="actions" aria-label={about.leave}>
        <button type="button" onClick={props.onLeave}>
          {paperWords.leave}
        </button>
      </nav>
    </div>
  );
}
