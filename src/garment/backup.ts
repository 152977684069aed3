import { type Checked, checkGarment, type Damage } from './check.ts';
import type { Garment } from './garment.ts';

/** What marks a file as ours. */
const FORMAT = 'thumbrule backup';

/** A larger file is no backup of ours, in characters. */
const LARGEST_BACKUP = 20_000_000;

/** Every garment as one file's text. */
export function writeBackup(garments: readonly Garment[]): string {
  return JSON.stringify({ format: FORMAT, version: 1, garments }, null, 1);
}

/** A garment of a backup that can't be taken, with its place in the file, from 1. */
export interface Rejected {
  place: number;
  name: string | undefined;
  damage: Damage;
}

export type BackupFault = 'too-large' | 'not-json' | 'foreign' | 'newer' | 'damaged';

export type BackupRead =
  | { ok: true; garments: readonly Garment[]; rejected: readonly Rejected[] }
  | { ok: false; fault: BackupFault };

/**
 * Reads a backup. A garment that is damaged is left out and listed; a file that
 * is none of ours, or of a newer app, is refused whole. Never throws.
 */
export function readBackup(text: string): BackupRead {
  if (text.length > LARGEST_BACKUP) return { ok: false, fault: 'too-large' };
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return { ok: false, fault: 'not-json' };
  }
  const { format, version, garments } = Object(file) as Record<string, unknown>;
  if (format !== FORMAT) return { ok: false, fault: 'foreign' };
  if (typeof version !== 'number') return { ok: false, fault: 'damaged' };
  if (version > 1) return { ok: false, fault: 'newer' };
  if (version !== 1 || !Array.isArray(garments)) return { ok: false, fault: 'damaged' };
  return sorted(garments.map((one: unknown) => ({ one, checked: checkGarment(one) })));
}

function sorted(all: readonly { one: unknown; checked: Checked<Garment> }[]): BackupRead {
  const taken = new Map<string, Garment>();
  const rejected: Rejected[] = [];
  for (const [i, { one, checked }] of all.entries()) {
    if (checked.ok && !taken.has(checked.value.id)) {
      taken.set(checked.value.id, checked.value);
      continue;
    }
    const name = Object(one).name;
    rejected.push({
      place: i + 1,
      name: typeof name === 'string' ? name.slice(0, 80) : undefined,
      damage: checked.ok ? { kind: 'damaged', part: 'id' } : checked.damage,
    });
  }
  return { ok: true, garments: [...taken.values()], rejected };
}

/** What restoring one garment would do to what is here. */
export interface Preview {
  garment: Garment;
  state: 'new' | 'same' | 'differs';
  /** When it differs: the backup's is the later one. */
  later: boolean;
  /** Names of what is kept, by what would become of it. */
  added: readonly string[];
  changed: readonly string[];
  lost: readonly string[];
}

/** Compares a backup's garments with those that are here; nothing is changed. */
export function previewBackup(here: readonly Garment[], backup: readonly Garment[]): Preview[] {
  return backup.map((garment) => {
    const own = here.find(({ id }) => id === garment.id);
    const names = (kept: Garment['kept']) => kept.map(({ name }) => name);
    if (!own) {
      return {
        garment,
        state: 'new',
        later: true,
        added: names(garment.kept),
        changed: [],
        lost: [],
      };
    }
    const before = new Map(own.kept.map((kept) => [kept.id, JSON.stringify(kept)]));
    const after = new Set(garment.kept.map(({ id }) => id));
    const added = garment.kept.filter(({ id }) => !before.has(id));
    const changed = garment.kept.filter(
      (kept) => before.has(kept.id) && before.get(kept.id) !== JSON.stringify(kept),
    );
    const lost = own.kept.filter(({ id }) => !after.has(id));
    const same = own.name === garment.name && added.length + changed.length + lost.length === 0;
    return {
      garment,
      state: same ? 'same' : 'differs',
      later: garment.changed >= own.changed,
      added: names(added),
      changed: names(changed),
      lost: names(lost),
    };
  });
}
