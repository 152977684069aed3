import { matchWords as words } from '#words/calculations/match-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { percentText } from '../../calculation/tape-said.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { totalOf } from '../../sewing/pieces/matching-input.ts';
import { NOTCHES } from '../../sewing/sources/matching.ts';
import type { Matched } from './read.ts';

const { formula } = words;

/** How the ease of all and of each length was got, with its numbers in it. */
export function matchWorkings({ asked, plan }: Matched, bench: Bench): Working[] {
  const { here, other } = asked;
  const show = (x: ExactLength) => exactly(x, bench);
  const sums = [here, other].flatMap((edge) =>
    edge.length > 1 ? [formula.sum(edge.map(show), show(totalOf(edge)))] : [],
  );
  const several = plan.lengths.length > 1;
  const whole = differing(totalOf(here), totalOf(other), several, bench);
  const each = several
    ? plan.lengths.flatMap((one) => differing(one.here, one.other, false, bench))
    : [];
  return [
    ...[[...sums, ...whole], each].flatMap((formulas) =>
      formulas.length > 0 ? [{ formula: formulas.join(' '), source: words.derived }] : [],
    ),
    { formula: words.capacity, source: '' },
    ...(asked.use === 'sleeve'
      ? [
          { formula: words.cap, source: '' },
          { formula: `${words.publishedOf(NOTCHES)}.`, source: '' },
        ]
      : []),
  ];
}

/** The longer less the shorter, and that beside the shorter; nothing where they are alike. */
function differing(here: ExactLength, other: ExactLength, all: boolean, bench: Bench): string[] {
  if (here === other) return [];
  const show = (x: ExactLength) => exactly(exactLength(x), bench);
  const [longer, shorter] = [Math.max(here, other), Math.min(here, other)].map((x) =>
    exactLength(x),
  ) as [ExactLength, ExactLength];
  const ease = exactLength(longer - shorter);
  const said = all ? formula.all : formula.length;
  return [
    said(show(longer), show(shorter), show(ease)),
    formula.percent(show(ease), show(shorter), percentText(ease / shorter, bench)),
  ];
}
