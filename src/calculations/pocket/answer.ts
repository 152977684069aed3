import { pocketWords as words } from '#words/calculations/pocket-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { said } from '../../calculation/tape-said.ts';
import { exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { CORNER_TRIM } from '../../sewing/sources/pockets.ts';
import type { Worked } from './worked.ts';
import { pocketWorkings } from './workings.ts';

/** A pocket as an answer. */
export function pocketAnswer(worked: Worked, bench: Bench): Answer {
  const { asked, at, hand, end } = worked;
  const { kind, width, to } = asked;
  const short = hand !== undefined && width < hand;
  return {
    headline: at
      ? { number: numberOnTape(at.near, bench), after: words.near }
      : { number: numberOnTape(asked.down, bench), after: words.begins },
    sentence: words.sentence[kind],
    lines: lines(worked, bench),
    offers: [],
    warnings: onlySaid([
      short && words.tooNarrow(onTape(hand, bench, upToGraduation)),
      to !== undefined && end > to && words.over(exactly(exactLength(end - to), bench)),
    ]),
    cautions: [
      words.tryHand,
      kind === 'slash' ? words.slashLast : cautionWords.shears,
      cautionWords.pins,
    ],
    runs: [],
    workings: pocketWorkings(worked, bench),
  };
}

function lines({ asked, at, cut, hand, end }: Worked, bench: Bench): Line[] {
  const { kind, down, slant, hem } = asked;
  const up = (x: ExactLength) => onTape(x, bench, upToGraduation);
  const patch = kind === 'patch' && cut;
  return linesSaid([
    [words.far, at && said(at.far, bench)],
    [words.down, at && said(down, bench)],
    [words.downFar, at && slant !== undefined && slant > 0 && said(at.downFar, bench)],
    [words.ends, !at && said(end, bench)],
    [words.wide, cut && up(cut.wide)],
    [patch ? words.deep : words.facingLong, cut && up(cut.deep)],
    [words.hem, patch && hem !== undefined && hem > 0 && exactly(hem, bench)],
    [words.corners, patch && words.cornersOf(exactly(CORNER_TRIM.value, bench))],
    [words.hand, hand !== undefined && up(hand)],
  ]);
}
