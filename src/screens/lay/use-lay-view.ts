import type { TargetedKeyboardEvent, TargetedPointerEvent, TargetedWheelEvent } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { LayShown } from './lay-shown.ts';
import { type Frame, middleOf, panned, type View, wholeView, zoomed } from './lay-view.ts';

type Pointer = TargetedPointerEvent<HTMLElement>;
interface Finger {
  x: number;
  y: number;
}

/** A finger that travels less than this many px has pressed, not dragged. */
const PRESS = 8;
const CLOSER = 1.5;

interface Hands {
  /** The piece under a press, and whether it may be dragged. */
  mayDrag: (key: string) => boolean;
  onPress: (key: string) => void;
  /** A piece dragged, in mm across and along; the last time it is let go. */
  onDrag: (key: string, across: number, along: number, letGo: boolean) => void;
}

/**
 * Moves the lay by hand: one finger pans or drags the piece that is chosen, two zoom; arrows, + and −
 * and 0 for the whole.
 */
export function useLayView(lay: LayShown, frame: Frame, { mayDrag, onPress, onDrag }: Hands) {
  const whole = wholeView(lay.width, lay.length, frame);
  const [held, setHeld] = useState<View>();
  const view = held ? { ...held, high: (held.wide * whole.high) / whole.wide } : whole;
  const fingers = useRef(new Map<number, Finger>());
  const touch = useRef<{ travel: number; piece: string; from: Finger } | undefined>(undefined);
  const change = (to: (seen: View) => View) => setHeld((seen) => to(seen ?? whole));
  const perPx = view.wide / (frame.width || 1);
  const drags = () => {
    const piece = touch.current?.piece ?? '';
    return fingers.current.size === 1 && piece !== '' && mayDrag(piece) ? piece : undefined;
  };
  const draggedTo = (now: Finger, letGo: boolean) => {
    const piece = drags();
    const { from, travel } = touch.current ?? { from: now, travel: 0 };
    if (!piece || travel < PRESS) return false;
    onDrag(piece, (now.x - from.x) * perPx, (now.y - from.y) * perPx, letGo);
    return true;
  };
  const follow = (event: Pointer, before: Finger, now: Finger) => {
    const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
    const { left, top } = event.currentTarget.getBoundingClientRect();
    change((seen) => {
      const at = other ? middle(before, other) : before;
      const to = other ? middle(now, other) : now;
      const scale = seen.wide / (frame.width || 1);
      const times = other ? apart(now, other) / (apart(before, other) || 1) : 1;
      const fixed = [seen.x + (at.x - left) * scale, seen.y + (at.y - top) * scale] as const;
      const nearer = times === 1 ? seen : zoomed(seen, times || 1, fixed, whole);
      const by = nearer.wide / (frame.width || 1);
      return panned(nearer, (at.x - to.x) * by, (at.y - to.y) * by, whole);
    });
  };
  const zoom = (times: number) => change((seen) => zoomed(seen, times, middleOf(seen), whole));
  const lift = (event: Pointer) => {
    const at = { x: event.clientX, y: event.clientY };
    const begun = touch.current;
    const alone = fingers.current.size === 1;
    if (event.type === 'pointerup' && alone && begun) {
      if (begun.travel < PRESS) onPress(begun.piece);
      else draggedTo(at, true);
    }
    fingers.current.delete(event.pointerId);
    if (fingers.current.size === 0) touch.current = undefined;
  };
  return {
    view,
    perPx,
    zoom,
    closer: () => zoom(CLOSER),
    farther: () => zoom(1 / CLOSER),
    showWhole: () => setHeld(undefined),
    hands: {
      onPointerDown(event: Pointer) {
        if (event.button > 0) return;
        event.currentTarget.setPointerCapture?.(event.pointerId);
        const at = { x: event.clientX, y: event.clientY };
        const piece = (event.target as Element).closest('[data-piece]')?.getAttribute('data-piece');
        const first = fingers.current.size === 0;
        touch.current = { travel: first ? 0 : PRESS, piece: first ? (piece ?? '') : '', from: at };
        fingers.current.set(event.pointerId, at);
      },
      onPointerMove(event: Pointer) {
        const before = fingers.current.get(event.pointerId);
        if (!before || !touch.current) return;
        const now = { x: event.clientX, y: event.clientY };
        touch.current.travel += apart(before, now);
        if (!drags()) follow(event, before, now);
        else draggedTo(now, false);
        fingers.current.set(event.pointerId, now);
      },
      onPointerUp: lift,
      onPointerCancel: lift,
      onWheel(event: TargetedWheelEvent<HTMLElement>) {
        event.preventDefault();
        zoom(event.deltaY < 0 ? CLOSER : 1 / CLOSER);
      },
      onKeyDown(event: TargetedKeyboardEvent<HTMLElement>) {
        if (event.ctrlKey || event.metaKey || event.altKey) return;
        const by = KEYS[event.key];
        if (!by) return;
        event.preventDefault();
        if (by === 'whole') setHeld(undefined);
        else if (typeof by === 'number') zoom(by);
        else change((seen) => panned(seen, by[0] * seen.wide, by[1] * seen.high, whole));
      },
    },
  };
}

const KEYS: Readonly<Record<string, 'whole' | number | readonly [number, number]>> = {
  ArrowLeft: [-0.25, 0],
  ArrowRight: [0.25, 0],
  ArrowUp: [0, -0.25],
  ArrowDown: [0, 0.25],
  '+': CLOSER,
  // The same key without Shift on many keyboards.
  '=': CLOSER,
  '-': 1 / CLOSER,
  '0': 'whole',
  Home: 'whole',
};

function middle(one: Finger, other: Finger): Finger {
  return { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 };
}

function apart(one: Finger, other: Finger): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}
