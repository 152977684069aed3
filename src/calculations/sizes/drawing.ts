import { sizesWords as words } from '#words/calculations/sizes-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import { needed } from '../../calculation/needed.ts';
import type { Dimensioned } from '../../drawing/dimension.ts';
import type { FigureShape, Point } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { circle } from '../../drawing/figure-ring.ts';
import { type Length, toMm } from '../../lengths/length.ts';
import { nearestButton } from '../../sewing/closures/buttons.ts';
import { type Sizes, sizesFields } from './fields.ts';
import { needleOf, stitchOf } from './worked.ts';

/** Stitches drawn in a row. */
const STITCHES = 5;

/** The thing itself, to scale: a row of stitches, a button, the blade of a needle. */
export const sizesDrawing: Drawing = {
  id: 'sizes',
  unplaced: () => [],
  draw(draft, bench) {
    const read = sizesFields.read(draft, bench);
    if (!read.ok) return undefined;
    const { what } = read.value;
    if (what === 'stitch') return stitch(read.value, bench);
    return what === 'button'
      ? button(needed({ button: read.value.button }).button, bench)
      : needle(read.value);
  },
};

function stitch({ stitch, stitchBy }: Sizes, bench: Bench): Dimensioned | undefined {
  const given = needed({ stitch }).stitch;
  const found = stitchOf(given, stitchBy);
  if (!found.ok) return undefined;
  const long = toMm(found.value.length);
  const thread = (i: number): FigureShape =>
    lineThrough('stitch', at(long * (i + 0.1)), at(long * (i + 0.9)));
  return {
    name: words.what.stitch,
    toScale: true,
    shapes: [
      lineThrough('cloth', at(0, long / 2), at(STITCHES * long, long / 2)),
      ...Array.from({ length: STITCHES }, (_, i) => thread(i)),
    ],
    dimensions: [
      lengthAt([at(0), at(long)], found.value.length, { found: 'stitch' }, bench),
      {
        from: at(0),
        to: at(STITCHES * long),
        text: `${given} ${words.stitchBy[stitchBy]}`,
        by: { given: 'stitch' },
      },
    ],
  };
}

function button(across: Length, bench: Bench): Dimensioned | undefined {
  const found = nearestButton(across);
  if (!found.ok) return undefined;
  const { diameter } = found.value.size;
  const [wide, sold] = [toMm(across), toMm(diameter)];
  return {
    name: words.what.button,
    toScale: true,
    shapes: [
      circle(at(0), wide / 2),
      ...[-1, 1].map((side) => circle(at((side * wide) / 8), wide / 20, 'hole')),
    ],
    dimensions: [
      lengthAt([at(-wide / 2), at(wide / 2)], across, { given: 'button' }, bench),
      lengthAt([at(-sold / 2), at(sold / 2)], diameter, { found: 'button-sold' }, bench),
    ],
  };
}

function needle({ needle, needleBy }: Sizes): Dimensioned | undefined {
  const given = needed({ needle }).needle;
  const found = needleOf(given, needleBy);
  if (!found.ok) return undefined;
  const metric = found.value.needle.metric;
  // By definition, the blade in hundredths of a millimetre.
  const thick = metric / 100;
  return {
    name: words.what.needle,
    toScale: true,
    shapes: [0, thick].map((y) => lineThrough('cloth', at(0, y), at(6 * thick, y))),
    dimensions: [
      { from: at(0), to: at(0, thick), text: words.metricSize(metric), by: { found: 'needle' } },
      {
        from: at(6 * thick),
        to: at(6 * thick, thick),
        text: needleBy === 'us' ? words.usSize(given) : words.metricSize(given),
        by: { given: 'needle' },
      },
    ],
  };
}

function at(x: number, y = 0): Point {
  return { x, y };
}
