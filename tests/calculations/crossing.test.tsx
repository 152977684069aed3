import { cleanup, fireEvent, screen } from '@testing-library/preact';
import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { crossing } from '../../src/calculations/crossing/crossing.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, workOn } from '../screens/helpers.tsx';

afterEach(cleanup);

const IN_MM = benchOf({ unit: 'mm' });
/** Strips that lie clear with a shift, and no hole near an edge. */
const CLEAR = { pitch: '12', upperPitch: '12' };
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
  const { offers, headline } = answerTo(crossing, { ...CLEAR, upperPhase: '1 mm' }, IN_MM);
  expect(headline.after).toBe('to move the upper strip, towards its hole 1');
  const taken = answerTo(crossing, { ...CLEAR, ...offers[0]?.take }, IN_MM);
  expect(taken.headline.number).toMatchObject({ whole: '0' });
  expect(taken.offers.filter(({ take }) => !take.upperPitch)).toEqual([]);
});

test('where no shift is clear the least bad is shown, and a pitch that is clear offered', async () => {
  const set = { ...NARROW, rows: 'staggered', upperRows: 'staggered', angle: '60' };
  open(crossing, set);
  expect(await answer()).toMatch(
    /^1 *hole clashes, however it is moved.*No shift is clear; this one has the fewest clashes/,
  );
  fireEvent.click(await screen.findByText(/Hole to hole .* on the upper strip: clear/));
  expect(await answer()).toMatch(/[Nn]o hole clashes: from any new one/);
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

describe('the headline is the worst that is true', () => {
  test('clashes that no shift clears', () => {
    const { headline, sentence } = answerTo(crossing, { angle: '60' }, IN_MM);
    expect(headline).toEqual({ number: '2', after: 'holes clash, however it is moved' });
    expect(sentence).toBe(
      'Leave the upper strip where it lies. No shift is clear; this one has the fewest clashes.',
    );
  });

  test('clear, but so near the edge that holes may tear out', () => {
    const upper = { upperPitch: '15', upperRows: 'one', upperMargin: '10', upperPhase: '8.5' };
    const set = { ...upper, rows: 'one', margin: '10', pitch: '15', phase: '7.5' };
    const { headline, sentence, warnings } = answerTo(crossing, set, IN_MM);
    expect(headline).toEqual({ number: '2', after: 'new holes may tear out at the edge' });
    expect(sentence).not.toContain('well');
    expect(warnings.join()).toContain('they may tear out');
  });

  test('nothing to move is said to lie well only without any warning', () => {
    fc.assert(
      fc.property(sets, (set) => {
        const work = workOn(crossing, set, benchOf({ unit: 'in' }));
        if (!work.ok) return;
        const { headline, warnings } = work.answer;
        const worst = typeof headline.number === 'string';
        expect(worst, headline.after).toBe(warnings.length > 0);
      }),
      { numRuns: 150, seed: 1204 },
    );
  });
});

describe('which way', () => {
  const { cos, sin, PI } = Math;

  test('a shift says which way, the shorter, by what is on the strip; the other way lies the same', () => {
    // Square, the upper row’s holes are best midway between those of the lower one (derived here):
    // at 0 and 12 from the crossing, with the rows 5 off the middle, so 2 or 10 of 12.
    const at = (upperPhase: string) => answerTo(crossing, { ...CLEAR, upperPhase }, IN_MM);
    const on = at('1');
    expect(on.headline).toMatchObject({
      number: { whole: '1', unit: 'mm' },
      after: 'to move the upper strip, towards its hole 1',
    });
    expect(on.sentence).toContain(
      'Move the upper strip 1 mm towards its hole 1, the way of the arrow; 11 mm away from it lies the same.',
    );
    const back = at('11');
    expect(back.headline.after).toBe('to move the upper strip, away from its hole 1');
    expect(back.sentence).toContain(
      '1 mm away from its hole 1, the way of the arrow; 11 mm towards it',
    );
  });

  test('moved as it is said, either way, it lies as it was said to; the wrong way it mostly does not', () => {
    const lies = (one: ReturnType<typeof answerTo>, label: string) =>
      one.lines.find((line) => line.label === label)?.value;
    let [wrong, all] = [0, 0];
    const way = /Move the upper strip ([\d.]+) mm (away from|towards) its hole 1.*?; ([\d.]+) mm/;
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 119 }),
        of('60', '75', '90', '105'),
        (tenths, angle) => {
          const set = { ...CLEAR, angle };
          const phase = tenths / 10;
          const found = answerTo(crossing, { ...set, upperPhase: String(phase) }, IN_MM);
          const [, by, word, other] = way.exec(found.sentence) ?? [];
          if (!by || !other) return;
          const onward = word === 'towards' ? -1 : 1;
          const laid = (upperPhase: number) =>
            lies(answerTo(crossing, { ...set, upperPhase: `${upperPhase}` }, IN_MM), 'As they lie');
          expect(laid(phase + onward * Number(by))).toBe(lies(found, 'Moved'));
          expect(laid(phase - onward * Number(other))).toBe(lies(found, 'Moved'));
          all++;
          if (laid(phase - onward * Number(by)) !== lies(found, 'Moved')) wrong++;
        },
      ),
      { numRuns: 60, seed: 1206 },
    );
    expect(all).toBeGreaterThan(30);
    expect(wrong).toBeGreaterThan(all / 4);
  });

  test('the arrow points the way of the move, along the upper strip; no move, no arrow', () => {
    const arrowOf = (set: Record<string, string>) =>
      (answerTo(crossing, set, IN_MM).figures?.[0]?.draw() ?? []).flatMap((shape) =>
        'line' in shape && shape.line === 'move' ? [shape.points] : [],
      );
    for (const angle of ['40', '75', '90', '140']) {
      for (const upperPhase of ['1', '4', '7', '11']) {
        const set = { ...CLEAR, angle, upperPhase };
        const { sentence, offers } = answerTo(crossing, set, IN_MM);
        const arrow = arrowOf(set);
        if (!sentence.includes('Move the')) {
          expect(arrow).toEqual([]);
          continue;
        }
        const [from, to] = arrow[0] ?? [];
        if (!from || !to) throw new Error('no arrow');
        const turn = (Number(angle) * PI) / 180;
        const long = Math.hypot(to.x - from.x, to.y - from.y);
        const onward = sentence.includes('mm away from its hole 1, the way') ? 1 : -1;
        expect((onward * (to.x - from.x)) / long).toBeCloseTo(cos(turn), 6);
        expect((onward * (to.y - from.y)) / long).toBeCloseTo(sin(turn), 6);
        // Its head is at the end it points to.
        for (const head of arrow.slice(1)) expect(head[0]).toEqual(to);
        expect(arrowOf({ ...set, ...offers[0]?.take })).toEqual([]);
      }
    }
  });

  test('names stand at the ends of the strips nearer hole 1, and the drawing says so', () => {
    const { figures, lines } = answerTo(crossing, { angle: '90' }, IN_MM);
    const labels = figures?.[0]?.draw().flatMap((shape) => ('label' in shape ? [shape] : [])) ?? [];
    expect(labels.map(({ label }) => label)).toEqual(['lower', 'upper']);
    expect(labels[0]?.at.x).toBeLessThan(-10);
    expect(labels[1]?.at.y).toBeLessThan(-10);
    expect(figures?.[0]?.name).toContain('nearer hole 1');
    expect(lines.find(({ label }) => label === 'Seen')?.value).toContain(
      'the first row on the left',
    );
  });
});

