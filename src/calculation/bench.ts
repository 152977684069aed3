import {
  type Graduation,
  type InchGraduation,
  type MetricGraduation,
  STEP,
} from '../lengths/graduation.ts';
import type { Length } from '../lengths/length.ts';
import type { BenchUnit } from '../lengths/unit.ts';

/** How this bench is set up: kept by the settings, read by every control. */
export interface Bench {
  hand: 'right' | 'left';
  unit: BenchUnit;
  metric: MetricGraduation;
  inch: InchGraduation;
  theme: 'phone' | 'paper' | 'night';
  voice: 'off' | 'on';
  decimalMark: '.' | ',';
  /** Whose keys: our own pad, or the phone's keyboard. */
  keys: 'pad' | 'phone';
}

/** The graduation of the tape in hand. */
function tapeInHand(bench: Bench): Graduation {
  return bench.unit === 'in' ? bench.inch : bench.metric;
}

/** The length of one graduation of the tape in hand. */
export function tapeStep(bench: Bench): Length {
  return STEP[tapeInHand(bench)];
}
