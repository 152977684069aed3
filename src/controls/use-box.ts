import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

/** An element's inner size and the height of its lettering, in px. */
export interface Box {
  width: number;
  height: number;
  letter: number;
}

/** Taken while nothing can be measured: a narrow phone, upright. */
const UNMEASURED: Box = { width: 360, height: 84, letter: 14 };

/** Measures an element before it is first seen and whenever its size changes. */
export function useBox(ref: RefObject<HTMLElement | null>): Box {
  const [box, setBox] = useState(UNMEASURED);
  useLayoutEffect(() => {
    const element = ref.current!;
    const measure = () =>
      setBox({
        width: element.clientWidth || UNMEASURED.width,
        height: element.clientHeight || UNMEASURED.height,
        letter: Number.parseFloat(getComputedStyle(element).fontSize) || UNMEASURED.letter,
      });
    measure();
    if (!('ResizeObserver' in globalThis)) return;
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [ref]);
  return box;
}
