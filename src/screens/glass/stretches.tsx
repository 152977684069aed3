import { useMemo, useRef } from 'preact/hooks';
import { glassWords as words } from '#words/paper/glass-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { NamedRun } from '../../calculation/calculation.ts';
import { useBox } from '../../controls/use-box.ts';
import { type GlassScale, type GlassStretch, placesOn, stretchesOf } from '../../drawing/glass.ts';
import { toMm } from '../../lengths/length.ts';
import { Lay } from './lay.tsx';
import { afterLast, FIRST_LINE, Ruled } from './ruled.tsx';

interface Props {
  named: NamedRun;
  bench: Bench;
  scale: GlassScale;
  /** What the stretch shows, in mm from the datum, as it stands in the address. */
  typed: string | undefined;
  said: string | undefined;
  sideways: boolean;
  others: readonly { i: number; name: string }[];
  /** To the stretch that begins there. */
  onGo: (mm: number) => void;
  onOther: (run: number) => void;
  onAnew: () => void;
  onLeave: () => void;
}

/** Less glass than this, in mm, shows nothing worth laying on the work. */
const LEAST_ROOM = 31;

/** A run at true size, stretch by stretch. */
export function Stretches(props: Props) {
  const { named, bench, scale, others, onGo } = props;
  const glass = useRef<HTMLDivElement>(null);
  const { height, letter } = useBox(glass);
  const room = (height - FIRST_LINE - afterLast(letter)) / scale.pxPerMm;
  const stretches = useMemo(() => cut(named, bench, room), [named, bench, room]);
  const last = Math.max(0, stretches.length - 1);
  // A place, as stretches are cut anew when the phone is turned.
  const before = stretches.filter(({ from }) => from <= Number(props.typed));
  const at = Math.max(0, before.length - 1);
  const go = (to: number) => onGo(stretches[to]?.from ?? 0);
  const stretch = stretches[at];
  const places = stretch ? placesOn(stretch, mmOf(named), toMm(named.run.length)) : [];
  const shown = { named, bench, places };
  return (
    <div class="glass" data-hand={bench.hand}>
      <main>
        <h1 class="unseen">{words.of(named.name)}</h1>
        <div class="ruled" ref={glass}>
          {stretch && <Ruled {...shown} scale={scale} stretch={stretch} letter={letter} />}
        </div>
        <Lay {...shown} {...props} stretch={stretch} at={at} count={last + 1} />
      </main>
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={props.onLeave}>
          {words.leave}
        </button>
        <button type="button" onClick={props.onAnew}>
          {words.anew}
        </button>
        {others.map(({ i, name }) => (
          <button type="button" key={i} onClick={() => props.onOther(i)}>
            {name}
          </button>
        ))}
        <button type="button" disabled={at === 0} onClick={() => go(at - 1)}>
          {words.back}
        </button>
        <button type="button" class="main" disabled={at === last} onClick={() => go(at + 1)}>
          {words.on}
        </button>
      </nav>
    </div>
  );
}

const mmOf = ({ run }: NamedRun) => run.marks.map(({ at }) => toMm(at));

function cut(named: NamedRun, bench: Bench, room: number): GlassStretch[] {
  if (room < LEAST_ROOM) return [];
  return stretchesOf(mmOf(named), toMm(named.run.length), room, toMm(tapeStep(bench)));
}
