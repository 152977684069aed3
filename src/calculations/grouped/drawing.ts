import { groupedWords as words } from '#words/calculations/grouped-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown } from '../../drawing/figure-line.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import { foldInput, groupedFields, groupsInput, lapInput, loopsInput } from './fields.ts';
import { groupedOf, type Worked } from './worked.ts';

/** Of what is drawn, as parts of its length: how high marks are, and how far below it the rest lies. */
const HIGH = 0.04;
const BELOW = 0.22;

/** A closing laid straight, to scale; what is folded or cut for it below. */
export const groupedDrawing: Drawing = {
  id: 'grouped',
  // Too thin to be seen beside its belt; of one in a group none is next to another.
  unplaced: (ask) => [
    ...(ask(groupedFields.specs.kind) === 'loops' ? ['thick'] : []),
    ...(ask(groupedFields.specs.each).trim() === '1' ? ['within'] : []),
  ],
  rows: ['places', 'loops'],
  draw(draft, bench) {
    const read = groupedFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = groupedOf(read.value);
    if (!found.ok) return undefined;
    const drawn = drawnOf(found.value, bench);
    return {
      name: words.figure[found.value.kind],
      toScale: true,
      shapes: drawn.shapes,
      dimensions: drawn.dimensions.filter(
        ({ by }) => !('given' in by) || (draft[by.given] ?? '').trim() !== '',
      ),
    };
  },
};

interface Drawn {
  shapes: FigureShape[];
  dimensions: Dimension[];
}

type Along = (row: number, from: number, to: number, by: DimensionOf) => Dimension;

/** Dimensions along rows, each so far below the one before. */
function rowsOf(long: number, bench: Bench): { y: (row: number) => number; on: Along } {
  const y = (row: number) => row * BELOW * toMm(exactLength(long));
  return { y, on: (row, from, to, by) => lengthAlong(y(row), [from, to], by, bench) };
}

function drawnOf(worked: Worked, bench: Bench): Drawn {
  switch (worked.kind) {
    case 'groups':
      return ofGroups(worked, bench);
    case 'lap':
      return ofLap(worked, bench);
    case 'loops':
      return ofLoops(worked, bench);
    case 'hanger':
      return ofHanger(worked, bench);
    case 'fold':
      return ofFold(worked, bench);
  }
}

type Of<Kind extends Worked['kind']> = Extract<Worked, { kind: Kind }>;

function counted(text: string, one: Dimension, by: DimensionOf): Dimension {
  return { ...one, text, by };
}

function marks(places: readonly number[], high: number, y = 0): FigureShape[] {
  return places.map((at) => lineDown('measure', toMm(exactLength(at)), [y - high, y + high]));
}

function ofGroups({ asked, groups: found }: Of<'groups'>, bench: Bench): Drawn {
  const { opening, top, bottom, groups, each } = groupsInput(asked);
  const { on } = rowsOf(opening, bench);
  const places = found.run.marks.map(({ at }) => at);
  const whole = on(0, 0, opening, { given: 'opening' });
  const [one, two, next] = [places[0] ?? 0, places[1] ?? 0, places[each]];
  const last = places[each - 1] ?? 0;
  return {
    shapes: [lineAcross('cloth', 0, [0, toMm(opening)]), ...marks(places, HIGH * toMm(opening))],
    dimensions: [
      whole,
      counted(words.groupCount(groups), whole, { given: 'groups' }),
      counted(words.eachCount(each), on(0, one, last, { given: 'each' }), { given: 'each' }),
      ...(each > 1 ? [on(0, one, two, { given: 'within' })] : []),
      on(0, 0, top, { given: 'top' }),
      on(0, opening - bottom, opening, { given: 'bottom' }),
      next === undefined
        ? on(0, top, one, { found: 'between' })
        : on(0, last, next, { found: 'between' }),
    ],
  };
}

