import { layPlacesWords as words } from '#words/garment/garment-lay-places-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { exactLength, mm } from '../../lengths/length.ts';
import { extentOf, type LayShown, type PieceShown } from './lay-shown.ts';

/** Where a piece lies, to be followed with a tape. */
export function placeSaid(piece: PieceShown, { folded }: LayShown, bench: Bench): string[] {
  const said = (at: number) => onTape(exactLength(mm(at)), bench);
  const { along, across } = extentOf(piece);
  const [from, to] = [said(across[0]), said(across[1])];
  const aside = piece.onFold
    ? words.onFold(to)
    : words[folded ? 'fromFold' : 'fromSelvedge'](from, to);
  return [
    words.fromEnd(said(along[0]), said(along[1])),
    aside,
    ...(piece.turned ? [words.turned] : []),
    ...(piece.tilt === 0
      ? []
      : [words.tilted(String(Math.abs(piece.tilt)), piece.tilt > 0 ? 'right' : 'left')]),
    ...(piece.mirrored ? [words.mirrored] : []),
    ...(folded && !piece.onFold ? [words.twice] : []),
  ];
}
