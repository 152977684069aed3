import type { RowFrame } from '../frame/frame.ts';
import type { RowPitch } from '../pitch/pitch-spectrum.ts';
import type { TickRange } from './sheet.ts';
import type { TickPattern } from './tick-pattern.ts';

/** A row of graduations followed in the picture worked on. */
export interface FollowedRow {
  readonly frame: RowFrame<'measuring'>;
  readonly pitch: RowPitch;
  readonly range: TickRange;
  readonly pattern: TickPattern;
  /** The first and the last line seen by itself: nearer to the tape's ends than what was followed. */
  readonly lines?: TickRange;
}