function ofLap({ asked, end }: Of<'lap'>, bench: Bench): Drawn {
  const { lap } = lapInput(asked);
  const { y, on } = rowsOf(2 * lap, bench);
  const [mate, edge] = [toMm(end.mate), toMm(lap)];
  const high = HIGH * edge;
  return {
    shapes: [
      lineAcross('cloth', 0, [-edge, edge]),
      lineDown('cloth', edge, [-2 * high, 2 * high]),
      lineAcross('behind', y(1), [0, 2 * edge]),
      lineDown('cloth', 0, [y(1) - 2 * high, y(1) + 2 * high]),
      ...marks([end.mate], high),
      ...marks([end.mate], high, y(1)),
      ...(end.hole
        ? [lineAcross('cut', 0, [edge - toMm(end.hole.ends), edge - toMm(end.hole.starts)])]
        : [lineDown('measure', mate, [0, high])]),
    ],
    dimensions: [
      on(0, end.mate, lap, { given: 'from' }),
      on(1, 0, end.mate, { found: 'mate' }),
      on(1, 0, lap, { given: 'lap' }),
      ...(end.hole ? [on(0, lap - end.hole.ends, lap - end.hole.starts, { given: 'hole' })] : []),
    ],
  };
}

function ofLoops({ asked, loops: found }: Of<'loops'>, bench: Bench): Drawn {
  const { around, loops, belt, ease, turn } = loopsInput(asked);
  const { y, on } = rowsOf(Math.max(around, found.strip), bench);
  const ends = Array.from({ length: loops + 1 }, (_, i) => i * found.each);
  const whole = on(0, 0, around, { given: 'around' });
  const high = HIGH * toMm(around);
  return {
    shapes: [
      lineAcross('cloth', 0, [0, toMm(around)]),
      ...marks(
        found.run.marks.map(({ at }) => at),
        high,
      ),
      lineAcross('cloth', y(1), [0, toMm(found.strip)]),
      ...ends.map((at) => lineDown('cut', toMm(exactLength(at)), [y(1) - high, y(1) + high])),
    ],
    dimensions: [
      whole,
      counted(words.loopCount(loops), whole, { given: 'loops' }),
      on(1, 0, found.strip, { found: 'strip' }),
      on(1, 0, found.each, { found: 'loop' }),
      on(1, 0, turn, { given: 'turn' }),
      on(1, turn, turn + belt, { given: 'belt' }),
      on(1, turn + belt, turn + belt + ease, { given: 'ease' }),
    ],
  };
}

function ofHanger({ asked, tape }: Of<'hanger'>, bench: Bench): Drawn {
  const { on } = rowsOf(tape, bench);
  const { drop = 0, seam = 0 } = asked;
  const middle = toMm(exactLength(tape / 2));
  const high = HIGH * 2 * middle;
  return {
    shapes: [
      lineAcross('cloth', 0, [0, 2 * middle]),
      lineDown('fold', middle, [-high, high]),
      lineDown('cut', 0, [-high, high]),
      lineDown('cut', 2 * middle, [-high, high]),
      lineDown('stitch', toMm(exactLength(seam)), [-high, high]),
    ],
    dimensions: [
      on(0, 0, seam, { given: 'seam' }),
      on(0, seam, seam + drop, { given: 'drop' }),
      on(0, 0, tape, { found: 'tape' }),
    ],
  };
}

function ofFold({ asked, apart }: Of<'fold'>, bench: Bench): Drawn {
  const { from, thing, thick } = foldInput(asked);
  const deep = thing + 2 * thick;
  const low = toMm(exactLength(deep));
  const bend = toMm(exactLength(deep / 2));
  const flat = low + BELOW * toMm(apart);
  const far = toMm(from);
  return {
    shapes: [
      ...[0, toMm(thick), low - toMm(thick), low].map((y) =>
        lineAcross('cloth', y, [bend, 1.3 * far]),
      ),
      lineDown('fold', 0, [0, low]),
      lineDown('measure', far, [0, low]),
      lineAcross('cloth', flat, [0, toMm(apart)]),
      ...marks([0, apart], HIGH * toMm(apart), flat),
      lineDown('fold', toMm(apart) / 2, [flat - HIGH * toMm(apart), flat + HIGH * toMm(apart)]),
    ],
    dimensions: [
      lengthAlong(0, [0, from], { given: 'from' }, bench),
      lengthDown(1.3 * far, [thick, thick + thing], { given: 'thing' }, bench),
      lengthDown(1.3 * far, [0, thick], { given: 'thick' }, bench),
      lengthAlong(flat, [0, apart], { found: 'apart' }, bench),
    ],
  };
}
