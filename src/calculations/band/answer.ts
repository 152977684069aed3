import { bandWords as words } from '#words/calculations/band-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { easeQuotes } from '#words/published/published-ease-words.ts';
import { quoted } from '#words/published/published-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, Working } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, inches } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { takenUp, timesWide } from '../../sewing/bands/band.ts';
import { UNDERLAP } from '../../sewing/sources/bands.ts';
import { SKIRT_WAIST_EASE } from '../../sewing/sources/ease.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { Banded } from './banded.ts';
import { bandFigure } from './figure.ts';
import { interfacingOf } from './interfacing.ts';

const { formula } = words;

/** A band as an answer. */
export function bandAnswer(found: Banded, bench: Bench): Answer {
  const { asked, plan } = found;
  const long = numberOnTape(plan.long, bench, upToGraduation);
  const across = onTape(plan.across, bench, upToGraduation);
  return {
    headline: { before: long.rounded ? words.about : '', number: long, after: words.after },
    sentence: words.sentence(across, asked.make === 'two' ? 2 : 1),
    lines: lines(found, bench),
    offers: [],
    warnings: warnings(found, bench),
    cautions: onlySaid([
      words.before,
      asked.make === 'back' && words.holes,
      cautionWords.shears,
      turned.iron(IRON_ONE_DOT.value),
    ]),
    runs: [{ name: words.marks, item: words.mark, run: plan.run }],
    figures: [{ name: words.figure, draw: () => bandFigure(found) }],
    workings: workings(found, bench),
  };
}

function lines({ asked, plan, pieces }: Banded, bench: Bench): Line[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const interfacing = interfacingOf(asked, plan);
  const size = interfacing && words.sizeOf(show(interfacing.long), show(interfacing.wide));
  const taken = takenUp(asked.edge, plan);
  return linesSaid([
    [words.round, show(plan.round)],
    [words.finished, plan.finished !== plan.round && show(plan.finished)],
    [words.interfacing, size && (interfacing.count === 2 ? words.twice(size) : size)],
    [words.takeUp, taken > 0 && show(taken)],
    [
      words.pieces,
      pieces.count > 1 && words.piecesOf(pieces.count, onTape(pieces.long, bench, upToGraduation)),
    ],
    [words.fold, plan.folded < 0 && words.less(show(exactLength(-plan.folded)))],
  ]);
}

function warnings({ asked, plan }: Banded, bench: Bench): string[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { what, ease, opens, underlap, pass } = asked;
  const taken = takenUp(asked.edge, plan);
  const [least, most] = UNDERLAP.value;
  const easeLeast = inches(SKIRT_WAIST_EASE.value.least);
  const waist = what === 'waist';
  return onlySaid([
    taken < 0 && words.shorter(show(exactLength(-taken))),
    waist && ease < easeLeast && words.tight(show(easeLeast), quoted(easeQuotes['skirt-waist'])),
    waist &&
      opens !== 'ring' &&
      (underlap < least || underlap > most) &&
      words.laps(show(least), show(most)),
    opens === 'ring' && pass === undefined && words.noPass,
  ]);
}

function workings({ asked, plan, pieces }: Banded, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { girth, ease, overlap, underlap, seam, wide, make, edge, cloth } = asked;
  const seamText = seam === 0 ? '' : show(seam);
  const terms = [girth, ease, overlap, underlap].filter((x) => x > 0).map(show);
  const folded = plan.folded < 0 ? show(exactLength(-plan.folded)) : '';
  const seams = exactLength(2 * seam);
  const all = [
    formula.long(terms, seamText, show(plan.long)),
    formula.across(timesWide(make), show(wide), seamText, folded, show(plan.across)),
    edge === undefined
      ? ''
      : formula.takeUp(show(edge), show(plan.round), show(takenUp(edge, plan))),
    cloth === undefined || pieces.count === 1
      ? ''
      : formula.pieces(
          show(plan.long),
          show(seams),
          show(cloth),
          shownNumber((plan.long - seams) / (cloth - seams), 2, bench.decimalMark),
          pieces.count,
        ),
  ];
  return [{ formula: all.join(''), source: words.source }];
}
