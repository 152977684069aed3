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
}

/** What is asked of a garment: how often it was changed, and when last. */
type Counted = Pick<Garment, 'id' | 'edits' | 'changed'>;

/** Reads a stand from whatever was kept; at first only the time was. */
export function readStand(kept: unknown): BackupStand | undefined {
  if (typeof kept === 'number') return { at: kept, edits: undefined };
  const { at, edits } = Object(kept) as Record<string, unknown>;
  if (typeof at !== 'number' || !Number.isFinite(at)) return undefined;
  const counted = Object.entries(Object(edits)).filter(
    (pair): pair is [string, number] => typeof pair[1] === 'number',
  );
  return { at, edits: Object.fromEntries(counted) };
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
): { changes: number; days: number } | undefined {
  const changed = garments.filter((garment) => changesOf(garment, last) > 0);
  if (changed.length === 0) return undefined;
  const changes = total(garments, last);
  const first = Math.min(...changed.map((garment) => garment.changed));
  const days = Math.max(0, Math.floor((now - (last?.at ?? first)) / DAY_MS));
  const asked = putOff && putOff.at >= (last?.at ?? 0) ? putOff : last;
  const waited = now - (asked?.at ?? first);
  const due = waited >= DUE_AFTER_DAYS * DAY_MS || total(garments, asked) >= DUE_AFTER_CHANGES;
  return due ? { changes, days } : undefined;
}

function total(garments: readonly Counted[], since: BackupStand | undefined): number {
  return garments.reduce((sum, garment) => sum + changesOf(garment, since), 0);
}

function changesOf({ id, edits, changed }: Counted, since: BackupStand | undefined): number {
  if (!since) return edits;
  if (!since.edits) return changed > since.at ? Math.min(edits, 1) : 0;
  const then = Object.hasOwn(since.edits, id) ? (since.edits[id] ?? 0) : 0;
  return Math.max(0, edits - then);
}
