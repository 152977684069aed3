import { repeatWords as words } from '#words/calculations/repeat-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { centreInput, matchInput, repeatFields, slantInput } from './fields.ts';
import { repeatWorked, type Worked } from './worked.ts';

/** Of what is drawn, as a part of its length: how high cloth is. */
const HIGH = 0.1;
/** More lines than this are a grey field. */
const MOST_LINES = 60;

/** The cloth along its repeat, with the pieces on it, to scale. */
export const repeatDrawing: Drawing = {
  id: 'repeat',
  unplaced: () => [],
  rows: ['places'],
  draw(draft, bench) {
    const read = repeatFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = repeatWorked(read.value);
    if (!found.ok) return undefined;
    const { shapes, dimensions } = drawnOf(found.value, bench);
    return { name: words.figure[found.value.kind], toScale: true, shapes, dimensions };
  },
};

interface Drawn {
  shapes: FigureShape[];
  dimensions: Dimension[];
}
type Of<Kind extends Worked['kind']> = Extract<Worked, { kind: Kind }>;

function drawnOf(worked: Worked, bench: Bench): Drawn {
  switch (worked.kind) {
    case 'panels':
      return ofPanels(worked, bench);
    case 'match':
      return ofMatch(worked, bench);
    case 'centre':
      return ofCentre(worked, bench);
    case 'slant':
      return ofSlant(worked, bench);
  }
}

/** Cloth along its length, its repeat's lines from a place on, as far as lines can be told apart. */
function cloth(long: number, repeat: ExactLength, from = 0): FigureShape[] {
  const [end, high] = [toMm(exactLength(long)), HIGH * toMm(exactLength(long))];
  const count = Math.min(MOST_LINES, Math.floor((long - from) / repeat) + 1);
  const lines = Array.from({ length: Math.max(0, count) }, (_, i) =>
    lineDown('behind', toMm(exactLength(from + i * repeat)), [0, high]),
  );
  return [lineAcross('cloth', 0, [0, end]), lineAcross('cloth', high, [0, end]), ...lines];
}

/** The repeats that were measured, on a line of their own. */
function measured({ asked }: Worked, y: number, bench: Bench): Dimension[] {
  const one = lengthAlong(y, [0, asked.span], { given: 'span' }, bench);
  return [one, { ...one, text: words.repeatsCount(asked.repeats), by: { given: 'repeats' } }];
}

function ofPanels(worked: Of<'panels'>, bench: Bench): Drawn {
  const { panels, count, long, repeat } = worked;
  const whole = Math.max(panels.cloth, worked.asked.span);
  const high = HIGH * toMm(exactLength(whole));
  const ends = panels.run.marks.flatMap(({ at }) => [at, exactLength(at + long)]);
  const all = lengthAlong(0, [0, panels.cloth], { found: 'cloth' }, bench);
  return {
    shapes: [...cloth(whole, repeat), ...ends.map((at) => lineDown('cut', toMm(at), [0, high]))],
    dimensions: [
      all,
      { ...all, text: words.panelCount(count), by: { given: 'panels' } },
      lengthAlong(high, [0, long], { given: 'long' }, bench),
      ...measured(worked, 2 * high, bench),
    ],
  };
}

function ofMatch(worked: Of<'match'>, bench: Bench): Drawn {
  const { asked, match, repeat } = worked;
  const { first, below, free } = matchInput(asked);
  const long = Math.max(match.start + below, first, free, asked.span);
  const high = HIGH * toMm(exactLength(long));
  const on = (y: number, from: number, to: number, by: DimensionOf) =>
    lengthAlong(y, [from, to], by, bench);
  return {
    shapes: [
      ...cloth(long, repeat),
      lineDown('placement', toMm(first), [0, high]),
      lineDown('placement', toMm(exactLength(match.start + below)), [0, high]),
      lineDown('cut', toMm(match.start), [0, high]),
    ],
    dimensions: [
      on(0, 0, first, { given: 'first' }),
      on(0, match.start, match.start + below, { given: 'below' }),
      on(high, 0, free, { given: 'free' }),
      on(high, 0, match.start, { found: 'start' }),
      on(high, free, match.start, { found: 'lost' }),
      ...measured(worked, 2 * high, bench),
    ],
  };
}

function ofCentre(worked: Of<'centre'>, bench: Bench): Drawn {
  const { asked, inside, repeat } = worked;
  const { wide } = centreInput(asked);
  const high = HIGH * toMm(wide);
  return {
    shapes: [
      ...cloth(wide, repeat, inside),
      lineDown('cut', 0, [0, high]),
      lineDown('cut', toMm(wide), [0, high]),
      lineDown('placement', toMm(exactLength(wide / 2)), [-high / 2, 1.5 * high]),
    ],
    dimensions: [
      lengthAlong(0, [0, wide], { given: 'wide' }, bench),
      lengthAlong(high, [0, inside], { found: 'inside' }, bench),
      ...measured(worked, 2 * high, bench),
    ],
  };
}

function ofSlant(worked: Of<'slant'>, bench: Bench): Drawn {
  const { asked, slant, repeat } = worked;
  const { one, other, seam } = slantInput(asked);
  const at = (angle: number, long: number, side: 1 | -1) => {
    const turn = (angle * Math.PI) / 180;
    const mm = toMm(exactLength(long));
    return { x: side * mm * Math.sin(turn), y: mm * Math.cos(turn) };
  };
  const origin = { x: 0, y: 0 };
  const [left, right] = [at(one, seam, -1), at(other, seam, 1)];
  const far = 0.3 * toMm(seam) + Math.max(0, right.x);
  const rows = Math.min(MOST_LINES, Math.floor(Math.max(left.y, right.y) / toMm(repeat)) + 1);
  const ends = [seam * Math.cos((one * Math.PI) / 180), seam * Math.cos((other * Math.PI) / 180)];
  return {
    shapes: [
      lineThrough('stitch', left, origin, right),
      ...Array.from({ length: rows }, (_, i) =>
        lineAcross('behind', i * toMm(repeat), [Math.min(left.x, -1), Math.max(right.x, 1)]),
      ),
    ],
    dimensions: [
      lengthAt([origin, left], seam, { given: 'seam' }, bench),
      lengthAt([origin, at(one, slant.one, -1)], slant.one, { found: 'one' }, bench),
      lengthAt([origin, at(other, slant.other, 1)], slant.other, { found: 'other' }, bench),
      lengthDown(far, [Math.min(...ends), Math.max(...ends)], { found: 'drift' }, bench),
      ...measured(worked, Math.max(left.y, right.y), bench),
    ],
  };
}
