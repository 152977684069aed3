import { turnedWords } from '#words/common/turned-words.ts';
import { type Drawing, lengthUp } from '../../calculation/drawing.ts';
import type { DimensionOf } from '../../drawing/dimension.ts';
import { hemLines, layersOf } from '../../drawing/hem-figure.ts';
import { toMm } from '../../lengths/length.ts';
import { hem } from '../../sewing/hems/hem.ts';
import { hasTurn, hemFields, isWhole } from './fields.ts';
import { hemInput } from './read.ts';

/** What is measured round the hem line, across it or along the piece: a section doesn't show it. */
const OFF_THE_SECTION = [
  'thickness',
  'finished',
  'otherEnd',
  'left',
  'round',
  'above',
  'apart',
  'chord',
  'rise',
  'atHem',
  'acrossAbove',
];

/** A section through the hem, its heights to scale. */
export const hemDrawing: Drawing = {
  id: 'hem',
  unplaced: (ask) => [
    ...OFF_THE_SECTION,
    // All there is to turn up lies folded here.
    ...(isWhole(ask) ? ['depth'] : []),
  ],
  draw(draft, bench) {
    const read = hemFields.read(draft, bench);
    if (!read.ok) return undefined;
    const asked = hemInput(read.value);
    if (!asked.ok) return undefined;
    const { depth, turn, edgeStitch } = asked.value;
    const made = hem(asked.value);
    if (!made.ok) return undefined;
    const ask = hemFields.asks(draft);
    const { stitchUp } = made.value;
    const section = { depth: toMm(depth), turn: toMm(turn), stitchUp: toMm(stitchUp) };
    const layer = layersOf(section);
    const up = (x: number, from: number, to: number, of: DimensionOf) =>
      lengthUp(x, [from, to], of, bench);

    return {
      name: turnedWords.section,
      toScale: true,
      shapes: hemLines(section),
      dimensions: [
        up(layer.hem, 0, depth, isWhole(ask) ? { found: 'depth' } : { given: 'depth' }),
        up(layer.hem, 0, stitchUp, { found: 'stitch-up' }),
        up(layer.hem, stitchUp, stitchUp + edgeStitch, { given: 'edgeStitch' }),
        ...(hasTurn(ask) ? [up(layer.turned, depth - turn, depth, { given: 'turn' })] : []),
      ],
    };
  },
};
