import { useLayoutEffect, useReducer } from 'preact/hooks';

/** What of the screen decides whether a size on it is true. */
export interface Screen {
  devicePixelRatio: number;
  /** Its sides in CSS pixels, however it is held. */
  longer: number;
  shorter: number;
  /** The page is pinched larger or smaller. */
  zoomed: boolean;
  /** Wider than high. */
  sideways: boolean;
}

/** The screen as it is now; whatever changes it is shown at once. */
export function useScreen(): Screen {
  const [, look] = useReducer((times: number) => times + 1, 0);
  const ratio = devicePixelRatio;
  useLayoutEffect(() => {
    // The page's own zoom and another screen change the ratio, not always the size.
    const watched = [
      globalThis,
      globalThis.visualViewport,
      globalThis.matchMedia?.(`(resolution: ${ratio}dppx)`),
    ];
    const again = () => look(undefined);
    for (const one of watched) {
      one?.addEventListener('resize', again);
      one?.addEventListener('change', again);
    }
    return () => {
      for (const one of watched) {
        one?.removeEventListener('resize', again);
        one?.removeEventListener('change', again);
      }
    };
  }, [ratio]);
  const { width, height } = globalThis.screen;
  return {
    devicePixelRatio: ratio,
    longer: Math.max(width, height),
    shorter: Math.min(width, height),
    zoomed: Math.abs((globalThis.visualViewport?.scale ?? 1) - 1) > 0.001,
    sideways: innerWidth > innerHeight,
  };
}
