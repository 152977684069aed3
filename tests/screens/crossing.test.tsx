import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { crossing } from '../../src/screens/crossing/crossing.ts';
import { answer, answerTo, open } from './helpers.tsx';

afterEach(cleanup);

const NARROW = { width: '1.6', upperWidth: '1.6', margin: '0.4', upperMargin: '0.4' };

test('how two strips lie is counted, drawn, and a shift offered', async () => {
  open(crossing);
  const said = await answer();
  expect(said).toMatch(/As they lie\d+ shared, \d+ clear, \d+ clashing/);
  expect(await screen.findByRole('img', { name: /^The crossing/ })).toBeTruthy();
  expect(said).toContain('New holes through the lower strip');
  expect((await screen.findAllByText('hole, made')).length).toBeGreaterThan(0);
});

test('taking the shift leaves nothing to move', async () => {
  const { offers, headline } = answerTo(crossing, { upperPhase: '1 mm', angle: '60' });
  expect(headline.after).toContain('to move the upper strip along');
  const taken = answerTo(crossing, { angle: '60', ...offers[0]?.take });
  expect(taken.headline.after).toBe('to move: it lies well');
});

test('where no shift is clear the least bad is shown, and a pitch that is clear offered', async () => {
  const set = { ...NARROW, rows: 'staggered', upperRows: 'staggered', angle: '60' };
  open(crossing, set);
  expect(await answer()).toMatch(/No shift is clear\. This one has the fewest clashes: 1/);
  fireEvent.click(await screen.findByText(/Hole to hole .* on the upper strip: clear/));
  expect(await answer()).toContain('Then no hole clashes');
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  ['too sharp', { angle: '10' }, /Angle between them: give a number from 20 to 160/],
  [
    'breaking the edge',
    { upperMargin: '0.1' },
    /Upper: edge to hole: 0\.1 cm must be more than 0\.1 cm/,
  ],
  ['overlapping', { pitch: '0.2' }, /Lower: hole to hole: 0\.2 cm must be more than 0\.2 cm/],
  ['past the middle', { margin: '1' }, /Lower: edge to hole: 1 cm must be less than 1 cm/],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(crossing, set);
  expect(await answer()).toMatch(said);
});
