import { outlineWords } from '#words/garment/garment-outline-words.ts';
import { pieceProblemWords as words } from '#words/garment/piece-problem-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { onTape } from '../../calculation/tape-text.ts';
import type { PieceForm } from '../../garment/record/piece-said.ts';
import type { PieceField, PieceProblem } from '../../lay/pieces/piece-problem.ts';
import { exactLength, mm } from '../../lengths/length.ts';

/** Why there is no outline, and what to do about it. */
export function pieceProblemSaid(
  problem: PieceProblem,
  bench: Bench,
  form: Pick<PieceForm, 'kind'>,
): string {
  const long = (of: number) => onTape(exactLength(mm(of)), bench);
  const side = (at: number) => sideName(form, at);
  switch (problem.kind) {
    case 'not-a-number':
      return words.notANumber(fieldName(problem, form));
    case 'out-of-range': {
      const { mm: is, least, most } = problem;
      return words.outOfRange(fieldName(problem, form), long(is), long(least), long(most));
    }
    case 'too-few':
      return words.tooFew(problem.points, problem.least);
    case 'too-many':
      return words.tooMany(problem.most);
    case 'no-area':
      return words.noArea;
    case 'crosses':
      return words.crosses(
        side(problem.side),
        side(problem.other),
        long(problem.x),
        long(problem.y),
      );
    case 'too-round':
      return words.tooRound(side(problem.at), long(problem.mm), long(problem.most));
    case 'no-fold':
      return words.noFold;
  }
}

/** What was asked, with the side or the point it was asked of. */
function fieldName(
  { field, at }: { field: PieceField; at?: number },
  form: Pick<PieceForm, 'kind'>,
): string {
  const name = words.fields[field];
  if (at === undefined) return name;
  const ofPoint = field === 'x' || field === 'y';
  return ofPoint ? words.atPoint(at + 1, name) : words.atSide(sideName(form, at), name);
}

const sideName = ({ kind }: Pick<PieceForm, 'kind'>, at: number): string =>
  (kind === 'four' ? outlineWords.sides[at] : undefined) ?? words.side(at + 1);
