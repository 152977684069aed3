import { curveWords as words } from '#words/calculations/curve-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { FigureShape, Point } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { arcInput, curveFields, grainInput, slantInput, squareInput, walkInput } from './fields.ts';
import { curveWorked, type Worked } from './worked.ts';

const POINTS = 48;

/** More steps than this are a grey line. */
const MOST_DRAWN = 200;

/** The curve, the slant or the cloth, to scale. */
export const curveDrawing: Drawing = {
  id: 'curve',
  unplaced: () => ['walkRadius', 'over'],
  rows: ['marks', 'walk-marks'],
  draw(draft, bench) {
    const read = curveFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = curveWorked(read.value);
    if (!found.ok) return undefined;
    const { shapes, dimensions } = drawnOf(found.value, bench);
    return {
      name: words.figure[found.value.kind],
      toScale: true,
      shapes,
      dimensions: dimensions.filter(
        ({ by }) => !('given' in by) || (draft[by.given] ?? '').trim() !== '',
      ),
    };
  },
};

interface Drawn {
  shapes: FigureShape[];
  dimensions: Dimension[];
}
type Of<Kind extends Worked['kind']> = Extract<Worked, { kind: Kind }>;

function drawnOf(worked: Worked, bench: Bench): Drawn {
  if (worked.kind === 'arc') return ofArc(worked, bench);
  if (worked.kind === 'walk') return ofWalk(worked, bench);
  if (worked.kind === 'grain') return ofGrain(worked, bench);
  return worked.kind === 'slant' ? ofSlant(worked, bench) : ofSquare(worked, bench);
}

function ofArc({ asked, arc }: Of<'arc'>, bench: Bench): Drawn {
  const { chord, rise, off, side, parts } = arcInput(asked);
  const [middle, radius] = [toMm(chord) / 2, toMm(arc.radius)];
  const centre = { x: middle, y: radius - toMm(rise) };
  const inner = radius + (side === 'inside' ? -1 : 1) * toMm(off);
  const at = (turn: number, from: number): Point => ({
    x: centre.x + from * Math.sin(turn),
    y: centre.y - from * Math.cos(turn),
  });
  const through = (from: number) =>
    Array.from({ length: POINTS + 1 }, (_, i) => at((i / POINTS - 0.5) * arc.turn, from));
  const whole = lengthAlong(0, [0, chord], { given: 'chord' }, bench);
  const marked = Array.from({ length: parts + 1 }, (_, i) => {
    const turn = (i / parts - 0.5) * arc.turn;
    return lineThrough('measure', at(turn, inner), at(turn, radius));
  });
  return {
    shapes: [
      lineThrough('cloth', ...through(radius)),
      lineThrough('stitch', ...through(inner)),
      lineAcross('behind', 0, [0, 2 * middle]),
      ...marked,
    ],
    dimensions: [
      whole,
      { ...whole, text: words.partsCount(parts), by: { given: 'parts' } },
      lengthDown(middle, [-rise, 0], { given: 'rise' }, bench),
      lengthAt([at(0, radius), at(0, inner)], off, { given: 'off' }, bench),
    ],
  };
}

/** The curve laid straight: every step a short mark, every part a long one. */
function ofWalk({ asked, walk }: Of<'walk'>, bench: Bench): Drawn {
  const { step, steps, parts } = walkInput(asked);
  const long = toMm(walk.walked);
  const tick = (at: number, high: number) => lineDown('measure', at, [-high * long, high * long]);
  const whole = lengthAlong(0, [0, walk.walked], { found: 'walked' }, bench);
  const all = steps <= MOST_DRAWN ? Array.from({ length: steps + 1 }, (_, i) => i) : [0, 1];
  return {
    shapes: [
      lineAcross('stitch', 0, [0, long]),
      ...all.map((i) => tick(i * toMm(step), 0.01)),
      ...walk.run.marks.map(({ at }) => tick(toMm(at), 0.03)),
    ],
    dimensions: [
      whole,
      { ...whole, text: words.stepsCount(steps), by: { given: 'walkSteps' } },
      { ...whole, text: words.partsCount(parts), by: { given: 'parts' } },
      lengthAlong(0, [0, step], { given: 'walkStep' }, bench),
      lengthAlong(0, [steps * step, walk.walked], { given: 'walkRest' }, bench),
    ],
  };
}

function ofSlant({ asked, edge }: Of<'slant'>, bench: Bench): Drawn {
  const { high, aside } = slantInput(asked);
  const [low, out] = [toMm(high), toMm(aside)];
  const [top, end] = [
    { x: 0, y: 0 },
    { x: out, y: low },
  ];
  return {
    shapes: [
      lineThrough('cloth', top, end),
      lineDown('behind', 0, [0, low]),
      lineAcross('behind', low, [0, out]),
    ],
    dimensions: [
      lengthDown(0, [0, high], { given: 'high' }, bench),
      lengthAlong(low, [0, aside], { given: 'aside' }, bench),
      lengthAt([top, end], edge, { found: 'slant' }, bench),
    ],
  };
}

/** A thread from selvedge to selvedge, as it should run and as it does. */
function ofGrain({ asked }: Of<'grain'>, bench: Bench): Drawn {
  const { wide, bow, ahead } = grainInput(asked);
  const [across, most, end] = [toMm(wide), toMm(bow), toMm(ahead)];
  const high = across / 4 + Math.max(most, end);
  // Half of a wave from end to end, greatest in the middle.
  const thread = Array.from({ length: POINTS + 1 }, (_, i) => {
    const part = i / POINTS;
    return { x: part * across, y: part * end + Math.sin(Math.PI * part) * most };
  });
  const straight = (part: number): Point => ({ x: part * across, y: part * end });
  const middle = { x: across / 2, y: end / 2 };
  return {
    shapes: [
      lineDown('cloth', 0, [-high / 4, high]),
      lineDown('cloth', across, [-high / 4, high]),
      lineAcross('behind', 0, [0, across]),
      lineThrough('measure', straight(0), straight(1)),
      lineThrough('stitch', ...thread),
    ],
    dimensions: [
      lengthAlong(0, [0, wide], { given: 'clothWide' }, bench),
      lengthAt([middle, { ...middle, y: middle.y + most }], bow, { given: 'bow' }, bench),
      lengthDown(across, [0, ahead], { given: 'ahead' }, bench),
    ],
  };
}

function ofSquare({ asked, square }: Of<'square'>, bench: Bench): Drawn {
  const { long, one, other } = squareInput(asked);
  const { skew, wanted } = square;
  const high = Math.sqrt(wanted * wanted - long * long - skew * skew);
  const point = (x: number, y: number): Point => ({
    x: toMm(exactLength(x)),
    y: toMm(exactLength(y)),
  });
  // The lower edge runs ahead by the skew: its diagonals are long + skew and long − skew across.
  const corners = [
    point(0, 0),
    point(long, 0),
    point(long + skew, high),
    point(skew, high),
  ] as const;
  const [a, b, c, d] = corners;
  const between = (ends: readonly [Point, Point], length: ExactLength, given: string) =>
    lengthAt(ends, length, { given }, bench);
  return {
    shapes: [
      lineThrough('cloth', ...corners, a),
      lineThrough('measure', a, c),
      lineThrough('measure', b, d),
    ],
    dimensions: [
      between([a, b], long, 'long'),
      between([a, c], one, 'one'),
      between([d, b], other, 'other'),
      lengthAlong(c.y, [Math.min(0, skew), Math.max(0, skew)], { found: 'skew' }, bench),
    ],
  };
}
