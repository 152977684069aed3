import { lastHomeWords as words } from '#words/garment/last-home-words.ts';
import './home-style.ts';
import { type Said, StepBody } from './key-body.tsx';

/** What a garment's home last said, once all was kept: what a start shows until it is worked out again. */
export interface LastHome extends Said {
  garment: string;
  name: string;
  /** How much is made, in words. */
  made: string;
  hand: 'right' | 'left';
  /** The bench it was said for. */
  bench: string;
  /** The garment it was said of: when it was changed last, and how often. */
  changed: number;
  edits: number;
}

/** Whether something that was kept is such a home, of this garment. */
export function isLastHome(kept: unknown, garment: string): kept is LastHome {
  const last = kept as LastHome | undefined;
  const texts = [last?.name, last?.made, last?.above, last?.number, last?.below];
  return last?.garment === garment && texts.every((text) => typeof text === 'string');
}

/** The next number as it was when the garment was left: to be read, and not to be pressed yet. */
export function LastHomeView({ last }: { last: LastHome }) {
  return (
    <div class="in-hand" data-hand={last.hand} aria-busy="true">
      <header>
        <h1 class="name">{last.name}</h1>
        <p>{last.made}</p>
      </header>
      <main />
      <section class="next-key" data-hand={last.hand} data-kind="last" aria-label={words.key}>
        <div class="says">
          <StepBody {...last} />
        </div>
        <div class="parts">
          <button type="button" class="made" disabled>
            {words.wait}
          </button>
        </div>
      </section>
    </div>
  );
}
