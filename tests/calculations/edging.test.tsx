import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { centre } from '../../src/calculations/centre/centre.ts';
import { edging } from '../../src/calculations/edging/edging.ts';
import { lacing } from '../../src/calculations/lacing/lacing.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';

afterEach(cleanup);

test('a strip has its holes, its pitch and its middle, as marks to be followed', async () => {
  open(edging, { length: '40', pitch: '8 mm' });
  const said = await answer();
  expect(said).toMatch(/^50 +holes/);
  expect(said).toContain('50 holes, 0.8 cm apart, the first 0.4 cm from the cut end.');
  expect(said).toContain('Holes: middlebetween holes 25 and 26');
  expect(said).toContain('Punch on end grain');
  expect(screen.getByRole('button', { name: 'Follow' })).toBeTruthy();
  expect(await screen.findByRole('img', { name: 'The start of the strip' })).toBeTruthy();
});

test('filling the length says by how much the pitch changes', async () => {
  open(edging, { length: '40.3', fit: 'fill' });
  expect(await answer()).toMatch(/Holes: hole to hole0\.806 cm \(0\.006 cm more than wanted\)/);
});

test('what rounds to nothing is not said to be more', () => {
  // 392.004/49 is 8.00008 mm.
  const saidAs = (label: string, set: Record<string, string>) =>
    answerTo(edging, set, benchOf({ unit: 'mm' })).lines.find((line) => line.label === label)
      ?.value;
  const set = { length: '400.004', fit: 'fill', end: '4' };
  expect(saidAs('Holes: hole to hole', set)).toBe('8 mm');
  expect(saidAs('Left over', { ...set, fit: 'split' })).toBeUndefined();
  expect(saidAs('Left over', { length: '403', fit: 'far-end' })).toBe('3 mm more at the far end');
});

test('the middle is asked for only where it is the strip’s', () => {
  const keysOf = (set: Record<string, string>) =>
    edging.fields({ ...edging.start(benchOf()), ...set }).map(({ key }) => key);
  expect(keysOf({})).toContain('middle');
  expect(keysOf({ fit: 'far-end' })).not.toContain('middle');
});

test('two staggered rows are two runs from the same end', async () => {
  const { runs, headline } = answerTo(edging, { rows: 'staggered' });
  expect(headline.number).toBe('99');
  expect(runs.map(({ name, run }) => [name, run.datum, run.marks.length])).toEqual([
    ['Row 1', 'cut-end', 50],
    ['Row 2', 'cut-end', 49],
  ]);
});

test('a corner is drawn, and each side has its own run', async () => {
  open(edging, { length: '50', corners: '20', rows: 'level' });
  expect(await answer()).toContain(
    'one of each row in each corner. Each side is filled by itself.',
  );
  expect(await screen.findByRole('img', { name: 'The first corner' })).toBeTruthy();
  expect(screen.queryByLabelText(/^Pitch/)).toBeNull();
  const { runs } = answerTo(edging, { length: '50', corners: '20' });
  expect(runs.map(({ name }) => name)).toEqual(['Holes, side 1', 'Holes, side 2']);
});

test('a closed outline shares the holes in its corners, and says where to join', async () => {
  open(edging, { length: '50', corners: '10; 25; 35', fit: 'loop' });
  const said = await answer();
  // Two sides of 10 cm and two of 15: 90 and 140 mm between corner holes, 11 and 18 spaces (derived here).
  expect(said).toMatch(/^58 +holes/);
  expect(said).toContain('one in each corner, which two sides share.');
  expect(said).toContain('Join it between two holes, not in a corner.');
  expect(said).not.toContain('Left to the cut end');
  const { runs } = answerTo(edging, { length: '50', corners: '10; 25; 35', fit: 'loop' });
  expect(runs.at(-1)?.run.marks.at(-1)?.label).toBe('1');
  expect(carriedTo('lacing', { length: '50', corners: '10; 25; 35', fit: 'loop' })?.holes).toBe(
    '59',
  );
});

test('an outline is reached from a loop and from corners alike', () => {
  const keysOf = (set: Record<string, string>) =>
    edging.fields({ ...edging.start(benchOf()), ...set }).map(({ key }) => key);
  expect(keysOf({ fit: 'loop' })).toContain('corners');
  expect(keysOf({ corners: '20' })).toEqual(expect.arrayContaining(['fit', 'end', 'stock']));
  const outline = keysOf({ corners: '20', fit: 'loop' });
  for (const key of ['end', 'radius', 'stock', 'crossings']) expect(outline).not.toContain(key);
});

