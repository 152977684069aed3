import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt, lengthUp } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { FigureShape, Point } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { circle } from '../../drawing/figure-ring.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import {
  type Buttonhole,
  type ButtonholeInput,
  buttonhole,
} from '../../sewing/closures/buttonhole.ts';
import { overlapPastCentre } from '../../sewing/closures/overlap.ts';
import { buttonholeFields } from './fields.ts';
import { buttonholeInput } from './input.ts';

/** The button from its side lies under the other view, in parts of that one's height. */
const UNDER = 0.15;

/** The button on its hole, to scale, with the centre line and the least cloth past it; the button from its side below. */
export const buttonholeDrawing: Drawing = {
  id: 'buttonhole',
  // Measured round the button, it is no straight line; a row lies below, along its edge.
  unplaced: () => ['girth', 'follow', 'offset'],
  draw(draft, bench) {
    const read = buttonholeFields.read(draft, bench);
    if (!read.ok) return undefined;
    const asked = buttonholeInput(read.value);
    const [hole, overlap] = [buttonhole(asked), overlapPastCentre(asked.diameter)];
    if (!hole.ok || !overlap.ok) return undefined;
    const past = overlap.value.from;
    return {
      name: words.hole,
      toScale: true,
      shapes: shapes(asked, hole.value, past),
      dimensions: dimensions(asked, hole.value, past, bench),
    };
  },
};

/** How far the view from above reaches either way along the centre line. */
function reachOf({ diameter }: ButtonholeInput, { length }: Buttonhole): number {
  return Math.max(toMm(diameter), toMm(length));
}

function shapes(asked: ButtonholeInput, hole: Buttonhole, overlap: ExactLength): FigureShape[] {
  const reach = reachOf(asked, hole);
  const upright = (style: 'cloth' | 'measure', x: number) =>
    lineThrough(style, { x, y: -reach }, { x, y: reach });
  const lies = (along: number): Point =>
    asked.direction === 'horizontal' ? { x: along, y: 0 } : { x: 0, y: -along };
  const half = toMm(asked.diameter) / 2;
  const [top, foot] = sideOf(asked, hole);
  const side = [
    [-half, top],
    [half, top],
    [half, foot],
    [-half, foot],
    [-half, top],
  ].map(([x = 0, y = 0]): Point => ({ x, y }));
  return [
    upright('measure', 0),
    upright('cloth', toMm(overlap)),
    circle({ x: 0, y: 0 }, half, 'hole'),
    lineThrough('cut', lies(toMm(hole.past)), lies(-toMm(hole.rest))),
    lineThrough('cloth', ...side),
  ];
}

/** Top and foot of the button from its side. */
function sideOf(asked: ButtonholeInput, hole: Buttonhole): readonly [number, number] {
  const top = (1 + UNDER) * reachOf(asked, hole);
  return [top, top + toMm(asked.thickness)];
}

function dimensions(
  asked: ButtonholeInput,
  hole: Buttonhole,
  overlap: ExactLength,
  bench: Bench,
): Dimension[] {
  const { diameter, thickness, direction } = asked;
  const { past, rest } = hole;
  const half = diameter / 2;
  const [top, foot] = sideOf(asked, hole);
  const right = toMm(exactLength(half));
  const across = direction === 'horizontal';
  const on = (from: number, to: number, found: string) =>
    (across ? lengthAlong : lengthUp)(0, [from, to], { found }, bench);
  return [
    lengthAlong(foot, [-half, half], { given: 'diameter' }, bench),
    lengthAt(
      [
        { x: right, y: top },
        { x: right, y: foot },
      ],
      thickness,
      { given: 'thickness' },
      bench,
    ),
    on(-rest, past, 'length'),
    on(0, past, across ? 'past-centre' : 'above-button'),
    on(-rest, 0, across ? 'inside-centre' : 'below-button'),
    lengthAlong(reachOf(asked, hole), [0, overlap], { found: 'overlap-least' }, bench),
  ];
}
