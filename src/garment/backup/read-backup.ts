import { ASIDE_LINE, FILE_VERSION, FORMAT, LAST_LINE } from './backup.ts';
import { Finds, type Found } from './backup-finds.ts';

/** A text longer than this is not taken in one piece, in characters: engines have such limits. */
const LARGEST_PIECE = 200_000_000;

/** After so many characters a file that doesn't begin as an object is no JSON of ours. */
const UNKNOWN_MOST = 1000;

export type BackupFault = 'too-large' | 'not-json' | 'foreign' | 'newer' | 'damaged';

export type BackupRead = ({ ok: true } & Found) | { ok: false; fault: BackupFault };

/** Reads a backup that is there as one text. Never throws. */
export function readBackup(text: string): BackupRead {
  const reader = new BackupReader();
  const fault = reader.take(text);
  return fault ? { ok: false, fault } : reader.end();
}

/**
 * Reads a backup piece by piece, and never throws.
 *
 * A garment that is damaged is listed, and given too where it can still be read as one; a
 * file that is none of ours, or of a newer app, is refused whole. A file as `backupParts`
 * makes it is read line by line. Any other, such as those of the first versions of this
 * app, is read as a whole.
 */
export class BackupReader {
  private readonly finds = new Finds();
  /** What has come and is not read yet. */
  private pieces: string[] = [];
  private size = 0;
  private form: 'unknown' | 'lines' | 'whole' = 'unknown';
  private aside = false;
  private ended = false;

  /** Takes the next piece of the text, cut anywhere; with a fault nothing more need be read. */
  take(text: string): BackupFault | undefined {
    this.size += text.length;
    if (this.size > LARGEST_PIECE) return 'too-large';
    this.pieces.push(text);
    if (
      this.form === 'unknown' &&
      this.size > UNKNOWN_MOST &&
      !/^\s*\{/.test(this.pieces[0] ?? '')
    ) {
      return 'not-json';
    }
    if (this.form === 'whole' || !text.includes('\n')) return undefined;
    const lines = this.pieces.join('').split('\n');
    if (this.form === 'unknown') {
      const head = headOf(lines[0] ?? '');
      this.form = head === undefined ? 'whole' : 'lines';
      if (head === undefined) return undefined;
      this.finds.written = countOf(head);
      const fault = faultOf(head);
      if (fault) return fault;
      lines.shift();
    }
    const rest = lines.pop() ?? '';
    this.pieces = [rest];
    this.size = rest.length;
    for (const line of lines) this.line(line);
    return undefined;
  }

  /** After the last piece. */
  end(): BackupRead {
    const { finds } = this;
    const rest = this.pieces.join('');
    if (this.form !== 'lines') return readWhole(rest, finds);
    // A file that is cut off ends in the middle of a line; that it is cut off is said of it.
    if (rest === LAST_LINE || parsed(rest.replace(/,$/, '')) !== undefined) this.line(rest);
    if (!this.ended && finds.none) return { ok: false, fault: 'not-json' };
    return { ok: true, ...finds.found(this.ended) };
  }

  private line(text: string): void {
    if (text === ASIDE_LINE) this.aside = true;
    else if (text === LAST_LINE) this.ended = true;
    else if (text.trim() !== '') this.finds.takeText(text.replace(/,$/, ''), this.aside);
  }
}

/** The heading in a file's first line, when the rest of it is in lines. */
function headOf(line: string): unknown {
  return line.endsWith('"garments":[') ? parsed(`${line}]}`) : undefined;
}

function readWhole(text: string, finds: Finds): BackupRead {
  const file = parsed(text);
  if (file === undefined) return { ok: false, fault: 'not-json' };
  const fault = faultOf(file);
  if (fault) return { ok: false, fault };
  const { garments, setAside } = Object(file) as Record<string, unknown>;
  if (!Array.isArray(garments)) return { ok: false, fault: 'damaged' };
  finds.written = countOf(file);
  for (const one of garments) finds.take(one, false, undefined);
  if (Array.isArray(setAside)) for (const one of setAside) finds.take(one, true, undefined);
  return { ok: true, ...finds.found(true) };
}

function faultOf(head: unknown): BackupFault | undefined {
  const { format, version } = Object(head) as Record<string, unknown>;
  if (format !== FORMAT) return 'foreign';
  if (typeof version !== 'number') return 'damaged';
  if (version > FILE_VERSION) return 'newer';
  return version === FILE_VERSION ? undefined : 'damaged';
}

function countOf(head: unknown): number | undefined {
  const { count } = Object(head) as Record<string, unknown>;
  return typeof count === 'number' ? count : undefined;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
