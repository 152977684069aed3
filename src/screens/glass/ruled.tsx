import { useLayoutEffect, useRef } from 'preact/hooks';

import type { Bench } from '../../controls/bench.ts';
import { tapeStep } from '../../controls/bench.ts';
import type { NamedRun } from '../../controls/calculation.ts';
import { type GlassScale, type GlassStretch, onGlass } from '../../drawing/glass.ts';
import { toMm } from '../../lengths/length.ts';
import { glassWords as words } from '../../words/glass-words.ts';

interface Props {
  named: NamedRun;
  bench: Bench;
  scale: GlassScale;
  stretches: readonly GlassStretch[];
  at: number;
  /** Of the glass that is ruled, in px. */
  room: number;
  said: string | undefined;
  /** Told how high the words and keys at the end of the glass are, in px. */
  onFoot: (high: number) => void;
  onGo: (to: number) => void;
  onAnew: () => void;
  onLeave: () => void;
}

/** Room over the first line, in px. */
export const FIRST_LINE = 12;
/** Graduations nearer to each other than this, in px, would be one grey. */
const LEAST_APART = 3;
/** Two places nearer than this, in mm, are one. */
const SAME = 1e-6;

/** One stretch of a run at true size, and the way to the next one. */
export function Ruled(props: Props) {
  const { named, stretches, at, room, said } = props;
  const stretch = stretches[at] as GlassStretch;
  const foot = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const high = foot.current?.offsetHeight;
    if (high) props.onFoot(high);
  });
  const marks = named.run.marks.map((mark) => ({ ...mark, mm: toMm(mark.at) }));
  const inSight = marks.filter(({ mm }) => mm >= stretch.from - SAME && mm <= stretch.to);
  const called = (mm: number) => {
    const mark = marks.find((one) => Math.abs(one.mm - mm) < SAME);
    return mark ? words.mark(mark.label) : words.overlap;
  };
  // Whole device pixels, or lines would be smeared over two of them. Drawn as SVG: boxes are
  // snapped to the page's pixels, which may be larger.
  const whole = (px: number) => Math.round(px * props.scale.ratio) / props.scale.ratio;
  const fine = whole(1);
  const place = (mm: number) => whole(FIRST_LINE) + onGlass(mm, stretch.from, props.scale);
  const rule = (mm: number, kind: string, to: string) => (
    <line
      class={kind}
      key={`${kind} ${mm}`}
      x2={to}
      y1={place(mm) + fine / 2}
      y2={place(mm) + fine / 2}
      stroke-width={fine}
    />
  );
  const drawnOver = (mm: number) => inSight.some((mark) => Math.abs(mark.mm - mm) < SAME);
  const begins = at === 0 ? words.datum(named.run.datum) : words.overlap;
  const lines = [
    ...(drawnOver(stretch.from) ? [] : [{ mm: stretch.from, kind: 'overlap', label: begins }]),
    ...inSight.map(({ mm, label }) => ({ mm, kind: 'mark', label })),
    ...(stretch.next === undefined || drawnOver(stretch.next)
      ? []
      : [{ mm: stretch.next, kind: 'overlap', label: words.overlap }]),
  ];
  return (
    <div class="glass" data-hand={props.bench.hand}>
      <div class="ruled" style={{ height: `${room}px` }}>
        <svg aria-hidden="true">
          {graduations(props, stretch).map((mm) =>
            rule(mm, 'graduation', isLong(mm, props.bench) ? '32' : '16'),
          )}
          {lines.map(({ mm, kind }) => rule(mm, kind, '100%'))}
        </svg>
        {lines.map(({ mm, kind, label }) => (
          <span key={`${kind} ${mm}`} style={{ top: `${place(mm)}px` }}>
            {label}
          </span>
        ))}
      </div>
      <footer ref={foot}>
        <p class="lay" aria-live="polite">
          {said !== undefined && <b>{said} </b>}
          <b>{words.ofThese(at + 1, stretches.length)}.</b>{' '}
          {at === 0 ? words.first : words.next(called(stretch.from))} {words.check}
        </p>
        <nav class="actions" aria-label={words.title}>
          <button type="button" onClick={props.onLeave}>
            {words.leave}
          </button>
          <button type="button" onClick={props.onAnew}>
            {words.anew}
          </button>
          <button type="button" disabled={at === 0} onClick={() => props.onGo(at - 1)}>
            {words.back}
          </button>
          <button
            type="button"
            class="main"
            disabled={stretch.next === undefined}
            onClick={() => props.onGo(at + 1)}
          >
            {words.on}
          </button>
        </nav>
      </footer>
    </div>
  );
}

/** Graduations of the tape in hand that are in sight, in mm from the datum. */
function graduations({ bench, scale }: Props, { from, to }: GlassStretch): number[] {
  const fine = toMm(tapeStep(bench));
  const step = fine * Math.max(1, Math.ceil(LEAST_APART / (fine * scale.pxPerMm)));
  const first = Math.ceil(from / step - SAME);
  const count = Math.max(0, Math.floor(to / step) - first + 1);
  return Array.from({ length: count }, (_, i) => (first + i) * step);
}

/** Whole centimetres and inches have the longer lines. */
function isLong(mm: number, { unit }: Bench): boolean {
  const whole = mm / (unit === 'in' ? 25.4 : 10);
  return Math.abs(whole - Math.round(whole)) < 1e-6;
}
