import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { aroundMark, betweenWindows, type TapeWindow, wholeRun } from '../drawing/tape-window.ts';
import type { Run } from '../sewing/run.ts';

/** How long the tape takes to reach the next mark, in ms. */
const GLIDE = 200;

/** A window set by hand, good as long as the run has this length. */
interface Held extends TapeWindow {
  length: number;
}

/**
 * Which stretch of the run is shown: the whole, the surroundings of the current
 * mark once that has changed, or where the hand moved it.
 * @param following start at the current mark rather than with the whole run
 */
export function useTapeWindow(run: Run, here: number | undefined, following: boolean) {
  const [held, setHeld] = useState<Held | 'whole' | 'here'>(following ? 'here' : 'whole');
  const [glide, setGlide] = useState<{ from: TapeWindow; part: number }>();
  const shown = useRef<TapeWindow | undefined>(undefined);
  const frame = useRef(0);
  const lastHere = useRef(here);

  let target: TapeWindow = held === 'here' ? aroundMark(run, here) : wholeRun(run);
  if (typeof held === 'object' && held.length === run.length) target = held;

  function stop() {
    cancelAnimationFrame(frame.current);
    setGlide(undefined);
  }

  function glideFrom(from: TapeWindow) {
    let begun: number | undefined;
    const step = (time: number) => {
      begun ??= time;
      const part = (time - begun) / GLIDE;
      setGlide(part < 1 ? { from, part: part * (2 - part) } : undefined);
      if (part < 1) frame.current = requestAnimationFrame(step);
    };
    setGlide({ from, part: 0 });
    frame.current = requestAnimationFrame(step);
  }

  useLayoutEffect(() => {
    if (here === lastHere.current) return;
    lastHere.current = here;
    stop();
    setHeld('here');
    if (shown.current && mayMove()) glideFrom(shown.current);
  }, [here]);
  useLayoutEffect(() => () => cancelAnimationFrame(frame.current), []);

  const now = glide ? betweenWindows(glide.from, target, glide.part) : target;
  // After the effect above, which starts from what was seen last.
  useLayoutEffect(() => {
    shown.current = now;
  });

  return {
    window: now,
    /** Shows what `change` makes of the window, also when several come before one frame. */
    hold(change: (window: TapeWindow) => TapeWindow) {
      stop();
      shown.current = change(shown.current ?? now);
      setHeld({ ...shown.current, length: run.length });
    },
    showWhole() {
      stop();
      setHeld('whole');
    },
  };
}

/** Whether the maker's settings allow movement; not where they can't be asked. */
function mayMove(): boolean {
  return globalThis.matchMedia?.('(prefers-reduced-motion: no-preference)').matches ?? false;
}
