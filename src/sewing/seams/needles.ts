import { type Outcome, refused } from '../problem.ts';
import { NEEDLE_CONFLICT, NEEDLE_SIZES } from '../sources/sizes.ts';

/** A needle by both names: metric is the blade's diameter in 1/100 mm (DIN 5325). */
export interface Needle {
  us: number;
  metric: number;
}

/** What a size asked for is in the other system. */
export interface NeedleMatch {
  /** The nearest size of the table; midway between two, the finer one. */
  needle: Needle;
  /** The finer and the coarser size when the one asked for lies between them. */
  between: readonly [Needle, Needle] | undefined;
  /** The size in the other system by the rule of fives, where that rule holds and gives a whole size. */
  byRule: number | undefined;
  /** Sources disagree whether this metric size is US 12 or US 13. */
  disputed: boolean;
}

const TABLE: readonly Needle[] = NEEDLE_SIZES.value.map(([us, metric]) => ({ us, metric }));

/** Where the rule of five hundredths to a size ends: US 19 is metric 120, not 115. */
const RULE_ENDS = 19;

/** Whether the rule of fives gives this needle, or only the table. */
export function followsRule({ us }: Needle): boolean {
  return us < RULE_ENDS;
}

/** The US size of a metric needle, 65 to 160. Problems name the field 'metric'. */
export function needleFromMetric(metric: number): Outcome<NeedleMatch> {
  return match('metric', metric);
}

/** The metric size of a US needle, 9 to 23. Problems name the field 'us'. */
export function needleFromUs(us: number): Outcome<NeedleMatch> {
  return match('us', us);
}

function match(scale: keyof Needle, given: number): Outcome<NeedleMatch> {
  const finer = TABLE.filter((needle) => needle[scale] <= given).at(-1);
  const coarser = TABLE.find((needle) => needle[scale] >= given);
  if (!finer || !coarser) {
    const [least, most] = [TABLE[0]![scale], TABLE.at(-1)![scale]];
    return refused({ kind: 'out-of-range', field: scale, given, least, most });
  }
  const needle = coarser[scale] - given < given - finer[scale] ? coarser : finer;
  const between = finer === coarser ? undefined : ([finer, coarser] as const);
  return {
    ok: true,
    value: { needle, between, byRule: byRule(scale, given), disputed: isDisputed(scale, given) },
  };
}

/**
 * Metric = 60 + 5 × (US − 8), below US 19 only.
 * Source: apparelscience.com, needle number system (a trade page).
 */
function byRule(scale: keyof Needle, given: number): number | undefined {
  const us = scale === 'us' ? given : 8 + (given - 60) / 5;
  if (us >= RULE_ENDS || !Number.isInteger(us)) return undefined;
  return scale === 'us' ? 60 + 5 * (us - 8) : us;
}

function isDisputed(scale: keyof Needle, given: number): boolean {
  const { metric, us } = NEEDLE_CONFLICT.value;
  return scale === 'metric' ? given === metric : us.includes(given);
}
