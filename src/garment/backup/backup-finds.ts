import type { Checked, Damage } from '../check.ts';
import { checksum } from '../checksum.ts';
import { readRecord } from '../record/read-record.ts';
import type { Garment } from '../record/record.ts';

/** A garment of a backup that can't be taken, with its place in the file, from 1. */
export interface Rejected {
  place: number;
  name: string | undefined;
  damage: Damage;
  /** How it begins, for looking at. */
  text: string;
}

/** A record that could not be read where the backup was made, and can't be here. */
export interface AsideRecord {
  key: string;
  raw: unknown;
}

export interface Found {
  garments: readonly Garment[];
  /** The ids of those that were changed after they were written. */
  damaged: ReadonlySet<string>;
  rejected: readonly Rejected[];
  setAside: readonly AsideRecord[];
  /** How many garments the file was written with, where it holds fewer, or its end is missing. */
  lacks: number | undefined;
}

/** The version of the records that are written. */
const VERSION: Garment['version'] = 3;

/** How much of what can't be read is shown, in characters. */
const SHOWN = 2000;

/** What is found in a backup, one thing after another. */
export class Finds {
  /** How many garments the file says that it holds. */
  written: number | undefined;
  private readonly garments = new Map<string, Garment>();
  private readonly damaged = new Set<string>();
  private readonly rejected: Rejected[] = [];
  private readonly setAside: AsideRecord[] = [];
  private place = 0;

  get none(): boolean {
    return this.place === 0;
  }

  takeText(text: string, aside: boolean): void {
    let one: unknown;
    try {
      one = JSON.parse(text);
    } catch {
      // Where it was to be is known, and what is left of it is shown.
    }
    this.take(one, aside, text);
  }

  /** @param text how it was written, where that is known */
  take(one: unknown, aside: boolean, text: string | undefined): void {
    const known: Record<string, unknown> = Object(one);
    if (aside && isKey(known.key)) {
      this.takeAside(known.key, known.raw);
      return;
    }
    this.place += 1;
    const { sum, ...garment } = known;
    const checked = readRecord(garment);
    if (!checked.ok || this.garments.has(checked.value.id)) {
      this.reject(known.name, checked, text ?? JSON.stringify(one) ?? '');
      return;
    }
    this.garments.set(checked.value.id, checked.value);
    // The first versions of the app wrote none, and no records of this version.
    const old = sum === undefined && garment.version !== VERSION;
    const good = old || sum === checksum(JSON.stringify(garment));
    if (!good) this.damaged.add(checked.value.id);
  }

  found(ended: boolean): Found {
    const { garments, damaged, rejected, setAside, written, place } = this;
    const whole = ended && place >= (written ?? 0);
    const lacks = whole ? undefined : Math.max(written ?? place, place);
    return { garments: [...garments.values()], damaged, rejected, setAside, lacks };
  }

  /** A later version of the app may read what the one that wrote the file could not. */
  private takeAside(key: string, raw: unknown): void {
    const checked = readRecord(raw);
    if (checked.ok && !this.garments.has(checked.value.id)) {
      this.garments.set(checked.value.id, checked.value);
    } else this.setAside.push({ key, raw });
  }

  private reject(name: unknown, checked: Checked<Garment>, text: string): void {
    this.rejected.push({
      place: this.place,
      name: typeof name === 'string' ? name.slice(0, 80) : undefined,
      damage: checked.ok ? { kind: 'damaged', part: 'id' } : checked.damage,
      text: text.slice(0, SHOWN),
    });
  }
}

function isKey(key: unknown): key is string {
  return typeof key === 'string' && /^(garment|deleted):.{1,200}$/s.test(key);
}
