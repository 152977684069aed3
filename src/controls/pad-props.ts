import type { Bench } from './bench.ts';
import type { Field } from './calculation.ts';

/** What the next digit does: goes on, or starts the number or the whole text anew. */
export type Fresh = 'no' | 'number' | 'all';

export interface PadProps {
  field: Field;
  text: string;
  fresh: Fresh;
  bench: Bench;
  onText: (text: string, fresh: Fresh) => void;
  onNext: () => void;
}
