import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, length, ZERO } from '../../../src/lengths/length.ts';
import { type MitreInput, mitre } from '../../../src/sewing/hems/mitre.ts';
import { mitreAsPressed } from '../../../src/sewing/hems/mitre-made.ts';
import type { Run } from '../../../src/sewing/run.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const input = fc.record({
  depth: fc.integer({ min: 80_000, max: 400_000 }).map(length),
  side: fc.integer({ min: 80_000, max: 400_000 }).map(length),
  angle: fc.integer({ min: 60, max: 110 }),
  thickness: fc.integer({ min: 0, max: 16_000 }).map(length),
  turned: fc.constantFrom('once', 'twice', 'equal'),
  edgeStitch: fc.constant(ZERO),
});
const fold = ({ marks }: Run) => marks.find(({ kind }) => kind === 'press')?.at ?? ZERO;

// The two marks of p and q are 2(p + q·cos φ) and 2(q + p·cos φ): the raw corner mirrored at the
// finished one (derived here a second way).
test('folds pressed anywhere have their marks by themselves, whatever the hems were to be', () => {
  const off = fc.integer({ min: -8000, max: 8000 });
  fc.assert(
    fc.property(input, off, off, (hems: MitreInput, by, more) => {
      const planned = mitre(hems);
      fc.pre(planned.ok);
      const { runs } = solved(planned);
      const bottom = exactLength(fold(runs.bottom) + by);
      const side = exactLength(fold(runs.side) + more);
      const pressed = mitreAsPressed(hems, { bottom, side });
      fc.pre(pressed.ok);
      const { alongBottom, upSide } = solved(pressed);
      const cosine = Math.cos((hems.angle * Math.PI) / 180);
      // To a thousandth of a millimetre: the hems as pressed are whole units.
      expect(Math.abs(alongBottom - 2 * (bottom + side * cosine))).toBeLessThan(8);
      expect(Math.abs(upSide - 2 * (side + bottom * cosine))).toBeLessThan(8);
    }),
    { seed: 1308 },
  );
});

test('with nothing pressed it is the mitre as planned, with its problems', () => {
  fc.assert(
    fc.property(input, (hems: MitreInput) => {
      expect(mitreAsPressed(hems, {})).toEqual(mitre(hems));
    }),
    { seed: 1309 },
  );
  const flat = { angle: 5, edgeStitch: ZERO, thickness: ZERO, turned: 'once' } as const;
  const hems = { ...flat, depth: length(80_000), side: length(80_000) };
  expect(fieldsOf(mitreAsPressed(hems, { bottom: exactLength(9000) }))).toEqual(['angle']);
});
