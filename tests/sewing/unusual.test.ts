import { expect, test } from 'vitest';
import { mm } from '../../src/lengths/length.ts';
import { unusual } from '../../src/sewing/unusual.ts';

// The ranges are ours (common practice, no source): both ends are usual, and nothing at all is not asked about.
test.each([
  ['hemDepth', mm(3), undefined],
  ['hemDepth', mm(3) - 1, { past: 'least', end: mm(3), source: 'common' }],
  ['hemDepth', mm(250), undefined],
  ['hemDepth', mm(250) + 1, { past: 'most', end: mm(250), source: 'common' }],
  ['hemDepth', 0, undefined],
  ['hemDepth', -1, undefined],
  ['closures', 60, undefined],
  ['closures', 61, { past: 'most', end: 60, source: 'common' }],
] as const)('%s of %s', (measure, value, found) => {
  expect(unusual(measure, value)).toEqual(found);
});
