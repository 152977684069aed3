import type { Hem } from '../../sewing/hems/hem.ts';
import type { CurvedHem } from '../../sewing/hems/hem-curve.ts';
import type { Taper } from '../../sewing/hems/taper.ts';

/** Everything worked out about a hem. */
export interface Parts {
  hem: Hem;
  curve?: CurvedHem;
  taper?: Taper;
  /** The part of its length the cloth eases in. */
  ease: number;
}
