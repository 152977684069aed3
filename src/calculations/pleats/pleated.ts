import type { PleatsInput } from '../../sewing/pleat-input.ts';
import type { Pleats } from '../../sewing/pleats.ts';
import type { Strips } from '../../sewing/strips.ts';
import type { PleatsAsked } from './fields.ts';

/** Pleats as they were worked out, with what was asked. */
export interface Pleated {
  asked: PleatsAsked;
  input: PleatsInput;
  plan: Pleats;
  /** Undefined where the cloth isn't known. */
  strips: Strips | undefined;
}
