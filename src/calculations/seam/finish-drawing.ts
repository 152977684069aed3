import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { lengthAlong } from '../../calculation/drawing.ts';
import { needed } from '../../calculation/needed.ts';
import type { Dimension, Dimensioned } from '../../drawing/dimension.ts';
import { boundsOf, type Figure } from '../../drawing/figure.ts';
import { lineAcross } from '../../drawing/figure-line.ts';
import { toMm } from '../../lengths/length.ts';
import { type FinishPlan, finishSeam } from '../../sewing/seams/seam-finish.ts';
import type { Row } from '../../sewing/seams/seam-rows.ts';
import type { SeamAsked } from './fields.ts';
import { type Across, flatEdge, rowsOnFlat } from './flat.ts';
import { finishInput } from './read.ts';
import { sectionOf } from './section.ts';

/** Room between what is drawn under each other, in parts of what the finish takes. */
const APART = 0.35;

/** The allowance flat, the finished seam in section under it, and of a bound one its strip. */
export function drawFinish(asked: SeamAsked, bench: Bench): Dimensioned | undefined {
  const { given } = needed({ given: asked.given });
  const found = finishSeam(finishInput(given, asked));
  if (!found.ok) return undefined;
  const plan = found.value;
  const section = sectionOf(plan, asked.finish);
  const apart = APART * toMm(plan.consumed);
  const bounds = boundsOf(section);
  const flat = bounds.y - apart;
  const low = bounds.y + bounds.height + apart;
  const { strip } = plan;
  const bias: Figure = strip === undefined ? [] : [lineAcross('cloth', low, [0, toMm(strip)])];
  return {
    name: strip === undefined ? words.seam : words.boundSeam,
    toScale: true,
    shapes: [...flatEdge(flat, given, rowsAcross(plan, given)), ...section, ...bias],
    dimensions: [
      lengthAlong(flat, [0, given], { given: 'given' }, bench),
      ...rowsOnFlat(asked, [flat, 0, given], bench),
      ...taken(plan, given, flat, asked, bench),
      ...ofSection(plan, bench),
      ...(strip === undefined ? [] : [lengthAlong(low, [0, strip], { found: 'strip' }, bench)]),
    ],
  };
}

/** The stitch line, the end of the cloth, and each row between. */
function rowsAcross({ rows, consumed }: FinishPlan, given: number): Across[] {
  const places = rows.flatMap(({ do: what, at }): Across[] => {
    if (at === undefined || at === 0) return [];
    const line = what === 'topstitch' ? 'stitch' : 'fold';
    return [[what.startsWith('trim') ? 'cut' : line, at]];
  });
  return [['stitch', 0], ['cut', consumed], ['cut', given], ...places];
}

/** What a French seam takes, and what any leaves over. */
function taken(
  { consumed, spare }: FinishPlan,
  given: number,
  y: number,
  { finish }: SeamAsked,
  bench: Bench,
): Dimension[] {
  return [
    ...(finish === 'french' ? [lengthAlong(y, [0, consumed], { found: 'sewn' }, bench)] : []),
    ...(spare > 0 ? [lengthAlong(y, [consumed, given], { found: 'spare' }, bench)] : []),
  ];
}

/** Rows that follow from the allowance, by the output each is. */
const FOUND: Partial<Record<Row['do'], string>> = {
  'turn-under': 'fold',
  'press-half': 'fold',
  trim: 'trim-outer',
  'trim-inner': 'trim-inner',
};

function ofSection({ rows, consumed }: FinishPlan, bench: Bench): Dimension[] {
  return rows.flatMap(({ do: what, at, beside }): Dimension[] => {
    const found = FOUND[what];
    if (found !== undefined && at !== undefined) {
      return [lengthAlong(0, [0, at], { found }, bench)];
    }
    return what === 'bind' && beside !== undefined
      ? [lengthAlong(0, [consumed - beside, consumed], { found: 'bind' }, bench)]
      : [];
  });
}
