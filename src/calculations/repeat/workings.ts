import { repeatWords as words } from '#words/calculations/repeat-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { onlySaid } from '../../calculation/only-said.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { centreInput, matchInput, slantInput } from './fields.ts';
import type { Worked } from './worked.ts';

const { formula } = words;
type Show = (x: ExactLength) => string;
type Number = (x: number) => string;

/** How cloth with a repeat was reckoned, with its numbers in it. */
export function repeatWorkings(worked: Worked, bench: Bench): Working[] {
  const show: Show = (x) => exactly(x, bench);
  const plain: Number = (x) => shownNumber(x, 3, bench.decimalMark);
  const { span, repeats } = worked.asked;
  return onlySaid<Working>([
    repeats > 1 && {
      formula: formula.repeat(show(span), repeats, show(worked.repeat)),
      source: '',
    },
    ...workingsOf(worked, show, plain),
  ]);
}

function workingsOf(worked: Worked, show: Show, plain: Number): Working[] {
  const { asked, repeat } = worked;
  switch (worked.kind) {
    case 'panels':
      return panelWorkings(worked, show, plain);
    case 'match': {
      const { first, below, free } = matchInput(asked);
      const { start, on, lost } = worked.match;
      const begins = formula.start(show(first), on, show(repeat), show(below), show(start));
      return [
        {
          formula: begins + formula.less(show(start), show(free), show(lost)),
          source: words.derived,
        },
      ];
    }
    case 'centre': {
      const { wide, on } = centreInput(asked);
      const phase = on === 'line' ? '' : show(exactLength(repeat / 2));
      const said = formula.inside(
        show(wide),
        phase,
        worked.repeats,
        show(repeat),
        show(worked.inside),
      );
      return [{ formula: said, source: words.derived }];
    }
    case 'slant': {
      const { one, other, seam } = slantInput(asked);
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      const along = (angle: number, found: ExactLength) =>
        formula.along(show(repeat), plain(angle), show(found));
      return [
        {
          formula:
            along(one, worked.slant.one) +
            along(other, worked.slant.other) +
            formula.drift(show(seam), plain(low), plain(high), show(worked.slant.drift)),
          source: words.geometry,
        },
      ];
    }
  }
}

function panelWorkings(
  { panels, count, long, repeat }: Extract<Worked, { kind: 'panels' }>,
  show: Show,
  plain: Number,
): Working[] {
  const { each, cloth, extra, rule } = panels;
  return [
    {
      formula:
        formula.each(show(long), show(repeat), plain(long / repeat), each) +
        formula.cloth(count - 1, each, show(repeat), show(long), show(cloth)) +
        formula.extra(show(cloth), count, show(long), show(extra)),
      source: words.derived,
    },
    {
      formula: formula.rule(count, show(long), show(repeat), show(rule)),
      source: words.ruleSource,
    },
  ];
}
