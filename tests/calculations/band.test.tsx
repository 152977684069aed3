import { cleanup } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { band } from '../../src/calculations/band/band.ts';
import { bandDrawing } from '../../src/calculations/band/drawing.ts';
import { bandOutputs } from '../../src/calculations/band/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 14.7: a school's sewing course: 4 to 5 cm finished, underlap 5 to 8 cm.
test('a waistband round 70: 80 long, 11 wide, interfaced by half', async () => {
  open(band);
  const said = await answer();
  expect(said).toMatch(/^80 cm long to cut/);
  expect(said).toContain('Cut it 11 cm wide, lengthwise of the cloth.');
  expect(said).toContain(
    '70 cm + 2 cm + 5 cm + 2 × 1.5 cm = 80 cm. 2 × 4 cm + 2 × 1.5 cm = 11 cm.',
  );
  expect(said).toContain('Interfacing, without seams77 cm × 4 cm');
  expect(said).toContain('Try the edge on, pinned, before you cut the band');
});

test('an edge to take up, and one that is too short; cloth that is too short for it', async () => {
  open(band, { edge: '140', cloth: '60' });
  const said = await answer();
  expect(said).toContain('Edge to take up68 cm');
  expect(said).toContain('140 cm − 72 cm = 68 cm.');
  expect(said).toContain('(80 cm − 3 cm) ÷ (60 cm − 3 cm) = 1.35, so 2.');
  expect(said).toContain('In pieces2, each 41.5 cm long');
  expect(answerTo(band, { edge: '70' }).warnings.join(' ')).toContain('The edge is 2 cm shorter');
});

test('a closed cuff has to pass the hand; folded back it is four times as wide', async () => {
  const cuff = { what: 'cuff', girth: '17', ease: '3', opens: 'ring', wide: '5' };
  expect(answerTo(band, cuff).warnings).toEqual([
    expect.stringContaining('Measure what it has to pass'),
  ]);
  expect(answerTo(band, { ...cuff, pass: '20' }).warnings).toEqual([]);
  open(band, { ...cuff, pass: '21' });
  expect(await answer()).toMatch(/Ease: 3 cm is too short; give at least 4 cm/);
  cleanup();
  open(band, { ...cuff, opens: 'back', make: 'back' });
  const said = await answer();
  expect(said).toContain('4 × 5 cm + 2 × 1.5 cm = 23 cm.');
  expect(said).toContain('through four layers');
});

// Rows 8.2 (1/2 in at least, costume text) and 14.7.
test('too little ease, and an underlap other than published, are said with their sources', () => {
  const warned = (set: Record<string, string>) => answerTo(band, set).warnings.join(' ');
  expect(warned({})).toBe('');
  expect(warned({ ease: '1' })).toContain('Less ease than 1.27 cm');
  expect(warned({ underlap: '4.9' })).toContain('The underlap is not 5 cm to 8 cm');
  expect(warned({ underlap: '8.1' })).toContain('The underlap is not 5 cm to 8 cm');
});

test('two pieces, both interfaced; none', () => {
  const line = (set: Record<string, string>) =>
    answerTo(band, set).lines.find(({ label }) => label.startsWith('Interfacing'))?.value;
  expect(line({ make: 'two', interfaced: 'whole' })).toBe('77 cm × 4 cm, twice');
  expect(line({ make: 'two' })).toBe('77 cm × 4 cm');
  expect(line({ interfaced: 'whole' })).toBe('77 cm × 8 cm');
  expect(line({ interfaced: 'none' })).toBeUndefined();
});

test('the drawing has what was given and found along and across', () => {
  const bench = benchOf();
  const drawn = bandDrawing.draw(band.start(bench), bench);
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual(
    expect.arrayContaining([
      ...['long 80 cm', 'across 11 cm', 'girth 70 cm', 'ease 2 cm', 'underlap 5 cm', 'wide 4 cm'],
    ]),
  );
});

describe('what it gives to a garment', () => {
  test('it is cut first, which cannot be undone, and marked before it is sewn', () => {
    const steps = bandOutputs.outputs.flatMap(({ key, step }) =>
      step ? [[key, step.stage, step.undoable]] : [],
    );
    expect(steps).toEqual([
      ['long', 'cut', false],
      ['across', 'cut', false],
      ['marks', 'cut', true],
      ['wide', 'join', true],
      ['finished', 'close', true],
    ]);
  });

  test('cut 1 cm short it is 1 cm shorter; what isn’t there is absent', () => {
    expect(givenBy(bandOutputs, {})).toMatchObject({
      ...{
        long: 800,
        across: 110,
        finished: 770,
        pieces: 1,
        round: 720,
        'take-up': 'absent by edge',
      },
    });
    expect(givenBy(bandOutputs, {}, { steps: { long: mm(790) } })).toMatchObject({ finished: 760 });
    expect(givenBy(bandOutputs, { interfaced: 'none', edge: '140', make: 'two' })).toMatchObject({
      ...{ interfacings: 'absent by interfaced', 'take-up': 680, pieces: 2 },
    });
  });
});
