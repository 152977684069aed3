import { placketWords as words } from '#words/calculations/placket-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { said } from '../../calculation/tape-said.ts';
import { byTape, exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { exactLength } from '../../lengths/length.ts';
import { SIDE_SPLIT, ZIP_SEAM } from '../../sewing/sources/plackets.ts';
import { aboveWaist, type Worked } from './worked.ts';
import { placketWorkings } from './workings.ts';

/** A placket as an answer. */
export function placketAnswer(worked: Worked, bench: Bench): Answer {
  const { asked, zip } = worked;
  return {
    headline: headline(worked, bench),
    sentence: sentence(worked, bench),
    lines: lines(worked, bench),
    offers: [],
    warnings: onlySaid([
      asked.by === 'passes' && words.narrow,
      zip && !zip.pair && asked.zip === undefined && words.noneSoLong,
      asked.allow !== undefined && asked.allow < ZIP_SEAM.value && words.extend,
    ]),
    cautions: zip
      ? onlySaid([words.tryZip, cautionWords.pins, zip.shorten && words.cutZip])
      : [words.tryOn, words.stop, cautionWords.shears],
    runs: [],
    workings: placketWorkings(worked, bench),
  };
}

function headline({ open, strips, zip }: Worked, bench: Bench): Answer['headline'] {
  if (strips) {
    return {
      number: numberOnTape(strips.long, bench, upToGraduation),
      after: strips.facing === undefined ? words.strip : words.twoStrips,
    };
  }
  return zip?.pair
    ? {
        number: words.pair(zip.pair.inches, zip.pair.cm),
        after: words.zip(zip.shorten !== undefined),
      }
    : { number: numberOnTape(open, bench, upToGraduation), after: words.zipOpening };
}

function sentence({ asked, open, strips, zip }: Worked, bench: Bench): string {
  const opening = onTape(open, bench, upToGraduation);
  if (strips) return words.sentence[asked.way === 'strips' ? 'strips' : 'lap'](opening);
  return zip?.shorten ? words.sentence.shorten(opening) : words.sentence.zip(opening);
}

function lines(worked: Worked, bench: Bench): Line[] {
  const { asked, open, strips, zip } = worked;
  const above = aboveWaist(open, SIDE_SPLIT.value.above, SIDE_SPLIT.value.of);
  const cut = (x: Worked['open']) => onTape(x, bench, upToGraduation);
  return linesSaid([
    [words.opening, cut(open)],
    [words.wide, strips && cut(strips.wide)],
    [words.facing, strips?.facing !== undefined && cut(strips.facing)],
    [words.left, zip && !zip.shorten && zip.left > 0 && words.leftOf(exactly(zip.left, bench))],
    [words.newStop, zip?.shorten && cut(zip.shorten.stop)],
    [words.cutOff, zip?.shorten && words.cutOffOf(cut(zip.shorten.cut))],
    [words.row, zip && asked.row !== undefined && said(asked.row, bench)],
    [
      words.atWaist,
      asked.split === 'waist' &&
        words.atWaistOf(byTape(above, bench), byTape(exactLength(open - above), bench)),
    ],
  ]);
}
