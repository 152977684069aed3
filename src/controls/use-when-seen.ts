import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/** How long typing rests before what can't be seen is drawn. */
const REST_MS = 300;
/** Of what lies below a pane so much may stand in it: less than a line can't be read. */
const LINE_PX = 16;

/**
 * What a part is drawn of: the value of now where any of the part can be seen, or could be by a
 * screen that can't tell. What lies below all that is seen keeps the one before until typing rests,
 * or until it is scrolled to.
 *
 * @param top where the part begins
 * @param pane what it is scrolled in
 */
export function useWhenSeen<Value>(
  value: Value,
  top: RefObject<Element | null>,
  pane: RefObject<Element | null>,
): Value {
  const shown = useRef(value);
  const below = useRef(false);
  const [, look] = useState({});
  if (!below.current) shown.current = value;
  useEffect(() => {
    const first = top.current;
    if (!first || !('IntersectionObserver' in globalThis)) return;
    const next = first.nextElementSibling?.getBoundingClientRect().top ?? 0;
    const gap = Math.max(0, next - first.getBoundingClientRect().bottom);
    // Above the pane is not below it: its upper edge is moved far up.
    const root = { root: pane.current, rootMargin: `99999px 0px -${gap + LINE_PX}px 0px` };
    const watch = new IntersectionObserver((seen) => {
      below.current = !seen.at(-1)?.isIntersecting;
      if (!below.current) look({});
    }, root);
    watch.observe(first);
    return () => watch.disconnect();
  }, [top, pane]);
  useEffect(() => {
    if (shown.current === value) return;
    const timer = setTimeout(() => {
      shown.current = value;
      look({});
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [value]);
  return shown.current;
}
