import { expect, test } from 'vitest';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import { begin, type Refused, type State } from '../../../src/garment/actions/state.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import type { Garment, Quantity, Work } from '../../../src/garment/record/record.ts';
import type { Known } from '../../../src/garment/work-out/seen-work.ts';
import { refusedSaid } from '../../../src/screens/garment/said/refused-words.ts';
import { datumSaid } from '../../../src/screens/garment/said/step-datum.ts';
import {
  conflictSaid,
  type Telling,
  troubleWords,
  unsoundSaid,
  workTroubleSaid,
} from '../../../src/screens/garment/said/told-words.ts';
import { benchOf } from '../../controls/helpers.ts';
import { damaged } from '../../garment/trial/changed-records.ts';
import { dice } from '../../garment/trial/dice.ts';
import { garmentOf, output, quantity, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';
import { randomAction } from '../../garment/trial/random-action.ts';
import { randomGarment } from '../../garment/trial/random-garment.ts';

const bench = benchOf();
const GARMENTS = 140;

/** As a maker would name things: nothing of it is an id or a key. */
function named(record: Garment): Garment {
  const works = Object.entries(record.works).map(([id, one], i) => [
    id,
    { ...(one as Work), name: `Cloth ${letter(i)}` },
  ]);
  const quantities = Object.entries(record.quantities).map(([id, one], i) => [
    id,
    { ...(one as Quantity), name: `Length ${letter(i)}` },
  ]);
  return {
    ...record,
    works: Object.fromEntries(works),
    quantities: Object.fromEntries(quantities),
  };
}
const letter = (i: number) => String.fromCharCode(65 + (i % 26));

/** What only the app calls things by: ids, homes, letters of links, and keys of outputs and fields. */
const KEYS = [...KNOWN.values()].flatMap((gives) =>
  typeof gives === 'object'
    ? [
        gives.id,
        ...gives.outputs.map(({ key }) => key),
        ...Object.keys(gives.fields.specs).filter((key) => /[A-Z-]/.test(key)),
      ]
    : [],
);
const TELLING_KEYS = KEYS.filter((key) => key.includes('-') || /[a-z][A-Z]/.test(key));
const INSIDE = new RegExp(
  `\\b[qwnf]\\d+\\b|\\||\\?asked|[\\ue000-\\uf8ff]|undefined|null|NaN|\\[object|\\b(${TELLING_KEYS.join('|')})\\b`,
);

function isSentence(said: string): void {
  expect(said).toMatch(/^[\p{Lu}\d“[]/u);
  expect(said).toMatch(/[.?]$/);
  expect(said.length).toBeLessThan(700);
  expect(said).not.toMatch(INSIDE);
}

/** Everything a garment in hand has to say, by kind. */
function allSaid(state: State, met: Set<string>): void {
  const { answer, record } = state;
  const telling: Telling = { answer, bench };
  for (const [key, result] of answer.values) {
    if (result.ok) continue;
    const { trouble } = result;
    met.add(trouble.kind);
    if (trouble.kind === 'waits' && trouble.gone) met.add(`gone ${trouble.gone.why}`);
    isSentence(troubleWords(telling, key, trouble));
    isSentence(troubleWords({ ...telling, here: answer.nodes.get(key)?.id }, key, trouble));
  }
  for (const one of answer.troubles) {
    met.add(`work ${one.why}`);
    isSentence(workTroubleSaid(telling, one));
  }
  for (const one of answer.unsound) {
    met.add(`unsound ${one.part}`);
    isSentence(unsoundSaid(telling, record, one));
  }
  for (const one of answer.conflicts) {
    met.add(one.over === undefined ? 'row' : 'over');
    isSentence(conflictSaid(telling, one));
  }
}

test('whatever is wrong with a garment is said in words, without an id or a key', () => {
  const met = new Set<string>();
  for (let seed = 1; seed <= GARMENTS; seed++) {
    const d = dice(seed);
    const known: Known =
      seed % 7 === 0
        ? new Map(
            [...KNOWN].map(([id, gives], i) => [
              id,
              i % 3 ? gives : seed % 2 ? 'awaited' : 'missing',
            ]),
          )
        : KNOWN;
    const record = named(randomGarment(seed));
    let state = begin(record, known);
    allSaid(state, met);
    for (let k = 0; k < 12; k++) {
      const action = randomAction(d, state);
      const it = 'it' in action ? { it: { ...action.it, name: 'Cloth' } } : {};
      const done = act(state, { ...action, ...it } as Action);
      state = done.state;
      if (!done.refused) continue;
      met.add(`refused ${done.refused.why}`);
      isSentence(refusedSaid({ answer: state.answer, bench }, done.refused));
    }
    allSaid(state, met);
  }
  const kinds = ['not given', 'impossible', 'waits', 'circle', 'kinds', 'row', 'over'];
  const gone = ['awaited', 'missing', 'absent', 'taken off', 'newer'].map((why) => `gone ${why}`);
  const refused = [
    'circle',
    'waits',
    'undecided',
    'not there',
    'changed since',
    'a sum is not measured',
  ];
  const all = [...kinds, ...gone, ...refused.map((why) => `refused ${why}`), 'work newer'];
  expect(all.filter((kind) => !met.has(kind))).toEqual([]);
});

test('a row that is wholly made has no rest to go on with', () => {
  const fields = {
    ...{ opening: typed('11'), count: typed('2'), top: typed('1'), bottom: typed('1') },
    ...{ by: typed('count'), ends: typed('given') },
  };
  const works = { hooks: { name: 'Hooks', calculation: 'closures', rank: 1, fields } };
  const made = (state: State, measured: number) =>
    act(state, {
      ...{ do: 'make', home: homeOf('hooks', '', 'marks'), tape: 8000, now: 1, measured },
      id: `f${state.record.edits}`,
    } as Action).state;
  const saidOf = ({ answer }: State) =>
    answer.conflicts.map((one) => conflictSaid({ answer, bench }, one));
  const one = made(begin(garmentOf({ works }), KNOWN), 104_000);
  expect(saidOf(one)).toEqual([expect.stringContaining('Decide how the rest goes on.')]);
  const both = made(made(begin(garmentOf({ works }), KNOWN), 80_000), 824_000);
  expect(saidOf(both)).toEqual([expect.stringContaining('Decide what becomes of that.')]);
});

test('what is damaged is said in words, too', () => {
  const met = new Set<string>();
  for (let seed = 1; seed <= GARMENTS / 2; seed++) {
    const record = randomGarment(seed);
    const broken = damaged(record, dice(seed)) as Garment;
    const maps = ['quantities', 'works', 'facts', 'begun', 'decisions'] as const;
    if (maps.some((map) => typeof broken[map] !== 'object' || broken[map] === null)) continue;
    const state = begin(broken, KNOWN);
    const telling: Telling = { answer: state.answer, bench };
    for (const one of state.answer.unsound) {
      met.add(one.part);
      const said = unsoundSaid(telling, broken, one);
      expect(said).toMatch(/\.$/);
      expect(said).not.toMatch(/\||undefined|null/);
    }
    for (const [key, result] of state.answer.values) {
      if (!result.ok) expect(troubleWords(telling, key, result.trouble)).toMatch(/[.?]$/);
    }
  }
  expect([...met].sort()).toEqual(['begun', 'decision', 'fact', 'quantity', 'work']);
});

const HEM = {
  name: 'Back hem',
  calculation: 'toy-hem',
  rank: 1,
  fields: { depth: typed('2'), turned: typed('once') },
};
const BACK = {
  name: 'Back',
  calculation: 'toy-piece',
  rank: 2,
  fields: { width: typed('40'), length: [quantity('long')], bottom: [output('hem', 'allowance')] },
};
const LONG = { name: 'Back length', kind: 'length', rank: 1, parts: typed('60') };

function inHand(set: Parameters<typeof garmentOf>[0] = {}): State {
  const works = { hem: HEM, back: BACK };
  return begin(garmentOf({ quantities: { long: LONG }, works, ...set }), KNOWN);
}

function refusedFor(state: State, action: Parameters<typeof act>[1]): string {
  const done = act(state, action);
  return refusedSaid({ answer: done.state.answer, bench }, done.refused as Refused);
}

test('a circle is refused with the way round, by names and fields', () => {
  const place = { work: 'hem', field: 'depth' };
  const parts = [output('back', 'cut-length')];
  const said = refusedFor(inHand(), { do: 'link', place, parts, now: 1 });
  expect(said).toBe(
    'Not done: each of these would need the one after it first: Back hem · Allowance → Back · Cut length, by B → Back hem · Allowance. Take another number, or type one.',
  );
});

test('a long way round names its beginning and its end', () => {
  const works = Object.fromEntries(
    Array.from({ length: 12 }, (_, i) => [
      `h${i}`,
      {
        ...HEM,
        name: `Hem ${i + 1}`,
        fields: { ...HEM.fields, depth: [output(`h${(i + 1) % 12}`, 'allowance')] },
      },
    ]),
  );
  const state = inHand({ works });
  const result = state.answer.values.get(homeOf('h0', '', 'allowance'));
  if (result?.ok !== false) throw new Error('no circle');
  const said = troubleWords(
    { answer: state.answer, bench },
    homeOf('h0', '', 'allowance'),
    result.trouble,
  );
  expect(said).toContain('Hem 4 · Allowance, by Depth → 6 more → Hem 11 · Allowance, by Depth');
  expect(said).toMatch(/→ Hem 1 · Allowance\. Type a number at one of them\.$/);
});

test('what waits names what it waits for, and what is to be mended first', () => {
  const missing = { ...LONG, parts: typed('') };
  const state = inHand({ quantities: { long: missing } });
  const key = homeOf('back', '', 'cut-length');
  const result = state.answer.values.get(key);
  if (result?.ok !== false) throw new Error('has a value');
  const telling = { answer: state.answer, bench };
  expect(troubleWords(telling, key, result.trouble)).toBe(
    'Back · L waits for Back length. First: Back length: give a number.',
  );
  expect(troubleWords({ ...telling, here: 'back' }, key, result.trouble)).toBe(
    'L waits for Back length. First: Back length: give a number.',
  );
});

test('sides that differ are asked about by what was taken', () => {
  const sides = { sides: ['left', 'right'], own: { left: { depth: typed('3') } } };
  const state = inHand({
    quantities: { long: LONG },
    works: { hem: { ...HEM, ...sides }, back: BACK },
  });
  const key = homeOf('back', '', 'cut-length');
  const result = state.answer.values.get(key);
  if (result?.ok !== false) throw new Error('has a value');
  expect(troubleWords({ answer: state.answer, bench }, key, result.trouble)).toBe(
    'Back · B: the sides of Back hem · Allowance differ. Say which of them is meant.',
  );
});

test('a link within what was not understood stands there by its name', () => {
  const depth = [{ text: '3 / ', unit: 'cm' as const }, quantity('long')];
  const works = { hem: { ...HEM, fields: { ...HEM.fields, depth } } };
  const state = inHand({ works });
  const key = homeOf('hem', '', 'allowance');
  const result = state.answer.values.get(key);
  if (result?.ok !== false) throw new Error('has a value');
  const said = troubleWords({ answer: state.answer, bench }, key, result.trouble);
  expect(said).toContain('Back hem · Depth');
  expect(said).not.toMatch(/[\ue000-\uf8ff]/);
});

test('made shorter or longer than asked is said with by how much', () => {
  let state = inHand();
  const home = homeOf('back', '', 'cut-length');
  const making = { home, id: 'f1', tape: 8000, now: 1, measured: 61 * 80_000 };
  state = act(state, { do: 'make', ...making }).state;
  const [conflict] = state.answer.conflicts;
  if (!conflict) throw new Error('no conflict');
  expect(conflictSaid({ answer: state.answer, bench }, conflict)).toBe(
    'Back · Cut length: as made it lacks 1 cm of what is asked now. Decide where that comes from.',
  );
  const only = { ...conflict, rule: 'only' as const };
  expect(conflictSaid({ answer: state.answer, bench }, only)).toMatch(/only a rule of the app did/);
});

test('every other refusal has its sentence', () => {
  const { answer } = inHand();
  const refusals: Refused[] = [
    ...(['works', 'facts', 'size'] as const).map((limit) => ({ why: 'limit', limit }) as const),
    { why: 'stale', shown: 3 },
    ...(['undecided', 'all made', 'id taken', 'a sum is not measured', 'no tape'] as const).map(
      (why) => ({ why }),
    ),
    ...(['step', 'mark', 'fact', 'work', 'conflict', 'way', 'change'] as const).map(
      (what) => ({ why: 'not there', what }) as const,
    ),
    { why: 'changed since', slot: ['works', 'hem', 'fields', 'depth'] },
    { why: 'changed since', slot: ['works', 'hem', 'own', 'left', 'depth'] },
    { why: 'changed since', slot: ['quantities', 'long', 'parts'] },
    { why: 'changed since', slot: ['facts', 'none'] },
    { why: 'made again', home: homeOf('back', '', 'cut-length') },
    { why: 'has facts', id: 'back' },
    { why: 'taken', by: [['works', 'back', 'fields', 'length']] },
  ];
  const said = refusals.map((one) => refusedSaid({ answer, bench }, one));
  said.forEach(isSentence);
  expect(new Set(said).size).toBe(said.length);
  expect(said).toContain(
    'Not taken off: Back · L takes it. Type a number there, or take another; then take it off.',
  );
  expect(said).toContain(
    'Not taken back: Back hem · Depth was changed again since. Change it there.',
  );
});

test('where the tape is held is said for every step', () => {
  const all = [...KNOWN.values()].flatMap((gives) =>
    typeof gives === 'object' ? gives.outputs : [],
  );
  const datums = [...new Set(all.flatMap(({ step }) => step?.datum ?? []))];
  expect(datums.length).toBeGreaterThan(6);
  for (const one of datums) expect(datumSaid(one, 'run')).toMatch(one === 'done' ? /^$/ : /^from /);
  expect(datumSaid('fold', 'run')).toBe('from the fold');
  expect(datumSaid('raw-edge', 'run')).toBe('from the raw edge');
});
