import { isNumber } from '../check.ts';
import type { Garment } from '../record/record.ts';

/** After how long, or how many changes, a backup is asked for. Common practice, no source. */
const DUE_AFTER_DAYS = 7;
const DUE_AFTER_CHANGES = 20;

const DAY_MS = 24 * 60 * 60 * 1000;

/** When a backup was made, or put off, and how often each garment had been changed by then. */
export interface BackupStand {
  /** In ms since 1970. */
  at: number;
  /** By the garment's id; undefined where it was not counted. */
  edits: Readonly<Record<string, number>> | undefined;
  /** How much of each was made by then; undefined where it was not counted. */
  facts?: Readonly<Record<string, number>> | undefined;
}

/** What would be lost with this phone. */
export interface Due {
  /** How many garments were changed since. */
  garments: number;
  /** How much was made since, as far as it was counted. */
  made: number;
  changes: number;
  days: number;
}

/** What is asked of a garment: how often it was changed, when last, and how much of it is made. */
type Counted = Pick<Garment, 'id' | 'edits' | 'changed'> & { facts: number };

/** Reads a stand from whatever was kept; at first only the time was. */
export function readStand(kept: unknown): BackupStand | undefined {
  if (typeof kept === 'number') return { at: kept, edits: undefined };
  const { at, edits, facts } = Object(kept) as Record<string, unknown>;
  if (!isNumber(at)) return undefined;
  return { at, edits: countsIn(edits), ...(facts !== undefined && { facts: countsIn(facts) }) };
}

function countsIn(kept: unknown): Readonly<Record<string, number>> {
  const counted = Object.entries(Object(kept)).filter(
    (pair): pair is [string, number] => typeof pair[1] === 'number',
  );
  return Object.fromEntries(counted);
}

/**
 * What a backup made now would hold that the last one lacks, when it is time to
 * ask for one: so many changes, or so long ago.
 *
 * @param now in ms since 1970; a stand that lies ahead of it counts as just made
 * @returns undefined when nothing has changed, or it is too early to ask
 */
export function backupDue(
  garments: readonly Counted[],
  last: BackupStand | undefined,
  putOff: BackupStand | undefined,
  now: number,
): Due | undefined {
  const changed = garments.filter((garment) => changesOf(garment, last) > 0);
  if (changed.length === 0) return undefined;
  const changes = total(garments, last);
  const first = Math.min(...changed.map((garment) => garment.changed));
  const days = Math.max(0, Math.floor((now - (last?.at ?? first)) / DAY_MS));
  const asked = putOff && putOff.at >= (last?.at ?? 0) ? putOff : last;
  const waited = now - (asked?.at ?? first);
  const due = waited >= DUE_AFTER_DAYS * DAY_MS || total(garments, asked) >= DUE_AFTER_CHANGES;
  if (!due) return undefined;
  const made = changed.reduce((sum, garment) => sum + madeSince(garment, last), 0);
  return { garments: changed.length, made, changes, days };
}

function total(garments: readonly Counted[], since: BackupStand | undefined): number {
  return garments.reduce((sum, garment) => sum + changesOf(garment, since), 0);
}

/** What was made of a garment since; of one whose count isn't known nothing is said. */
function madeSince({ id, facts }: Counted, since: BackupStand | undefined): number {
  if (!since?.edits || !Object.hasOwn(since.edits, id)) return since && !since.edits ? 0 : facts;
  const then = since.facts && Object.hasOwn(since.facts, id) ? since.facts[id] : undefined;
  return then === undefined ? 0 : Math.max(0, facts - then);
}

function changesOf({ id, edits, changed }: Counted, since: BackupStand | undefined): number {
  if (!since) return edits;
  if (!since.edits) return changed > since.at ? Math.min(edits, 1) : 0;
  const then = Object.hasOwn(since.edits, id) ? (since.edits[id] ?? 0) : 0;
  return Math.max(0, edits - then);
}
