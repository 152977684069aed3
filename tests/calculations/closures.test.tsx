import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { closures } from '../../src/calculations/closures/closures.ts';
import { closuresDrawing } from '../../src/calculations/closures/drawing.ts';
import { exactLength, mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';

afterEach(cleanup);

// By hand: of 1.2, 8.3, 15.4 … 43.8 the last sewn at 45: 45 − 36.7 = 8.3 is the widest then.
test('the widest space that is drawn is the widest of the row as it stands', () => {
  const bench = benchOf();
  const draft = {
    ...closures.start(bench),
    opening: '46.3',
    count: '7',
    top: '1.2',
    bottom: '2.5',
  };
  const row = (last: number) => ({
    datum: 'top-edge' as const,
    length: mm(463),
    marks: [12, 83, 154, 225, 296, 367, last].map((at, i) => {
      return { at: exactLength(mm(at)), label: String(i + 1), kind: 'measure' as const };
    }),
  });
  const drawn = (last: number) =>
    closuresDrawing
      .draw(draft, bench, { marks: { run: row(last), made: [] } })
      ?.dimensions.find(({ by }) => 'found' in by && by.found === 'space')?.text;
  expect(drawn(438)).toBe('7.1 cm');
  expect(drawn(450)).toBe('8.3 cm');
});

test('seven hooks along 46.3 cm are 7.1 cm apart (the invented waistcoat)', async () => {
  open(closures);
  type('Opening', '46.3');
  type('How many', '7');
  const said = await answer();
  expect(said).toContain('7.1 cm apart');
  expect(said).toContain('7 hooks, the first 1.2 cm from the top edge');
  expect(said).toContain('(46.3 cm − 1.2 cm − 2.5 cm) ÷ 6 = 7.1 cm.');
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

/** The draft with these made, the rest spaced around them. */
function around(set: Record<string, string>, made: string[], count: number) {
  const draft = closures.around?.({ ...closures.start(benchOf()), ...set }, made, count) ?? {};
  const { runs, warnings } = answerTo(closures, draft);
  return { draft, warnings, places: runs[0]?.run.marks.map(({ at }) => at / 80_000) ?? [] };
}

test('spacing anew keeps the level that must carry one', () => {
  const { draft, places, warnings } = around({ level: '20' }, ['1.5 cm', '8 cm'], 7);
  expect(draft.level).toBe('20');
  expect(places[0]).toBe(1.5);
  expect(places).toContain(20);
  expect(places.at(-1)).toBeCloseTo(43.8, 9);
  expect(warnings).toEqual([]);
});

test('spacing anew says which gives way, by how much', () => {
  expect(around({ level: '20' }, ['1.2', '12', '30', '43.8'], 4).warnings).toEqual([
    'The level gives way: the nearest is 8 cm above it.',
  ]);
  expect(around({}, ['1.2', '8', '30'], 3).warnings).toEqual([
    'The bottom end gives way: the last is 16.3 cm from the edge, not 2.5 cm.',
  ]);
  const gap = { by: 'gap', gap: '6', width: '1', top: '0.5', bottom: '0.5' };
  const tight = around(gap, ['0.5', '10'], 8);
  expect(tight.draft.leastGap).toBe('6');
  expect(tight.warnings).toEqual(['The clear gap gives way: 3.75 cm, not 6 cm.']);
  expect(around(gap, ['0.5', '10'], 6).warnings).toEqual([]);
});

test('an exact space says what is left over and offers an even one', async () => {
  open(closures, { by: 'exact', pitch: '5' });
  expect(await answer()).toContain('2.6 cm more at the bottom than asked');
  expect(await screen.findByText(/with nothing left over/)).toBeTruthy();
});

test('the other side: an eye stands as far past the edge as the hook is set back', async () => {
  open(closures, { side: 'meet', setBack: '1/8 in' });
  const said = await answer();
  expect(said).toContain('stands 0.318 cm past the edge');
  expect(said).toContain('Both are published');
});

/** The formula that is shown, and the sentence, for what is typed. */
function texts(set: Record<string, string>) {
  const { workings, sentence, warnings } = answerTo(closures, set);
  return { formula: workings[0]?.formula, sentence, warnings };
}

// Worked by hand on the demo opening of 46.3 cm, ends 1.2 and 2.5 cm, which is invented.
const BRANCHES: [string, Record<string, string>, string][] = [
  [
    'an exact space',
    { by: 'exact', pitch: '5' },
    '1.2 cm + 8 × 5 cm = 41.2 cm to the last; 46.3 cm − 41.2 cm − 2.5 cm = 2.6 cm left over.',
  ],
  [
    'an exact space with ends of half of one',
    { by: 'exact', pitch: '5', ends: 'half' },
    '2.5 cm + 8 × 5 cm = 42.5 cm to the last; 46.3 cm − 42.5 cm − 2.5 cm = 1.3 cm left over.',
  ],
  [
    'an exact space through a level',
    { by: 'exact', pitch: '5', level: '20' },
    '20 cm − 3 × 5 cm = 5 cm above; 46.3 cm − 20 cm − 4 × 5 cm = 6.3 cm below.',
  ],
  [
    'a clear gap',
    { by: 'gap', gap: '6', width: '1' },
    '6 cm + 1 cm = 7 cm. 1.2 cm + 6 × 7 cm = 43.2 cm to the last; 46.3 cm − 43.2 cm − 2.5 cm = 0.6 cm left over.',
  ],
  [
    'a level with two spacings',
    { level: '20' },
    '(20 cm − 1.2 cm) ÷ 3 = 6.267 cm above; (46.3 cm − 20 cm − 2.5 cm) ÷ 3 = 7.933 cm below. Of all ways to share the spaces out, these two differ least.',
  ],
  [
    'a level with two spacings, ends of half of one',
    { level: '20', ends: 'half' },
    '(20 cm) ÷ 3 1/2 = 5.714 cm above; (46.3 cm − 20 cm) ÷ 3 1/2 = 7.514 cm below. Of all ways to share the spaces out, these two differ least.',
  ],
  [
    'moved ends, made narrower',
    { level: '20', levelBy: 'moved-ends' },
    'Less than the even 7.1 cm, to keep the ends clear of the edges. 20 cm − 3 × 6.267 cm = 1.2 cm above; 46.3 cm − 20 cm − 3 × 6.267 cm = 7.5 cm below.',
  ],
  [
    'moved ends, as even',
    { level: '22', levelBy: 'moved-ends', width: '1' },
    '(46.3 cm − 1.2 cm − 2.5 cm) ÷ 6 = 7.1 cm. 22 cm − 3 × 7.1 cm = 0.7 cm above; 46.3 cm − 22 cm − 3 × 7.1 cm = 3 cm below.',
  ],
  [
    'the widest space',
    { by: 'widest', pitch: '8' },
    '(46.3 cm − 1.2 cm − 2.5 cm) ÷ 6 = 7.1 cm. The fewest with no space wider than 8 cm.',
  ],
  ['one in the middle', { count: '1' }, '1.2 cm + (46.3 cm − 1.2 cm − 2.5 cm) ÷ 2 = 22.5 cm.'],
  ['one with ends of half a space', { count: '1', ends: 'half' }, '46.3 cm ÷ 2 = 23.15 cm.'],
  ['one on a level', { count: '1', level: '20' }, ''],
  [
    'one at an exact space',
    { by: 'exact', pitch: '50' },
    '46.3 cm − 1.2 cm − 2.5 cm = 42.6 cm left over.',
  ],
  [
    'around one that is sewn',
    { sewn: '9' },
    'What is sewn stays; the others go where the spaces are widest, then evenly.',
  ],
  [
    'around sewn ones, an exact space',
    { sewn: '1.2; 9', by: 'exact', pitch: '5' },
    'What is sewn stays; the others go where the spaces are widest, then evenly, nearest to 5 cm.',
  ],
];

test.each(BRANCHES)('%s: the formula is that of its own branch', (_, set, formula) => {
  expect(texts(set).formula).toBe(formula);
});

test.each([
  [{ count: '1' }, 'One hook, 22.5 cm from the top edge.'],
  [{ count: '1', level: '20' }, 'One hook, 20 cm from the top edge.'],
  [{ by: 'exact', pitch: '50', item: 'tie' }, 'One pair of ties, 1.2 cm from the top edge.'],
  [{ count: '1', sewn: '9' }, 'One hook, 9 cm from the top edge.'],
])('one alone says where it is: %j', (set, sentence) => {
  expect(texts(set).sentence).toBe(sentence);
});

test('a width that hangs over an edge is said', () => {
  expect(texts({ top: '0.3', width: '1' }).warnings).toEqual([
    'The first hangs over the top edge by 0.2 cm.',
  ]);
  expect(texts({ bottom: '0', width: '1' }).warnings).toEqual([
    'The last hangs over the bottom edge by 0.5 cm.',
  ]);
  expect(texts({ top: '0.5', width: '1' }).warnings).toEqual([]);
});

test('moved ends are offered only where they stay half a width from the edges', () => {
  const near = { level: '0.4', top: '0.4', width: '1' };
  expect(answerTo(closures, near).offers).toEqual([]);
  expect(answerTo(closures, { ...near, width: '0.8' }).offers).toHaveLength(1);
});

test('an exact space through a level offers as many with the ends kept', () => {
  const { offers } = answerTo(closures, { by: 'exact', pitch: '5', level: '20' });
  expect(offers.map(({ words }) => words)).toEqual(['Or 8 with nothing left over']);
  const taken = answerTo(closures, offers[0]?.take ?? {});
  expect(taken.runs[0]?.run.marks.some(({ kind }) => kind === 'level')).toBe(true);
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
  ['no width for a clear gap', { by: 'gap', width: '' }, /^Width of one: /],
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

test('what is no choice, or no field, is said, and nothing is worked out', async () => {
  open(closures, { by: 'wish' });
  expect(await answer()).toMatch(
    /^—Spaced by: “wish” is no choice .*; choose Number; Widest space;/,
  );
  cleanup();
  open(closures, { colour: 'red' });
  expect(await answer()).toMatch(/^—“colour” is no field this version of the app knows/);
});

test('a clear gap needs a width, which then comes after it', () => {
  const keys = (set: Record<string, string>) =>
    closures.fields({ ...closures.start(benchOf()), ...set }).map(({ key }) => key);
  expect(keys({ by: 'gap', ends: 'half' }).slice(0, 4)).toEqual(['opening', 'gap', 'width', 'by']);
  expect(keys({ ends: 'half' })).toEqual([
    'opening',
    'count',
    'by',
    'ends',
    'level',
    'sewn',
    'item',
    'width',
    'side',
    'follow',
  ]);
});

test('2,000 marks are an answer, 2,001 are not', () => {
  const many = { opening: '4000', count: '2000' };
  expect(answerTo(closures, many).runs[0]?.run.marks).toHaveLength(2000);
  expect(workOn(closures, { ...many, count: '2001' }).ok).toBe(false);
});

// Derived here: hook 2 made at 9 instead of 8.3 leaves 15.4 − 9 = 6.4 to hook 3, less 1 of width.
test('as made counts in list, ends and gap', async () => {
  open(closures, { width: '1', made: '2=9 cm; 7=44 cm' });
  expect(await screen.findByText(/plan 8.3 cm/)).toBeTruthy();
  const list = screen.getByRole('region', { name: 'Marks' });
  expect(list.textContent).toContain('29 cm plan 8.3 cm+7.8 cm');
  expect(list.textContent).toContain('315.4 cm+6.4 cm');
  const said = await answer();
  const gap = screen.getByText(/^Clear gap|^Gap/i).nextSibling?.textContent ?? said;
  expect(gap).toBe('5.4 cm');
});
