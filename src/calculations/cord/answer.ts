import { cordWords as words } from '#words/calculations/cord-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, Working } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { saidAtMost } from '../../calculation/tape-said.ts';
import { exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation, upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { CHILD_ENDS, CORD_CASING_MORE } from '../../sewing/sources/cords.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { Corded } from './corded.ts';
import { cordFigure } from './figure.ts';

/** A drawstring, as an answer. */
export function cordAnswer(found: Corded, bench: Bench): Answer {
  const { plan } = found;
  const cut = numberOnTape(plan.cut, bench, downToGraduation);
  const free = exactly(plan.free, bench);
  return {
    headline: { before: cut.rounded ? words.about : '', number: cut, after: words.after },
    sentence: plan.free < 0 ? words.slips : words.sentence(free),
    lines: lines(found, bench),
    offers: [],
    warnings: warnings(found, bench),
    cautions: [cautionWords.cords, cautionWords.shears, turned.iron(IRON_ONE_DOT.value)],
    runs: [],
    figures: [{ name: words.figure, draw: () => cordFigure(found) }],
    workings: workings(found, bench),
  };
}

function lines({ asked, plan }: Corded, bench: Bench): Line[] {
  const header = asked.header === 0 ? '' : saidAtMost(asked.header, bench);
  const limits = CHILD_ENDS.map(({ value }) => value);
  const child = asked.who === 'child';
  const cords = limits.map((end) =>
    onTape(exactLength(asked.widest + 2 * end), bench, downToGraduation),
  );
  const [us = '', eu = ''] = limits.map((end) => saidAtMost(end, bench));
  const [short = '', long = ''] = cords;
  return linesSaid([
    [words.free, exactly(plan.free, bench)],
    [words.most, child && words.mostOf(us, eu)],
    [words.cords, child && words.cordsOf(short, long)],
    [words.clear, exactly(plan.casing.clear, bench)],
    [words.allowance, onTape(plan.casing.allowance, bench, upToGraduation)],
    [words.stitch, words.stitchOf(header, onTape(plan.casing.stitch, bench, upToGraduation))],
  ]);
}

function warnings({ asked, plan }: Corded, bench: Bench): string[] {
  if (asked.who !== 'child') return [];
  const over = CHILD_ENDS.filter(({ value }) => plan.free + asked.knot > value);
  return onlySaid([
    words.never,
    ...over.map(({ value }) => words.over(saidAtMost(value, bench))),
    asked.knot > 0 && words.knots,
  ]);
}

function workings({ asked, input, plan }: Corded, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { thick, widest, how, knot, turn, edge, header } = input;
  const { clear, allowance } = plan.casing;
  const more = CORD_CASING_MORE.value;
  const room =
    clear - thick === more
      ? words.formula.rule(show(thick), show(clear), show(more))
      : words.formula.round(shownNumber(Math.PI, 4, bench.decimalMark), show(thick), show(clear));
  const terms = [turn, header, clear, edge].filter((x) => x > 0).map(show);
  const ends = knot === 0 ? '' : show(knot);
  const cords =
    how.by === 'free'
      ? words.formula.cord(show(widest), show(how.free), ends, show(plan.cut))
      : words.formula.free(show(how.there), show(widest), ends, show(plan.free));
  return [
    {
      formula: room + words.formula.allowance(terms, show(allowance)) + cords,
      source: words.source,
    },
    ...(asked.who === 'child' ? [{ formula: '', source: words.childSource }] : []),
  ];
}