test('a shift of next to nothing that clears the clashes is one', () => {
  const lower = { width: '20', pitch: '10', margin: '5', rows: 'staggered', phase: '5.5' };
  const upper = { upperWidth: '10', upperPitch: '10', upperMargin: '5', upperRows: 'one' };
  const set = { angle: '30', hole: '2', ...lower, ...upper, upperPhase: '7.66' };
  const { lines, sentence } = answerTo(crossing, set, IN_MM);
  expect(lines.some(({ label }) => label === 'Moved')).toBe(true);
  expect(sentence).toContain('Then no hole clashes');
});

test('new holes are listed, along and across, and can be followed', async () => {
  open(crossing);
  const said = await answer();
  expect(said).toContain('New holes through the lower strip6');
  // Two rows at 5 mm from the crossing, moved by 4: holes at −4 and 4 of the lower strip's
  // middle line; its holes are at 8i, so the last before them 8 mm before the crossing.
  expect(said).toContain(
    'Hole to measure byof the lower strip’s first row, 0.8 cm from the crossing of the middle lines towards hole 1',
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
    { numRuns: 150, seed: 1205 },
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
  [
    'rows that are no choice',
    { upperRows: 'three' },
    /^—Upper: rows: “three” is no choice .*; choose One; Two, level; Two, staggered$/,
  ],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(crossing, set);
  expect(await answer()).toMatch(said);
});
