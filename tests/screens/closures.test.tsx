import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { closures } from '../../src/screens/closures/closures.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from './helpers.tsx';

afterEach(cleanup);

test('seven hooks along 46.3 cm are 7.1 cm apart (the invented waistcoat)', async () => {
  open(closures);
  type('Opening', '46.3');
  type('How many', '7');
  const said = await answer();
  expect(said).toContain('7.1 cm apart');
  expect(said).toContain('7 hooks, the first 1.2 cm from the top edge');
  expect(said).toContain('(46.3 cm − 1.2 cm − 2.5 cm) ÷ 6 spaces = 7.1 cm.');
  expect(await screen.findByText('43.8 cm')).toBeTruthy();
});

// 8 buttons, 15 in from first to last: 15/7 = 2.14, about 2 1/8 in (treadleyardgoods.blogspot.com,
// 2023/08, a trade page). Stepped at 2 1/8 the last would be 1/8 in short.
test('8 buttons in 15 in are about 2 1/8 in apart, and the last is at 15 in', async () => {
  open(
    closures,
    { opening: '15', count: '8', top: '0', bottom: '0', item: 'button' },
    benchOf({ unit: 'in', inch: '1/8in' }),
  );
  const said = await answer();
  expect(said).toMatch(/about 2 1\/8.* in apart/);
  expect(said).toContain('815 in');
});

// Four buttonholes 2 in apart, 1 in beyond each end: 8 in (Sun, Auckland, 4 July 1927).
test('4 at 2 in with 1 in at each end fill 8 in', () => {
  const bench = benchOf({ unit: 'in' });
  const exact = { opening: '8', by: 'exact', pitch: '2', top: '1', bottom: '1' };
  const { runs } = answerTo(closures, exact, bench);
  expect(runs[0]?.run.marks.map(({ at }) => at / 203_200)).toEqual([1, 3, 5, 7]);
});

test('a level is met in two ways, and the other one is a press away', async () => {
  open(closures, { level: '20' });
  expect(await answer()).toContain('3 × 6.267 cm, 3 × 7.933 cm');
  fireEvent.click(await screen.findByText(/^Or one spacing/));
  expect(await answer()).toContain('6.667 cm apart'.slice(-8));
  expect(await screen.findByText(/^Or two spacings/)).toBeTruthy();
});

test('what is sewn stays, the rest is spaced around it', () => {
  const { runs } = answerTo(closures, { sewn: '1.2; 9' });
  const marks = runs[0]?.run.marks ?? [];
  expect(marks).toHaveLength(7);
  expect(marks.filter(({ kind }) => kind === 'sewn').map(({ at }) => at / 80_000)).toEqual([
    1.2, 9,
  ]);
});

test('an exact space says what is left over and offers an even one', async () => {
  open(closures, { by: 'exact', pitch: '5' });
  expect(await answer()).toContain('below the last');
  expect(await screen.findByText(/spaced evenly, nothing left over/)).toBeTruthy();
});

test('the other side: an eye stands as far past the edge as the hook is set back', async () => {
  open(closures, { side: 'meet', setBack: '1/8 in' });
  const said = await answer();
  expect(said).toContain('stands 0.318 cm past the edge');
  expect(said).toContain('Both are published');
});

test('following starts from the marks of the answer', () => {
  open(closures);
  expect(screen.getByRole('button', { name: 'Follow' })).toBeTruthy();
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  ['nothing to close', { opening: '0' }, /^Opening: /],
  ['less than nothing', { opening: '1 − 2' }, /^Opening: /],
  ['none', { count: '0' }, /^How many: /],
  ['half a hook', { count: '2.5' }, /^How many: /],
  ['too many', { count: '2001' }, /^How many: .*2,?000/],
  ['not a number', { count: 'seven' }, /^How many: /],
  [
    'ends longer than the opening',
    { top: '30', bottom: '20' },
    /^Last, from the bottom: .*3\.7 cm/,
  ],
  ['a level outside', { level: '60' }, /^One must be at: /],
  ['a sewn one outside', { sewn: '1.2; 60' }, /^Already sewn at: .*60 cm/],
  ['a list that can’t be read', { sewn: '1.2; 3/' }, /^Already sewn at: /],
];

test.each(WRONG)(
  '%s: the field and the mend are named, what was typed stays',
  async (_, set, said) => {
    open(closures, set);
    const lines = (await answer()).replace(/^—/, '');
    expect(lines).toMatch(said);
    const [key, typed] = Object.entries(set).at(-1) ?? ['', ''];
    expect(document.querySelector(`input[name=${key}]`)).toHaveProperty('value', typed);
  },
);

test('2,000 marks are an answer, 2,001 are not', () => {
  const many = { opening: '4000', count: '2000' };
  expect(answerTo(closures, many).runs[0]?.run.marks).toHaveLength(2000);
  expect(workOn(closures, { ...many, count: '2001' }).ok).toBe(false);
});
