import { useRef } from 'preact/hooks';
import { nearestMark } from '../drawing/tape-marks.ts';
import type { TapeShape } from '../drawing/tape-shape.ts';
import { tapeStrip } from '../drawing/tape-strip.ts';
import { span } from '../drawing/tape-window.ts';
import { exactLength, UNITS_PER_MM } from '../lengths/length.ts';
import type { BenchUnit } from '../lengths/unit.ts';
import type { Run } from '../sewing/run.ts';
import { useBox } from './use-box.ts';
import { usePan } from './use-pan.ts';
import { useTapeWindow } from './use-tape-window.ts';

/** How near a thumb must come to a mark, in px: half of the smallest target. */
const REACH = 24;

export interface TapeWords {
  /** Names the strip and says how keys move it. */
  moves: string;
}

export interface TapeProps {
  run: Run;
  /** Index of the current mark. When it changes, the tape moves there. */
  here: number | undefined;
  /** Inches lie on the lower edge; on the upper are centimetres, or millimetres. */
  unit: BenchUnit;
  decimalMark: ',' | '.';
  /** What is drawn, for who can't see it. */
  label: string;
  words: TapeWords;
  /** Start at the current mark, not with the whole run. */
  following?: boolean;
  /** A mark was pressed. */
  onPick?: (index: number) => void;
}

/** The run on a strip of tape that is moved along with a thumb. */
export function Tape(props: TapeProps) {
  const { run, here, unit, decimalMark, label, words, following = false, onPick } = props;
  const ref = useRef<HTMLDivElement>(null);
  const { width, height, letter } = useBox(ref);
  const shown = useTapeWindow(run, here, following);
  const pan = usePan(run, shown, width, (at, mmPerPx) => {
    const index = nearestMark(run.marks, at * UNITS_PER_MM, REACH * mmPerPx * UNITS_PER_MM);
    if (index !== undefined) onPick?.(index);
  });
  const view = {
    start: exactLength(shown.window.from * UNITS_PER_MM),
    pxPerMm: width / span(shown.window),
    width,
    height,
    labelSize: letter,
    tickGap: 4,
    edges: [unit === 'mm' ? 'mm' : 'cm', 'in'],
    decimalMark,
  } as const;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it is moved along by keys
    <div class="tape" ref={ref} role="application" tabIndex={0} aria-label={words.moves} {...pan}>
      <svg width={width} height={height} role="img" aria-label={label}>
        {tapeStrip(run, view, here).map(draw)}
      </svg>
    </div>
  );
}

function draw(shape: TapeShape) {
  const name = `tape-${shape.role}`;
  if (shape.shape === 'path') return <path class={name} d={shape.d} />;
  if (shape.shape === 'text') {
    return (
      <text class={name} x={shape.x} y={shape.y}>
        {shape.text}
      </text>
    );
  }
  const { x, y, width, height } = shape;
  return (
    <rect
      class={name}
      x={x - width / 2}
      y={y - height / 2}
      width={width}
      height={height}
      rx={height / 2}
    />
  );
}
