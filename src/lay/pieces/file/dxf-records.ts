import { Unreadable } from './file-problem.ts';

/** A part of a DXF file: what it is, and its values in turn, each by its group code. */
export interface DxfRecord {
  type: string;
  values: readonly (readonly [code: number, value: string])[];
}

/** Group codes of the DXF reference: −5 to 1071. */
const CODE = /^\s*(-?\d{1,4})\s*$/;
const [LEAST_CODE, MOST_CODE] = [-5, 1071];

/** The last part of a file that ends before it says so: its one value is the line it ends at. */
export const BROKEN_OFF = 'broken off';

/**
 * The parts of a DXF file in turn. It is read as text: pairs of lines, a code and its value; the
 * binary form is refused as damaged. Of a file that just ends the part it ends in isn't given, as
 * nothing tells whether that is whole, but one of `BROKEN_OFF`.
 * @throws {Unreadable} where a line that has to be a code is none
 */
export function* dxfRecords(text: string): Generator<DxfRecord> {
  let values: [number, string][] = [];
  let type: string | undefined;
  let line = 1;
  for (const [code, value] of pairs(text)) {
    line += 2;
    if (code !== 0) {
      values.push([code, value]);
      continue;
    }
    if (type !== undefined) yield { type, values };
    type = value.trim();
    values = [];
    if (type === 'EOF') return;
  }
  // An end has no values that could be missing.
  if (type === 'ENDSEC') yield { type, values };
  yield { type: BROKEN_OFF, values: [[0, String(line)]] };
}

/** What old files end with, and lines with nothing on them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: the sign is one of these
const NOTHING = /^[\s\x1a]*$/;

function* pairs(text: string): Generator<[code: number, value: string]> {
  let line = 1;
  for (let at = 0; ; line += 2) {
    const code = lineAt(text, at);
    const value = code && lineAt(text, code.next);
    const number = code && CODE.exec(code.text);
    const known = number && Number(number[1]) >= LEAST_CODE && Number(number[1]) <= MOST_CODE;
    const ends = !code || (known && !value) || (!known && NOTHING.test(text.slice(at)));
    if (ends) return;
    if (!known || !value) throw new Unreadable({ kind: 'damaged', line });
    yield [Number(number[1]), value.text];
    at = value.next;
  }
}

function lineAt(text: string, at: number) {
  if (at >= text.length) return undefined;
  const end = text.indexOf('\n', at);
  const to = end < 0 ? text.length : end;
  const cut = text.charAt(to - 1) === '\r' ? to - 1 : to;
  return { text: text.slice(at, Math.max(at, cut)), next: to + 1 };
}

const NUMBER = /^\s*[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?\s*$/;

/** A number as it is written; NaN where it is none. */
export const numberIn = (text: string): number => (NUMBER.test(text) ? Number(text) : Number.NaN);

/** The first value of a code, as a number; `absent` where there is none. */
export function numberOf({ values }: DxfRecord, code: number, absent = 0): number {
  const found = values.find(([own]) => own === code);
  return found ? numberIn(found[1]) : absent;
}

export const textOf = ({ values }: DxfRecord, code: number): string =>
  (values.find(([own]) => own === code)?.[1] ?? '').trim().slice(0, 100);
