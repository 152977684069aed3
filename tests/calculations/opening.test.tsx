import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { opening } from '../../src/calculations/opening/opening.ts';
import { openingOutputs } from '../../src/calculations/opening/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

/** Row 20.50 of the published values: a neckline of 40, a head of 57.4, 2 to spare. */
const neck = { edge: '40', body: '57.4', ease: '2' };

test('20.50 a neckline of 40 and a head of 57.4: an opening of 9.7 cm', async () => {
  open(opening);
  type('Head, round', '57.4');
  const said = await answer();
  expect(said).toContain('9.7 cm of opening, at least');
  expect(said).toContain('(59.4 cm − 40 cm) ÷ 2 = 9.7 cm.');
  expect(said).toContain('Closed, the edge is 19.4 cm too narrow to pass.');
  // Row 20.32.
  expect(said).toContain('In none of 6,068 people does the head pass');
});

test('a head that can’t pass says so first, from the page, and by how much; lengthened it passes', async () => {
  open(opening, { ...neck, slit: '8' });
  const said = await answer();
  expect(said).toMatch(/^1.7 cm of opening is lacking: it doesn’t pass/);
  expect(said).toContain('At least 9.7 cm is needed. Lengthen the opening, or widen the edge.');
  open(opening, { ...neck, slit: '9.7' });
  expect(await screen.findByText(/it passes:/)).toBeTruthy();
});

test('with the opening there is: whether it passes is said first', () => {
  const short = answerTo(opening, { ...neck, slit: '8' });
  expect(short.headline.after).toBe('of opening is lacking: it doesn’t pass');
  expect(short.sentence).toBe(
    'At least 9.7 cm is needed. Lengthen the opening, or widen the edge.',
  );
  const long = answerTo(opening, { ...neck, slit: '12' });
  expect(long.headline).toMatchObject({ before: 'it passes:', after: 'round when open' });
  expect(long.warnings).toEqual([]);
});

// Rows 20.35 and 20.36: a closed cuff as wide as the hand, a closed hem as wide as the heel.
test('20.35, 20.36 what is wide enough closed needs none; a thumb tucked in is more', () => {
  const cuff = answerTo(opening, { passes: 'hand', edge: '24', body: '21.2', ease: '1' });
  expect(cuff.headline).toMatchObject({ before: 'it passes closed:', after: 'to spare' });
  expect(cuff.warnings).toHaveLength(1);
  expect(givenBy(openingOutputs, { edge: '35', body: '34.3', ease: '0.5' })).toEqual({
    ...{ needs: 348, least: 0, open: 'absent by edge', slit: 'absent by way' },
    ...{ opens: 350, over: 2, lacks: 'absent by slit' },
  });
});

test('hips: opened to where the garment is wide enough by itself', () => {
  const skirt = { passes: 'hips', edge: '70', body: '98', ease: '0', below: '100', down: '20' };
  const said = answerTo(opening, skirt);
  expect(said.headline.number).toMatchObject({ whole: '18', decimals: '7' });
  expect(said.sentence).toContain('jams at its end');
  const tube = workOn(opening, { ...skirt, below: '96' });
  expect(tube.ok ? [] : tube.faults.map(({ field }) => field)).toEqual(['below']);
});

test('outputs: the slit is cut as typed, or as little as passes; by what was cut', () => {
  const cut = { ...neck, way: 'slit' };
  expect(givenBy(openingOutputs, cut)).toEqual({
    ...{ needs: 594, least: 97, open: 'absent by way', slit: 97 },
    ...{ opens: 594, over: 0, lacks: 'absent by slit' },
  });
  const typed = { ...cut, slit: '9' };
  expect(givenBy(openingOutputs, typed)).toMatchObject({
    slit: 90,
    opens: 580,
    over: -14,
    lacks: 7,
  });
  const made = { steps: { slit: mm(100) } };
  expect(givenBy(openingOutputs, typed, made)).toMatchObject({ opens: 600, over: 6, lacks: -3 });
});
