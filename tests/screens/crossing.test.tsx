import { cleanup, fireEvent, screen } from '@testing-library/preact';
import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { crossing } from '../../src/screens/crossing/crossing.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, workOn } from './helpers.tsx';

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
  expect(taken.headline.number).toMatchObject({ whole: '0' });
  expect(taken.offers.filter(({ take }) => !take.upperPitch)).toEqual([]);
});

test('where no shift is clear the least bad is shown, and a pitch that is clear offered', async () => {
  const set = { ...NARROW, rows: 'staggered', upperRows: 'staggered', angle: '60' };
  open(crossing, set);
  expect(await answer()).toMatch(/No shift is clear\. This one has the fewest clashes: 1/);
  fireEvent.click(await screen.findByText(/Hole to hole .* on the upper strip: clear/));
  expect(await answer()).toContain('Then no hole clashes');
});

test('with nothing to move and clashes left, the headline does not say that it lies well', () => {
  const { headline, sentence } = answerTo(crossing, { angle: '60' }, benchOf({ unit: 'mm' }));
  expect(headline).toMatchObject({ number: { whole: '0' }, after: 'to move: no shift is better' });
  expect(sentence).toBe('No shift is clear. This one has the fewest clashes: 2.');
});

test('a shift of next to nothing that clears the clashes is one', () => {
  const lower = { width: '20', pitch: '10', margin: '5', rows: 'staggered', phase: '5.5' };
  const upper = { upperWidth: '10', upperPitch: '10', upperMargin: '5', upperRows: 'one' };
  const set = { angle: '30', hole: '2', ...lower, ...upper, upperPhase: '7.66' };
  const { headline, sentence } = answerTo(crossing, set, benchOf({ unit: 'mm' }));
  expect(headline.after).toBe('to move the upper strip along');
  expect(sentence).toContain('Then no hole clashes');
});

test('new holes are listed, along and across, and can be followed', async () => {
  open(crossing);
  const said = await answer();
  expect(said).toContain('New holes through the lower strip6');
  // Two rows at 5 mm from the crossing, moved by 4: holes at −4 and 4 of the lower strip's
  // middle line; its holes are at 8i, so the last before them 8 mm before the crossing.
  expect(said).toContain(
    'Hole to measure byof the lower strip’s first row, 0.8 cm before the crossing of the middle lines',
  );
  expect(said).toContain('from the first row’s last hole before them');
  expect(said).toMatch(/10\.3 cm 0\.\d cm across/);
  expect(said).toContain('Every mark falls on a line of your tape');
  expect(screen.getByRole('button', { name: 'Follow' })).toBeTruthy();
});

test('a single new hole is told in a line', () => {
  // The lower strip is hardly wider than the upper one's pitch, its row near one edge.
  const lower = { pitch: '4', width: '0.8', margin: '0.15', rows: 'one' };
  const upper = { upperPitch: '0.75', upperRows: 'one' };
  const { lines, runs } = answerTo(crossing, { ...lower, ...upper });
  expect(runs[0]?.run.marks).toHaveLength(1);
  expect(lines.at(-1)?.label).toBe('New hole');
  expect(lines.at(-1)?.value).toMatch(/ on, .* in from the first row’s edge$/);
});

const rows = fc.constantFrom('one', 'level', 'staggered');
const of = (...sizes: string[]) => fc.constantFrom(...sizes);
const sets = fc.record({
  width: of('1/2', '5/8', '3/4', '0.8'),
  upperWidth: of('1/2', '5/8', '3/4', '0.8'),
  pitch: of('3/16', '1/4', '5/16', '3/8', '0.27'),
  upperPitch: of('3/16', '1/4', '5/16', '3/8', '0.27'),
  margin: of('1/8', '5/32', '3/16', '0.17'),
  upperMargin: of('1/8', '5/32', '3/16', '0.17'),
  upperPhase: of('', '1/16', '3/16', '0.1', '1/7'),
  rows,
  upperRows: rows,
  angle: of('35', '60', '75', '90', '120'),
});

test('what is offered lies as it was said to, once taken', () => {
  const lies = (draft: Record<string, string>, unit: 'in' | 'cm', label: string) =>
    answerTo(crossing, draft, benchOf({ unit })).lines.find((line) => line.label === label)?.value;
  fc.assert(
    fc.property(sets, of('in', 'cm'), (set, named) => {
      const unit = named as 'in' | 'cm';
      const draft = Object.fromEntries(
        // The same sizes on both benches: what counts is how the offer is written.
        Object.entries(set).map(([key, text]) => [
          key,
          /angle|[rR]ows/.test(key) || text === '' ? text : `${text} in`,
        ]),
      );
      const work = workOn(crossing, draft, benchOf({ unit }));
      if (!work.ok) return;
      for (const { take } of work.answer.offers) {
        const taken = lies({ ...draft, ...take }, unit, 'As they lie');
        if (take.upperPitch) expect(taken).toMatch(/, 0 clashing/);
        else expect(taken).toBe(lies(draft, unit, 'Moved'));
      }
    }),
    { numRuns: 150 },
  );
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  ['too sharp', { angle: '10' }, /Angle between them: give a number from 20 to 160/],
  [
    'breaking the edge',
    { upperMargin: '0.1' },
    /Upper: edge to hole: 0\.1 cm must be more than 0\.1 cm/,
  ],
  ['overlapping', { pitch: '0.2' }, /Lower: hole to hole: 0\.2 cm must be more than 0\.2 cm/],
  ['rows that overlap', { margin: '1' }, /Lower: edge to hole: 1 cm must be less than 0\.9 cm/],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(crossing, set);
  expect(await answer()).toMatch(said);
});
