import { pieceWords as words } from '#words/calculations/piece-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Line } from '../../calculation/calculation.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { exactLength } from '../../lengths/length.ts';
import { isUpright } from '../../sewing/pieces/piece-input.ts';
import { outlineOf } from '../../sewing/pieces/piece-outline.ts';
import type { PieceFound } from './read.ts';

/** Where each raw corner lies beside its finished one, where edges slant each by itself; beyond a fold it is the same. */
export function rawCorners({ input, plan }: PieceFound, bench: Bench): Line[] {
  const { across, along } = plan;
  if (!input.slants || isUpright(input) || !across || !along) return [];
  const { finished, cut } = outlineOf(input, across.gives, along.gives);
  const show = (x: number) => byTape(exactLength(Math.abs(x)), bench);
  return cut.flatMap(({ x, y }, i) => {
    const isFar = i === 1 || i === 2;
    if (input.fold && isFar) return [];
    const from = finished[i] ?? { x, y };
    const [out, down] = [isFar ? x - from.x : from.x - x, y - from.y];
    const value = words.rawCorner(show(out), out < 0, show(down), down < 0);
    return [{ label: words.rawCorners[i] ?? '', value }];
  });
}
