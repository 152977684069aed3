import { cleanup } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { elasticDrawing } from '../../src/calculations/elastic/drawing.ts';
import { elastic } from '../../src/calculations/elastic/elastic.ts';
import { elasticOutputs } from '../../src/calculations/elastic/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 14.5, by arithmetic, no source: hips 102, elastic 80.
test('an own sample gives the length, the stretch that is worn and the stretch to pass', async () => {
  open(elastic);
  const said = await answer();
  expect(said).toMatch(/^82 cm of elastic to cut/);
  expect(said).toContain('Stretched by 5 % when it is worn. Lap its ends by 2 cm.');
  expect(said).toContain('84 cm × 20 cm ÷ 21 cm = 80 cm. 80 cm + 2 cm = 82 cm.');
  expect(said).toContain('Stretch to pass27.5 %; it goes to 80 %');
  expect(said).toContain('(102 cm − 80 cm) ÷ 80 cm = 27.5 %.');
  expect(said).toContain('Shortest that passes56.7 cm');
});

// Row 14.2, a school course: 5 + 25 + 2 = 32 mm; its edge stitching isn’t counted there.
test('the casing is cut with its turn, its room and its edge', async () => {
  open(elastic, { ease: '0.2', edge: '0' });
  expect(await answer()).toContain('0.5 cm + 2.5 cm + 0.2 cm = 3.2 cm.');
  type('Header above it', '1');
  type('Casing wider by', '0.3');
  const said = await answer();
  expect(said).toContain('Casing, above the fold4.3 cm');
  expect(said).toContain('Stitch lines, from the fold1 cm and 3.8 cm');
  expect(said).toContain('Leave open2.9 cm');
  type('Casing wider by', '0.34');
  type('Header above it', '1.08');
  expect(await answer()).toContain('Stitch lines, from the fold1 cm and 4 cm');
});

// Row 14.4, two trade pages.
test('at a waist without a sample: less 2 in, with the published range and its doubt', async () => {
  open(elastic, { by: 'rule', girth: '30', join: 'butted' }, benchOf({ unit: 'in' }));
  const said = await answer();
  expect(said).toMatch(/^28 in of elastic to cut/);
  expect(said).toContain('30 in − 2 in = 28 in.');
  expect(said).toContain('A published range, cut with its lap26 in to 28 in');
  expect(said).toContain('The kind of elastic isn’t known to this rule');
  expect(said).toContain('Patch under the ends1 in × 2 in');
});

test('by per cent, and by the piece that is there', () => {
  const formulaOf = (set: Record<string, string>) => answerTo(elastic, set).workings[0]?.formula;
  expect(formulaOf({ by: 'percent', percent: '12' })).toContain('84 cm ÷ (1 + 12 %) = 75 cm. ');
  expect(formulaOf({ by: 'there', there: '72' })).toContain('72 cm − 2 cm = 70 cm. ');
  expect(formulaOf({ by: 'there', there: '72' })).toContain('(84 cm − 70 cm) ÷ 70 cm = 20 %. ');
});

test('what is doubtful is said: it doesn’t pass, it may cut in, nothing is gathered', () => {
  const warned = (set: Record<string, string>) => answerTo(elastic, set).warnings.join(' ');
  expect(warned({})).toBe('');
  expect(warned({ sampleMost: '25' })).toContain('stretch by 27.5 % to pass and goes to 25 %');
  expect(warned({ sampleWorn: '30' })).toContain('over half as far as it goes');
  expect(warned({ round: '84', pass: '84' })).toContain('sits like skin');
});

test.each<[string, Record<string, string>, RegExp]>([
  [
    'elastic as long as the body',
    { by: 'there', there: '86' },
    /Elastic there is: 86 cm must be less than 86 cm/,
  ],
  [
    'a sample that doesn’t stretch',
    { sampleWorn: '20' },
    /Stretched till it holds well: 20 cm must be more than 20 cm/,
  ],
  ['a casing that doesn’t pass', { round: '100' }, /Casing flat, round: .*at least 102 cm/],
  ['no room to turn in', { ease: '0.05' }, /Casing wider by: .*at least 0.1 cm/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(elastic, set);
  expect(await answer()).toMatch(said);
});

test('a header stands on the drawing only where there is one', () => {
  const bench = benchOf();
  const given = (header: string) =>
    elasticDrawing
      .draw({ ...elastic.start(bench), header }, bench)
      ?.dimensions.flatMap(({ by, text }) =>
        'given' in by && by.given === 'header' ? [text] : [],
      );
  expect(given('')).toEqual([]);
  expect(given('1')).toEqual(['1 cm']);
});

describe('what it gives to a garment', () => {
  test('the casing is cut first; the elastic is cut last, after it was tried on', () => {
    const steps = elasticOutputs.outputs.flatMap(({ key, step }) =>
      step ? [[key, step.stage, step.undoable, step.bound]] : [],
    );
    expect(steps).toEqual([
      ['allowance', 'cut', false, 'least'],
      ['turn', 'turn-up', true, undefined],
      ['header', 'turn-up', true, 'most'],
      ['stitch', 'turn-up', true, 'least'],
      ['cut', 'close', false, 'least'],
      ['marks', 'close', true, undefined],
      ['edge-marks', 'turn-up', true, undefined],
      ['ring', 'close', true, undefined],
    ]);
    const cut = elasticOutputs.outputs.find(({ key }) => key === 'cut');
    expect(cut?.step?.caution).toContain('Try it on before you cut');
  });

  test('elastic cut 4 cm short is a smaller ring, stretched further, its quarters nearer', () => {
    expect(givenBy(elasticOutputs, {})).toMatchObject({
      ...{ allowance: 35, turn: 5, header: 'absent by header', stitch: 28, cut: 820, ring: 800 },
      ...{ marks: [0, 200, 400, 600], 'edge-marks': [0, 275, 550, 825] },
    });
    const short = givenBy(elasticOutputs, {}, { steps: { cut: mm(780) } });
    expect(short).toMatchObject({ cut: 820, ring: 760, marks: [0, 190, 380, 570] });
    expect(Number(short.worn)).toBeCloseTo(100 * (840 / 760 - 1), 6);
  });

  test('without what it passes, or a casing’s width, that is not there', () => {
    expect(givenBy(elasticOutputs, { pass: '', round: '' })).toMatchObject({
      ...{ passing: 'absent by pass', least: 'absent by pass' },
      ...{ fullness: 'absent by round', 'edge-marks': 'absent by round' },
    });
  });
});
