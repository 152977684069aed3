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
 * Measures an element whenever its size changes, or that of its lettering, as when a phone's letters are
 * made larger meanwhile. The first measure comes with the frame that shows it, so that nothing is laid out twice.
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
    const letter = letterIn(element);
    watch.observe(element);
    watch.observe(letter);
    return () => {
      watch.disconnect();
      letter.remove();
    };
  }, [ref]);
  return box;
}

/** Something unseen that is as large as a letter there: an element with a width of its own doesn't grow with its letters. */
function letterIn(element: HTMLElement): HTMLElement {
  const letter = document.createElement('span');
  letter.style.cssText = 'position:absolute;top:0;left:0;width:1em;height:1em;visibility:hidden';
  element.append(letter);
  return letter;
}
