import { checksum } from '../checksum.ts';
import type { Garment } from '../record/record.ts';

/** What marks a file as ours. */
export const FORMAT = 'thumbrule backup';

/** The version of a file's form. That of each garment is its own. */
export const FILE_VERSION = 1;

/** Where the garments of a file end, and the records that can't be read begin. */
export const ASIDE_LINE = '],"setAside":[';
export const LAST_LINE = ']}';

/** A garment as a line of a backup, with the checksum of the rest of it. */
export function garmentLine(garment: Garment): string {
  const text = JSON.stringify(garment);
  return `{"sum":"${checksum(text)}",${text.slice(1)}`;
}

/**
 * A record that can't be read as a line of a backup, as it is.
 * @param text the record as JSON
 */
export function asideLine(key: string, text: string): string {
  return `{"key":${JSON.stringify(key)},"raw":${text}}`;
}

/**
 * One file's text, in parts: JSON as a whole, and each garment, or record that can't be
 * read, on a line of its own, so that it can be written and read a piece at a time and one
 * that is damaged harms no other.
 */
export function backupParts(garments: readonly string[], aside: readonly string[]): string[] {
  const head = JSON.stringify({ format: FORMAT, version: FILE_VERSION, count: garments.length });
  return [
    `${head.slice(0, -1)},"garments":[\n`,
    ...parted(garments),
    `${ASIDE_LINE}\n`,
    ...parted(aside),
    `${LAST_LINE}\n`,
  ];
}

function parted(lines: readonly string[]): string[] {
  return lines.map((line, i) => `${line}${i < lines.length - 1 ? ',' : ''}\n`);
}

/** Garments as one file's text. */
export function writeBackup(garments: readonly Garment[]): string {
  return backupParts(garments.map(garmentLine), []).join('');
}
