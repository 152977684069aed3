import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { filesIn, ROOT } from './sources.ts';

/** Which test checks which row of the published values; its source stands beside the check. */
const CHECKED: Readonly<Record<string, readonly string[]>> = {
  'garment/materials/in-rows': ['7.1', '7.5', '7.20'],
  'garment/materials/to-buy': ['7.7', '7.9', '7.16', '7.17'],
  'garment/materials/materials': ['7.19'],
  'sewing/cloth/bias': ['7.11', '7.12', '7.14'],
  'sewing/cloth/shrinkage': ['7.15', '7.16', '21.2', '21.3', '21.9', '21.12'],
  'sewing/wearer/ease': ['8.1', '8.2', '8.3', '8.4', '8.5', '8.6', '8.12'],
  'sewing/wearer/fit': ['8.1', '8.8'],
  'sewing/pieces/matching': ['8.9'],
  'calculations/match': ['8.11', '8.13'],
  'screens/garment/body-measures': ['8.7', '19.1', '19.2'],
  'sewing/wearer/measure-names': [
    ...['8.14', '8.15', '18.9', '19.1', '19.2', '19.3', '19.4', '19.5', '19.6'],
    ...['19.8', '19.9', '19.10', '19.11'],
  ],
  'calculations/placket': ['18.3'],
  'sewing/bands/placket': ['18.2', '18.4', '18.5'],
  'sewing/bands/pocket': ['18.6', '18.9', '18.10'],
  'sewing/pieces/piece': ['18.6', '18.7', '18.11', '21.12'],
  'sewing/wearer/odd-measure': [
    ...Array.from({ length: 45 }, (_, i) => `20.${i + 1}`),
    ...['20.46', '20.48'],
  ],
  'sewing/cloth/grain': ['21.13', '21.14', '21.15', '21.19'],
  'sewing/wearer/least-slit': ['20.49', '20.50'],
};

/** Why a row is checked by none. */
const NOT_CHECKED: Readonly<Record<string, readonly string[]>> = {
  'a width is never turned into a length by a table or by area: pieces are laid': [
    ...['7.2', '7.3', '7.4', '7.6'],
  ],
  'there is no limit to hold to: text, a list of usual values, or a remark on a source': [
    ...['7.10', '7.18', '18.12', '18.13', '19.7', '21.1', '21.4', '21.5', '21.6', '21.7', '21.8'],
    ...['21.10', '21.11'],
  ],
  'how a short seam is widened for a zip, or a corner is trimmed, is no calculation here': [
    ...['18.1', '18.8'],
  ],
  'from memory, and of children: its table was not read': ['20.47'],
  'kinds of bow, cut parts, limits from memory, and faults counted are no calculation here': [
    ...['21.16', '21.17', '21.18', '21.20', '21.21'],
  ],
  'how a printed marker is drawn and rated; a lay here is told by its length': [
    ...['21.22', '21.23', '21.24'],
  ],
};

/** How many rows there are of each part; 7.8, 7.13 and 8.10 are none. */
const ROWS: Readonly<Record<string, number>> = {
  ...{ 7: 20, 8: 15, 18: 13, 19: 11, 20: 50, 21: 24 },
};
const NONE = ['7.8', '7.13', '8.10'];

const every = Object.entries(ROWS).flatMap(([part, rows]) =>
  Array.from({ length: rows }, (_, i) => `${part}.${i + 1}`),
);
const told = (rows: Readonly<Record<string, readonly string[]>>) => Object.values(rows).flat();

test('every row is checked by a test, or it is said why none can', () => {
  const known = new Set([...told(CHECKED), ...told(NOT_CHECKED), ...NONE]);
  expect(every.filter((row) => !known.has(row))).toEqual([]);
  expect([...known].filter((row) => !every.includes(row))).toEqual([]);
  const checked = new Set(told(CHECKED));
  expect(told(NOT_CHECKED).filter((row) => checked.has(row))).toEqual([]);
});

const files = filesIn('tests');

test.each(Object.entries(CHECKED))('%s names the rows it checks', (name, rows) => {
  const path = files.find((one) => /\.test\.tsx?$/.test(one) && one.startsWith(`tests/${name}.`));
  // With its comments: a source stands in one.
  const code = path ? readFileSync(join(ROOT, path), 'utf8') : '';
  const missing = rows.filter((row) => !names(code, row));
  expect(missing).toEqual([]);
});

/** A row by its number, as a whole. */
function names(code: string, row: string): boolean {
  return new RegExp(`(?<![\\d.])${row.replace('.', '\\.')}(?![\\d])`).test(code);
}
