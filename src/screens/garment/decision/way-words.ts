import { decisionWords as words } from '#words/garment/garment-decision-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import {
  lastFromEnd,
  type Price,
  priceOf,
  type Spaces,
  spacesIn,
} from '../../../garment/rows/price.ts';
import { placesIn } from '../../../garment/rows/row.ts';
import type { WayOut } from '../../../garment/rows/row-now.ts';
import type { Run } from '../../../sewing/run.ts';
import { handText, spaceTexts } from '../said/value-text.ts';

/** What is no difference between two spaces, however they were reckoned: a hundredth of a millimetre. */
const A_HAIR = 80;

/** A way out as it stands on its key. */
export interface WaySaid {
  title: string;
  price: string;
}

/** How far apart marks are, as text: one number where they are even. */
function spacesText({ least, most }: Spaces, bench: Bench): string {
  const [one = '', other = ''] = spaceTexts([least, most], bench);
  return one === other ? one : words.between(one, other);
}

/** @param asked how many are asked now @param before how far apart they were begun */
export function waySaid(
  { way, row }: WayOut,
  asked: number,
  before: Spaces | undefined,
  bench: Bench,
): WaySaid {
  if (!row) return { title: titleOf(way, asked, 0), price: '' };
  const price = priceOf(row);
  return { title: titleOf(way, asked, price.toCome), price: priceText(price, before, bench) };
}

/** What is asked, as numbers. */
export function askedText(run: Run, bench: Bench): string {
  const spaces = spacesIn(placesIn(run));
  return words.price([
    ...(spaces ? [words.apart(spacesText(spaces, bench))] : []),
    endText(lastFromEnd(run), bench),
    words.inAll(run.marks.length),
  ]);
}

function titleOf(way: string, asked: number, toCome: number): string {
  if (way === 'as-begun' || way === 'asked' || way === 'noted') return words[way];
  if (way === 'spread') return words.spread(toCome);
  const count = Number(way.replace('count:', ''));
  if (count === asked + 1) return words.oneMore;
  return count === asked - 1 ? words.oneLess : words.today(count);
}

function priceText(
  { spaces, count, lastFromEnd: end }: Price,
  before: Spaces | undefined,
  bench: Bench,
): string {
  return words.price([
    ...(spaces ? [apartText(spaces, before, bench)] : []),
    endText(end, bench),
    words.inAll(count),
  ]);
}

function apartText(spaces: Spaces, before: Spaces | undefined, bench: Bench): string {
  const now = spacesText(spaces, bench);
  if (!before) return words.apart(now);
  const was = spacesText(before, bench);
  if (now !== was) return words.apartThere(now, was);
  const [less, more] = [spaces.least - before.least, spaces.most - before.most];
  const isSame = Math.max(Math.abs(less), Math.abs(more)) < A_HAIR;
  return isSame ? words.apartAsBefore(now) : words.apartNear(now);
}

function endText(end: number, bench: Bench): string {
  const shown = handText('length', Math.max(0, end), bench);
  return end >= A_HAIR && /[1-9]/.test(shown) ? words.end(shown) : words.onEnd;
}
