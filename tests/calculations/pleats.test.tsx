import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { pleatsDrawing } from '../../src/calculations/pleats/drawing.ts';
import { pleatsOutputs } from '../../src/calculations/pleats/outputs.ts';
import { pleats } from '../../src/calculations/pleats/pleats.ts';
import { mm, toMm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';
import { workOutputs } from './work-outputs.ts';

afterEach(cleanup);

// Dress Making, Trade Practical 2 (teaching book, Government of India, 2024), page 203, worked.
test('92 cm in pleats of 5, 4 deep: 236 cm of strip without seams, and how it was got', async () => {
  open(pleats, { seam: '0' });
  const said = await answer();
  expect(said).toMatch(/^236 cm of strip to cut/);
  expect(said).toContain('18 knife pleats, one every 5.111 cm.');
  expect(said).toContain('Width of one5.111 cm, not 5 cm');
  expect(said).toContain('In the folds144 cm');
  expect(said).toContain('Seams, in itnone: add them');
  expect(said).toContain(
    '92 cm ÷ 5 cm = 18.4, so 18. 92 cm ÷ 18 = 5.111 cm each. 92 cm + 18 × 2 × 4 cm = 236 cm.',
  );
});

// The same page, lines (c) and (d); it prints 2.34 m for its own 2.36.
test('the cloth it takes: 3 strips of 90 cm, 45 cm deep in all', async () => {
  open(pleats, { cloth: '90', deep: '15' });
  const said = await answer();
  expect(said).toMatch(/^238 cm of strip to cut/);
  expect(said).toContain('Strips across the cloth3, 2 joins; 28 cm left over');
  expect(said).toContain('Cloth to cut them from45 cm');
  expect(said).toContain('236 cm ÷ (90 cm − 2 × 1 cm) = 2.68, so 3.');
});

// Page 205, exercises 11.10 and 11.11: width, depth, finished, strip deep, cloth, what each strip loses; pleats, strip with its seams, strips, cloth.
test.each<[string, readonly number[], readonly [number, string, number, string]]>([
  ['11.10, first', [3, 3, 168, 22, 105, 1.5], [56, '505.5', 5, '110 cm']],
  ['11.10, second', [5, 4.5, 260, 12, 90, 2], [52, '730', 9, '108 cm']],
  ['11.10, third', [3, 3.5, 144, 10, 122, 3], [48, '483', 5, '50 cm']],
  ['11.10, fourth', [4, 4.2, 172.2, 48, 148, 2.5], [43, '535.9', 4, '192 cm']],
  ['11.10, fifth', [4, 2.5, 124, 18.5, 130, 2], [31, '281', 3, '55.5 cm']],
  ['11.11: just over a whole strip', [4.5, 4.5, 189, 15, 114, 2.5], [42, '569.5', 6, '90 cm']],
])('%s', (_, given, [count, strip, strips, ofCloth]) => {
  const [width, depth, finished, deep, cloth, loses = 0] = given;
  const typed = { width, depth, finished, deep, cloth, seam: loses / 2 };
  const set = Object.fromEntries(Object.entries(typed).map(([key, one]) => [key, String(one)]));
  const { headline, lines, sentence } = answerTo(pleats, set);
  const { whole, decimals = '' } = headline.number as { whole: string; decimals?: string };
  expect([whole, decimals].filter(Boolean).join('.')).toBe(strip);
  expect(sentence).toMatch(new RegExp(`^${count} knife pleats`));
  const values = Object.fromEntries(lines.map(({ label, value }) => [label, value]));
  expect(values['Strips across the cloth']).toMatch(new RegExp(`^${strips}, `));
  expect(values['Cloth to cut them from']).toBe(ofCloth);
});

// 11.13, the same page: 144.5 cm in pleats of 3.5, each 2.5 deep, with nothing over.
test('of a strip that is there: how many pleats it gives, and how wide they come out', async () => {
  const strip = { by: 'strip', there: '144.5', width: '3.5', depth: '2.5', seam: '0' };
  open(pleats, strip);
  const said = await answer();
  expect(said).toMatch(/^59.5 cm wide when it is pleated/);
  expect(said).toContain('17 knife pleats, one every 3.5 cm.');
  expect(said).toContain(
    '144.5 cm ÷ (3.5 cm + 2 × 2.5 cm) = 17, so 17. 144.5 cm − 17 × 2 × 2.5 cm = 59.5 cm. 59.5 cm ÷ 17 = 3.5 cm each.',
  );
  expect(answerTo(pleats, strip).offers).toEqual([]);
  const bench = benchOf();
  const draft = { ...pleats.start(bench), ...strip };
  const came = workOutputs(pleatsOutputs, draft, bench);
  expect(came.get('finished')).toMatchObject({ state: 'here', value: mm(595) });
  expect(came.get('strip')?.state).toBe('absent');
  const on = pleatsDrawing
    .draw(draft, bench)
    ?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual(
    expect.arrayContaining(['there 144.5 cm', 'finished 59.5 cm', 'count 17 pleats']),
  );
});

test('both neighbouring counts are offered with what they take, and taken by a press', async () => {
  const { offers } = answerTo(pleats, {});
  expect(offers.map(({ words }) => words)).toEqual([
    'Or 17, each 5.412 cm: strip 230 cm',
    'Or 19, each 4.842 cm: strip 246 cm',
  ]);
  open(pleats);
  await answer();
  (await screen.findByRole('button', { name: /^Or 19/ })).click();
  expect(await answer()).toMatch(/^246 cm of strip to cut/);
  expect(screen.getByLabelText(/^How many/)).toHaveProperty('value', '19');
});

test('its lines are followed one by one, each with what it is', async () => {
  open(pleats, { finished: '10', width: '5', depth: '2' });
  const said = await answer();
  expect(said).toContain('from the cut end');
  expect(said).toMatch(/16 cm fold line.*210 cm placement line/);
  expect(said).toContain('Lay each fold line on the placement line after it.');
});

test('the figure has the first two pleats to scale, flat and folded, and numbers their lines', () => {
  const figure = answerTo(pleats, {}).figures?.[0]?.draw() ?? [];
  const folds = figure.filter((shape) => 'line' in shape && shape.line === 'fold');
  expect(folds).toHaveLength(2);
  expect(figure.flatMap((shape) => ('label' in shape ? [shape.label] : []))).toEqual(['1', '3']);
  const cloth = figure.flatMap((shape) =>
    'line' in shape && shape.line === 'cloth' ? [shape.points] : [],
  );
  const folded = cloth.at(-1)?.map(({ x }) => Math.round(10 * x) / 10);
  // From the side: seam 1 cm, fold at 6.111, 4 back, and again 5.111 further on.
  expect(folded).toEqual([0, 61.1, 61.1, 21.1, 21.1, 112.2, 112.2, 72.2, 72.2, 122.2]);
});

test('bulk is said with its layers, hands and iron have their caution, and a tight piece of cloth its doubt', async () => {
  open(pleats, { depth: '8', cloth: '97.4' });
  const said = await answer();
  expect(said).toContain('up to 5 layers lie over each other');
  expect(said).toContain('touch the iron by its handle only');
  expect(said).toContain('Hardly any cloth is left over');
  cleanup();
  open(pleats, { kind: 'box', depth: '2', face: '3' });
  expect(await answer()).toContain('lie over each other behind');
});

test('boxes that touch, and boxes with room between', async () => {
  open(pleats, { kind: 'box', finished: '40', width: '8', depth: '2' });
  const said = await answer();
  expect(said).toContain('From box to box4 cm');
  expect(said).toContain('40 cm + 5 × 4 × 2 cm + 2 × 1 cm = 82 cm.');
  type('Depth of a fold', '4');
  expect(await answer()).toContain('From box to boxnothing: they touch');
});

test.each<[string, Record<string, string>, RegExp]>([
  ['no depth', { depth: '0' }, /Depth of a fold: give more than nothing/],
  ['boxes too deep', { kind: 'box', depth: '3' }, /Depth of a fold: .*at most 2\.555 cm/],
  ['a front too wide', { kind: 'box', face: '6' }, /Front of a box: .*at most 5\.111 cm/],
  [
    'cloth that is all seam',
    { cloth: '2' },
    /Cloth wide: 2 cm is too short; give at least 2.472 cm/,
  ],
  ['no pleat', { by: 'count', count: '0' }, /How many: give at least 1/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(pleats, set);
  expect(await answer()).toMatch(said);
});

test('what stays flat comes last, and half a space first: said, and in the formula', async () => {
  open(pleats, { finished: '56', flat: '24', width: '4', depth: '2', ends: 'half', seam: '0' });
  const said = await answer();
  expect(said).toMatch(/^88 cm of strip to cut/);
  expect(said).toContain(
    '8 knife pleats, one every 4 cm, the first fold 2 cm from the seam, then 24 cm flat.',
  );
  expect(said).toContain('(56 cm − 24 cm) ÷ 4 cm = 8, so 8. (56 cm − 24 cm) ÷ 8 = 4 cm each.');
  expect(said).not.toContain('past the seam');
  type('Depth of a fold', '4');
  expect(await answer()).toContain('The first fold reaches 2 cm past the seam.');
});

// A Complete Course in Dressmaking 5 (about 1922), pages 64–69: 21 7/8 in to go in 7 pleats is 3 1/8.
test('the same strip fitted at the hips and the lower edge: depth, lines and formula', async () => {
  const set = { by: 'count', count: '7', finished: '14', depth: '1 255/256', seam: '0' };
  const skirt = { ...set, lower: '20', edge: '27 1/2' };
  open(pleats, skirt, benchOf({ unit: 'in' }));
  const said = await answer();
  expect(said).toContain('Across, lower downeach fold 1 9/16');
  expect(said).toContain('Lines on the strip, lower edge');
  const { workings } = answerTo(pleats, { lower: '110', edge: '200' });
  expect(workings.map(({ formula }) => formula)).toContain(
    '(236 cm − 110 cm) ÷ (18 × 2) = 3.5 cm. (236 cm − 200 cm) ÷ (18 × 2) = 1 cm.',
  );
});

test('where it is as wide as the strip the pleats hang open, wider it names the level', async () => {
  open(pleats, { lower: '110', edge: '236' });
  const said = await answer();
  expect(said).toContain('Across, lower downeach fold 3.5 cm deep, one every 6.111 cm');
  expect(said).toContain('Across, lower edgeas wide as the strip: no fold there');
  expect(said).not.toContain('Lines on the strip, lower edge');
  type('Across, lower edge', '240');
  expect(await answer()).toMatch(/Across, lower edge: 240 cm is too long; give at most 236 cm/);
});

test('a level is a line under the drawing, with its width and the depth there', () => {
  const bench = benchOf();
  const drawn = pleatsDrawing.draw(
    { ...pleats.start(bench), lower: '110', flat: '10', edge: '220' },
    bench,
  );
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual(
    expect.arrayContaining(['flat 10 cm', 'lower 110 cm', 'lower-depth 3.438 cm', 'edge 220 cm']),
  );
});

describe('what it gives to a garment', () => {
  const bench = benchOf();
  const came = (set: Record<string, string>, made = {}) =>
    workOutputs(pleatsOutputs, { ...pleats.start(bench), ...set }, bench, made);
  const mmOf = (all: ReturnType<typeof came>, key: string) => {
    const one = all.get(key);
    return one?.state === 'here' && typeof one.value === 'number'
      ? toMm(one.value as ReturnType<typeof mm>)
      : one?.state;
  };

  test('the strip is cut first and cannot be undone; its lines are made one by one', () => {
    const steps = pleatsOutputs.outputs.flatMap(({ key, step }) =>
      step ? [[key, step.stage, step.undoable]] : [],
    );
    expect(steps).toEqual([
      ['strip', 'cut', false],
      ['marks', 'cut', true],
      ['lower-marks', 'cut', true],
      ['edge-marks', 'cut', true],
      ['finished', 'cut', true],
    ]);
  });

  test('a strip cut 3 mm short comes out 3 mm narrower, and nothing else changes', () => {
    const planned = came({});
    const cut = came({}, { steps: { strip: mm(2377) } });
    expect(mmOf(planned, 'strip')).toBe(2380);
    expect([mmOf(planned, 'finished'), mmOf(cut, 'finished')]).toEqual([920, 917]);
    for (const key of ['strip', 'marks', 'count', 'width', 'depth']) {
      expect(cut.get(key)).toEqual(planned.get(key));
    }
  });

  test('as many lines as were begun stay, and count and width follow them', () => {
    const all = came({}, { counts: { marks: 38 } });
    expect(all.get('count')).toMatchObject({ state: 'here', value: 19 });
    expect(Number(mmOf(all, 'width')).toFixed(2)).toBe('48.42');
  });

  test('each level gives its depth and its lines, of as many pleats as were begun at the top', () => {
    const set = { lower: '110', edge: '236' };
    const planned = came(set);
    expect(mmOf(planned, 'lower-depth')).toBe(35);
    expect(mmOf(planned, 'edge-depth')).toBe(0);
    expect(planned.get('edge-marks')).toEqual({ state: 'absent', by: 'edge' });
    expect(came({}).get('lower-marks')).toEqual({ state: 'absent', by: 'lower' });
    const begun = came(set, { counts: { marks: 38 } }).get('lower-marks');
    expect(begun).toMatchObject({ state: 'here' });
    // 92 + 19 × 2 × 4 is the strip they are of, less 110.
    expect(mmOf(came(set, { counts: { marks: 38 } }), 'lower-depth')).toBeCloseTo(1340 / 38, 3);
  });

  test('strips and cloth are there where the cloth is given', () => {
    expect(came({}).get('strips')).toEqual({ state: 'absent', by: 'cloth' });
    expect(came({ cloth: '90' }).get('cloth')).toEqual({ state: 'absent', by: 'deep' });
    expect(mmOf(came({ cloth: '90', deep: '15' }), 'cloth')).toBe(450);
  });
});
