import { useEffect, useMemo, useState } from 'preact/hooks';
import { glassWords } from '#words/paper/glass-words.ts';
import { drawnAnswer } from '../../calculation/as-made.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import type { PageState } from '../../calculation/page.ts';
import type { MeasuredScreen } from '../../drawing/glass.ts';
import { isScale } from '../../drawing/glass-card.ts';
import { Glass } from '../../screens/glass/glass.tsx';
import type { Store } from '../../storage/store.ts';
import { keepAwake } from '../start/awake.ts';
import { Waiting } from '../start/waiting.tsx';

interface Props {
  store: Store;
  calculation: Calculation;
  state: PageState;
  bench: Bench;
  onState: (state: PageState) => void;
  onLeave: () => void;
}

const KEY = 'glass';

interface Known {
  scale: MeasuredScreen | undefined;
  said?: string;
}

/** A calculation's marks at true size on this screen, once it has been measured. */
export function GlassPlace({ store, calculation, state, bench, onState, onLeave }: Props) {
  const { draft, page } = state;
  const work = useMemo(() => calculation.work(draft, bench), [calculation, draft, bench]);
  const [known, setKnown] = useState<Known>();
  useEffect(() => {
    store.load(KEY).then(
      (kept) => setKnown({ scale: checkScale(kept) }),
      // Storage that doesn't answer: it can still be measured, for as long as the page is open.
      () => setKnown({ scale: undefined }),
    );
  }, [store]);
  if (!known) return <Waiting loaded={{ state: 'loading' }} onHome={onLeave} />;
  const keep = (scale: MeasuredScreen) => {
    setKnown({ scale });
    const record = { ...scale, checked: new Date().toISOString() };
    store.change(KEY, () => record).catch(() => setKnown({ scale, said: glassWords.notKept }));
  };
  return (
    <Glass
      runs={work.ok ? drawnAnswer(work.answer, page, bench).runs : undefined}
      bench={bench}
      page={page}
      scale={known.scale}
      said={known.said}
      keepAwake={keepAwake}
      onScale={keep}
      onPage={(next) => onState({ draft, page: next })}
      onLeave={onLeave}
    />
  );
}

/** The scale that was kept, if it can be one: with the day it was checked, and as numbers. */
export function checkScale(kept: unknown): MeasuredScreen | undefined {
  const { checked, ...numbers } = Object(kept) as Record<string, unknown>;
  const read = (key: keyof MeasuredScreen) =>
    Number(typeof numbers[key] === 'number' && numbers[key]);
  const [pxPerMm, devicePixelRatio] = [read('pxPerMm'), read('devicePixelRatio')];
  const [longer, shorter] = [read('longer'), read('shorter')];
  if (typeof checked !== 'string' || Number.isNaN(Date.parse(checked))) return undefined;
  if (!isScale(pxPerMm) || !(devicePixelRatio > 0 && devicePixelRatio < 100)) return undefined;
  // A record that doesn't say which screen it was is no use: it may have been another.
  if (!(shorter > 0 && longer >= shorter && longer < 1e5)) return undefined;
  return { pxPerMm, devicePixelRatio, longer, shorter };
}
