import type { TargetedPointerEvent } from 'preact';
import { useRef } from 'preact/hooks';

/** Room between the edge of the glass and the line that stands still, in px. */
export const STILL_LINE = 24;
/** Height of what the moving line is held by, in px: it hangs on the side away from the card. */
export const GRIP = 56;

interface Props {
  /** From line to line, in CSS pixels. */
  px: number;
  /** Of the glass, in px. */
  high: number;
  /** Thickness of the lines, in px. */
  fine: number;
  /** The lower line stands still, and the upper one moves. */
  fromEnd: boolean;
  onMove: (px: number) => void;
}

/**
 * Two lines that a card lies between. One is dragged by its grip, from where it was taken hold
 * of: fingers that hold the card must not move it.
 */
export function CardLines({ px, high, fine, fromEnd, onMove }: Props) {
  const held = useRef<{ y: number; px: number } | undefined>(undefined);
  const still = fromEnd ? high - STILL_LINE : STILL_LINE;
  const moving = fromEnd ? still - px : still + px;
  const half = fine / 2; // outside: the card fits just between them
  const take = (event: TargetedPointerEvent<HTMLElement>) => {
    event.currentTarget.setPointerCapture?.(event.pointerId);
    held.current = { y: event.clientY, px };
  };
  const drag = (event: TargetedPointerEvent<HTMLElement>) => {
    const from = held.current;
    if (!from) return;
    const by = event.clientY - from.y;
    onMove(from.px + (fromEnd ? -by : by));
  };
  const leave = () => {
    held.current = undefined;
  };
  return (
    <div class="card-lines" aria-hidden="true">
      <svg aria-hidden="true">
        {[Math.min(still, moving) - half, Math.max(still, moving) + half].map((y, i) => (
          <line key={i === 0 ? 'upper' : 'lower'} x2="100%" y1={y} y2={y} stroke-width={2 * half} />
        ))}
      </svg>
      <b
        class="grip"
        style={{ top: `${fromEnd ? moving - GRIP : moving}px` }}
        onPointerDown={take}
        onPointerMove={drag}
        onPointerUp={leave}
        onPointerCancel={leave}
      >
        ↕
      </b>
    </div>
  );
}
