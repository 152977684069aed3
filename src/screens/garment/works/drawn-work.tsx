import { useRef } from 'preact/hooks';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import { adopt } from '../../../controls/adopt.ts';
import { drawnAll } from '../../../controls/figure-view.tsx';
import { Rich } from '../../../controls/rich.tsx';
import { useBox } from '../../../controls/use-box.ts';
import type { Dimension, Dimensioned } from '../../../drawing/dimension.ts';
import { layOut, type PlacedDimension } from '../../../drawing/dimension-layout.ts';
import css from './drawn-work.css?inline';

adopt(css);

/** A number on a drawing as it is touched. */
export interface Label {
  kind: 'given' | 'linked' | 'found' | 'made' | 'plain';
  /** Said to a screen reader: what it is, its number, what a touch does. */
  aloud: string;
  current: boolean;
  onTouch?: (() => void) | undefined;
}

interface Props {
  drawing: Dimensioned;
  labelOf: (dimension: Dimension) => Label;
}

/** Between one label and the next under it, in px. */
const APART = 3;
/** How high the drawing itself may be, in px, at ordinary lettering. */
const HIGH = 150;

/** A drawing of a work: its dimensions are what is given, found and made, and each is touched where it stands. */
export function DrawnWork({ drawing, labelOf }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const { width, letter } = useBox(place);
  const sheet = {
    ...{ width, drawing: HIGH, row: Math.max(48, 3.3 * letter) },
    letter: { wide: 0.66 * letter, high: 1.25 * letter },
  };
  const layout = layOut(drawing, sheet);
  const name = drawing.toScale ? drawing.name : words.notToScale(drawing.name);
  return (
    <figure class="drawing dimensioned">
      <div ref={place} style={{ height: `${layout.height}px` }}>
        <svg role="img" aria-label={name} width={width} height={layout.height}>
          {/* All of a kind are one path: each key typed moves them. */}
          <path
            class="line-measure"
            d={pathsOf(layout, ({ leaders, line }) => [...leaders, line])}
          />
          {drawnAll(drawing.shapes, layout.place)}
          <path class="line-span" d={pathsOf(layout, ({ line }) => [line])} />
        </svg>
        {layout.dimensions.map((placed, i) => (
          <Touched key={i} placed={placed} label={labelOf(placed.dimension)} />
        ))}
      </div>
      <figcaption>
        <Rich text={name} />
      </figcaption>
    </figure>
  );
}

function Touched({ placed, label }: { placed: PlacedDimension; label: Label }) {
  const { x, y, width, height } = placed.label;
  const style = {
    left: `${x}px`,
    top: `${y}px`,
    width: `${width}px`,
    height: `${height - APART}px`,
  };
  const { name, text } = placed.dimension;
  if (label.kind === 'plain') {
    return (
      <span class="dimension" style={style}>
        <b>
          <Rich text={text} />
        </b>
      </span>
    );
  }
  return (
    <button
      type="button"
      class={`dimension ${label.kind}`}
      style={style}
      aria-label={label.aloud}
      aria-pressed={label.current}
      disabled={!label.onTouch}
      // The same field is in the list, which a keyboard goes through.
      tabIndex={label.kind === 'given' || label.kind === 'linked' ? -1 : undefined}
      onClick={label.onTouch}
    >
      {name && <small>{name}</small>}{' '}
      <b>
        <Rich text={text} />
      </b>
    </button>
  );
}

type Line = PlacedDimension['line'];

function pathsOf(
  { dimensions }: { dimensions: readonly PlacedDimension[] },
  lines: (one: PlacedDimension) => readonly Line[],
): string {
  return dimensions.flatMap(lines).map(pathOf).join('');
}

function pathOf(line: Line): string {
  return `M${line.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}`;
}
