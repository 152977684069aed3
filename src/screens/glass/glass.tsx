import { useEffect, useState } from 'preact/hooks';

import { adopt } from '../../controls/adopt.ts';
import type { Bench } from '../../controls/bench.ts';
import type { Draft, NamedRun } from '../../controls/calculation.ts';
import { type GlassScale, stretchesOf } from '../../drawing/glass.ts';
import { toMm } from '../../lengths/length.ts';
import { glassWords as words } from '../../words/glass-words.ts';
import css from './glass.css?inline';
import { Measure } from './measure.tsx';
import { FIRST_LINE, Ruled } from './ruled.tsx';

adopt(css);

interface Props {
  runs: readonly NamedRun[];
  bench: Bench;
  draft: Draft;
  /** As the screen was measured; undefined as long as it wasn't. */
  scale: GlassScale | undefined;
  /** Why the scale was not kept, if it wasn't. */
  said: string | undefined;
  keepAwake: () => () => void;
  onScale: (scale: GlassScale | undefined) => void;
  onDraft: (draft: Draft) => void;
  onLeave: () => void;
}

/** What stands at the end of the glass, in px, before it is measured. */
const KEYS = 126;

/** A run's marks at true size on the phone, stretch by stretch. */
export function Glass(props: Props) {
  const { runs, bench, draft, scale, onScale, onDraft, onLeave } = props;
  const { ratio, zoomed, high } = useScreen();
  const [keys, setKeys] = useState(KEYS);
  useEffect(() => props.keepAwake(), [props.keepAwake]);
  const changed = scale !== undefined && Math.abs(scale.ratio - ratio) > 1e-3;
  if (!scale || changed) {
    return (
      <Measure
        hand={bench.hand}
        said={changed ? words.changed : undefined}
        onScale={(pxPerMm, at) => onScale({ pxPerMm, ratio: at })}
        onLeave={onLeave}
      />
    );
  }
  const run = runs.findIndex(
    ({ run: { marks } }, i) => marks.length > 0 && String(i) === (draft.run ?? '0'),
  );
  const named = runs[run] ?? runs.find(({ run: { marks } }) => marks.length > 0);
  const room = (high - keys - FIRST_LINE) / scale.pxPerMm;
  if (!named || zoomed || room < 35) {
    return (
      <Said words={zoomed ? words.zoomed : named ? words.small : words.nothing} onLeave={onLeave} />
    );
  }
  const marks = named.run.marks.map(({ at }) => toMm(at));
  const stretches = stretchesOf(marks, toMm(named.run.length), room);
  const at = Math.max(0, Math.min(stretches.length - 1, Math.trunc(Number(draft.stretch)) || 0));
  const go = (to: number) => onDraft({ ...draft, stretch: String(to) });
  return (
    <Ruled
      named={named}
      bench={bench}
      scale={scale}
      stretches={stretches}
      at={at}
      room={high - keys}
      said={props.said}
      onFoot={setKeys}
      onGo={go}
      onAnew={() => onScale(undefined)}
      onLeave={onLeave}
    />
  );
}

function Said({ words: said, onLeave }: { words: string; onLeave: () => void }) {
  return (
    <div class="glass">
      <main>
        <p class="warning" role="alert">
          {said}
        </p>
      </main>
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={onLeave}>
          {words.leave}
        </button>
      </nav>
    </div>
  );
}

/** The screen as it is now: its height, its pixels, and whether the page is pinched larger. */
function useScreen() {
  const look = () => ({
    ratio: devicePixelRatio,
    zoomed: Math.abs((globalThis.visualViewport?.scale ?? 1) - 1) > 0.01,
    high: innerHeight,
  });
  const [seen, setSeen] = useState(look);
  useEffect(() => {
    const again = () => setSeen(look());
    addEventListener('resize', again);
    globalThis.visualViewport?.addEventListener('resize', again);
    return () => {
      removeEventListener('resize', again);
      globalThis.visualViewport?.removeEventListener('resize', again);
    };
  }, []);
  return seen;
}
