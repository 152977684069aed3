import { seamWords as words } from '#words/calculations/seam-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Working } from '../../calculation/calculation.ts';
import { numberSaid } from '../../calculation/tape-said.ts';
import { bound, byTape, exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import type { FinishPlan } from '../../sewing/seams/seam-finish.ts';
import type { Finish, FinishInput, Row } from '../../sewing/seams/seam-rows.ts';
import {
  BOUND,
  FELLED,
  FELLED_TRIM,
  FRENCH,
  FRENCH_WIDE,
  GRADED,
  MOCK_FRENCH,
  type SeamQuote,
  TRIMMED,
} from '../../sewing/sources/seams.ts';
import { guideLines } from './guide.ts';
import { NOTHING } from './nothing.ts';
import { sectionOf } from './section.ts';

const SOURCES: Readonly<Record<Finish, readonly { quote: SeamQuote }[]>> = {
  plain: [],
  french: [FRENCH, FRENCH_WIDE],
  felled: [FELLED, FELLED_TRIM],
  'mock-french': [MOCK_FRENCH],
  bound: [BOUND],
  graded: [GRADED, TRIMMED],
};

type Show = (x: ExactLength) => string;

/** What a finish takes, and its rows in order. */
export function finishAnswer(plan: FinishPlan, input: FinishInput, bench: Bench): Answer {
  const show: Show = (x) => exactly(x, bench);
  const name = words.finish[input.finish];
  const rows = plan.rows.map((row, i) => ({
    label: words.step(i + 1),
    value: words.row(row, byTape(row.at ?? ZERO, bench), byTape(row.beside ?? ZERO, bench)),
  }));
  return {
    ...NOTHING,
    headline: { number: numberSaid(plan.consumed, bench), after: words.taken },
    sentence:
      plan.over > 0
        ? words.overShort(name)
        : words.fits(name, plan.spare > 0 ? byTape(plan.spare, bench) : undefined),
    warnings: warnings(plan, input, name, bench),
    lines: [
      ...rows,
      ...(plan.strip === undefined
        ? []
        : [{ label: words.strip, value: byTape(plan.strip, bench) }]),
      ...guideLines(input.finish === 'french' ? input.first : plan.consumed, bench),
    ],
    figures: [{ name: words.section, draw: () => sectionOf(plan, input.finish) }],
    workings: [
      ...sums(plan, input, show).map((formula): Working => ({ formula, source: '' })),
      ...SOURCES[input.finish].map((rule) => ({
        formula: words.published(rule),
        source: '',
      })),
      ...(input.finish === 'plain' ? [{ formula: words.plainSource, source: '' }] : []),
    ],
  };
}

function warnings(plan: FinishPlan, input: FinishInput, name: string, bench: Bench): string[] {
  const { over, turnAtMost } = plan;
  const show: Show = (x) => byTape(x, bench);
  return [
    ...(over > 0 ? [words.over(name, show(over), show(exactLength(2 * over)))] : []),
    ...(turnAtMost === undefined
      ? []
      : [
          words.turnTooWide(
            show(input.turn),
            show(exactLength(input.given - input.turn)),
            bound(turnAtMost, 'most', bench),
          ),
        ]),
  ];
}

/** The sums behind the rows. */
function sums({ consumed, strip, rows }: FinishPlan, input: FinishInput, show: Show): string[] {
  const { finish, given, first, second, turn } = input;
  const at = (what: Row['do']) => show(rows.find((row) => row.do === what)?.at ?? ZERO);
  switch (finish) {
    case 'french':
      return [words.sumFormula(show(first), show(second), show(consumed))];
    case 'felled':
      return [words.foldFormula(show(given), show(turn), at('fell-stitch'))];
    case 'mock-french':
      return [words.halfFormula(show(given), at('press-half'))];
    case 'bound':
      return [
        words.foldFormula(show(given), show(BOUND.value.stitch), at('bind')),
        words.sumFormula(show(given), show(BOUND.value.wider), show(strip ?? ZERO)),
      ];
    default:
      return [];
  }
}
