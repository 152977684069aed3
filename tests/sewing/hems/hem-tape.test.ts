import fc from 'fast-check';
import { expect, test } from 'vitest';
import { STEP, toGraduation } from '../../../src/lengths/graduation.ts';
import { inches, length, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import { hem } from '../../../src/sewing/hems/hem.ts';
import { facedHem } from '../../../src/sewing/hems/hem-facing.ts';
import { stitchUpOnTape } from '../../../src/sewing/hems/hem-tape.ts';
import { markOut } from '../../../src/sewing/marks.ts';
import { solved } from '../outcomes.ts';

const eighths = STEP['1/8in'];
const millimetres = STEP['1mm'];

// US Army FM 10-16, General Fabric Repair, fig. 8-3: stitched 1/8 in from the inner fold of a 1 in hem.
test('the canvas hem of the manual is stitched 7/8 in up on a tape of eighths', () => {
  const input = { depth: inches(1), turn: inches(0.5), thickness: ZERO, edgeStitch: inches(1 / 8) };
  const canvas = solved(hem(input));
  expect(toInches(stitchUpOnTape(canvas, input.depth, eighths) ?? ZERO)).toBe(7 / 8);
  expect(markOut(canvas.run, eighths).marks.map(({ at }) => toInches(at))).toEqual([
    0.5, 1.5, 2.375,
  ]);
});

test('stitching 0.4 mm from the inner fold is not rounded onto it', () => {
  const input = { depth: mm(20), turn: mm(7), thickness: ZERO, edgeStitch: mm(0.4) };
  const narrow = solved(hem(input));
  expect(toMm(stitchUpOnTape(narrow, input.depth, millimetres) ?? ZERO)).toBe(19);
  expect(markOut(narrow.run, millimetres).marks.map(({ at }) => toMm(at))).toEqual([7, 27, 46]);
});

test('where the tape has no line between hem line and inner fold, it is too coarse', () => {
  const input = { depth: mm(1), turn: mm(1), thickness: ZERO, edgeStitch: mm(0.3) };
  const tiny = solved(hem(input));
  expect(stitchUpOnTape(tiny, input.depth, millimetres)).toBeUndefined();
  expect(markOut(tiny.run, millimetres).tooCoarse).toBe(true);
  expect(markOut(tiny.run, STEP['0.5mm']).tooCoarse).toBe(false);
});

// Worked here: cloth of 2 mm folds 0.86 shorter. The lines lie at 7.60 and 27.14, pressed at 8 and 27: 19 and 0.86 up.
test('thick cloth pressed on the tape’s lines is stitched below where its inner edge comes to lie', () => {
  const input = { depth: mm(20.4), turn: mm(8.03), thickness: mm(2), edgeStitch: ZERO };
  const up = stitchUpOnTape(solved(hem(input)), input.depth, millimetres);
  expect(toMm(up ?? ZERO)).toBe(19);
});

const units = (min: number, max: number) => fc.integer({ min, max }).map(length);
const tapes = fc.constantFrom(...Object.values(STEP));
const hems = fc
  .record({
    depth: units(8000, 400_000),
    part: fc.double({ min: 0, max: 1, noNaN: true }),
    edgeStitch: units(0, 40_000),
    thickness: units(0, 16_000),
  })
  .map(({ part, ...rest }) => ({ ...rest, turn: length(Math.floor(rest.depth * part)) }));

test('pressed and stitched as the tape shows it, the stitching is inside the hem', () => {
  fc.assert(
    fc.property(hems, tapes, (input, step) => {
      const outcome = hem(input);
      fc.pre(outcome.ok);
      const exact = solved(outcome);
      const up = stitchUpOnTape(exact, input.depth, step);
      const first = exact.firstPress === undefined ? 0 : toGraduation(exact.firstPress, step);
      const line = toGraduation(exact.hemLine, step);
      // Flat from fold to fold, less what half of each fold adds.
      const pressed = line - first - (exact.folds.first + exact.folds.last) / 2;
      const edge = Math.min(input.depth, pressed);
      if (up === undefined) {
        expect(edge).toBeLessThanOrEqual(step);
        return;
      }
      expect(up).toBeGreaterThan(0);
      expect(up).toBeLessThan(edge);
      // As near as the tape has it, or the first or last line there is inside.
      const atEnd = up + step >= edge || up === step;
      expect(atEnd || Math.abs(up - exact.stitchUp) <= step / 2).toBe(true);
    }),
    { seed: 1210 },
  );
});

test('no tape marks the stitching of a hem or a facing on a fold or past it', () => {
  fc.assert(
    fc.property(hems, tapes, (input, step) => {
      const outcomes = [hem(input), facedHem({ ...input, seam: mm(1) })];
      for (const outcome of outcomes) {
        if (!outcome.ok) continue;
        const { run, allowance } = outcome.value;
        const { marks, tooCoarse } = markOut(run, step);
        const [line, stitch] = [run.marks.at(-2)?.at ?? 0, marks.at(-1)?.at ?? 0];
        const inside = stitch > line && stitch < allowance + input.depth;
        expect(inside || tooCoarse).toBe(true);
      }
    }),
    { seed: 1211 },
  );
});
