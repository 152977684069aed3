import type { TargetedPointerEvent } from 'preact';
import { useState } from 'preact/hooks';

import { CARD, type CardMeasure, scaleFrom } from '../../drawing/glass.ts';
import { glassWords } from '../../words/glass-words.ts';

interface Props {
  hand: 'right' | 'left';
  /** Said first: why the screen is to be measured anew. */
  said: string | undefined;
  onScale: (pxPerMm: number, ratio: number) => void;
  onLeave: () => void;
}

const words = glassWords.set;

/** A first guess: most phones have about six pixels to a millimetre. */
const GUESS = 6;
/** What is kept free at the far end for the keys, in px. */
const KEYS = 122;

type Step = { side: CardMeasure['side']; first?: CardMeasure };

/** Measures the screen with a bank card: two measurements that have to agree. */
export function Measure({ hand, said, onScale, onLeave }: Props) {
  const room = Math.max(80, innerHeight - KEYS);
  const start = (side: CardMeasure['side']) => Math.min(room, Math.round(CARD[side] * GUESS));
  const longest = CARD.long * GUESS <= room ? 'long' : 'short';
  const [step, setStep] = useState<Step>({ side: longest });
  const [px, setPx] = useState(start(longest));
  const [fault, setFault] = useState(said);
  const ratio = devicePixelRatio;
  const move = (to: number) => setPx(Math.max(40, Math.min(room, Math.round(to * ratio) / ratio)));
  const begin = (next: Step) => {
    setStep(next);
    setPx(start(next.side));
  };
  const matches = () => {
    const measured: CardMeasure = { side: step.side, px };
    if (!step.first) {
      setFault(undefined);
      begin({ side: 'short', first: measured });
      return;
    }
    const found = scaleFrom(step.first, measured);
    if (found.ok) onScale(found.pxPerMm, ratio);
    else {
      setFault(words.differ((found.off * 100).toFixed(1)));
      begin({ side: longest });
    }
  };
  return (
    <div class="glass" data-hand={hand}>
      <CardLines px={px} fromEnd={step.first?.side === 'short'} room={room} onMove={move} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0}>
        <h1>{words.title}</h1>
        {fault !== undefined && (
          <p class="warning" role="alert">
            {fault}
          </p>
        )}
        <p aria-live="polite">{how(step)}</p>
        {!step.first && <p class="soft">{words.why}</p>}
      </main>
      <div class="keys-row">
        <button type="button" onClick={() => move(px - 1 / ratio)} aria-label={words.less}>
          −
        </button>
        <button type="button" onClick={() => move(px + 1 / ratio)} aria-label={words.more}>
          +
        </button>
        <button type="button" class="main" onClick={matches}>
          {words.matches}
        </button>
      </div>
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={onLeave}>
          {glassWords.leave}
        </button>
        {!step.first && step.side === 'long' && (
          <button type="button" onClick={() => begin({ side: 'short' })}>
            {words.tooLong}
          </button>
        )}
      </nav>
    </div>
  );
}

function how({ side, first }: Step): string {
  if (first) return first.side === 'short' ? words.again : words.short;
  return side === 'long' ? words.long : words.only;
}

interface LinesProps {
  px: number;
  /** Measured from the lower end of the room: the other line moves. */
  fromEnd: boolean;
  room: number;
  onMove: (px: number) => void;
}

/** Two lines the card lies between; one of them follows the finger. */
function CardLines({ px, fromEnd, room, onMove }: LinesProps) {
  const top = fromEnd ? room - px : 0;
  const drag = (event: TargetedPointerEvent<HTMLDivElement>) => {
    if (event.buttons === 0) return;
    const { top: edge } = event.currentTarget.getBoundingClientRect();
    const at = event.clientY - edge;
    onMove(fromEnd ? room - at : at);
  };
  return (
    <div
      class="card-room"
      style={{ height: `${room}px` }}
      onPointerDown={drag}
      onPointerMove={drag}
    >
      <i style={{ top: `${top}px` }} />
      <i style={{ top: `${top + px}px` }} />
      <b class="unseen">{words.line}</b>
    </div>
  );
}
