import { expect, test } from 'vitest';
import { length } from '../../src/calculation/field-spec.ts';
import type { Fields, Work } from '../../src/garment/record/record.ts';
import type { Seen } from '../../src/garment/record/sound.ts';
import { absentBy, type Known, seenWork } from '../../src/garment/work-out/seen-work.ts';
import { output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { YES_NO, yesTo } from './trial/yes-no.ts';

const hem = (set: Partial<Work>): Work => ({
  ...{ name: 'Hem', calculation: 'toy-hem', rank: 1 },
  fields: { depth: typed('2'), turned: typed('twice') },
  ...set,
});
const look = (work: Work, known: Known = KNOWN) => seenWork(work, known, new WeakMap());

test('of a work whose calculation isn’t there its sides are known, and nothing that stands on them', () => {
  const work = hem({ sides: ['left', 'right'], fields: { depth: [quantity('long')] } });
  for (const state of ['awaited', 'missing', 'newer'] as const) {
    const known: Known = state === 'newer' ? new Map() : new Map([[work.calculation, state]]);
    const seen = look(work, known);
    expect(seen).toMatchObject({ work, state, unknown: [], linked: [] });
    expect(seen.outputs).toBeUndefined();
    expect(seen.sides.map(({ side }) => side)).toEqual(['left', 'right']);
    for (const { draft, texts, ask } of seen.sides) {
      expect([draft, texts.size]).toEqual([{}, 0]);
      // Whatever is asked of it, nothing is chosen.
      expect(ask(length({}))).toBe('');
    }
    const [left] = seen.sides;
    expect(left && absentBy(seen, left, 'allowance')).toBeUndefined();
  }
});

test('an option or a field this build doesn’t know is of a newer one, and nothing is worked out', () => {
  const thrice = look(hem({ fields: { depth: typed('2'), turned: typed('thrice') } }));
  expect(thrice).toMatchObject({ state: 'newer', unknown: [{ field: 'turned' }] });
  expect(thrice.outputs).toBeUndefined();
  const far = look(hem({ sides: ['left', 'right'], own: { right: { tilt: typed('5') } } }));
  expect(far).toMatchObject({ state: 'newer', unknown: [{ field: 'tilt' }] });
  const here = look(hem({}));
  expect(here).toMatchObject({ state: 'here', unknown: [] });
  expect(here.outputs).toBe(KNOWN.get('toy-hem'));
});

test('a side has the fields of all, but for its own; what is no list of fields is none of its', () => {
  const drafts = (own: unknown) =>
    look(hem({ sides: ['left', 'right'], own: own as Record<string, Fields> })).sides.map(
      ({ draft }) => draft.depth,
    );
  expect(drafts({ right: { depth: typed('3') } })).toEqual(['2', '3']);
  for (const none of [undefined, 'right', { right: 7 }, { right: ['3'] }, { right: null }]) {
    expect(drafts(none)).toEqual(['2', '2']);
  }
});

test('it links to each number and each work that stands in a field of a side, once', () => {
  const fields = {
    depth: [quantity('long'), ...typed(' + '), output('back', 'cut-length')],
    turned: typed('twice'),
    turn: [quantity('long')],
    round: [{ put: 8000, kind: 'length', was: { quantity: 'gone' } }],
  } as Fields;
  const own = { right: { above: [quantity('ease')] } };
  expect(look(hem({ fields, sides: ['left', 'right'], own })).linked).toEqual([
    ...['long', 'back', 'ease'],
  ]);
});

test('the same work is looked at once, and anew once its calculation is there', () => {
  const seen: Seen = new WeakMap();
  const work = hem({});
  const awaited = seenWork(work, new Map([['toy-hem', 'awaited']]), seen);
  const now = seenWork(work, KNOWN, seen);
  expect([awaited.state, now.state]).toEqual(['awaited', 'here']);
  expect(seenWork(work, KNOWN, seen)).toBe(now);
});

test('a number is absent by its own choice, else where all it takes is: by the first of those', () => {
  const absent = (work: Work) => {
    const seen = look(work, new Map([[YES_NO.id, YES_NO]]));
    const [side] = seen.sides;
    return [...YES_NO.outputs.map(({ key }) => key), 'none'].map(
      (key) => side && absentBy(seen, side, key),
    );
  };
  expect(absent(yesTo())).toEqual(['first', 'second', 'first', 'third', 'first', undefined]);
  expect(absent(yesTo('first'))).toEqual([
    ...[undefined, 'second', undefined, 'third', undefined, undefined],
  ]);
  expect(absent(yesTo('second', 'third'))).toEqual([
    ...['first', undefined, undefined, undefined, undefined, undefined],
  ]);
  expect(absent(yesTo('third'))).toEqual([
    ...['first', 'second', 'first', 'first', 'first', undefined],
  ]);
});
