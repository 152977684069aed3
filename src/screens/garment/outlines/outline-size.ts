import { outlineWords as words } from '#words/garment/garment-outline-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { onTape } from '../../../calculation/tape-text.ts';
import { upToGraduation } from '../../../lengths/graduation.ts';
import { exactLength, mm } from '../../../lengths/length.ts';
import { type OutlineShown, sizeOf } from './outline-shown.ts';

interface Size {
  long: number;
  wide: number;
}

const tape = (of: number, bench: Bench) => onTape(exactLength(of), bench, upToGraduation);

/** How large a piece is; of one on the fold the half. */
export function sizeText({ long, wide }: Size, fold: boolean, bench: Bench): string {
  const say = fold ? words.whole : words.size;
  return say(tape(wide, bench), tape(long, bench));
}

/** How a piece is laid, in a few words. */
export function shapeSaid(shown: OutlineShown, bench: Bench): string {
  const { asked, fold, said, problem } = shown;
  if (!said.outline) return words.asGarment(sizeText(asked, fold, bench));
  if (problem !== undefined) return words.wrongShape;
  const size = sizeOf(shown);
  return size ? words.ownShape(sizeText(size, fold, bench)) : words.cutting;
}

/** A curve's corners lie this far outside of it at either end. */
const NOTHING = mm(1.1);

/** How an outline differs from what the garment cuts; undefined where it doesn't. */
export function differsSaid(shown: OutlineShown, bench: Bench): string | undefined {
  const size = sizeOf(shown);
  if (!size) return undefined;
  const by = { wide: size.wide - shown.asked.wide, long: size.long - shown.asked.long };
  const said = (of: number, more: (by: string) => string, less: (by: string) => string) => {
    if (Math.abs(of) <= NOTHING) return [];
    return [(of > 0 ? more : less)(tape(Math.abs(of), bench))];
  };
  const parts = [
    ...said(by.wide, words.wider, words.narrower),
    ...said(by.long, words.longer, words.shorter),
  ];
  return parts.length > 0 ? words.differs(parts) : undefined;
}
