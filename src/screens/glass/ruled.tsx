import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { NamedRun } from '../../calculation/calculation.ts';
import { Rich } from '../../controls/rich.tsx';
import {
  type GlassPlace,
  type GlassScale,
  type GlassStretch,
  graduationsOn,
  onGlass,
  wholePixels,
} from '../../drawing/glass.ts';
import { toMm } from '../../lengths/length.ts';
import { placeLabel } from './place-name.ts';

interface Props {
  named: NamedRun;
  bench: Bench;
  scale: GlassScale;
  stretch: GlassStretch;
  places: readonly GlassPlace[];
  /** Height of the lettering, in px. */
  letter: number;
}

/** Room before the first line, in px: edges of the glass are rounded. */
export const FIRST_LINE = 24;
/** Graduations nearer to each other than this, in px, would be one grey. */
const LEAST_APART = 3;
/** Height of a label, in letters, and how far below its line it begins, in px. */
const LABEL = 1.25;
const BELOW = 2;

/** Room after the last place, in px: its label stands below its line like all others. */
export function afterLast(letter: number): number {
  return Math.ceil(letter * LABEL) + BELOW;
}

/**
 * The lines of one stretch. Drawn as SVG on whole device pixels, or they would be smeared over
 * two of them; boxes are snapped to the page's pixels, which may be larger.
 */
export function Ruled(props: Props) {
  const { bench, scale, stretch, places } = props;
  const fine = wholePixels(1, scale);
  const place = (mm: number) => wholePixels(FIRST_LINE, scale) + onGlass(mm, stretch.from, scale);
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
  const graduations = graduationsOn(stretch, toMm(tapeStep(bench)), LEAST_APART / scale.pxPerMm);
  return (
    <>
      <svg aria-hidden="true">
        {graduations.map((mm) => rule(mm, 'graduation', isLong(mm, bench) ? '32' : '16'))}
        {places.map(({ mm, kind }) => rule(mm, kind, '100%'))}
        <path class="arrow" d="M64 36V72M56 60L64 72L72 60" />
      </svg>
      {labels(props, place).map(({ top, mm, kind, text }) => (
        <span key={`${kind} ${mm}`} class={`of-${kind}`} style={{ top: `${top}px` }}>
          <Rich text={text} />
        </span>
      ))}
    </>
  );
}

/** Whole centimetres and inches have the longer lines. */
function isLong(mm: number, { unit }: Bench): boolean {
  const whole = mm / (unit === 'in' ? 25.4 : 10);
  return Math.abs(whole - Math.round(whole)) < 1e-6;
}

/**
 * The names beside the lines, each below its own: above it, it would be read as the neighbour's.
 * Those of the first line and of the next stretch's always stand; others as far as there is room.
 */
function labels(props: Props, place: (mm: number) => number) {
  const { named, bench, stretch, places, letter } = props;
  const tall = letter * LABEL;
  const all = places.map((one) => {
    const top = place(one.mm) + BELOW;
    const must = one === places[0] || one.mm === stretch.next || one.kind === 'overlap';
    return { ...one, top, must, text: placeLabel(one, named, bench) };
  });
  const musts = all.filter(({ must }) => must);
  let free = -Infinity;
  return all.filter(({ top, must }) => {
    const hides = musts.some((one) => Math.abs(one.top - top) < tall);
    if (!must && (top < free || hides)) return false;
    free = top + tall;
    return true;
  });
}
