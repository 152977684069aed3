import type { TargetedKeyboardEvent, TargetedPointerEvent } from 'preact';
import { useRef } from 'preact/hooks';
import { moveWindow, span, type TapeWindow, zoomWindow } from '../drawing/tape-window.ts';
import type { Run } from '../sewing/run.ts';
import type { useTapeWindow } from './use-tape-window.ts';

type Pointer = TargetedPointerEvent<HTMLElement>;

/** A finger that travels less than this many px has pressed, not dragged. */
const PRESS = 8;
/** Two presses within this many ms are a double one. */
const DOUBLE = 350;

interface Finger {
  x: number;
  y: number;
}

/**
 * Moves a tape by hand: one finger along it, two to zoom, a double press for the
 * whole; arrows, + and −, Home and End.
 * @param onPress gets the place pressed, in mm from the datum, and how many mm a px is
 */
export function usePan(
  run: Run,
  { window, hold, showWhole }: ReturnType<typeof useTapeWindow>,
  width: number,
  onPress: (at: number, mmPerPx: number) => void,
) {
  const fingers = useRef(new Map<number, Finger>());
  const travel = useRef(0);
  const lastPress = useRef(-Infinity);

  /** Moves what was under the fingers to where they are now. */
  function follow(event: Pointer, before: Finger, now: Finger) {
    const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
    const left = event.currentTarget.getBoundingClientRect().left;
    const middle = (finger: Finger) => (other ? (finger.x + other.x) / 2 : finger.x);
    hold((seen) => {
      const times = other ? apart(now, other) / (apart(before, other) || 1) : 1;
      const zoomed = other
        ? zoomWindow(run, seen, times || 1, placeAt(seen, middle(before) - left, width))
        : seen;
      const by = (middle(before) - middle(now)) * (span(zoomed) / width);
      return moveWindow(run, zoomed, by);
    });
  }

  function lift(event: Pointer) {
    const last = fingers.current.delete(event.pointerId) && fingers.current.size === 0;
    if (!last || event.type === 'pointercancel' || travel.current >= PRESS) return;
    if (event.timeStamp - lastPress.current < DOUBLE) {
      lastPress.current = -Infinity;
      showWhole();
      return;
    }
    lastPress.current = event.timeStamp;
    const left = event.currentTarget.getBoundingClientRect().left;
    onPress(placeAt(window, event.clientX - left, width), span(window) / width);
  }

  return {
    onPointerDown(event: Pointer) {
      if (event.button > 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      travel.current = fingers.current.size ? PRESS : 0;
      fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
    },
    onPointerMove(event: Pointer) {
      const before = fingers.current.get(event.pointerId);
      if (!before) return;
      const now = { x: event.clientX, y: event.clientY };
      travel.current += apart(before, now);
      follow(event, before, now);
      fingers.current.set(event.pointerId, now);
    },
    onPointerUp: lift,
    onPointerCancel: lift,
    onKeyDown(event: TargetedKeyboardEvent<HTMLElement>) {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const change = KEYS[event.key];
      if (!change) return;
      event.preventDefault();
      hold((seen) => change(run, seen));
    },
  };
}

const KEYS: Readonly<Record<string, (run: Run, seen: TapeWindow) => TapeWindow>> = {
  ArrowLeft: (run, seen) => moveWindow(run, seen, -span(seen) / 4),
  ArrowRight: (run, seen) => moveWindow(run, seen, span(seen) / 4),
  Home: (run, seen) => moveWindow(run, seen, -Infinity),
  End: (run, seen) => moveWindow(run, seen, Infinity),
  '+': (run, seen) => zoomWindow(run, seen, 1.5, middleOf(seen)),
  // The same key without Shift on many keyboards.
  '=': (run, seen) => zoomWindow(run, seen, 1.5, middleOf(seen)),
  '-': (run, seen) => zoomWindow(run, seen, 1 / 1.5, middleOf(seen)),
};

function middleOf({ from, to }: TapeWindow): number {
  return (from + to) / 2;
}

/** The place, in mm from the datum, at `x` px of a strip `width` px wide. */
function placeAt(seen: TapeWindow, x: number, width: number): number {
  return seen.from + (x / width) * span(seen);
}

function apart(one: Finger, other: Finger): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}
