import { outlineWords as words } from '#words/calculations/outline-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { FigureShape, Point } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { circle } from '../../drawing/figure-ring.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { laidOut, type Outline, type OutlineHoles } from '../../sewing/edging/outline-holes.ts';
import { outlineFields, outlineOf } from './fields.ts';
import { outlineWorked, type Worked } from './worked.ts';

/** More holes than this are a grey line. */
const MOST_DRAWN = 300;

/** The outline with its holes, or both edges laid straight, to scale. */
export const outlineDrawing: Drawing = {
  id: 'outline',
  // What comes of a wanted pitch is drawn; a hole is too small to be measured.
  unplaced: () => ['pitch', 'hole'],
  rows: ['holes', 'one-holes', 'other-holes'],
  draw(draft, bench) {
    const read = outlineFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = outlineWorked(read.value);
    if (!found.ok) return undefined;
    const drawn = found.value.pair ? ofPair(found.value, bench) : ofRound(found.value, bench);
    return { name: words.figure[read.value.shape], toScale: true, ...drawn };
  },
};

interface Drawn {
  shapes: FigureShape[];
  dimensions: Dimension[];
}

function counted(asked: Worked['asked'], count: number, one: Dimension, found: string): Dimension {
  const by = asked.by === 'count' ? { given: 'count' } : { found };
  return { ...one, text: words.counted(count), by };
}

/** Corners of an outline so far inside another one, from the first on round; of a circle points. */
function cornersOf(outline: Outline, inside: ExactLength): Point[] {
  const by = toMm(inside);
  if (outline.shape === 'rectangle') {
    const [right, low] = [toMm(outline.wide) - by, toMm(outline.high) - by];
    return [
      { x: by, y: by },
      { x: right, y: by },
      { x: right, y: low },
      { x: by, y: low },
    ];
  }
  if (outline.shape === 'free') return freeCorners(outline, inside);
  const sides = outline.shape === 'circle' ? 72 : outline.sides;
  const turn = Math.PI / sides;
  const radius =
    outline.shape === 'circle'
      ? toMm(outline.across) / 2 - by
      : (toMm(outline.side) / (2 * Math.tan(turn)) - by) / Math.cos(turn);
  return Array.from({ length: sides }, (_, i) => {
    // The first side of equal ones lies level, at the top.
    const at = outline.shape === 'circle' ? (2 * i + 1) * turn - Math.PI : 2 * i * turn - turn;
    return { x: radius * Math.sin(at), y: -radius * Math.cos(at) };
  });
}

/** Of sides given one by one, each corner so far inside both it lies between. */
function freeCorners(
  { sides, corners }: Extract<Outline, { shape: 'free' }>,
  inside: ExactLength,
): Point[] {
  const places = laidOut({ sides, corners });
  let turned = 0;
  return sides.map((_, i) => {
    const before = corners[(i + corners.length - 1) % corners.length] ?? 180;
    if (i > 0) turned += ((180 - before) * Math.PI) / 180;
    const along = inside / Math.tan((before * Math.PI) / 360);
    const [x, y] = places[i] ?? [0, 0];
    return {
      x: toMm(exactLength(x + along * Math.cos(turned) - inside * Math.sin(turned))),
      y: toMm(exactLength(y + along * Math.sin(turned) + inside * Math.cos(turned))),
    };
  });
}

function closed(points: readonly Point[]): Point[] {
  return [...points, ...points.slice(0, 1)];
}

/** Where holes lie: each side's line divided. */
function holesOf(round: OutlineHoles, outline: Outline): Point[] {
  if (outline.shape === 'circle') {
    const radius = toMm(outline.across) / 2 - toMm(outline.margin);
    return Array.from({ length: round.count }, (_, i) => {
      const at = (2 * Math.PI * i) / round.count;
      return { x: radius * Math.sin(at), y: -radius * Math.cos(at) };
    });
  }
  const corners = closed(cornersOf(outline, outline.margin));
  return round.sides.flatMap(({ spaces }, i) => {
    const [from, to] = [corners[i], corners[i + 1]];
    if (!from || !to) return [];
    return Array.from({ length: spaces }, (_, hole) => ({
      x: from.x + ((to.x - from.x) * hole) / spaces,
      y: from.y + ((to.y - from.y) * hole) / spaces,
    }));
  });
}

