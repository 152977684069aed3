import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';

/** Which step of the screen the browser's history stands at. */
function stepHere(): number {
  const state: unknown = history.state;
  const step = typeof state === 'object' && state !== null && 'step' in state ? state.step : 0;
  return Number(step);
}

/**
 * Lets the phone's Back lead to the step before, within the screen: each step deeper is one of the
 * history, at the same address.
 * @param depth how many steps deep the screen is
 * @param onBack called with the depth it is to go back to
 */
export function useBackSteps(depth: number, onBack: (depth: number) => void): void {
  const now = useRef({ depth, onBack });
  now.current = { depth, onBack };
  // With the step itself: a Back that comes at once must find it.
  useLayoutEffect(() => {
    const step = stepHere();
    if (step < depth) history.pushState({ step: depth }, '');
    // Also on coming here again where there is nothing deeper any more.
    if (step > depth) history.go(depth - step);
  }, [depth]);
  useEffect(() => {
    const popped = () => {
      if (stepHere() < now.current.depth) now.current.onBack(stepHere());
    };
    addEventListener('popstate', popped);
    return () => removeEventListener('popstate', popped);
  }, []);
}
