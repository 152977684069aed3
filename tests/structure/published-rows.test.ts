import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { filesIn, ROOT } from './sources.ts';

/** Which test checks which row of the published values; its source stands beside the check. */
const CHECKED: Readonly<Record<string, readonly string[]>> = {
  'sewing/seams/thread': [
    ...['4.1', '4.2', '4.3', '4.4', '4.5', '4.8', '4.9', '4.10', '4.11', '4.12', '4.13', '4.15'],
    ...['4.16', '4.17', '4.18', '22.1', '22.2', '22.3', '22.4', '22.5', '22.13'],
  ],
  'sewing/sources/quoted-figures': ['4.6', '13.1', '13.2', '13.9', '14.7', '16.9'],
  'sewing/fullness/pleats': [
    ...['11.1', '11.2', '11.3', '11.4', '11.5', '11.6', '11.7', '11.8', '11.9', '11.10', '11.11'],
    ...['11.12', '11.13', '11.14', '11.16', '11.17', '11.19', '11.20'],
  ],
  'sewing/fullness/pleat-levels': ['11.15'],
  'sewing/fullness/tucks': [
    ...['12.1', '12.2', '12.3', '12.4', '12.5', '12.7', '12.11', '12.12', '12.13'],
  ],
  'sewing/fullness/gathers': ['13.3', '13.4', '13.5', '13.6', '13.10', '13.11'],
  'sewing/fullness/tiers': ['13.3', '13.7', '13.8'],
  'sewing/fullness/elastic': ['14.1', '14.2', '14.3', '14.4', '14.5', '14.6', '14.8', '14.9'],
  'sewing/fullness/cord': ['9.3', '9.5', '14.1', '23.19'],
  'calculations/cord': ['9.4'],
  'sewing/bands/band': ['14.7'],
  'sewing/bands/collar': ['3.10'],
  'sewing/shaping/darts': ['15.1', '15.2'],
  'sewing/shaping/dart': ['15.3', '15.6', '15.7', '15.8', '15.10'],
  'calculations/dart': ['15.4', '15.5'],
  'sewing/pieces/curve': ['15.11'],
  'sewing/shaping/circle': ['16.1', '16.2', '16.3', '16.4', '16.5', '16.6', '16.7', '16.10'],
  'sewing/shaping/flare': ['16.3', '16.8', '16.10'],
  'sewing/hems/binding': ['3.8', '17.9', '17.10', '17.11', '17.12', '17.13', '17.14'],
  'sewing/hems/hem-level': ['2.16'],
  'calculations/seam': ['3.15'],
  'sewing/closures/grouped': ['5.1', '5.2', '5.10'],
  'sewing/closures/buttonhole-row': ['5.6'],
  'sewing/closures/overlap': ['5.12'],
  'sewing/edging/outline-holes': ['6.14', '6.21'],
  'garment/materials/in-rows': ['7.1', '7.5', '7.20'],
  'garment/materials/to-buy': ['7.7', '7.9', '7.16', '7.17'],
  'garment/materials/materials': ['7.19'],
  'sewing/cloth/bias': [
    ...['7.11', '7.12', '7.14', '17.1', '17.2', '17.3', '17.4', '17.5', '17.7'],
  ],
  'sewing/cloth/shrinkage': ['7.15', '7.16', '21.2', '21.3', '21.9', '21.12'],
  'sewing/wearer/ease': ['8.1', '8.2', '8.3', '8.4', '8.5', '8.6', '8.12'],
  'sewing/wearer/fit': ['8.1', '8.8'],
  'sewing/pieces/matching': ['8.9', '13.14', '14.10'],
  'calculations/match': ['8.11', '8.13'],
  'screens/garment/body-measures': ['8.7', '19.1', '19.2'],
  'sewing/wearer/measure-names': [
    ...['8.14', '8.15', '18.9', '19.1', '19.2', '19.3', '19.4', '19.5', '19.6'],
    ...['19.8', '19.9', '19.10', '19.11'],
  ],
  'calculations/placket': ['18.1', '18.3'],
  'sewing/bands/placket': ['1.22', '18.2', '18.4', '18.5'],
  'sewing/bands/pocket': ['18.6', '18.9', '18.10'],
  'sewing/pieces/piece': ['3.13', '18.6', '18.7', '18.11', '21.12'],
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
  'how a corner is trimmed, or a pleat falls on a check, is no calculation here': ['11.21', '18.8'],
  'a whole garment’s thread by rule of thumb, and how strong a seam is': ['4.19', '4.20'],
  'what a thread’s number leaves open, a chart that can’t be, its diameter, studies of stitches': [
    ...['22.6', '22.7', '22.8', '22.9', '22.10', '22.11', '22.12', '22.14'],
  ],
  'names, and what is usual: asked as a field’s measure, or told in words beside the answer': [
    ...['11.18', '12.6', '12.8', '12.9', '12.10', '13.13', '13.15', '16.11', '17.6', '17.8'],
  ],
  'shells of zigzag gathers, a cover of a cord as a facing, a hem band marked on the skirt': [
    ...['13.12', '17.15', '17.16'],
  ],
  'an area that nothing asks for': ['15.9'],
  'from memory, and of children: its table was not read': ['20.47'],
  'kinds of bow, cut parts, limits from memory, and faults counted are no calculation here': [
    ...['21.16', '21.17', '21.18', '21.20', '21.21'],
  ],
  'how a printed marker is drawn and rated; a lay here is told by its length': [
    ...['21.22', '21.23', '21.24'],
  ],
};

/** How many rows there are of each part that is worked through; some numbers are none. */
const ROWS: Readonly<Record<string, number>> = {
  ...{ 4: 20, 7: 20, 8: 15, 11: 21, 12: 13, 13: 15, 14: 10, 15: 11, 16: 11, 17: 16 },
  ...{ 18: 13, 19: 11, 20: 50, 21: 24, 22: 14 },
};
const NONE = ['4.7', '4.14', '7.8', '7.13', '8.10'];
/** Of other parts, what cloth, bands, closings and edges are held to. */
const BESIDE = [
  ...['1.22', '2.16', '3.8', '3.10', '3.13', '3.15', '5.1', '5.2', '5.6', '5.10', '5.12'],
  ...['6.14', '6.21', '9.3', '9.4', '9.5', '23.19'],
];

const every = [
  ...Object.entries(ROWS).flatMap(([part, rows]) =>
    Array.from({ length: rows }, (_, i) => `${part}.${i + 1}`),
  ),
  ...BESIDE,
];
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
