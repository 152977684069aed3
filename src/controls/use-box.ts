import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

/** An element's inner size and the height of its lettering, in px. */
export interface Box {
  width: number;
  height: number;
  letter: number;
}

/** What was measured last: most likely right for the next one too. First a narrow phone, upright. */
let seen: Box = { width: 360, height: 84, letter: 14 };

/**
 * Measures an element whenever its size changes. The first measure comes with
 * the frame that shows it, so that nothing is laid out twice.
 */
export function useBox(ref: RefObject<HTMLElement | null>): Box {
  const [box, setBox] = useState(seen);
  useLayoutEffect(() => {
    const element = ref.current!;
    const measure = () => {
      const next = {
        width: element.clientWidth || seen.width,
        height: element.clientHeight || seen.height,
        letter: Number.parseFloat(getComputedStyle(element).fontSize) || seen.letter,
      };
      seen = next;
      // Against its own: another on the page may have been of this size first.
      setBox((own) => (`${Object.values(own)}` === `${Object.values(next)}` ? own : next));
    };
    if (!('ResizeObserver' in globalThis)) {
      measure();
      return;
    }
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [ref]);
  return box;
}
