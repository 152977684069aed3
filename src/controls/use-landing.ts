import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * Focuses what has come when what had the focus has gone: else keys and screen readers would
 * begin again at the top of the page.
 * @param news what has come; each time it is another, focus is looked after
 * @returns to be put on an element that can have the focus
 */
export function useLanding(news?: unknown): RefObject<HTMLElement | null> {
  const place = useRef<HTMLElement>(null);
  useEffect(() => {
    const { activeElement, body } = document;
    if (!activeElement || activeElement === body) place.current?.focus({ preventScroll: true });
  }, [news]);
  return place;
}
