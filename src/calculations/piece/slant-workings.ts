import { pieceWords as words } from '#words/calculations/piece-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { Edge } from '../../sewing/pieces/piece-edges.ts';
import { liesAt, type PieceInput } from '../../sewing/pieces/piece-input.ts';
import { slantTakes, slopeOf } from '../../sewing/pieces/piece-slants.ts';
import type { PieceFound } from './read.ts';

const { formula } = words;

/** What lies at some edges, each by what it takes of the other way. */
export function slantTerms(input: PieceInput, edges: readonly Edge[], bench: Bench): string[] {
  return takenSlanted(input, edges).map(({ slant, own }) =>
    exactly(exactLength(own * slantTakes(slant)), bench),
  );
}

/** The allowances that lie at some edges, but those of nothing. */
function takenSlanted(input: PieceInput, edges: readonly Edge[]) {
  const lies = liesAt(input);
  return edges.flatMap((at) =>
    lies[at].flatMap((edge) => {
      const own = input.edges[edge];
      return own === 0 ? [] : [{ at, own, slant: input.slants?.[at] }];
    }),
  );
}

/** What edges that slant each by itself take of the other way. */
export function slantsWorking({ input }: PieceFound, bench: Bench): Working[] {
  const said = takenSlanted(input, ['top', 'bottom', 'side', ...farOf(input)]).flatMap(
    ({ at, own, slant }) => {
      if (!slant?.by) return [];
      const angle = (Math.atan(Math.abs(slopeOf(slant))) * 180) / Math.PI;
      const degrees = shownNumber(angle, 6, bench.decimalMark);
      const of = at === 'top' || at === 'bottom' ? formula.ofLength : formula.ofWidth;
      return [
        of(exactly(own, bench), degrees, exactly(exactLength(own * slantTakes(slant)), bench)),
      ];
    },
  );
  const once = [...new Set(said)];
  return once.length > 0 ? [{ formula: once.join(' '), source: words.derived }] : [];
}

export function farOf({ fold }: PieceInput): readonly Edge[] {
  return fold ? [] : ['other'];
}
