import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';

/** Calls back when the place changes, not at the first look. */
export function useTurn(at: string, turned: () => void): void {
  const before = useRef(at);
  useEffect(() => {
    if (before.current === at) return;
    before.current = at;
    turned();
  });
}

const FORWARD = new Set([' ', 'ArrowRight', 'ArrowDown', 'PageDown', 'AudioVolumeUp', 'VolumeUp']);
const BACKWARD = new Set([
  'ArrowLeft',
  'ArrowUp',
  'PageUp',
  'Backspace',
  'AudioVolumeDown',
  'VolumeDown',
]);

/** Space, arrows, and the volume keys where the platform gives them. */
export function useMarkKeys(on: boolean, forward: () => void, backward: () => void): void {
  // At once, not after the paint: a quick second press must start from where the first one led.
  useLayoutEffect(() => {
    if (!on) return;
    const press = (event: KeyboardEvent) => {
      const at = event.target instanceof Element ? event.target : undefined;
      if (at?.closest(ownersOf(event.key))) return;
      const act = FORWARD.has(event.key) ? forward : BACKWARD.has(event.key) ? backward : undefined;
      if (!act) return;
      event.preventDefault();
      act();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  });
}

/** What has its own use for a key: a button is pressed by Space, the tape moved by arrows. */
function ownersOf(key: string): string {
  if (/Page|Volume/.test(key)) return 'input';
  return key === ' ' ? 'button, input, .tape' : 'input, .tape';
}
