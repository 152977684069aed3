import { slantWords as words } from '#words/calculations/slant-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, Working } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { numberSaid, said, saidAtMost } from '../../calculation/tape-said.ts';
import { byTape, exactly, numberAtMost, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation, upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { Slanted, SlantedHem } from '../../sewing/hems/slanted-hem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { SlantAsked } from './fields.ts';
import { slantFigure } from './figure.ts';

/** A slanted hem, as an answer. */
export function slantAnswer(asked: SlantAsked, plan: SlantedHem, bench: Bench): Answer {
  const { depth, turn, pieces } = plan;
  const [first] = pieces;
  const ofCloth = asked.given === 'cloth';
  const aside = first?.mirror.aside ?? exactLength(0);
  return {
    headline: ofCloth
      ? { number: numberAtMost(depth, bench), after: words.afterCloth }
      : { number: numberSaid(aside, bench), after: aside > 0 ? words.after : words.afterStraight },
    sentence: words.sentence(turn > 0 && said(turn, bench), said(plan.allowance, bench)),
    lines: pieces.flatMap((piece, i) => lines(piece, nameOf(i, pieces), asked, bench)),
    offers: [],
    warnings: onlySaid([pieces.some(({ mirror }) => mirror.aside > 0) && words.needsCloth]),
    cautions: [words.cutFirst, turned.tryOn, cautionWords.shears, turned.iron(IRON_ONE_DOT.value)],
    runs: [],
    figures: [{ name: words.figure, draw: () => slantFigure(asked, plan) }],
    workings: workings(asked, plan, bench),
  };
}

/** Which of a pair; nothing where there is but one. */
function nameOf(i: number, pieces: readonly Slanted[]): string {
  return pieces.length === 1 ? '' : words.pieces(i + 1);
}

function lines(piece: Slanted, name: string, asked: SlantAsked, bench: Bench): Line[] {
  const { mirror, cut, trims, below, along } = piece;
  const up = (x: ExactLength) => onTape(x, bench, upToGraduation);
  const all = linesSaid([
    [words.below, asked.given === 'depth' && said(below, bench)],
    [words.cut, !trims && words.bothOf(up(cut.one), up(cut.other))],
    [words.trims, trims && words.bothOf(downOf(trims.one, bench), downOf(trims.other, bench))],
    [
      words.mirror,
      mirror.aside > 0 && words.mirrorOf(said(mirror.aside, bench), said(mirror.down, bench)),
    ],
    [words.angle, words.angleOf(degrees(piece.angle, 1, bench))],
    [words.along, byTape(along, bench)],
  ]);
  return all.map((line) => ({ ...line, label: words.ofPiece(name, line.label) }));
}

/** What may be cut off is no more than that. */
function downOf(x: ExactLength, bench: Bench): string {
  return x === 0 ? onTape(x, bench, downToGraduation) : saidAtMost(x, bench);
}

function degrees(radians: number, places: number, bench: Bench): string {
  return shownNumber((radians * 180) / Math.PI, places, bench.decimalMark);
}

function workings(asked: SlantAsked, plan: SlantedHem, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { depth, allowance } = plan;
  const each = plan.pieces.map(({ angle, below, mirror }) => {
    const slope = degrees(angle, 4, bench);
    return (
      words.formula.below(show(allowance), slope, show(below)) +
      (mirror.aside > 0 ? words.formula.aside(show(depth), slope, show(mirror.aside)) : '')
    );
  });
  const ofCloth = asked.given === 'cloth';
  const first = ofCloth ? ofWhatIsThere(asked, plan, bench) : sum(plan, bench);
  return [{ formula: first + each.join(''), source: ofCloth ? words.sourceCloth : words.source }];
}

function sum({ depth, turn, allowance }: SlantedHem, bench: Bench): string {
  if (turn === 0) return '';
  const show = (x: ExactLength) => exactly(x, bench);
  return words.formula.sum(show(depth), show(turn), show(allowance));
}

/** Of the piece with the least cloth, of which nothing is cut off at one side. */
function ofWhatIsThere(
  { turned }: SlantAsked,
  { depth, turn, allowance, pieces }: SlantedHem,
  bench: Bench,
): string {
  const show = (x: ExactLength) => exactly(x, bench);
  const least = pieces.find(({ trims }) => trims?.one === 0 || trims?.other === 0);
  const there = least
    ? words.formula.cloth(show(least.below), degrees(least.angle, 4, bench), show(allowance))
    : '';
  if (turned === 'double') return there + words.formula.half(show(allowance), show(depth));
  return turn > 0 ? there + words.formula.less(show(allowance), show(turn), show(depth)) : there;
}
