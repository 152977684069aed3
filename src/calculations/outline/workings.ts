import { outlineWords as words } from '#words/calculations/outline-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import {
  cornerTakes,
  endsTake,
  type HoleSide,
  type Outline,
} from '../../sewing/edging/outline-holes.ts';
import { outlineOf, ruleOf } from './fields.ts';
import { unlike, type Worked } from './worked.ts';

const { formula } = words;

/** How holes were shared out, with their numbers in it. */
export function outlineWorkings(worked: Worked, bench: Bench): Working[] {
  const { asked, round, pair } = worked;
  const show = (x: ExactLength) => exactly(x, bench);
  const plain = (x: number) => shownNumber(x, 4, bench.decimalMark);
  const rule = ruleOf(asked);
  const spaced = ({ line, spaces, pitch }: HoleSide) =>
    (rule.by === 'pitch'
      ? formula.spaces(show(line), show(rule.pitch), plain(line / rule.pitch), spaces)
      : '') + formula.pitch(show(line), spaces, show(pitch));
  if (pair) {
    const [one, other] = pair.lengths;
    const of = (line: ExactLength, pitch: ExactLength) => ({ line, spaces: pair.count, pitch });
    return [
      {
        formula:
          `${spaced(of(one, pair.one.pitch))} ` +
          formula.pitch(show(other), pair.count, show(pair.other.pitch)),
        source: words.geometry,
      },
    ];
  }
  const outline = outlineOf(asked);
  const sides = unlike(round, asked.shape).map((side, i) => ({
    formula: lineSaid(outline, i, side.line, show, plain) + spaced(side),
    source: words.source[rule.by],
  }));
  if (outline.shape === 'circle') return sides;
  const [one, other] = round.sides.map(({ spaces }) => spaces);
  const sum =
    outline.shape === 'rectangle' && rule.by === 'pitch'
      ? [{ formula: formula.sum(one ?? 1, other ?? 1, round.count), source: words.cornerSource }]
      : [];
  return [...sides, ...sum];
}

function lineSaid(
  outline: Outline,
  i: number,
  line: ExactLength,
  show: (x: ExactLength) => string,
  plain: (x: number) => string,
): string {
  const margin = show(outline.margin);
  switch (outline.shape) {
    case 'rectangle':
      return formula.side(show(i === 0 ? outline.wide : outline.high), margin, '', show(line));
    case 'regular':
      return formula.side(
        show(outline.side),
        margin,
        plain(cornerTakes(outline.sides)),
        show(exactLength(line)),
      );
    case 'free': {
      const takes = endsTake(outline.corners, i);
      return formula.own(show(outline.sides[i] ?? line), margin, plain(takes), show(line));
    }
    case 'circle':
      return formula.round(plain(Math.PI), show(outline.across), margin, show(line));
  }
}
