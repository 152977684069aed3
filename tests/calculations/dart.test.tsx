import { cleanup } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { dart } from '../../src/calculations/dart/dart.ts';
import { dartDrawing } from '../../src/calculations/dart/drawing.ts';
import { dartOutputs } from '../../src/calculations/dart/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

test('3 cm on a leg of 12: the tip of the raw edge, rounded so that nothing is cut short', async () => {
  open(dart);
  const said = await answer();
  expect(said).toMatch(/^about 13.7 cm from the point to the tip of the raw edge/);
  expect(said).toContain(
    'Mark the ends of its legs 3 cm apart on the stitch line, and its point 11.9 cm from there.',
  );
  expect(said).toContain('3 cm ÷ (2 × 12 cm) = 0.125, the sine of half of 14.36°.');
  expect(said).toContain('12 cm + 1.5 cm ÷ sin 90° = 13.5 cm.');
  expect(said).toContain('13.5 cm × sin 90° ÷ sin 97.18° = 13.607 cm.');
  expect(said).toContain('Cut the edge only when the dart is folded and pinned');
});

// Rows 15.4 and 15.5 conflict: 3/4 to 1 in (a teaching page), 1 1/2 in (government teaching book, 2024, page 199).
test('how far its point is short of the fullest part: both sources’ range, and what is outside it', async () => {
  open(dart, { full: '14.5' });
  expect(await answer()).toContain(
    'Point short of the fullest part2.594 cm; sources say 1.905 cm to 3.81 cm',
  );
  const warned = (full: string) => answerTo(dart, { full }).warnings.join(' ');
  expect(warned('14.5')).toBe('');
  expect(warned('13')).toContain('Its point is not 1.905 cm to 3.81 cm short');
  expect(warned('16')).toContain('Its point is not 1.905 cm to 3.81 cm short');
  expect(warned('11')).toContain('past the fullest part');
});

test('a raw edge cut straight across dips when it is sewn: told, with by how much', () => {
  const straight = { by: 'angle', angle: '20', slant: '100', other: '100' };
  expect(answerTo(dart, straight).warnings.join(' ')).toContain(
    'the edge has a dip of 20.00° at the dart: 0.868 cm at 5 cm to each side',
  );
  expect(answerTo(dart, { ...straight, other: '70' }).warnings.join(' ')).toContain(
    'a peak of 10.00°',
  );
  expect(answerTo(dart, { ...straight, other: '80' }).warnings).toEqual([]);
});

// Row 15.10, geometry: 30° makes a cone of 66.4°.
test('over 30° it points, under 3 mm it is eased', () => {
  const warned = (angle: string) => answerTo(dart, { by: 'angle', angle }).warnings.join(' ');
  expect(warned('30')).toBe('');
  expect(warned('30.01')).toContain('a cone of 66.4° to each side');
  expect(warned('1')).toContain('better eased in');
});

// Rows 15.6 and 15.7, geometry.
test('moved, split, gathered, or partly in a seam', async () => {
  open(dart, { what: 'moved', width: '4', leg: '20', reach: '12' });
  expect(await answer()).toMatch(/^2.4 cm across, at the ends of its legs/);
  cleanup();
  open(dart, { what: 'moved', width: '4', leg: '20', reach: '20', parts: '2' });
  expect(await answer()).toContain('11.48 ÷ 2 = 5.74, in °. 2 × 20 cm × sin 2.87° = 2.003 cm.');
  cleanup();
  open(dart, { what: 'gathers', zone: '12' });
  expect(await answer()).toContain('12 cm + 3 cm = 15 cm. 15 cm ÷ 12 cm = 1.25.');
  cleanup();
  open(dart, { what: 'seam' });
  expect(await answer()).toContain('14.36 × 50 % = 7.18, in °. 14.36 − 7.18 = 7.18, in °.');
});

test('pointed at both ends, its legs differ', async () => {
  open(dart, { what: 'two' });
  const said = await answer();
  expect(said).toMatch(/^about 12.1 cm along each upper leg/);
  expect(said).toContain('12 cm × 12 cm + 1.5 cm × 1.5 cm = 12.093 cm × 12.093 cm.');
  expect(said).toContain('Each lower leg is 14.1 cm');
});

test.each<[string, Record<string, string>, RegExp]>([
  [
    'legs too short',
    { width: '24' },
    /Width where it is widest: 24 cm must be less than 23.909 cm/,
  ],
  [
    'an edge that never meets',
    { slant: '165' },
    /Leg to edge, side it is pressed to, °: give a number from 20 to 160/,
  ],
  [
    'a dart wider than its piece: the piece is as it is',
    { piece: '2' },
    /Width where it is widest: 3 cm must be less than 2 cm/,
  ],
  [
    'the same of an angle, which has no width to give',
    { by: 'angle', piece: '2' },
    /Piece across, there: 2 cm must be more than 3.133 cm/,
  ],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(dart, set);
  expect(await answer()).toMatch(said);
});

test('the drawing has legs, point and tip on it, to scale', () => {
  const bench = benchOf();
  const drawn = dartDrawing.draw(dart.start(bench), bench);
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual([
    'width 3 cm',
    'leg 12 cm',
    'point 11.906 cm',
    'tip 13.607 cm',
    'seam 1.5 cm',
  ]);
});

describe('what it gives to a garment', () => {
  test('its edge is cut after it is marked, and cannot be undone', () => {
    const steps = dartOutputs.outputs.flatMap(({ key, step }) =>
      step ? [[key, step.stage, step.undoable, step.bound]] : [],
    );
    expect(steps.slice(0, 4)).toEqual([
      ['width', 'cut', true, undefined],
      ['point', 'cut', true, undefined],
      ['tip', 'cut', false, 'least'],
      ['leg', 'join', true, undefined],
    ]);
  });

  test('legs marked wider move the tip; what isn’t made is absent', () => {
    expect(givenBy(dartOutputs, {})).toMatchObject({
      width: 30,
      leg: 120,
      moved: 'absent by what',
    });
    const wider = givenBy(dartOutputs, {}, { steps: { width: mm(34), point: mm(119) } });
    expect(Number(wider.tip)).toBeCloseTo(
      ((Math.hypot(119, 17) + 15) * Math.hypot(119, 17)) / 119,
      3,
    );
    expect(givenBy(dartOutputs, { what: 'two' })).toMatchObject({ tip: 'absent by what' });
    expect(givenBy(dartOutputs, { what: 'gathers', zone: '12' })).toMatchObject({
      strip: 150,
      ratio: 1.25,
    });
  });
});
