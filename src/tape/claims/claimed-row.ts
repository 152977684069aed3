import type { FollowedRow } from '../graduations/followed-row.ts';
import type { Claim } from './claim.ts';

/** A row that was followed, and what its numbers claim. */
export interface ClaimOfRow {
  readonly row: FollowedRow;
  readonly claim: Claim;
}
