import { cornerWords as words } from '#words/calculations/corner-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { mitreLines } from '../../drawing/hem-corner.ts';
import { mitreMeasures, mitreStitching } from '../../drawing/mitre-measures.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { type Mitre, type MitreInput, mitre } from '../../sewing/hems/mitre.ts';
import { drawnOf } from './drawn.ts';
import { cornerFields } from './fields.ts';
import { placeOf } from './places.ts';

/** The corner flat, its marks on both raw edges. */
export const cornerDrawing: Drawing = {
  id: 'corner',
  // Too thin to be seen.
  unplaced: () => ['thickness'],
  draw(draft, bench) {
    const read = cornerFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = mitre(read.value);
    if (!found.ok) return undefined;
    const corner = drawnOf(read.value, found.value);
    return {
      name: words.flat,
      // A depth is measured round its fold, which takes more where the cloth is thick.
      toScale: found.value.halfFold === 0,
      shapes: [...mitreLines(corner), ...mitreStitching(corner)],
      dimensions: dimensions(read.value, found.value, bench),
    };
  },
};

function dimensions(asked: MitreInput, plan: Mitre, bench: Bench): Dimension[] {
  const measures = mitreMeasures(drawnOf(asked, plan));
  const of = (which: keyof typeof measures, length: ExactLength, by: DimensionOf) =>
    lengthAt(measures[which], length, by, bench);
  const [foldBottom, foldSide] = [
    placeOf(plan.runs.bottom, 'press'),
    placeOf(plan.runs.side, 'press'),
  ];
  return [
    of('depth', asked.depth, { given: 'depth' }),
    of('side', asked.side, { given: 'side' }),
    of('edgeStitch', asked.edgeStitch, { given: 'edgeStitch' }),
    of('alongBottom', plan.alongBottom, { found: 'mitre-bottom' }),
    of('upSide', plan.upSide, { found: 'mitre-side' }),
    // At a right angle the folds lie as far in as the hems are deep.
    ...(foldBottom === asked.side ? [] : [of('foldBottom', foldBottom, { found: 'fold-bottom' })]),
    ...(foldSide === asked.depth ? [] : [of('foldSide', foldSide, { found: 'fold-side' })]),
  ];
}
