import { useEffect, useRef, useState } from 'preact/hooks';
import type { Lay, LayTask } from '../../lay/task.ts';
import type { Fall } from '../../screens/lay/lay-found.tsx';

/** How long is looked at most: what is found later is little, and a phone gets hot. */
const SECONDS = 120;
/** What is found is kept at most this often, in ms. */
const KEEP_EVERY = 3000;

/** How a search stands. */
export interface Look {
  /** What it is about. */
  of: string;
  looking: boolean;
  /** The best that was found since it began; it may not be kept yet. */
  best: Lay | undefined;
  /** How the length fell. */
  fell: readonly Fall[];
  ended: 'fits nowhere' | 'failed' | undefined;
}

const NONE: Look = { of: '', looking: false, best: undefined, fell: [], ended: undefined };

/**
 * A search that a screen holds: started, stopped, and let go when the screen is left. Every lay is
 * handed over to be kept soon after it is found, and at once when the page is put away.
 *
 * @param of what is laid: when it is another, the search is about nothing any more
 */
export function useLook(of: string, onKeep: (lay: Lay) => void) {
  const [look, setLook] = useState(NONE);
  const running = useRef<AbortController>(undefined);
  const stop = () => {
    running.current?.abort();
    running.current = undefined;
  };
  useEffect(() => {
    setLook((was) => (was.of === of ? was : NONE));
    return stop;
  }, [of]);
  const start = (task: LayTask, from: Lay | undefined) => {
    stop();
    const control = new AbortController();
    running.current = control;
    const began = performance.now();
    const fallTo = ({ length }: Lay): Fall => {
      return { length, seconds: (performance.now() - began) / 1000 };
    };
    // What comes late is of the task it was looked for.
    const keeping = keepNowAndThen(onKeep);
    setLook({ ...NONE, of, looking: true, fell: from ? [fallTo(from)] : [] });
    const onBetter = (best: Lay) => {
      keeping.found(best);
      setLook((was) => ({ ...was, best, fell: [...was.fell, fallTo(best)] }));
    };
    const end = (ended: Look['ended']) => {
      keeping.end();
      if (running.current && running.current !== control) return;
      running.current = undefined;
      setLook((was) => ({ ...was, looking: false, ended }));
    };
    const { signal } = control;
    const looking = import('./lay-maker.ts').then(({ lookForLay }) =>
      lookForLay({ task, from, seconds: SECONDS }, { signal, onBetter }),
    );
    looking.then(
      (fits) => end(fits ? undefined : 'fits nowhere'),
      () => end(signal.aborted ? undefined : 'failed'),
    );
  };
  return { look: look.of === of ? look : NONE, start, stop };
}

/** Hands on what was found last, not too often; and at the end, or when the page is put away, at once. */
function keepNowAndThen(keep: (lay: Lay) => void) {
  let [waiting, timer]: [Lay | undefined, ReturnType<typeof setTimeout> | undefined] = [
    undefined,
    undefined,
  ];
  let first = true;
  const flush = () => {
    clearTimeout(timer);
    timer = undefined;
    if (waiting) keep(waiting);
    waiting = undefined;
  };
  document.addEventListener('visibilitychange', flush);
  return {
    found(lay: Lay) {
      waiting = lay;
      if (first) flush();
      first = false;
      timer ??= setTimeout(flush, KEEP_EVERY);
    },
    end() {
      document.removeEventListener('visibilitychange', flush);
      flush();
    },
  };
}
