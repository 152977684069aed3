import { partsWords as words } from '#words/calculations/parts-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown } from '../../drawing/figure-line.ts';
import { rowMarks, type StandingRow } from '../../drawing/row-marks.ts';
import { type Length, toMm } from '../../lengths/length.ts';
import { type EqualParts, equalParts, followedMarks } from '../../sewing/equal-parts.ts';
import { placesOf } from '../../sewing/followed-places.ts';
import type { Run } from '../../sewing/run.ts';
import { type PartsAsked, partsFields, partsInput } from './fields.ts';

/** How far apart two edges that meet are drawn, and how long a mark is, in parts of the longer. */
const APART = 0.16;
const MARK = 0.03;

/** An edge laid straight, its marks across it, over the edge it meets. */
export const partsDrawing: Drawing = {
  id: 'parts',
  // What is followed is a list.
  unplaced: () => ['follow', 'offset'],
  rows: ['marks', 'marks-other'],
  draw(draft, bench, rows) {
    const read = partsFields.read(draft, bench);
    const found = read.ok ? marksOf(read.value) : undefined;
    if (!read.ok || !found) return undefined;
    const { length, other } = read.value;
    const longest = toMm(length > (other ?? 0) ? length : (other ?? length));
    const { met } = found;
    const [here, there] = [0, APART * longest];
    return {
      name: words.title,
      toScale: true,
      shapes: [
        ...edge(length, rows?.marks ?? planned(found.edge), here, MARK * longest),
        ...(met && other !== undefined
          ? edge(other, rows?.['marks-other'] ?? planned(met), there, MARK * longest)
          : []),
      ],
      dimensions: [
        lengthAlong(here, [0, length], { given: 'length' }, bench),
        ...(met && other !== undefined
          ? [lengthAlong(there, [0, other], { given: 'other' }, bench)]
          : []),
        ...(found.even ? evenly(read.value, found.even, [here, there], bench) : []),
      ],
    };
  },
};

interface Marks {
  edge: Run;
  /** On the edge it meets. */
  met: Run | undefined;
  /** Where they divide the edge evenly. */
  even?: EqualParts;
}

function marksOf(asked: PartsAsked): Marks | undefined {
  const { follow, offset, other } = asked;
  if (follow) {
    const found = followedMarks(asked, placesOf(follow, offset));
    return found.ok ? { edge: found.value.edge, met: found.value.other } : undefined;
  }
  const found = equalParts({ ...partsInput(asked), other });
  if (!found.ok) return undefined;
  return { edge: found.value.edge.run, met: found.value.other?.run, even: found.value };
}

/** One part of each edge, and how many there are. */
function evenly(
  asked: PartsAsked,
  { edge, other }: EqualParts,
  [here, there]: readonly [number, number],
  bench: Bench,
): Dimension[] {
  const count: DimensionOf = asked.into === 'other' ? { given: 'count' } : { given: 'into' };
  return [
    lengthAlong(here, [0, edge.part], { found: 'part' }, bench),
    {
      from: { x: 0, y: here },
      to: { x: toMm(asked.length), y: here },
      text: words.parts(partsInput(asked).parts),
      by: count,
    },
    ...(other ? [lengthAlong(there, [0, other.part], { found: 'part-other' }, bench)] : []),
  ];
}

function planned(run: Run): StandingRow {
  return { run, made: [] };
}

/** An edge with its marks across it, and a ring on each: full where it is made. */
function edge(length: Length, row: StandingRow, y: number, mark: number): FigureShape[] {
  return [
    lineAcross('cloth', y, [0, toMm(length)]),
    ...row.run.marks.map(({ at }) => lineDown('measure', toMm(at), [y - mark, y + mark])),
    ...rowMarks(row, (at) => ({ x: toMm(at), y }), mark / 2),
  ];
}
