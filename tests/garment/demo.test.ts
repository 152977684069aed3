import { expect, test } from 'vitest';
import { demoWords } from '#words/garment/demo-words.ts';
import { DEMO_CALCULATIONS, demoGarment } from '../../src/garment/actions/demo.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import { soundOf } from '../../src/garment/record/sound.ts';
import { oddQuantity } from '../../src/garment/work-out/odd-quantity.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import { mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';
import { KNOWN } from './trial/known.ts';

const demo = demoGarment(demoWords, 'demo', 7, KNOWN);
const answer = workOut(demo, KNOWN);
const numberAt = (home: string) => {
  const result = answer.values.get(home);
  if (!result?.ok) throw new Error(`${home}: ${JSON.stringify(result)}`);
  return result.value;
};

test('the demo is a sound garment, says that it is invented, and is nobody’s work', () => {
  expect(readRecord(demo)).toEqual({ ok: true, value: demo });
  expect(soundOf(demo).unsound).toEqual([]);
  expect(demo).toMatchObject({ invented: true, edits: 0 });
  expect(demo.name).toContain('(invented)');
  for (const id of DEMO_CALCULATIONS) expect(KNOWN.get(id)).toBeTypeOf('object');
  expect(answer.troubles).toEqual([]);
  expect(answer.conflicts).toEqual([]);
});

test('its seven hooks are on the front edge: the third is lower, and the rest share it', () => {
  const places = (numberAt(homeOf('hooks', '', 'marks')) as Run).marks.map(
    ({ at }) => Math.round(at / 8000) / 10,
  );
  // The example of the design, invented.
  expect(places).toEqual([1.2, 8.3, 15.8, 22.8, 29.8, 36.8, 43.8]);
  const step = answer.steps.find(({ home }) => home === homeOf('hooks', '', 'marks'));
  expect(step).toMatchObject({ made: 3, of: 7, ready: true });
});

test('its strip is as long as the armhole, its lace goes through the holes of the strip', () => {
  expect(numberAt(homeOf('strip', '', 'count'))).toBe(78);
  const lace = numberAt(homeOf('lace', '', 'lace')) as number;
  const holes = numberAt(homeOf('lace', '', 'holes')) as Run;
  expect(holes.marks).toHaveLength(78);
  expect(lace).toBeGreaterThan(2 * 624 * 8000);
});

test('its wearer’s measures are invented and say so, nothing is odd about them, and the fit takes one', () => {
  const measured = [...answer.sound.quantities].filter(([, { measure }]) => measure !== undefined);
  expect(measured.map(([, { measure }]) => measure)).toEqual([
    'chest-girth',
    'natural-waist-girth',
    'back-waist-length',
  ]);
  for (const [id, { body, name }] of measured) {
    expect(body).toBe(true);
    expect(name).toContain('(invented)');
    expect(oddQuantity(answer, id)).toBeUndefined();
  }
  // 98 and 8 of ease.
  expect(numberAt(homeOf('fit', '', 'wanted'))).toBe(mm(1060));
});

test('side seams and front hems are made; what is cut comes first of what is left', () => {
  const left = answer.steps.filter(({ made, of }) => made !== of);
  const works = (homes: readonly { home: string }[]) => [
    ...new Set(homes.map(({ home }) => home.split('|')[0])),
  ];
  expect(works(left)).toEqual(['strip', 'back', 'hooks', 'lace']);
});
