import { expect, test } from 'vitest';
import { mm, ZERO } from '../../src/lengths/length.ts';
import { type BandInput, band } from '../../src/sewing/bands/band.ts';
import { collar } from '../../src/sewing/bands/collar.ts';
import { loops } from '../../src/sewing/closures/loops.ts';
import { panels } from '../../src/sewing/cloth/repeat.ts';
import { followedMarks } from '../../src/sewing/equal-parts.ts';
import type { PleatsInput } from '../../src/sewing/fullness/pleat-input.ts';
import { pleats } from '../../src/sewing/fullness/pleats.ts';
import type { TucksInput } from '../../src/sewing/fullness/tuck-input.ts';
import { tucks } from '../../src/sewing/fullness/tucks.ts';
import { hem } from '../../src/sewing/hems/hem.ts';
import { holeRun } from '../../src/sewing/hole-run.ts';
import type { Run } from '../../src/sewing/run.ts';
import { solved } from './outcomes.ts';

const BAND: BandInput = {
  ...{ girth: mm(700), ease: mm(20), opens: 'back', overlap: mm(20), underlap: mm(50) },
  ...{ pass: undefined, wide: mm(40), make: 'fold', thickness: undefined, seam: mm(15) },
  front: undefined,
};
const COLLAR = {
  ...{ front: mm(110), back: mm(85), past: ZERO, deep: mm(70), stand: mm(30), outer: undefined },
  ...{ upperThick: undefined, underThick: undefined, between: undefined, rolled: 180 },
  ...{ under: mm(1), seam: mm(10) },
};
const PLEATS: Omit<PleatsInput, 'kind'> = {
  ...{ finished: mm(920), rule: { by: 'count', count: 18 }, depth: mm(40), ends: 'fold' },
  ...{ flat: ZERO, seam: ZERO },
};
const LOOPS = { around: mm(700), loops: 5, belt: mm(30), thick: mm(2), ease: mm(3), turn: mm(10) };
const HEM = { depth: mm(20), thickness: ZERO, edgeStitch: mm(2) };
const TUCKS: TucksInput = {
  ...{ finished: mm(280), first: mm(20), last: mm(20), spread: { by: 'count', count: 5 } },
  ...{ depth: mm(4), step: ZERO, lies: 'last', seam: ZERO },
};

/** A mark is known by its label, which is what is said beside it: its rank. */
test.each<[string, number, () => Run]>([
  ['a band', 5, () => solved(band(BAND)).run],
  ['the upper of a collar', 3, () => solved(collar(COLLAR)).upper.run],
  [
    'an edge that follows',
    3,
    () => solved(followedMarks({ length: mm(90) }, [10, 20, 80].map(mm))).edge,
  ],
  ['a hem turned once', 2, () => solved(hem({ ...HEM, turn: ZERO })).run],
  ['a hem turned twice', 3, () => solved(hem({ ...HEM, turn: mm(7) })).run],
  ['a row of holes', 7, () => holeRun(7, mm(8))],
  ['loops', 5, () => solved(loops(LOOPS)).run],
  ['knife pleats', 36, () => solved(pleats({ ...PLEATS, kind: 'knife' })).run],
  [
    'box pleats',
    8,
    () => solved(pleats({ ...PLEATS, kind: 'box', rule: { by: 'count', count: 2 } })).run,
  ],
  ['panels', 4, () => solved(panels({ span: mm(320), repeats: 1 }, 4, mm(1100))).run],
  ['tucks', 15, () => solved(tucks(TUCKS)).run],
])('the marks of %s are numbered from 1', (_, count, run) => {
  expect(run().marks.map(({ label }) => label)).toEqual(
    Array.from({ length: count }, (_, i) => `${i + 1}`),
  );
});