function ofRound({ asked, round }: Extract<Worked, { round: OutlineHoles }>, bench: Bench): Drawn {
  const outline = outlineOf(asked);
  const holes = holesOf(round, outline).slice(0, MOST_DRAWN);
  return {
    shapes: [
      lineThrough('cloth', ...closed(cornersOf(outline, exactLength(0)))),
      lineThrough('placement', ...closed(cornersOf(outline, outline.margin))),
      ...holes.map((at) => circle(at, toMm(asked.hole) / 2)),
    ],
    dimensions: roundDimensions(asked, round, outline, bench),
  };
}

function roundDimensions(
  asked: Worked['asked'],
  round: OutlineHoles,
  outline: Outline,
  bench: Bench,
): Dimension[] {
  const { margin } = outline;
  if (outline.shape === 'circle') {
    const { across } = outline;
    const half = across / 2;
    const whole = lengthAlong(0, [-half, half], { given: 'across' }, bench);
    return [
      whole,
      counted(asked, round.count, whole, 'count'),
      lengthAlong(0, [-half, -half + margin], { given: 'margin' }, bench),
    ];
  }
  const [one, two, three] = cornersOf(outline, exactLength(0));
  const [first, second] = cornersOf(outline, margin);
  if (!one || !two || !three || !first || !second) return [];
  const [along, down] = round.sides;
  const step = (long: ExactLength) => ({ x: first.x + toMm(long), y: first.y });
  if (outline.shape === 'free') return freeDimensions(asked, round, outline, bench);
  const edges =
    outline.shape === 'rectangle'
      ? [
          lengthAt([one, two], outline.wide, { given: 'wide' }, bench),
          lengthAt([two, three], outline.high, { given: 'high' }, bench),
        ]
      : [lengthAt([one, two], outline.side, { given: 'side' }, bench)];
  const [edge] = edges;
  if (!edge) return [];
  return [
    ...edges,
    counted(asked, round.count, edge, 'count'),
    ...(outline.shape === 'regular'
      ? [{ ...edge, text: words.sidesCount(outline.sides), by: { given: 'sides' } }]
      : []),
    ...(along
      ? [lengthAt([first, step(along.pitch)], along.pitch, { found: 'pitch' }, bench)]
      : []),
    ...(outline.shape === 'rectangle' && down
      ? [
          lengthAt(
            [second, { x: second.x, y: second.y + toMm(down.pitch) }],
            down.pitch,
            { found: 'second' },
            bench,
          ),
        ]
      : []),
    lengthAt([{ x: first.x, y: one.y }, first], margin, { given: 'margin' }, bench),
  ];
}

function freeDimensions(
  asked: Worked['asked'],
  round: OutlineHoles,
  outline: Extract<Outline, { shape: 'free' }>,
  bench: Bench,
): Dimension[] {
  const places = laidOut(outline).map(([x, y]) => ({
    x: toMm(exactLength(x)),
    y: toMm(exactLength(y)),
  }));
  const [first] = cornersOf(outline, outline.margin);
  const [start] = places;
  const edges = outline.sides.flatMap((side, i) => {
    const [from, to] = [places[i], places[i + 1]];
    return from && to ? [lengthAt([from, to], side, { given: 'ownSides' }, bench)] : [];
  });
  const [edge] = edges;
  const [along] = round.sides;
  if (!first || !start || !edge || !along) return [];
  return [
    ...edges,
    counted(asked, round.count, edge, 'count'),
    lengthAt(
      [first, { x: first.x + toMm(along.pitch), y: first.y }],
      along.pitch,
      { found: 'pitch' },
      bench,
    ),
    lengthAt([{ x: first.x, y: start.y }, first], outline.margin, { given: 'margin' }, bench),
  ];
}

function ofPair({ asked, pair }: Extract<Worked, { pair: object }>, bench: Bench): Drawn {
  const [one, other] = pair.lengths;
  const low = 0.2 * toMm(one);
  const tick = 0.02 * toMm(one);
  const row = (y: number, run: typeof pair.one.run) =>
    run.marks
      .slice(0, MOST_DRAWN)
      .map(({ at }) => lineDown('measure', toMm(at), [y - tick, y + tick]));
  const whole = lengthAlong(0, [0, one], { given: 'one' }, bench);
  return {
    shapes: [
      lineAcross('cloth', 0, [0, toMm(one)]),
      lineAcross('cloth', low, [0, toMm(other)]),
      ...row(0, pair.one.run),
      ...row(low, pair.other.run),
    ],
    dimensions: [
      whole,
      counted(asked, pair.count, whole, 'pair-count'),
      lengthAlong(low, [0, other], { given: 'other' }, bench),
      lengthAlong(0, [0, pair.one.pitch], { found: 'one-pitch' }, bench),
      lengthAlong(low, [0, pair.other.pitch], { found: 'other-pitch' }, bench),
    ],
  };
}
