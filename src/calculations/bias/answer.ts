import { biasAnswerWords as words } from '#words/calculations/bias-answer-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, NamedRun } from '../../calculation/calculation.ts';
import { byTape, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation, upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, mm } from '../../lengths/length.ts';
import { alongSelvedge, areaFor, areaGives } from '../../sewing/cloth/bias.ts';
import { THIRD_MORE } from '../../sewing/sources/bias.ts';
import { type BiasAsked, hasPiece } from './fields.ts';
import { linesRun } from './run.ts';
import { areaOfRound, stripsInput, type Worked } from './worked.ts';
import { biasWorkings } from './workings.ts';

/** A join in less is doubted: common practice, no source. */
const FEW_JOINS = mm(500);

/** Bias strips as an answer. */
export function biasAnswer(asked: BiasAsked, worked: Worked, bench: Bench): Answer {
  const { strips, round } = worked;
  const need = !hasPiece(asked);
  return {
    headline: need
      ? {
          number: numberOnTape(worked.piece, bench, upToGraduation),
          after: strips ? words.cloth : words.square,
        }
      : { number: numberOnTape(worked.long, bench, downToGraduation), after: words.strip },
    sentence: strips
      ? words.sentence.strips(strips.strips)
      : round
        ? words.sentence.round(round.rounds)
        : words.sentence.single,
    lines: lines(asked, worked, bench),
    offers: [],
    warnings: [
      ...(worked.joins > 0 && worked.long < worked.joins * FEW_JOINS ? [words.manyJoins] : []),
      words.stretch,
    ],
    cautions: [words.before, cautionWords.shears],
    runs: runs(worked),
    workings: biasWorkings(asked, worked, bench),
  };
}

function runs({ strips, piece, wide }: Worked): NamedRun[] {
  if (!strips) return [];
  return [{ name: words.lines, item: words.line, run: linesRun(strips, piece, wide) }];
}

function lines(asked: BiasAsked, worked: Worked, bench: Bench): Line[] {
  const { strips, round, joins, long } = worked;
  const show = (x: ExactLength) => byTape(x, bench);
  const apart = alongSelvedge(asked.width);
  const found: [string, string | undefined][] = [
    [words.strips, strips && String(strips.strips)],
    [words.rounds, round && String(round.rounds)],
    [words.joins, strips || round ? words.joinsOf(joins, round !== undefined) : undefined],
    [words.first, strips?.lines[0] === undefined ? undefined : show(strips.lines[0])],
    [words.apart, strips ? onTape(apart, bench, upToGraduation) : undefined],
    [words.across, round ? onTape(asked.width, bench, upToGraduation) : undefined],
    [words.gives, !hasPiece(asked) ? onTape(long, bench, downToGraduation) : undefined],
    [words.area, areaText(asked, worked, bench)],
    [
      words.third,
      strips ? words.thirdOf(show(exactLength(THIRD_MORE.value * asked.width))) : undefined,
    ],
  ];
  return found.flatMap(([label, value]) => (value === undefined ? [] : [{ label, value }]));
}

/** What the area alone promises, of joined strips or of one in one. */
function areaText(asked: BiasAsked, worked: Worked, bench: Bench): string | undefined {
  const { strips, round } = worked;
  if (round) {
    const area = byTape(areaOfRound(asked, worked), bench);
    return words.areaMost[hasPiece(asked) ? 'have' : 'need'](area);
  }
  if (!strips) return undefined;
  const input = stripsInput(asked);
  const { need, long } = asked;
  if (need !== undefined) return words.areaMost.need(byTape(areaFor(input, need), bench));
  return long && words.areaMost.have(byTape(areaGives(input, long), bench));
}
