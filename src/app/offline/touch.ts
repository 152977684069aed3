import { isPageHeld } from './hand.ts';

/** What the maker does on this page, as far as a reload must know. */
export interface Touch {
  /** Whether anything has been touched since the start, or is in the maker's hand. */
  ever(): boolean;
  /** The maker has agreed to a reload, on this page. */
  agree(): void;
  /** Settles when a reload would take nothing out of the maker's hand, whatever was agreed before. */
  pause(): Promise<void>;
}

/** How long nothing must have been touched on a page in sight. */
const PAUSE_MS = 3000;
const LOOK_MS = 200;

/** Watches the maker's hand on this page, from now on. */
export function watchForTouch(): Touch {
  let last: number | undefined;
  let agreed = false;
  const note = () => {
    last = performance.now();
  };
  for (const kind of ['pointerdown', 'keydown', 'input']) {
    window.addEventListener(kind, note, { capture: true, passive: true });
  }
  const isTouched = () =>
    !agreed &&
    document.visibilityState === 'visible' &&
    last !== undefined &&
    performance.now() - last < PAUSE_MS;
  return {
    ever: () => last !== undefined || isPageHeld(),
    agree: () => {
      agreed = true;
    },
    pause: async () => {
      while (isPageHeld() || isTouched()) await new Promise((done) => setTimeout(done, LOOK_MS));
    },
  };
}
