import { circleWords as words } from '#words/calculations/circle-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { linesSaid } from '../../calculation/only-said.ts';
import { byTape, exactly, numberAtMost, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, mm } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { type Circle, edgeError, type InWidth, inWidth } from '../../sewing/shaping/circle.ts';
import { straightSide } from '../../sewing/shaping/sector.ts';
import type { CircleAsked } from './fields.ts';
import { circleFigure } from './figure.ts';
import type { Rounded } from './rounded.ts';
import { circleWorkings } from './workings.ts';

/** Circular pieces, as an answer. */
export function circleAnswer(found: Rounded, bench: Bench): Answer {
  const { asked, plan } = found;
  const cut = numberAtMost(plan.cutRadius, bench);
  const rounded = typeof cut !== 'string' && cut.rounded;
  const angle = shownNumber((plan.piece.angle * 180) / Math.PI, 1, bench.decimalMark);
  const say = words.sentence[asked.what];
  return {
    headline: { before: rounded ? words.about : '', number: cut, after: words.after },
    sentence: say(plan.pieces, angle, onTape(plan.cutHem, bench, upToGraduation)),
    lines: lines(found, bench),
    offers: [],
    warnings: [],
    cautions: [words.stay, words.hangs, cautionWords.shears],
    runs: [],
    figures: [{ name: words.figure, draw: () => circleFigure(found) }],
    workings: circleWorkings(found, bench),
  };
}

function lines({ asked, plan }: Rounded, bench: Bench): Line[] {
  const { piece, box } = plan;
  const up = (x: ExactLength) => onTape(x, bench, upToGraduation);
  // What is easily missed with the ruler in hand.
  const [little, by] = bench.unit === 'in' ? [tapeStep(bench), bench] : [mm(1), inMm(bench)];
  return [
    ...linesSaid([
      [words.radius, byTape(piece.inner, bench)],
      [words.hemRadius, byTape(piece.outer, bench)],
      [words.hemLine, byTape(plan.hemLine, bench)],
      [
        words.full,
        asked.what === 'flounce' &&
          words.times(shownNumber(plan.hemLine / plan.edge, 2, bench.decimalMark)),
      ],
      [
        words.cutEdge,
        asked.seam > 0 && words.cutEdgeOf(byTape(plan.cutEdge, bench), byTape(asked.edge, bench)),
      ],
      [words.pieces, words.pieceOf[box.grain](up(box.wide), up(box.high))],
      [words.inWidth, asked.cloth !== undefined && inWidthText(inWidth(plan, asked.cloth), bench)],
      [words.error(onTape(little, by)), words.errorOf(byTape(edgeError(plan, little), bench))],
    ]),
    ...(asked.what === 'gores' ? goreLines(plan, asked, bench) : []),
  ];
}

function inWidthText({ side, rows, long, turned }: InWidth, bench: Bench): string {
  return words.inWidthOf(side, rows, onTape(long, bench, upToGraduation), turned);
}

function inMm(bench: Bench): Bench {
  return { ...bench, unit: 'mm' };
}

/** What is seen of a gore by a straight edge: it is longer at its sides, and shorter across. */
function goreLines({ piece, pieces }: Circle, { long }: CircleAsked, bench: Bench): Line[] {
  const { inner, outer, angle } = piece;
  const chord = (radius: number) =>
    exactLength(2 * radius * Math.sin(Math.min(angle, Math.PI) / 2));
  const short = exactLength(pieces * (outer * angle - chord(outer)));
  const straight = straightSide(piece);
  return [
    {
      label: words.chords,
      value: words.chordsOf(
        byTape(chord(inner), bench),
        byTape(chord(outer), bench),
        exactly(short, bench),
      ),
    },
    {
      label: words.straight,
      value: words.straightOf(
        byTape(straight, bench),
        exactly(exactLength(straight - long), bench),
      ),
    },
  ];
}
