import { useRef, useState } from 'preact/hooks';
import { glassWords } from '#words/paper/glass-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { useBox } from '../../controls/use-box.ts';
import { CARD, type CardMeasure, scaleFrom } from '../../drawing/glass-card.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { CardLines, GRIP, STILL_LINE } from './card-lines.tsx';

interface Props {
  bench: Bench;
  /** Said first: why the screen is to be measured anew. */
  said: string | undefined;
  onScale: (pxPerMm: number) => void;
  leaveWords: string;
  onLeave: () => void;
}

const words = glassWords.card;

/** What one press moves the line by, in device pixels. */
const STEPS = [-20, -1, 1, 20] as const;
/** Shortest that can be measured, in px. */
const LEAST = 40;
/** Pixels to a millimetre of common phones: by this the side of the card is chosen. */
const COMMON = 6.3;
/** Where the line begins, to a millimetre; so far apart that lines left alone never agree. */
const BEGIN = { first: 4.5, second: 3.5 };

interface Step {
  /** Undefined: the long one where it fits. */
  side?: CardMeasure['side'];
  first?: CardMeasure;
}

/** Measures the screen with a bank card: two measurements that have to agree. */
export function Measure({ bench, said, onScale, leaveWords, onLeave }: Props) {
  const glass = useRef<HTMLDivElement>(null);
  const { height } = useBox(glass);
  const most = Math.max(LEAST, height - STILL_LINE - GRIP);
  const [step, setStep] = useState<Step>({});
  const [moved, setMoved] = useState<number>();
  const [fault, setFault] = useState(said);
  const ratio = devicePixelRatio;
  const whole = (to: number) => Math.round(to * ratio) / ratio;
  const within = (to: number) => whole(Math.max(LEAST, Math.min(most, to)));
  const side = step.side ?? (CARD.long * COMMON <= most ? 'long' : 'short');
  const px = within(moved ?? CARD[side] * (step.first ? BEGIN.second : BEGIN.first));
  const tooShort = CARD.short * COMMON > most;
  const begin = (next: Step, why?: string) => {
    setStep(next);
    setMoved(undefined);
    setFault(why);
  };
  const matches = () => {
    if (moved === undefined) setFault(words.unmoved);
    // At its stop the line lies where it must, not where the card ends.
    else if (px >= whole(most)) setFault(side === 'long' ? words.atStop : words.noRoom);
    else if (!step.first) begin({ side: 'short', first: { side, px } });
    else {
      const found = scaleFrom(step.first, { side, px });
      if (found.ok) onScale(found.pxPerMm);
      else
        begin(
          {},
          found.why === 'differ'
            ? words.differ(shownNumber(100 * found.off, 1, bench.decimalMark))
            : words.noScreen,
        );
    }
  };
  return (
    <div class="glass" data-hand={bench.hand}>
      <div class="sheet" ref={glass}>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
        <main tabIndex={0}>
          <h1>{words.title}</h1>
          {fault !== undefined && (
            <p class="warning" role="alert">
              {fault}
            </p>
          )}
          {tooShort && fault !== words.noRoom && <p class="warning">{words.noRoom}</p>}
          <p aria-live="polite">{how(side, step.first)}</p>
          {!step.first && <p class="soft">{words.why}</p>}
        </main>
        <CardLines
          px={px}
          high={whole(height)}
          fine={whole(1)}
          fromEnd={step.first?.side === 'short'}
          onMove={(to) => setMoved(within(to))}
        />
      </div>
      <div class="keys-row">
        {STEPS.map((by) => (
          <button
            type="button"
            key={by}
            aria-label={words.by(by)}
            onClick={() => setMoved(within(px + by / ratio))}
          >
            {words.sign(by)}
          </button>
        ))}
      </div>
      <nav class="actions" aria-label={glassWords.title}>
        <button type="button" onClick={onLeave}>
          {leaveWords}
        </button>
        {!step.first && side === 'long' && (
          <button type="button" onClick={() => begin({ side: 'short' })}>
            {words.tooLong}
          </button>
        )}
        <button type="button" class="main" onClick={matches}>
          {words.matches}
        </button>
      </nav>
    </div>
  );
}

function how(side: CardMeasure['side'], first: CardMeasure | undefined): string {
  if (first) return first.side === 'short' ? words.again : words.turned;
  return words[side];
}
