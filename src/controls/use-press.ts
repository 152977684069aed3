import { useMemo, useRef } from 'preact/hooks';

/** How far a finger may slide and still press, in px. */
const SLIDE = 10;
/** A key whose words just changed is not pressed by what was meant for the words before, in ms. */
const SETTLING = 400;

/**
 * A press that can't be meant for something else: it begins and ends on the key, with one finger,
 * without sliding, and not just after the key's words changed. Enter, space and a screen reader
 * press only once the focus is on it.
 *
 * @param words what the key says
 */
export function usePress(words: string, onPress: () => void) {
  const latest = useRef({ words, onPress, since: 0 });
  if (latest.current.words !== words) latest.current.since = performance.now();
  latest.current.words = words;
  latest.current.onPress = onPress;
  return useMemo(() => {
    let down: { id: number; x: number; y: number; at: number } | undefined;
    const settled = (at: number) => at - latest.current.since >= SETTLING;
    const forget = () => {
      down = undefined;
    };
    return {
      onPointerDown(event: PointerEvent) {
        const { pointerId: id, clientX: x, clientY: y, button, isPrimary } = event;
        const alone = isPrimary && button === 0 && down === undefined;
        down = alone && settled(event.timeStamp) ? { id, x, y, at: event.timeStamp } : undefined;
      },
      onPointerUp({ pointerId, clientX, clientY, currentTarget }: PointerEvent) {
        const from = down;
        forget();
        if (from?.id !== pointerId || from.at < latest.current.since) return;
        if (Math.hypot(clientX - from.x, clientY - from.y) > SLIDE) return;
        keepClick(currentTarget as Element);
        latest.current.onPress();
      },
      onPointerCancel: forget,
      onPointerLeave: forget,
      onClick(event: MouseEvent) {
        // Not by a pointer: those have pressed already.
        if (event.detail === 0 && settled(event.timeStamp)) latest.current.onPress();
      },
    };
  }, []);
}

/**
 * The click that ends a press by a finger is sent to what lies under it then: where the press led
 * elsewhere, that is what came in the key's place, and nobody has meant it.
 */
function keepClick(key: Element) {
  const page = key.ownerDocument;
  const over = () => {
    page.removeEventListener('click', stop, true);
    page.removeEventListener('pointerdown', over, true);
  };
  const stop = (event: MouseEvent) => {
    over();
    if (event.detail === 0 || key.contains(event.target as Node)) return;
    event.preventDefault();
    event.stopPropagation();
  };
  page.addEventListener('click', stop, true);
  page.addEventListener('pointerdown', over, true);
}
