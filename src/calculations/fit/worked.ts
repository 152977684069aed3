import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { Outcome } from '../../sewing/problem.ts';
import { type EaseVerdict, easeVerdict } from '../../sewing/wearer/ease.ts';
import {
  inEachDart,
  onEachEdge,
  type PiecesGirth,
  piecesGirth,
  wantedGirth,
} from '../../sewing/wearer/fit.ts';
import { type FitAsked, piecesInput } from './fields.ts';

/** A fit as far as it is known. */
export interface Fit {
  wanted: ExactLength;
  /** Of the ease there is where the pieces are known, else of what is wanted. */
  verdict: EaseVerdict;
  there?: Pieces;
}

/** What the pieces give against the body and what is wanted. */
interface Pieces extends PiecesGirth {
  ease: ExactLength;
  lacks: ExactLength;
  eachEdge: ExactLength | undefined;
  eachDart: ExactLength | undefined;
}

/** Works out all of a fit. */
export function fitOf(read: FitAsked): Outcome<Fit> {
  const { body, ease, of, cloth } = read;
  const wanted = wantedGirth({ body, ease });
  if (!wanted.ok) return wanted;
  if (read.pieces === undefined) {
    return { ok: true, value: { wanted: wanted.value, verdict: easeVerdict(of, cloth, ease) } };
  }
  const found = piecesGirth(piecesInput(read));
  if (!found.ok) return found;
  const there = exactLength(found.value.girth - body);
  const lacks = exactLength(wanted.value - found.value.girth);
  const [edge, dart] = [
    read.seams === undefined ? undefined : onEachEdge(lacks, read.seams),
    read.darts === undefined ? undefined : inEachDart(lacks, read.darts),
  ];
  return {
    ok: true,
    value: {
      wanted: wanted.value,
      verdict: easeVerdict(of, cloth, there),
      there: {
        ...{ ...found.value, ease: there, lacks },
        eachEdge: edge?.ok ? edge.value : undefined,
        eachDart: dart?.ok ? dart.value : undefined,
      },
    },
  };
}