test('the formula, evaluated as it is written, gives what it says', () => {
  const ways: Record<string, string>[] = [
    { length: '40.3' },
    { length: '40.3', fit: 'far-end' },
    { length: '40.3', fit: 'split', middle: 'hole' },
    { length: '40.3', fit: 'fill' },
    { length: '40.3', fit: 'loop' },
    { length: '50', corners: '20', angle: '75' },
    { length: '50', corners: '10; 25; 35', fit: 'loop' },
    { length: '40.3', radius: '30', rows: 'level' },
  ];
  for (const set of ways) {
    const formula = answerTo(edging, set).workings[0]?.formula ?? '';
    const numbers =
      formula
        .split(':')[0]
        ?.match(/[\d.]+/g)
        ?.map(Number) ?? [];
    if (formula.includes('÷')) {
      const [room = 0, spaces = 1, pitch] = numbers;
      expect(room / spaces).toBeCloseTo(pitch ?? 0, 2);
    } else {
      const [room, spaces = 0, pitch = 0, left = 0] = numbers;
      expect(spaces * pitch + left).toBeCloseTo(room ?? 0, 4);
    }
  }
});

test('rows that begin apart are each told from the cut end', async () => {
  open(edging, { length: '9', rows: 'level', radius: '3' });
  expect(await answer()).toContain(
    'Row 1: 11 holes, 0.933 cm apart, the first 0.583 cm from the cut end. Row 2: 11 holes, 0.667 cm apart, the first 0.417 cm from the cut end.',
  );
});

test('a loop says how near its cut comes to a hole', async () => {
  open(edging, { fit: 'loop', rows: 'staggered' });
  const said = await answer();
  expect(said).toContain('Cut between two holes.');
  expect(said).toContain('Left to the cut end: 0.1 cm, less than one hole of 0.2 cm.');
});

test('along corners nothing is staggered, and that is said', async () => {
  open(edging, { corners: '20', rows: 'staggered' });
  expect(await answer()).toContain('is filled by itself, so the rows are not staggered.');
});

test('one hole is one hole', async () => {
  open(edging, { length: '0.8', teeth: '4' });
  const said = await answer();
  expect(said).toMatch(/^1 +hole1 hole, the first 0\.4 cm/);
  expect(said).toContain('Strikes of 4 teeth1');
});

test('iron, joins and what is left between the holes are said', async () => {
  open(edging, { length: '20', teeth: '4', stock: '15' });
  const said = await answer();
  expect(said).toContain('Strikes of 4 teeth8');
  expect(said).toMatch(/Join at\d+(\.\d)? cm: 2 pieces/);
  expect(said).toContain('Left from hole to hole0.6 cm');
  cleanup();
  open(edging, { pitch: '3.5 mm', stock: '3 mm' });
  const thin = await answer();
  expect(thin).toContain('It may tear (common practice, no source)');
  expect(thin).toContain('There is no place between holes that such pieces reach');
});

test('what is worked out goes along to counting, to a crossing and to the lace', () => {
  const bench = benchOf();
  const draft = { ...edging.start(bench), rows: 'staggered' };
  const carried = Object.fromEntries(
    (edging.beside ?? []).map(({ id, carry }) => [id, carry?.(draft, bench)]),
  );
  expect(carried.centre).toMatchObject({ count: '50', pitch: '0.8 cm', measured: '39.2 cm' });
  expect(carried.crossing).toMatchObject({
    pitch: '0.8',
    upperPitch: '0.8',
    upperRows: 'staggered',
  });
  expect(carried.lacing).toMatchObject({ holes: '50', pitch: '0.8 cm', margin: '0.5' });
});

function carriedTo(id: string, set: Record<string, string>, bench = benchOf()) {
  const draft = { ...edging.start(bench), ...set };
  return edging.beside?.find((one) => one.id === id)?.carry?.(draft, bench);
}

test('the lace of a loop has a stitch more, round corners every stitch is the widest', () => {
  expect(carriedTo('lacing', { fit: 'loop' })?.holes).toBe('51');
  const corner = carriedTo('lacing', { corners: '3' });
  // 21 mm and 361 mm in spaces near 8 mm: 7 and 8.02 (derived here).
  expect(corner).toMatchObject({ holes: '49', pitch: '0.80222 cm' });
  expect(corner).not.toHaveProperty('strip');
});

