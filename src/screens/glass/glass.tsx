import { useEffect, useState } from 'preact/hooks';
import { glassWords as words } from '#words/paper/glass-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { NamedRun } from '../../calculation/calculation.ts';
import type { Page } from '../../calculation/page.ts';
import { adopt } from '../../controls/adopt.ts';
import type { MeasuredScreen } from '../../drawing/glass.ts';
import css from './glass.css?inline';
import { Measure } from './measure.tsx';
import { Stretches } from './stretches.tsx';
import { useScreen } from './use-screen.ts';

adopt(css);

interface Props {
  /** Undefined where there is no answer. */
  runs: readonly NamedRun[] | undefined;
  bench: Bench;
  page: Page;
  /** As the screen was measured; undefined as long as it wasn't. */
  scale: MeasuredScreen | undefined;
  /** Why the scale was not kept, if it wasn't. */
  said: string | undefined;
  keepAwake: () => () => void;
  onScale: (scale: MeasuredScreen) => void;
  onPage: (page: Page) => void;
  onLeave: () => void;
}

/** A run's marks at true size on the phone; the screen has to be measured first. */
export function Glass(props: Props) {
  const { bench, page, scale, said, onScale, onPage, onLeave } = props;
  const runs = props.runs ?? [];
  const { zoomed, sideways, ...screen } = useScreen();
  const [anew, setAnew] = useState(false);
  useEffect(() => props.keepAwake(), [props.keepAwake]);
  const withMarks = runs.flatMap(({ run }, i) => (run.marks.length > 0 ? [i] : []));
  const at = withMarks.find((i) => String(i) === page.run) ?? withMarks[0];
  const named = at === undefined ? undefined : runs[at];
  if (zoomed || !named) {
    const none = props.runs ? words.noMarks : words.nothing;
    return <Said words={zoomed ? words.zoomed : none} onLeave={onLeave} />;
  }
  const changed = scale && !isSame(scale, screen);
  if (!scale || changed || anew) {
    return (
      <Measure
        bench={bench}
        said={changed ? words.changed : undefined}
        onScale={(pxPerMm) => {
          onScale({ pxPerMm, ...screen });
          setAnew(false);
        }}
        leaveWords={anew ? words.asItWas : words.leave}
        onLeave={anew ? () => setAnew(false) : onLeave}
      />
    );
  }
  const others = withMarks.filter((i) => i !== at).map((i) => ({ i, name: runs[i]?.name ?? '' }));
  return (
    <Stretches
      key={at}
      named={named}
      bench={bench}
      scale={scale}
      typed={page.stretch}
      said={said}
      sideways={sideways}
      others={others}
      onGo={(to) => onPage({ ...page, stretch: String(to) })}
      onOther={(i) => onPage({ ...page, run: String(i), stretch: '0' })}
      onAnew={() => setAnew(true)}
      onLeave={onLeave}
    />
  );
}

/** Whether a scale is this screen's: others may have as many device pixels to one. */
function isSame(one: Omit<MeasuredScreen, 'pxPerMm'>, other: typeof one): boolean {
  return (
    Math.abs(one.devicePixelRatio - other.devicePixelRatio) < 1e-3 &&
    one.longer === other.longer &&
    one.shorter === other.shorter
  );
}

function Said({ words: said, onLeave }: { words: string; onLeave: () => void }) {
  return (
    <div class="glass said">
      <main>
        <h1>{words.title}</h1>
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
