import { elasticWords as words } from '#words/calculations/elastic-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { percentText, said, saidAtMost } from '../../calculation/tape-said.ts';
import { byTape, exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { WAIST_LESS } from '../../sewing/sources/elastic.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { elasticFigure } from './figure.ts';
import type { Worked } from './worked.ts';
import { elasticWorkings } from './workings.ts';

/** Elastic in its casing, as an answer. */
export function elasticAnswer(worked: Worked, bench: Bench): Answer {
  const { asked, input, plan, marks } = worked;
  const cut = numberOnTape(plan.cut, bench, upToGraduation);
  const lap = input.lap === 0 ? '' : byTape(input.lap, bench);
  return {
    headline: { before: cut.rounded ? words.about : '', number: cut, after: words.after },
    sentence: words.sentence(percentText(plan.worn, bench), lap),
    lines: [...lengthLines(worked, bench), ...casingLines(worked, bench)],
    offers: [],
    warnings: warnings(worked, bench),
    cautions: [
      words.tryOn,
      cautionWords.shears,
      cautionWords.pins,
      turned.iron(IRON_ONE_DOT.value),
    ],
    listsLast: true,
    runs: [
      { name: words.marks, item: words.mark, run: marks.elastic },
      ...(asked.round === undefined
        ? []
        : [{ name: words.edgeMarks, item: words.mark, run: marks.edge }]),
    ],
    figures: [{ name: words.figure, draw: () => elasticFigure(worked) }],
    workings: elasticWorkings(worked, bench),
  };
}

/** How far the sample goes, in parts of itself; undefined where that isn't known. */
function goesOf({ input: { how } }: Worked): number | undefined {
  return how.by === 'sample' && how.most !== undefined ? how.most / how.flat - 1 : undefined;
}

function lengthLines(worked: Worked, bench: Bench): Line[] {
  const { asked, input, plan } = worked;
  const goes = goesOf(worked);
  const { passing, least, fullness } = plan;
  const stretch = passing !== undefined && passing > 0 ? passing : undefined;
  const [less, more] = WAIST_LESS.value;
  const within = (by: ExactLength) =>
    onTape(exactLength(input.girth - by + input.lap), bench, upToGraduation);
  return linesSaid([
    [words.ring, said(plan.ring, bench)],
    [
      words.passing,
      stretch !== undefined &&
        words.passingOf(
          percentText(stretch, bench),
          goes === undefined ? '' : percentText(goes, bench),
        ),
    ],
    [words.least, least !== undefined && onTape(least, bench, upToGraduation)],
    [
      words.rule,
      asked.by === 'rule' && input.girth > more && words.ruleOf(within(more), within(less)),
    ],
    [
      words.fullness,
      fullness !== undefined && words.times(shownNumber(fullness, 2, bench.decimalMark)),
    ],
  ]);
}

function casingLines({ asked, casing }: Worked, bench: Bench): Line[] {
  const header = asked.header === 0 ? '' : saidAtMost(asked.header, bench);
  return linesSaid([
    [words.allowance, onTape(casing.allowance, bench, upToGraduation)],
    [words.stitch, words.stitchOf(header, onTape(casing.stitch, bench, upToGraduation))],
    [words.opening, onTape(casing.opening, bench, upToGraduation)],
    [
      words.patch,
      asked.join === 'butted' &&
        words.patchOf(exactly(asked.width, bench), exactly(casing.patch, bench)),
    ],
  ]);
}

function warnings(worked: Worked, bench: Bench): string[] {
  const { asked, plan } = worked;
  const goes = goesOf(worked);
  const passing = plan.passing ?? 0;
  return onlySaid([
    goes !== undefined &&
      passing > goes &&
      words.tooShort(percentText(passing, bench), percentText(goes, bench)),
    // Common practice, no source.
    goes !== undefined && plan.worn > goes / 2 && words.tight,
    plan.fullness !== undefined && plan.fullness <= 1 && words.noFullness,
    asked.by === 'rule' && words.unknown,
  ]);
}
