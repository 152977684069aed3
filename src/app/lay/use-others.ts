import { useEffect, useRef, useState } from 'preact/hooks';
import { layWords as words } from '#words/garment/garment-lay-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { LaidOf } from '../../garment/record/cloth-lay.ts';
import type { Others } from '../../screens/lay/other-cloth.tsx';

const NONE: Others = { looking: false, lines: [] };

/** What other cloth would take, looked for one after another when it is asked for. */
export function useOthers(of: LaidOf | undefined, width: number, bench: Bench) {
  const [shown, setShown] = useState(NONE);
  const running = useRef<AbortController>(undefined);
  const stop = () => running.current?.abort();
  const key = JSON.stringify(of);
  useEffect(() => {
    setShown(NONE);
    return stop;
  }, [key]);
  const ask = async () => {
    if (!of) return;
    stop();
    const control = new AbortController();
    running.current = control;
    const { signal } = control;
    const add = (line: string) => {
      if (!signal.aborted) setShown((was) => ({ ...was, lines: [...was.lines, line] }));
    };
    setShown({ looking: true, lines: [] });
    try {
      const { lookForOthers, variantsOf } = await import('./other-cloths.ts');
      await lookForOthers(variantsOf(of, width, bench.unit), bench, signal, add);
    } catch {
      add(words.failed);
    }
    if (!signal.aborted) setShown((was) => ({ ...was, looking: false }));
  };
  return { shown, ask: () => void ask() };
}
