import { expect, test } from 'vitest';
import { crossingOutputs } from '../../src/calculations/crossing/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { givenBy } from './given.ts';

// Square, by hand: the upper strip's rows lie ∓5 mm along the lower one, its holes at −8, 0 and 8 across
// it. The lower strip's hole before −5 is at −8: 3 mm and 13 mm on from it, three each. Moved by 4 mm
// they lie at −4 and 4, and ∓12 is off a strip 20 mm wide: two each.
const SQUARE = { rows: 'level', upperRows: 'level' };

test('square strips that lie well are not moved, and have six new holes', () => {
  const given = givenBy(crossingOutputs, SQUARE);
  expect(given).toEqual({ shift: 0, holes: [3, 3, 3, 13, 13, 13], count: 6 });
});

test('moved otherwise than asked, the holes are where it came to lie', () => {
  const given = givenBy(crossingOutputs, SQUARE, { steps: { shift: mm(4) } });
  expect(given).toMatchObject({ shift: 0, holes: [3, 3, 13, 13], count: 4 });
});

test('where every hole is shared there is none to punch', () => {
  const one = { rows: 'one', margin: '10 mm', pitch: '30 mm' };
  const upper = { upperRows: 'one', upperMargin: '10 mm', upperPitch: '30 mm' };
  expect(givenBy(crossingOutputs, { ...one, ...upper })).toEqual({ shift: 0, holes: [], count: 0 });
});
