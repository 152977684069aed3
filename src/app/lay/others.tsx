import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { layClothWords as words } from '#words/garment/garment-lay-cloth-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { LaidOf } from '../../garment/record/cloth-lay.ts';
import { OtherCloth, type Others } from '../../screens/lay/other-cloth.tsx';

const NONE: Others = { looking: false, lines: [] };

/** What was found of other cloth, and what it was found for: it is there when it is looked at again. */
export interface OthersFound {
  of: string;
  lines: readonly string[];
}

interface Props {
  of: LaidOf | undefined;
  /** Usable, as it was said. */
  width: number;
  bench: Bench;
  found: RefObject<OthersFound | null>;
  onBack: () => void;
}

/** What other cloth would take, looked for one after another when it is asked for, and as long as it is looked at. */
export function OthersPlace({ of, width, bench, found, onBack }: Props) {
  const key = JSON.stringify(of);
  const before = found.current?.of === key ? found.current.lines : [];
  const [shown, setShown] = useState<Others>({ ...NONE, lines: before });
  const running = useRef<AbortController>(undefined);
  useEffect(() => () => running.current?.abort(), []);
  const ask = async () => {
    if (!of) return;
    running.current?.abort();
    const control = new AbortController();
    running.current = control;
    const { signal } = control;
    const lines: string[] = [];
    const add = (line: string) => {
      if (signal.aborted) return;
      lines.push(line);
      found.current = { of: key, lines: [...lines] };
      setShown({ looking: true, lines: [...lines] });
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
  return <OtherCloth others={shown} onOthers={() => void ask()} onBack={onBack} />;
}
