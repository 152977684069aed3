import type { Claim } from './claim.ts';
import type { FollowedRow } from './followed-row.ts';

/** A row that was followed, and what its numbers claim. */
export interface ClaimOfRow {
  readonly row: FollowedRow;
  readonly claim: Claim;
}