test('a lace goes along for each row, with its own holes and pitch', () => {
  expect(carriedTo('lacing', { rows: 'staggered' })).toMatchObject({
    holes: '50',
    holes2: '49',
    pitch2: '0.8 cm',
  });
  // Round 10 cm, 2 cm wide, 5 mm in: rows at 10.5 and 9.5 cm, so 8.4 and 7.6 mm (derived here).
  expect(carriedTo('lacing', { rows: 'level', radius: '10' })).toMatchObject({
    pitch: '0.84 cm',
    holes2: '50',
    pitch2: '0.76 cm',
  });
  expect(carriedTo('lacing', {})).toMatchObject({ holes2: '', pitch2: '' });
  const both = answerTo(lacing, carriedTo('lacing', { rows: 'level' }) ?? {});
  expect(both.runs).toHaveLength(2);
});

test('counting takes all holes round corners, and doubts none of the strip’s own numbers', () => {
  const round = carriedTo('centre', { corners: '3' });
  expect(round).toMatchObject({ count: '49', pitch: '', measured: '' });
  const bench = benchOf({ unit: 'in' });
  const set = { length: '136 1/2', pitch: '5/16', fit: 'fill' };
  const carried = carriedTo('centre', set, bench) ?? {};
  expect(carried).toMatchObject({ count: '437', measured: '136 3/16 in' });
  const { warnings } = answerTo(centre, carried, bench);
  expect(warnings).toEqual([]);
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  [
    'a pitch longer than the strip',
    { pitch: '50' },
    /Hole to hole: 50 cm is too long; give at most 40 cm/,
  ],
  [
    'holes that break the edge',
    { margin: '1 mm' },
    /Edge to hole, centre: 0\.1 cm must be more than 0\.1 cm/,
  ],
  [
    'a loop too short',
    { fit: 'loop', length: '1' },
    /Strip, long: this needs 1\.2 cm and there is 1 cm/,
  ],
  ['a bend without inside', { radius: '1' }, /Bent round a radius of: 1 cm must be more than 1 cm/],
  [
    'a strip that crosses itself',
    { length: '70', corners: '15; 30; 45; 60' },
    /Turns a corner at: side 4 would lie over side 1; change the length of a side from 2 to 4, or make the strip narrower/,
  ],
  [
    'an outline that does not come round',
    { length: '50', corners: '10; 25; 35', fit: 'loop', angle: '100' },
    /Angle of the corner: 3 corners of 100° do not come back to the start; they need 60° each/,
  ],
  [
    'an outline whose sides miss its start',
    { length: '50', corners: '10; 25; 32', fit: 'loop' },
    /Turns a corner at: the last side would end 4\.2\d* cm from where the first begins/,
  ],
  ['corners out of order', { corners: '20; 10' }, /Turns a corner at: .*in order/],
  ['an iron of one tooth', { teeth: '1' }, /Teeth of the iron: give a number from 2 to 30/],
  [
    'a crossing past the end',
    { stock: '15', crossings: '5; 50' },
    /Crossed at: 50 cm lies outside; give a place from 0 cm to 40 cm/,
  ],
  [
    'a crossing before the start',
    { stock: '15', crossings: '0 - 2' },
    /Crossed at: −2 cm lies outside/,
  ],
  [
    'a crossing on the joint that closes a loop',
    { stock: '15', fit: 'loop', crossings: '2 mm' },
    /Crossed at: 0\.2 cm lies outside; give a place from 2 cm to 38 cm/,
  ],
  ['a pitch that is no choice', { fit: 'tight' }, /Pitch: “tight” is no choice .*Fill the length/],
  [
    'along corners, too',
    { corners: '10', fit: 'tight' },
    /Pitch: “tight” is no choice .*; choose Open, sides filled; Closed outline$/,
  ],
  ['no pieces', { stock: '0' }, /To join from pieces of: give more than nothing/],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(edging, set);
  expect(await answer()).toMatch(said);
});

test('what is kept of the pitch is not offered along corners: then the first that is holds', () => {
  const along = (fit: string) => {
    const { headline, sentence, lines } = answerTo(edging, { corners: '15', fit });
    return { headline, sentence, lines };
  };
  expect(along('far-end')).toEqual(along('fill'));
});

test('in inches the same, typed by hand', async () => {
  open(edging, {}, benchOf({ unit: 'in' }));
  type('Strip, long', '7');
  type('Hole to hole', '1');
  type('Edge to hole', '3/8');
  fireEvent.input(screen.getByLabelText(/^Cut end to first hole/), { target: { value: '1/2' } });
  // oaksidesaddlery.uk: seven holes a strap width apart, the fourth in the middle.
  expect(await answer()).toContain('Holes: middlehole 4');
});
