import { expect, test } from 'vitest';
import { CALCULATIONS, DRAWINGS } from '../../src/calculations/list.ts';
import { benchOf } from '../controls/helpers.ts';

/** What stands on each drawing as its page begins: what was given, and what was found of it. */
const AS_BEGUN = {
  facing: {
    given: { depth: '4 cm', edgeStitch: '0.2 cm', turn: '0.6 cm', seam: '1 cm' },
    found: { 'stitch-up': '3.8 cm', allowance: '1 cm', 'facing-deep': '5.6 cm' },
  },
  corner: {
    given: { depth: '4 cm', side: '1.5 cm', edgeStitch: '0.2 cm' },
    found: { 'mitre-bottom': '3 cm', 'mitre-side': '8 cm' },
  },
  buttonhole: {
    given: { diameter: '1.524 cm', thickness: '0.3 cm' },
    found: {
      length: '1.824 cm',
      'past-centre': '0.318 cm',
      'inside-centre': '1.506 cm',
      'overlap-least': '1.143 cm',
    },
  },
  seam: {
    given: { given: '1.5 cm', second: '0.6 cm', trim: '0.3 cm', first: '0.9 cm' },
    found: { sewn: '1.5 cm' },
  },
  edging: {
    given: { width: '2 cm', margin: '0.5 cm', hole: '0.2 cm', pitch: '0.8 cm', length: '40 cm' },
    found: { count: '50 holes' },
  },
  crossing: {
    given: {
      width: '2 cm',
      margin: '0.5 cm',
      pitch: '0.8 cm',
      phase: '0 cm',
      upperWidth: '2 cm',
      upperMargin: '0.5 cm',
      upperPitch: '0.8 cm',
      upperPhase: '0 cm',
      hole: '0.2 cm',
    },
    found: { count: '6 holes' },
  },
  lacing: {
    given: {
      holes: '50 holes',
      pitch: '0.8 cm',
      margin: '0.5 cm',
      thickness: '0.3 cm',
      tail: '10 cm',
      longest: '182.88 cm',
    },
    found: { lace: '120.427 cm' },
  },
  pleats: {
    given: { seam: '1 cm', depth: '4 cm', finished: '92 cm' },
    // 92 ÷ 18; 92 + 18 × 2 × 4 and two seams of 1.
    found: { width: '5.111 cm', strip: '238 cm', count: '18 pleats' },
  },
  piece: {
    given: {
      width: '40 cm',
      length: '60 cm',
      top: '1.5 cm',
      bottom: '4 cm',
      side: '1.5 cm',
      count: '1 piece',
    },
    found: { 'cut-width': '43 cm', 'cut-length': '65.5 cm' },
  },
};

test.each(Object.entries(AS_BEGUN))('%s as it begins', async (id, { given, found }) => {
  const bench = benchOf();
  const page = await CALCULATIONS[id]?.();
  const drawing = await DRAWINGS[id]?.();
  const drawn = page && drawing?.draw(page.start(bench), bench);
  const standing = (whose: 'given' | 'found') =>
    Object.fromEntries(
      drawn?.dimensions.flatMap(({ by, text }) =>
        whose in by ? [[Object.values(by)[0], text]] : [],
      ) ?? [],
    );
  expect(standing('given')).toEqual(given);
  expect(standing('found')).toEqual(found);
});
