import { expect, test } from 'vitest';
import { inches, mm } from '../../../src/lengths/length.ts';
import { WAISTBAND_WIDE } from '../../../src/sewing/sources/bands.ts';
import { HANGS } from '../../../src/sewing/sources/circles.ts';
import { CONTROL, LEGS_DIFFER } from '../../../src/sewing/sources/darts.ts';
import {
  BIAS_RUFFLE,
  FRILL,
  OWN_SAMPLE,
  RUFFLE,
  SPAN,
} from '../../../src/sewing/sources/gathers.ts';
import { IRON_ONE_DOT } from '../../../src/sewing/sources/safety.ts';
import { READINGS, WASHES } from '../../../src/sewing/sources/shrinkage.ts';
import { WASTE, WORKING } from '../../../src/sewing/sources/thread.ts';
import { GROUPS_APART, TUCKS_WORKED } from '../../../src/sewing/sources/tucks.ts';

/** Figures that a page quotes beside its own, as they are printed; the reference stands at each. */
test.each([
  ['fullness of a frill, 13.3', FRILL.value, 3],
  ['old inches in a new one, 13.10', OWN_SAMPLE.value, 2.5],
  ['a ruffle cut straight, 13.1', RUFFLE.value, [1 + 1 / 3, 1 + 1 / 2]],
  ['a ruffle cut on the bias, 13.2', BIAS_RUFFLE.value, [1 + 1 / 4, 1 + 1 / 3]],
  ['fullness by cloth and taste, 13.9', SPAN.value, [1 + 1 / 2, 3]],
  ['hours that a skirt hangs, 2.17 and 16.9', HANGS.value, [24, 48]],
  ['thread lost, in per cent, 4.6', WASTE.value, [10, 20]],
  ['a thread worked with by hand, 4.18', WORKING.value, [inches(18), inches(24)]],
  ['how far the legs of a dart may differ, 15.3', LEGS_DIFFER.value, 0],
  ['what darts take, 15.1', CONTROL.value, 'difference'],
  ['a waistband as it shows, 14.7', WAISTBAND_WIDE.value, [mm(40), mm(50)]],
  ['tucks more than gaps, 12.3', TUCKS_WORKED.value, 1],
  ['samples that are measured, 21.2', READINGS.value, 3],
  ['washes before, 21.11', WASHES.value, 1],
  ['an iron of one dot, in °C', IRON_ONE_DOT.value, 110],
  ['groups of tucks apart, in groups, 12.7', GROUPS_APART.value, 1],
])('%s', (_, quoted, printed) => {
  expect(quoted).toEqual(printed);
});
