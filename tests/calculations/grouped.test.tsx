import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { groupedDrawing } from '../../src/calculations/grouped/drawing.ts';
import { grouped } from '../../src/calculations/grouped/grouped.ts';
import { groupedOutputs } from '../../src/calculations/grouped/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

test('opens with a worked answer: three pairs down an edge, and what is clear between them', async () => {
  open(grouped);
  const said = await answer();
  expect(said).toMatch(/^15\.25 cm clear between groups/);
  expect(said).toContain('46 cm − 1.5 cm − 5 cm = 39.5 cm.');
  expect(said).toContain('(39.5 cm − 3 × 1 × 3 cm) ÷ 2 = 15.25 cm.');
  expect(said).toContain('Fasteners, together6');
  expect(said).toContain('Cut buttonholes last of all');
  type('In each group', '6');
  expect(await answer()).toMatch(
    /From one to the next in a group: this needs 45 cm and there is 39.5/,
  );
  type('In each group', '5');
  expect(await answer()).toContain('won’t be seen as groups');
});

// Row 5.10: Guide C-231 and three pages: 1/8 in past the button.
test('a band’s lapped end: its mate, and the buttonhole along it', () => {
  const { headline, workings, cautions } = answerTo(grouped, { kind: 'lap', hole: '2' });
  expect(headline).toMatchObject({ number: { whole: '2', decimals: '5' } });
  expect(workings.map(({ formula }) => formula)).toEqual([
    '4 cm − 1.5 cm = 2.5 cm.',
    '1.5 cm − 0.318 cm = 1.182 cm. 1.182 cm + 2 cm = 3.182 cm.',
  ]);
  expect(cautions[0]).toContain('last of all');
});

test('loops, a hanger, a snap over a fold', () => {
  const loops = answerTo(grouped, { kind: 'loops' });
  expect(loops.workings[0]?.formula).toBe(
    '3.5 cm + 2 × 0.2 cm + 0.3 cm + 2 × 1 cm = 6.2 cm. 5 × 6.2 cm = 31 cm.',
  );
  expect(loops.warnings).toEqual([]);
  expect(answerTo(grouped, { kind: 'loops', loops: '6' }).warnings[0]).toContain('centre front');
  expect(answerTo(grouped, { kind: 'hanger' }).workings[0]?.formula).toBe(
    '2 × 5 cm + 2 × 1 cm = 12 cm.',
  );
  expect(answerTo(grouped, { kind: 'fold' }).workings[0]?.formula).toBe(
    '2 × 1.5 cm + 1.5708 × (0.5 cm + 0.2 cm) − 0.5 cm − 2 × 0.2 cm = 3.2 cm.',
  );
});

test('outputs: the mate follows the fastener as it was sewn; buttonholes are cut last', () => {
  expect(givenBy(groupedOutputs, { top: '1', bottom: '1', opening: '23' })).toMatchObject({
    ...{ places: [10, 40, 100, 130, 190, 220], count: 6, between: 60, mate: 'absent by kind' },
  });
  const lap = { kind: 'lap', hole: '2' };
  expect(givenBy(groupedOutputs, lap)).toMatchObject({
    ...{ fastener: 15, mate: 25, 'hole-from': 11.825, 'hole-to': 31.825 },
  });
  expect(givenBy(groupedOutputs, lap, { steps: { fastener: mm(17) } })).toMatchObject({
    ...{ mate: 23, 'hole-from': 13.825, 'hole-to': 33.825 },
  });
  expect(givenBy(groupedOutputs, { kind: 'lap' })).toMatchObject({ 'hole-to': 'absent by hole' });
  const loops = givenBy(groupedOutputs, { kind: 'loops' }, { counts: { loops: 4 } });
  expect(loops).toMatchObject({ loops: [0, 200, 400, 600], strip: 310, loop: 62 });
  const fixed = groupedOutputs.outputs.flatMap(({ key, step }) =>
    step?.undoable === false ? [key] : [],
  );
  expect(fixed).toEqual(['hole-to', 'strip', 'loop', 'tape']);
});

test('each kind is drawn to scale with its numbers', () => {
  const drawn = (set: Record<string, string>) =>
    groupedDrawing
      .draw({ ...grouped.start(benchOf()), ...set }, benchOf())
      ?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(drawn({})).toEqual(
    expect.arrayContaining(['groups 3 groups', 'each 2 in each', 'between 15.25 cm']),
  );
  expect(drawn({ kind: 'lap' })).toEqual(['from 1.5 cm', 'mate 2.5 cm', 'lap 4 cm']);
  expect(drawn({ kind: 'loops' })).toEqual(
    expect.arrayContaining(['loops 5 loops', 'strip 31 cm']),
  );
  expect(drawn({ kind: 'hanger' })).toEqual(['seam 1 cm', 'drop 5 cm', 'tape 12 cm']);
  expect(drawn({ kind: 'fold' })).toEqual(expect.arrayContaining(['thing 0.5 cm', 'apart 3.2 cm']));
});

test.each<[string, Record<string, string>, string[]]>([
  ['no room', { within: '15' }, ['within']],
  ['a fastener past its lap', { kind: 'lap', from: '4' }, ['from']],
  ['no loops', { kind: 'loops', loops: '0' }, ['loops']],
  ['a hanger of nothing', { kind: 'hanger', drop: '0' }, ['drop']],
  ['halves on the bend', { kind: 'fold', from: '0.4' }, ['from']],
])('%s: the field is named', (_, set, fields) => {
  const work = workOn(grouped, set);
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(fields);
});
