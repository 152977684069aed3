import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven } from '../length-checks.ts';
import { answerUnless, type Outcome, refused } from '../problem.ts';
import { BUTTONHOLE_PAST_CENTRE } from '../sources/buttonholes.ts';

/** A band whose one end laps over the other. Lengths in 1/8000 mm. */
export interface BandEndInput {
  /** How far the overlap's end lies over the underlap, from the underlap's end. */
  lap: Length;
  /** From the overlap's end to the middle of its fastener. */
  from: Length;
  /** A buttonhole along the band. */
  hole?: Length | undefined;
}

/** Both halves, each from the end of its own part. */
export interface BandEnd {
  mate: ExactLength;
  /** From the overlap's end to where the buttonhole starts and ends. */
  hole?: { starts: ExactLength; ends: ExactLength };
}

/**
 * Where a fastener's mate lies on the underlap: where the overlap's end comes to lie, less how far the
 * fastener is from that end. A buttonhole along the band starts 1/8 in past the button towards its end.
 *
 * Source: geometry; `BUTTONHOLE_PAST_CENTRE`.
 * Problems: lengths of nothing, a fastener past the lap, a hole that starts off its end.
 */
export function bandEnd({ lap, from, hole }: BandEndInput): Outcome<BandEnd> {
  const problems = [
    ...mustBePositive('lap', lap),
    ...mustBePositive('from', from),
    ...mustBePositiveIfGiven('hole', hole),
  ];
  return answerUnless<BandEnd>(problems, () => {
    if (from >= lap) return refused({ kind: 'not-under', field: 'from', under: lap, given: from });
    const mate = exactLength(lap - from);
    if (hole === undefined) return { ok: true, value: { mate } };
    const past = BUTTONHOLE_PAST_CENTRE.value;
    if (from <= past) return refused({ kind: 'not-over', field: 'from', over: past, given: from });
    const starts = exactLength(from - past);
    return { ok: true, value: { mate, hole: { starts, ends: exactLength(starts + hole) } } };
  });
}

/** A strap folded round something, with one half of a snap on each layer. */
export interface FoldInput {
  /** From the outside of the fold to the middle of each half. */
  from: Length;
  /** What it goes round. */
  thing: Length;
  thick: Length;
}

/**
 * How far apart the halves lie along the flat strap: 2 × from − (thing + 2 × thick) straight, and
 * π ÷ 2 × (thing + thick) round, along the middle of the cloth (derived here).
 *
 * Problems: halves on the bend, lengths below nothing.
 */
export function overFold({ from, thing, thick }: FoldInput): Outcome<ExactLength> {
  const problems = [
    ...mustBePositive('from', from),
    ...(thing < 0 ? [{ kind: 'negative', field: 'thing', given: thing } as const] : []),
    ...(thick < 0 ? [{ kind: 'negative', field: 'thick', given: thick } as const] : []),
  ];
  return answerUnless(problems, () => {
    const bend = exactLength(thing / 2 + thick);
    if (from <= bend) return refused({ kind: 'not-over', field: 'from', over: bend, given: from });
    const round = (Math.PI / 2) * (thing + thick);
    return { ok: true, value: exactLength(2 * from - thing - 2 * thick + round) };
  });
}
