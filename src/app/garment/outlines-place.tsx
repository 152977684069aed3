import { outlineWords as words } from '#words/garment/garment-outline-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Action } from '../../garment/actions/act.ts';
import { cutSize, laidOutline } from '../../garment/materials/lay-now.ts';
import type { MaterialNow } from '../../garment/materials/materials.ts';
import type { Need } from '../../garment/materials/need.ts';
import { type ClothLay, type LaidSize, saidOfPiece } from '../../garment/record/cloth-lay.ts';
import { readHome } from '../../garment/record/home.ts';
import type { PieceForm } from '../../garment/record/piece-said.ts';
import { materialName } from '../../screens/garment/materials/materials-said.ts';
import type { OutlineShown } from '../../screens/garment/outlines/outline-shown.ts';
import { Outlines } from '../../screens/garment/outlines/outlines.tsx';
import { workName } from '../../screens/garment/said/names.ts';
import type { Telling } from '../../screens/garment/said/told-words.ts';
import type { CutOutlines } from '../lay/cut-outlines.ts';
import { pieceProblemSaid } from '../lay/piece-problem-said.ts';
import { useCut } from '../lay/use-cut.ts';

export interface ShapesProps {
  one: MaterialNow;
  lay: ClothLay;
  telling: Telling;
  said: string | undefined;
  onAgain: (() => void) | undefined;
  act: (action: Action) => void;
  onBack: () => void;
}

/** The first need of each work on this cloth, with how large its pieces are. */
function needsOf(one: MaterialNow): [Need, LaidSize][] {
  const first = one.needs.filter(
    ({ key }, at) => one.needs.findIndex((other) => other.key === key) === at,
  );
  return first.flatMap((need): [Need, LaidSize][] => {
    const size = cutSize(one, need);
    return size ? [[need, size]] : [];
  });
}

/** Why a piece can't be laid, or why that isn't known. */
function problemOf(form: PieceForm | undefined, made: Made, missing: boolean, bench: Bench) {
  if (form && missing) return words.notFetched;
  return form && made && !made.ok ? pieceProblemSaid(made.problems[0], bench, form) : undefined;
}

type Made = ReturnType<CutOutlines['get']>;

/** The shapes of the pieces on one cloth of the garment in hand. */
export function OutlinesPlace({ one, lay, telling, said, onAgain, act, onBack }: ShapesProps) {
  const { bench } = telling;
  const needs = needsOf(one);
  const pieces = Object.fromEntries(
    needs.flatMap(([{ key, edges }, size]) => {
      const { outline } = saidOfPiece(lay, key);
      return outline ? [[key, { ...size, outline: laidOutline(outline, edges) }] as const] : [];
    }),
  );
  const cut = useCut(pieces);
  const shown = needs.map(([need, size]): OutlineShown => {
    const piece = saidOfPiece(lay, need.key);
    const made = typeof cut === 'string' ? undefined : cut.get(need.key);
    const { id } = readHome(need.home);
    return {
      need: need.key,
      name: workName(telling, id),
      asked: { long: size.along, wide: size.fold ? size.across / 2 : size.across },
      ...{ fold: size.fold, edges: need.edges, said: piece },
      drawn: made?.ok ? { cut: made.value.exact, entered: made.value.entered } : undefined,
      problem: problemOf(piece.outline?.form, made, cut === 'missing', bench),
    };
  });
  return (
    <Outlines
      {...{ bench, said, onAgain, onBack }}
      name={materialName(telling, one)}
      nap={lay.nap === true}
      pieces={shown}
      onRead={(file, unitMm) =>
        import('../lay/read-outlines.ts').then(({ readOutlines }) =>
          readOutlines(file, bench, unitMm),
        )
      }
      onSay={(piece, set) => act({ do: 'lay', id: one.id, piece, set, now: Date.now() })}
    />
  );
}
