import { expect, test } from 'vitest';
import type { KeptRun } from '../../src/garment/garment.ts';
import { isAsBefore, type PlannedMark } from '../../src/garment/which-mark.ts';
import { UNITS_PER_MM } from '../../src/lengths/length.ts';

const STEP = UNITS_PER_MM;
const mark = (label: string, mm: number, sewn = false): PlannedMark => ({
  label,
  at: mm * UNITS_PER_MM,
  sewn,
  alike: true,
});
const old: KeptRun = {
  planned: { '1': 10 * STEP, '2': 30 * STEP },
  made: { '1': '', '2': '34 mm' },
};
const isAs = (...marks: PlannedMark[]) => isAsBefore(old, marks, STEP);

test('a plan is as it was with as many marks, each where it was planned', () => {
  expect(isAs(mark('1', 10), mark('2', 30))).toBe(true);
  expect(isAs(mark('1', 10), mark('2', 31))).toBe(false);
  expect(isAs(mark('1', 11), mark('2', 30))).toBe(false);
  expect(isAs(mark('1', 10))).toBe(false);
  expect(isAs(mark('1', 10), mark('2', 30), mark('3', 50))).toBe(false);
  expect(isAs(mark('1', 10), mark('3', 30))).toBe(false);
});

test('a sewn mark is where it was said to be made, within half a graduation', () => {
  expect(isAs(mark('1', 10, true), mark('2', 34, true))).toBe(true);
  expect(isAs(mark('1', 10.5, true), mark('2', 33.5, true))).toBe(true);
  expect(isAs(mark('1', 10.6, true), mark('2', 34, true))).toBe(false);
  expect(isAs(mark('1', 10, true), mark('2', 33.4, true))).toBe(false);
  // Not where it was planned, when it was made elsewhere.
  expect(isAs(mark('1', 10, true), mark('2', 30, true))).toBe(false);
});

test('a sewn mark nothing was said of, or nothing that can be read, was nowhere before', () => {
  const said = (made: KeptRun['made']) =>
    isAsBefore({ planned: { '1': 0 }, made }, [mark('1', 0, true)], STEP);
  expect(said({})).toBe(false);
  expect(said({ '1': 'at the dart' })).toBe(false);
  expect(said({ '1': '' })).toBe(true);
  expect(said({ '1': '0.5 mm' })).toBe(true);
});
