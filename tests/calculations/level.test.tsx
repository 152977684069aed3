import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { levelDrawing } from '../../src/calculations/level/drawing.ts';
import { level } from '../../src/calculations/level/level.ts';
import { levelOutputs } from '../../src/calculations/level/outputs.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

test('four places: what comes off each, and what to do before it does', async () => {
  open(level, { sweep: '165' });
  const said = await answer();
  expect(said).toMatch(/^4 cm most to trim, at one place/);
  expect(said).toContain('Place 3: trim1 cm');
  expect(said).toContain('38 cm − 4 cm − 31.5 cm = 2.5 cm.');
  expect(said).toContain('33 cm + 4 cm = 37 cm, the lowest.');
  expect(said).toContain('Places to measure at22 to 65, evenly round');
  expect(said).toContain('Pin the hem up and try it on before you cut');
});

test('a place that lacks cloth is said, and the lowest hem is one press away', async () => {
  open(level, { hem: '36' });
  const said = await answer();
  expect(said).toContain('Place 3: lacks1 cm');
  expect(said).toContain('raise the hem to 37 cm');
  expect(await screen.findByRole('button', { name: /^Or the lowest hem: 37 cm/ })).toBeDefined();
  const [offer] = answerTo(level, { hem: '36' }).offers;
  const then = answerTo(level, offer?.take ?? {});
  expect([then.offers, then.warnings]).toEqual([[], []]);
  expect(then.lines).toContainEqual({ label: 'Place 3: trim', value: '0 cm' });
});

test.each<[string, Record<string, string>, RegExp]>([
  ['no place', { heights: '' }, /Raw edge above the floor, place by place: give at least 1/],
  ['a hem on the floor', { hem: '0' }, /Finished hem above the floor: give more than nothing/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(level, set);
  expect(await answer()).toMatch(said);
});

test('the drawing has every height, the hem and the most that is trimmed', () => {
  const bench = benchOf();
  const drawn = levelDrawing.draw(level.start(bench), bench);
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual([
    ...['heights 30 cm', 'heights 31.5 cm', 'heights 33 cm', 'heights 32 cm'],
    ...['hem 38 cm', 'allowance 4 cm', 'most 4 cm'],
  ]);
});

test('it is marked, then cut, which cannot be undone, then turned up', () => {
  const steps = levelOutputs.outputs.flatMap(({ key, step }) =>
    step ? [`${key} ${step.undoable}`] : [],
  );
  expect(steps).toEqual(['hem true', 'most false', 'turn true']);
  expect(givenBy(levelOutputs, {})).toMatchObject({ most: 40, lowest: 370, uneven: 30 });
  expect(givenBy(levelOutputs, { allowance: '' })).toMatchObject({ turn: 'absent by allowance' });
});
