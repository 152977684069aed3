import { describe, expect, test } from 'vitest';
import { demoWords } from '#words/garment/demo-words.ts';
import { cutOutlines } from '../../src/app/lay/cut-outlines.ts';
import { taskFor } from '../../src/app/lay/lay-task.ts';
import { act } from '../../src/garment/actions/act.ts';
import {
  calculationsOf,
  cm,
  type Demo,
  type DemoNames,
  demoGarment,
  from,
  own,
  text,
  typed,
} from '../../src/garment/actions/demo.ts';
import { SHIRT } from '../../src/garment/actions/demo-shirt.ts';
import { SKIRT } from '../../src/garment/actions/demo-skirt.ts';
import { WAISTCOAT } from '../../src/garment/actions/demo-waistcoat.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { materialsOf } from '../../src/garment/materials/materials.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import { soundOf } from '../../src/garment/record/sound.ts';
import { oddQuantity } from '../../src/garment/work-out/odd-quantity.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import { faultsOf } from '../../src/lay/check-lay.ts';
import { boxOf } from '../../src/lay/outline.ts';
import { mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';
import { found } from '../lay/lays.ts';
import { KNOWN } from './trial/known.ts';

const demo = demoGarment(WAISTCOAT, demoWords.waistcoat, 'demo', 7, KNOWN);
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
  for (const id of calculationsOf(WAISTCOAT)) expect(KNOWN.get(id)).toBeTypeOf('object');
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

test('a garment to look at is made of its plan: what it is called, in its order, and what is made of it', () => {
  const press = { tape: 8000, when: 7 };
  const plan: Demo = {
    quantities: { long: own(1, '60') },
    works: [
      {
        ...{ id: 'back', calculation: 'toy-piece' },
        fields: { ...typed('width=30&bottom=2'), length: from({ quantity: 'long' }) },
      },
      {
        ...{ id: 'strip', calculation: 'toy-strip', sides: ['left'] },
        fields: typed('length=50&pitch=12&end=1&fit=fill'),
      },
      {
        ...{ id: 'holes', calculation: 'toy-strip' },
        fields: typed('length=50&pitch=12&end=1&fit=fill'),
      },
      { id: 'more', calculation: 'toy-piece', fields: typed('width=30&length=40') },
    ],
    cloth: { said: { width: cm(140) }, lay: { nap: true } },
    made: ['back'],
    row: { work: 'holes', output: 'holes', marks: [undefined, mm(135)], way: 'as-begun' },
  };
  const names = { name: 'Coat', long: 'Length', back: 'Back', strip: 'Strip', holes: 'Holes' };
  const made = demoGarment(plan, names, 'coat', 7, KNOWN);
  const [one, other] = [{ quantity: 'long' }, { work: 'back', output: 'cut-width' }];
  expect(from(one, other)).toEqual([{ link: one }, text('; '), { link: other }]);
  expect(calculationsOf(plan)).toEqual(['toy-piece', 'toy-strip']);
  expect(made).toMatchObject({
    ...{ version: 3, id: 'coat', name: 'Coat', invented: true, changed: 7, edits: 0 },
    quantities: { long: { name: 'Length', kind: 'length', rank: 1, parts: [text('60')] } },
    works: {
      back: { name: 'Back', rank: 1 },
      strip: { name: 'Strip', rank: 2, sides: ['left'] },
      holes: { name: 'Holes', rank: 3 },
      more: { name: 'more', rank: 4 },
    },
    materials: { cloth: { width: mm(1400) } },
    lays: { cloth: { nap: true } },
    decisions: { [homeOf('holes', '', 'holes')]: { way: 'as-begun' } },
  });
  const [back, holes] = [(key: string) => homeOf('back', '', key), homeOf('holes', '', 'holes')];
  expect(made.facts).toMatchObject({
    'back-1': { ...press, home: back('cut-width'), shown: mm(300) },
    'back-2': { ...press, home: back('cut-length'), shown: mm(620) },
    'holes-3': { ...press, home: holes, shown: mm(10) },
    'holes-4': { ...press, home: holes, shown: mm(130), measured: mm(135) },
  });
  expect(Object.keys(made.facts)).toHaveLength(4);
  const { cloth: _, row: __, ...bare } = plan;
  const none = demoGarment({ ...bare, made: [] }, names, 'bare', 7, KNOWN);
  expect(none).toMatchObject({ id: 'bare', edits: 0, facts: {}, decisions: {} });
  expect([none.materials, none.lays]).toEqual([undefined, undefined]);
});

/** Each invented garment with its names. */
const ALL = [
  ['waistcoat', WAISTCOAT, demoWords.waistcoat],
  ['skirt', SKIRT, demoWords.skirt],
  ['shirt', SHIRT, demoWords.shirt],
] as const;

for (const [which, plan, names] of ALL) {
  describe(`the ${which}`, () => {
    const garment = demoGarment(plan, names, 'demo', 7, KNOWN);
    const worked = workOut(garment, KNOWN);

    test('is sound, invented, nobody’s work, and says what is called what', () => {
      expect(readRecord(garment)).toEqual({ ok: true, value: garment });
      expect(soundOf(garment).unsound).toEqual([]);
      expect(garment).toMatchObject({ invented: true, edits: 0 });
      expect(garment.name).toContain('(invented)');
      expect([worked.troubles, worked.conflicts]).toEqual([[], []]);
      const ids = ['name', ...Object.keys(plan.quantities), ...plan.works.map(({ id }) => id)];
      expect(Object.keys(names).sort()).toEqual(ids.sort());
      for (const [id, { measure, name }] of worked.sound.quantities) {
        if (measure !== undefined) expect(name).toContain('(invented)');
        expect(oddQuantity(worked, id)).toBeUndefined();
      }
    });

    test('is made through to its last step, as the key shows them, and nothing is in conflict', () => {
      let state = begin(garment, KNOWN);
      let made = 0;
      for (;;) {
        const step = state.answer.steps.find((one) => one.ready && one.made < (one.of ?? 0));
        if (!step) break;
        const id = `made-${made}`;
        const next = act(state, { do: 'make', home: step.home, id, tape: 8000, now: 8 });
        expect(next.state, step.home).not.toBe(state);
        state = next.state;
        made += 1;
      }
      expect(made).toBeGreaterThan(20);
      expect(state.answer.steps.filter((one) => one.made !== one.of)).toEqual([]);
      expect([state.answer.troubles, state.answer.conflicts]).toEqual([[], []]);
    }, 60_000);
  });
}

for (const [which, plan, names] of ALL.filter(([, { cloth }]) => cloth)) {
  test(`the pieces of the ${which} are as large as its works cut them, and can be laid`, async () => {
    const garment = demoGarment(plan, names, 'demo', 7, KNOWN);
    const cloth = materialsOf(garment, workOut(garment, KNOWN)).all.find(
      ({ id }) => id === 'cloth',
    );
    if (!cloth?.lay?.of) throw new Error('nothing is laid');
    const { of } = cloth.lay;
    const cut = await cutOutlines(of);
    for (const [id, { along, across }] of Object.entries(of.pieces)) {
      const own = cut.get(id);
      if (!own) continue;
      if (!own.ok) throw new Error(`${id}: ${JSON.stringify(own.problems)}`);
      const { x0, x1, y0, y1 } = boxOf(own.value.exact);
      expect([x1 - x0, y1 - y0].map(mm)).toEqual([along, across]);
    }
    // Folded, the skirt's cloth is too narrow: it is cut across the whole of it.
    for (const folded of which === 'shirt' ? [false, true] : [false]) {
      const outcome = taskFor({ ...of, folded }, [], cut);
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
      const lay = found(outcome.value, { rounds: 40 });
      expect(lay && faultsOf(outcome.value, lay)).toEqual([]);
    }
  });
}

/** What it comes to, in cm, with one of its measures typed anew. */
function comesTo(plan: Demo, names: DemoNames, set: Record<string, string> = {}) {
  const quantities = Object.fromEntries(
    Object.entries(plan.quantities).map(([id, one]) => [
      id,
      id in set ? { ...one, parts: [{ text: set[id] ?? '', unit: 'cm' as const }] } : one,
    ]),
  );
  const garment = demoGarment({ ...plan, quantities, made: [] }, names, 'demo', 7, KNOWN);
  const { values } = workOut(garment, KNOWN);
  const buy = materialsOf(garment, workOut(garment, KNOWN)).all.map(({ id, net }) => [id, net]);
  return {
    cm: (home: string) => {
      const result = values.get(home);
      return result?.ok ? Math.round(Number(result.value) / 800) / 100 : undefined;
    },
    buy: Object.fromEntries(buy) as Record<string, number | undefined>,
  };
}

// By hand: 72 + 2 is 74, and 3 of lap and 2 × 1.5; (99 + 2 − 74) ÷ 2; 2.2 × 74 + 2 × 1.5; 62 + 1.5 + 4.
test('the skirt from its waist and hips to its cloth', () => {
  const { cm, buy } = comesTo(SKIRT, demoWords.skirt);
  expect(cm(homeOf('band', '', 'long'))).toBe(80);
  expect(cm(homeOf('placket', '', 'slit'))).toBe(13.5);
  expect(cm(homeOf('gathers', '', 'strip'))).toBe(165.8);
  expect(cm(homeOf('gathers', '', 'cut-deep'))).toBe(67.5);
  // A strip of 162.8 takes two of cloth 140 wide; as long as one with a waist of 59.
  expect(cm(homeOf('gathers', '', 'cloth'))).toBe(135);
  const narrow = comesTo(SKIRT, demoWords.skirt, { waist: '59' });
  expect(narrow.cm(homeOf('gathers', '', 'cloth'))).toBe(67.5);
  expect(narrow.cm(homeOf('placket', '', 'slit'))).toBe(20);
  expect(Object.keys(buy).length).toBeGreaterThan(2);
  expect(Object.values(narrow.buy)).not.toEqual(Object.values(buy));
});

// By hand: 17.5 + 4 is 21.5, and 2 of lap and 2 × 1; 104 + 16 is 120, half of it and 3 of seams; 12 − 3.175 above the first button.
test('the shirt from its wearer to cuffs, pieces, buttonholes and cloth', () => {
  const { cm, buy } = comesTo(SHIRT, demoWords.shirt);
  expect(cm(homeOf('cuffs', 'left', 'long'))).toBe(25.5);
  expect(cm(homeOf('sleeves', 'right', 'edge'))).toBe(21.5);
  expect(cm(homeOf('back', '', 'cut-width'))).toBe(63);
  const garment = demoGarment(SHIRT, demoWords.shirt, 'demo', 7, KNOWN);
  const row = workOut(garment, KNOWN).values.get(homeOf('holes', '', 'row'));
  const places = row?.ok ? (row.value as Run).marks.map(({ at }) => at / mm(1)) : [];
  expect(places).toHaveLength(7);
  expect(places[0]).toBeCloseTo(8.825, 6);
  expect(places.at(-1)).toBeCloseTo(590 - 3.175, 6);
  const wide = comesTo(SHIRT, demoWords.shirt, { chest: '112', wrist: '19' });
  expect(wide.cm(homeOf('back', '', 'cut-width'))).toBe(67);
  expect(wide.cm(homeOf('cuffs', 'right', 'long'))).toBe(27);
  expect(Object.values(wide.buy)).not.toEqual(Object.values(buy));
});
