import { type ExactLength, exactLength, type Length, settled } from '../../lengths/length.ts';
import { mustBePositive } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';

/** A treatment beside the sample takes no more, and adds no more, in per cent. Ours, no source. */
const MOST_LOST = 90;
const MOST_GROWN = 50;

/** A marked sample in one direction. */
export interface Sample {
  /** Between the marks before it is washed. */
  before: ExactLength;
  /** The same measured afterwards, at several places. */
  after: readonly ExactLength[];
  /** What other treatments after it take in turn, in per cent; less than nothing adds. */
  more: readonly number[];
}

/** What the fields of one direction are called. */
export type SampleFields = Readonly<Record<keyof Sample, string>>;

/**
 * What is left of one length of cloth: mean(after) ÷ before, and of that what each further treatment
 * leaves: shares multiply, they never add. 1 less it is the shrinkage, (before − after) ÷ before, as
 * ISO 5077 has it but for its sign.
 *
 * Problems: no reading, a length of nothing, a treatment that takes over 90 % or adds over 50 %.
 */
export function keptOf(sample: Sample, fields: SampleFields): Outcome<number> {
  return answerUnless(problemsOf(sample, fields), () => {
    const { before, after, more } = sample;
    const first = meanOf(after) / before;
    return { ok: true, value: more.reduce((kept, lost) => kept * (1 - lost / 100), first) };
  });
}

/** The mean of what was measured. */
export function meanOf(readings: readonly ExactLength[]): ExactLength {
  return exactLength(readings.reduce<number>((sum, one) => sum + one, 0) / readings.length);
}

function problemsOf({ before, after, more }: Sample, fields: SampleFields): Problem[] {
  const few = after.length === 0;
  const wrong = more.find((lost) => lost > MOST_LOST || lost < -MOST_GROWN);
  return [
    ...mustBePositive(fields.before, before as Length),
    ...(few ? [{ kind: 'too-few', field: fields.after, least: 1, given: 0 } as const] : []),
    ...after.flatMap((one) => mustBePositive(fields.after, one as Length)).slice(0, 1),
    ...(wrong === undefined
      ? []
      : [
          {
            ...({ kind: 'out-of-range', field: fields.more, given: wrong } as const),
            ...{ least: -MOST_GROWN, most: MOST_LOST },
          },
        ]),
  ];
}

/** What is done about cloth that grows: nothing, so that it can be shortened, or it is cut smaller. */
export type Growth = 'keep' | 'smaller';

/**
 * What is cut so that it is a wanted length afterwards: wanted ÷ what is left of one. Cloth that grows
 * is cut as it is wanted, unless it is to be cut smaller: it can be shortened, never lengthened.
 */
export function cutFor(wanted: ExactLength, kept: number, growth: Growth): ExactLength {
  const share = growth === 'keep' ? Math.min(kept, 1) : kept;
  return settled(exactLength(wanted / share));
}

/** What a length comes to afterwards. */
export function afterwards(there: ExactLength, kept: number): ExactLength {
  return settled(exactLength(there * kept));
}

/**
 * How far two readings with one tape may be off together, in parts of the length between the marks:
 * √2 × its graduation ÷ length (derived here: each may be off by one, and they don't depend on each other).
 */
export function readingDoubt(before: ExactLength, graduation: Length): number {
  return (Math.SQRT2 * graduation) / before;
}
