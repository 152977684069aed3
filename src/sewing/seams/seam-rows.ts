import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { BOUND, GRADED } from '../sources/seams.ts';

/** How the raw edges of a seam are stopped from fraying. */
export type Finish = 'plain' | 'french' | 'felled' | 'mock-french' | 'bound' | 'graded';

/** One thing to do, in order, at a distance from the final stitch line. */
export interface Row {
  do:
    | 'sew'
    | 'sew-first'
    | 'sew-second'
    | 'trim'
    | 'trim-first'
    | 'trim-under'
    | 'trim-inner'
    | 'lay-in'
    | 'overcast'
    | 'press-open'
    | 'topstitch'
    | 'turn'
    | 'turn-under'
    | 'press-half'
    | 'edge-stitch'
    | 'fell-stitch'
    | 'bind'
    | 'enclose';
  /** From the final stitch line, towards the raw edge; nothing where it isn't a distance. */
  at: ExactLength | undefined;
  /** Of a first row or a strip, from the raw edge; of what is trimmed beside a row, from that row; of a layer laid in, from the other’s edge. */
  beside?: ExactLength;
}

export interface FinishInput {
  finish: Finish;
  /** The allowance the pattern gives on each edge. */
  given: Length;
  /** French only: from the raw edge to the first row; what is left after trimming; the second row. */
  first: Length;
  trim: Length;
  second: Length;
  /** Flat-felled only: what the under layer is trimmed to; what is turned under of the upper one. */
  under: Length;
  turn: Length;
  /** Flat-felled only: whether the under layer is cut as wide and trimmed, or cut narrow and laid in. */
  laid?: 'even' | 'inset' | undefined;
  /** Plain only: rows of topstitching on both sides of the seam, each from the stitch line. */
  top?: Length | undefined;
  topSecond?: Length | undefined;
}

/** The rows of a finish in order; the figures are those of `sources/seams.ts`. */
export function rowsOf(input: FinishInput): Row[] {
  const { finish, given, first, trim, second } = input;
  const row = (what: Row['do'], at?: number): Row => ({
    do: what,
    at: at === undefined ? undefined : exactLength(at),
  });
  switch (finish) {
    case 'plain':
      return [
        row('sew', 0),
        row('overcast'),
        row('press-open'),
        ...[input.top, input.topSecond].flatMap((at) =>
          at === undefined ? [] : [row('topstitch', at)],
        ),
      ];
    case 'french':
      return [
        { ...row('sew-first', second), beside: first },
        { ...row('trim-first', second + trim), beside: trim },
        row('turn', second),
        row('sew-second', 0),
      ];
    case 'felled': {
      const fell = given - input.turn;
      const under =
        input.laid === 'inset'
          ? [
              { ...row('lay-in', input.under), beside: exactLength(given - input.under) },
              row('sew', 0),
            ]
          : [row('sew', 0), row('trim-under', input.under)];
      return [...under, row('turn-under', fell), row('fell-stitch', fell)];
    }
    case 'mock-french':
      return [row('sew', 0), row('press-half', given / 2), row('edge-stitch', given / 2)];
    case 'bound':
      return [
        row('sew', 0),
        { ...row('bind', given - BOUND.value.stitch), beside: BOUND.value.stitch },
        row('press-open'),
      ];
    case 'graded':
      return [
        row('sew', 0),
        ...(given > GRADED.value.outer ? [row('trim', GRADED.value.outer)] : []),
        row('trim-inner', GRADED.value.inner),
        row('enclose'),
      ];
  }
}
