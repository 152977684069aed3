import { seamWords as words } from '#words/calculations/seam-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer } from '../../calculation/calculation.ts';
import { numberSaid } from '../../calculation/tape-said.ts';
import { byTape, exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { showExact } from '../../lengths/show-length.ts';
import type { AllowanceChange, ChangeInput, LetOut } from '../../sewing/seams/seam-change.ts';
import { guideLines } from './guide.ts';
import { NOTHING } from './nothing.ts';

/** Another allowance than the pattern's. */
export function changeAnswer(
  { eachEdge: each, girth }: AllowanceChange,
  { pattern, wanted }: ChangeInput,
  bench: Bench,
): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const size = (x: ExactLength) => byTape(exactLength(Math.abs(x)), bench);
  const after = each === 0 ? words.same : each > 0 ? words.trimEach : words.addEach;
  return {
    ...NOTHING,
    headline: { number: numberOf(exactLength(Math.abs(each)), bench), after },
    sentence: each === 0 ? words.sameSentence : words.changeSentence(byTape(wanted, bench)),
    lines: [
      {
        label: words.girthIf,
        value: girth < 0 ? words.narrower(size(girth)) : words.wider(size(girth)),
      },
      ...guideLines(wanted, bench),
    ],
    workings: [
      {
        formula: words.changeFormula(show(pattern), show(wanted), show(each)),
        source: words.derived,
      },
    ],
  };
}

/** Letting out or taking in. */
export function girthAnswer(
  { eachEdge, left }: LetOut,
  { by, seams, out }: { by: Length; seams: number; out: boolean },
  bench: Bench,
): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const each = exactLength(Math.abs(eachEdge));
  return {
    ...NOTHING,
    headline: { number: numberOf(each, bench), after: words.perEdge },
    sentence: out
      ? words.letOutSentence(byTape(left, bench))
      : words.takeInSentence(byTape(left, bench)),
    lines: guideLines(left, bench),
    workings: [{ formula: words.girthFormula(show(by), seams, show(each)), source: words.derived }],
  };
}

/** To be measured on each edge: millimetres as exactly as they are said, inches on the tape. */
function numberOf(x: ExactLength, bench: Bench): Answer['headline']['number'] {
  return bench.unit === 'in' ? numberSaid(x, bench) : showExact(x, bench.unit, 3);
}
