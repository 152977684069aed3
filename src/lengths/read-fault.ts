/**
 * Why typed text could not be read as a length or a number.
 *
 * Each kind has its sentence in `words/`. `unfinished` is what half-typed text
 * gives, so that a field can stay calm while someone is still typing.
 */
export type ReadFaultKind =
  /** Nothing but spaces. */
  | 'empty'
  /** Something more is needed after (or before) the piece: `1/`, `3 ×`, `in`, a lone `-`. */
  | 'unfinished'
  | 'not-understood'
  /** `1.2.3`, or thousands grouped: `1,234.5`. */
  | 'two-decimal-marks'
  /** `1,000`: thousands grouped, or decimals? The rule is beside `mayBeThousands`. */
  | 'thousands-unclear'
  /** `1.5/2`: a slash makes fractions of whole numbers. */
  | 'fraction-of-decimals'
  /** A slash after a length, a fraction or before one: `5 in / 2`, `1/2/3`. `÷` divides. */
  | 'fraction-of-other'
  | 'zero-denominator'
  | 'divide-by-zero'
  /** `1 9/8`: the fraction of a mixed number is less than one. */
  | 'improper-mixed'
  /** `12 -5/8`, `5'-3"`: joined or taken away? Spaces on both sides, or none, settle it. */
  | 'hyphen-unclear'
  | 'length-times-length'
  /** By a length: what comes of a length is a count, no length; of a number, nothing known. */
  | 'divide-by-length'
  /** A length where a plain number is asked. */
  | 'length-for-number'
  /** Beyond the longest length the app takes. */
  | 'too-long'
  /** A number beyond what can be counted exactly. */
  | 'too-large'
  /** A count with a fraction. */
  | 'not-whole'
  /** More characters than one length ever needs. */
  | 'too-much-text';

/** What was not read, and where. */
export interface ReadFault {
  readonly kind: ReadFaultKind;
  /** Where the piece begins in the typed text, from 0. */
  readonly at: number;
  /** The piece itself, exactly as typed. */
  readonly text: string;
  /** Of what comes to no whole number: the whole number below it. */
  readonly below?: number;
}

/** What could be read, or the first reason why not. */
export type Read<Found> = ({ readonly ok: true } & Found) | { ok: false; fault: ReadFault };
