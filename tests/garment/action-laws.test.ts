import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { copyAsNewStart } from '../../src/garment/actions/copy.ts';
import { waysOutOf } from '../../src/garment/actions/decide.ts';
import { begin, type Change, type State } from '../../src/garment/actions/state.ts';
import { takeUps } from '../../src/garment/actions/take-up.ts';
import { openBefore } from '../../src/garment/work-out/before-cut.ts';
import { same } from '../../src/garment/work-out/same.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import { alike, frozen, plain } from './trial/compare.ts';
import { type Dice, dice } from './trial/dice.ts';
import { KNOWN } from './trial/known.ts';
import { linkedGarment } from './trial/linked-garment.ts';
import { randomAction } from './trial/random-action.ts';
import { randomGarment } from './trial/random-garment.ts';
import { soundFaults } from './trial/second-opinion.ts';

/** In the gate; `npm run laws` tries as many as it is asked to. */
const GARMENTS = { numRuns: 40, seed: 1420 };
const seeds = fc.nat(1_000_000);
const now = 9;

const settled = (state: State) => act(state, { do: 'settle', now }).state;
const doing = (state: State, ...actions: readonly Action[]) =>
  settled(actions.reduce((so, action) => act(so, action).state, state));

/** Facts an action names: it may change these and no other. */
function named(action: Action, { log, answer }: State): Set<string> {
  const inEdits = (change: Change | undefined) =>
    (change?.edits ?? []).flatMap(({ slot }) => (slot[0] === 'facts' ? [slot[1] ?? ''] : []));
  if (action.do === 'unmake') return new Set([action.fact]);
  if (action.do === 'measure' && 'fact' in action) return new Set([action.fact]);
  if (action.do === 'measure') {
    return new Set(answer.sound.facts.get(`${action.quantity}||`)?.map(({ id }) => id));
  }
  if (action.do === 'undo') return new Set(inEdits(log.find(({ id }) => id === action.change)));
  return new Set();
}

test('laws 1, 2 and 3 along walks: facts stay, every one is shown, undo undoes, memory changes nothing', () => {
  const refusals = new Set<string>();
  fc.assert(
    fc.property(seeds, (seed) => {
      const d = dice(seed * 7919);
      let state = begin(frozen(randomGarment(seed)), KNOWN);
      for (let k = 0; k < 25; k++) {
        const before = state;
        const action = randomAction(d, before);
        const done = act(before, action);
        state = done.state;
        frozen(state.record);
        if (done.refused) refusals.add(`${action.do}: ${done.refused.why}`);
        const where = `${seed} step ${k} ${JSON.stringify(action)}`;
        const full = workOut(state.record, KNOWN);
        expect(alike(state.answer, full), where).toBe(true);
        expect(soundFaults(full), where).toEqual([]);
        const free = named(action, before);
        for (const [id, fact] of Object.entries(before.record.facts)) {
          if (!free.has(id)) expect(state.record.facts[id], where).toBe(fact);
        }
        const shown = new Set([
          ...full.earlier.map(({ fact }) => fact),
          ...[...full.nodes.values()].flatMap((node) =>
            node.form === 'plan'
              ? []
              : node.form === 'fact' || node.form === 'before'
                ? [node.fact.id]
                : node.facts.map(({ id }) => id),
          ),
        ]);
        expect(
          Object.keys(state.record.facts).filter((id) => !shown.has(id)),
          where,
        ).toEqual([]);
        const change = state.log.at(-1);
        const isNew = change && !before.log.includes(change) && !before.record.pending;
        if (!isNew || done.refused) continue;
        const undone = act(state, { do: 'undo', change: change.id, now });
        expect(undone.refused, where).toBeUndefined();
        expect(plain(undone.state.record), where).toEqual(plain(before.record));
      }
    }),
    { ...GARMENTS, numRuns: 12 },
  );
  expect(refusals.size).toBeGreaterThan(6);
});

test('law 5: taken off and put back is as before, and with a change between as that change alone', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const d = dice(seed * 31);
      const state = begin(randomGarment(seed), KNOWN);
      const work = d.of(Object.keys(state.record.works));
      const leave = d.of(['wait', 'number'] as const);
      const off = act(state, { do: 'take off', work, leave, now }).state;
      const back = act(off, { do: 'put back', work, now });
      expect(back.refused).toBeUndefined();
      expect(plain(back.state.record)).toEqual(plain(state.record));
      const change = randomAction(d, state, [
        ['type', 1],
        ['link', 1],
        ['choose', 1],
      ]);
      if (JSON.stringify(change).includes(`"${work}"`)) return;
      const [alone, between] = [act(state, change), act(off, change)];
      if (alone.refused || between.refused) return;
      const late = act(settled(between.state), { do: 'put back', work, now }).state;
      expect(plain(late.record)).toEqual(plain(settled(alone.state).record));
    }),
    { ...GARMENTS, numRuns: 60 },
  );
});

test('law 7: a press is one fact, two at once are one, and changes of two tabs commute', () => {
  let presses = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const d = dice(seed * 13);
      const state = begin(randomGarment(seed), KNOWN);
      const facts = (one: State) => Object.keys(one.record.facts).length;
      const press = { ...randomAction(d, state, [['make', 1]]) };
      const made = act(state, press);
      if (!made.refused) {
        presses += 1;
        expect(facts(made.state)).toBe(facts(state) + 1);
        // The second tap carries the number that stood there for the first, and its id.
        expect(facts(act(made.state, press).state)).toBe(facts(state) + 1);
      }
      const one = randomAction(d, state, [
        ['type', 2],
        ['choose', 2],
        ['rank', 1],
        ['pass', 1],
        ['note', 1],
      ]);
      const other = randomAction(d, state, [
        ['type', 2],
        ['link', 2],
        ['move', 1],
        ['pass', 1],
      ]);
      const place = (action: Action) =>
        JSON.stringify(
          'place' in action ? action.place : 'home' in action ? action.home : [action.do],
        );
      if (place(one) === place(other)) return;
      const [first, second] = [doing(state, one, other), doing(state, other, one)];
      const refused = first.log.length < 2 || first.log.length !== second.log.length;
      expect(refused || same(plain(first.record), plain(second.record))).toBe(true);
    }),
    { ...GARMENTS, numRuns: 60 },
  );
  expect(presses).toBeGreaterThan(10);
});

test('law 9: every way out leaves no conflict there, moves no fact and gives what it showed', () => {
  let ways = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const shape = (['rows', 'half made', 'rows'] as const)[seed % 3];
      const state = begin(randomGarment(seed, shape), KNOWN);
      for (const { home } of state.answer.conflicts) {
        for (const { way, row } of waysOutOf(state, home)) {
          ways += 1;
          const done = act(state, { do: 'decide', home, way, now });
          const where = `${seed} ${home} ${way}`;
          expect(done.refused, where).toBeUndefined();
          const { answer, record } = done.state;
          expect(
            answer.conflicts.filter((one) => one.home === home),
            where,
          ).toEqual([]);
          expect(record.facts, where).toEqual(state.record.facts);
          if (row) expect(answer.values.get(home), where).toMatchObject({ value: row.run });
        }
      }
    }),
    { ...GARMENTS, numRuns: 60 },
  );
  expect(ways).toBeGreaterThan(50);
});

/** Pieces that take their allowances from hems and seams, cut larger or smaller than asked. */
function cutOtherwise(d: Dice): State {
  let state = begin(linkedGarment(6 * d.int(1, 2)), KNOWN);
  for (const { home, step } of state.answer.steps) {
    const asked = state.answer.values.get(home);
    if (step.stage !== 'cut' || !asked?.ok || typeof asked.value !== 'number') continue;
    const measured = Math.round(asked.value) + d.int(-160_000, 160_000);
    const id = `cut-${home}`;
    state = act(state, { do: 'make', home, id, tape: 8000, measured, now }).state;
  }
  return state;
}

test('law 9, of what takes a difference up: as asked then, no fact moved, nothing else in the way, and undone whole', () => {
  let ways = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const random = () => begin(randomGarment(seed, seed % 4 === 1 ? 'rows' : 'half made'), KNOWN);
      const state = seed % 2 === 0 ? cutOtherwise(dice(seed)) : random();
      const homes = new Set(state.answer.conflicts.map(({ home }) => home));
      for (const home of homes) {
        for (const { place, parts, after, answer: shown } of takeUps(state, home)) {
          ways += 1;
          const done = act(state, { do: 'choose', place, parts, now });
          const where = `${seed} ${home} ${JSON.stringify(place)} ${after}`;
          expect(done.refused, where).toBeUndefined();
          const { answer, record } = done.state;
          const open = answer.conflicts.map((one) => one.home);
          expect(open, where).not.toContain(home);
          expect(
            open.filter((one) => !homes.has(one)),
            where,
          ).toEqual([]);
          expect(record.facts, where).toEqual(state.record.facts);
          expect(alike(answer, shown), where).toBe(true);
          const change = done.state.log.at(-1)?.id ?? 0;
          const undone = act(done.state, { do: 'undo', change, now });
          expect(plain(undone.state.record), where).toEqual(plain(state.record));
        }
      }
    }),
    { ...GARMENTS, numRuns: 24 },
  );
  expect(ways).toBeGreaterThan(20);
});

test('law 9, of what a maker allows: kept with any way, it leaves no conflict, and lets later ones within it be', () => {
  let later = 0;
  fc.assert(
    fc.property(seeds, fc.integer({ min: 0, max: 40_000 }), (seed, allow) => {
      const shape = (['rows', 'half made', 'rows'] as const)[seed % 3];
      const state = begin(randomGarment(seed, shape), KNOWN);
      for (const { home } of state.answer.conflicts) {
        for (const { way, row } of waysOutOf(state, home)) {
          const { answer, record } = act(state, { do: 'decide', home, way, allow, now }).state;
          const where = `${seed} ${home} ${way} ${allow}`;
          expect(record.decisions[home], where).toMatchObject({ way, allow });
          const open = (one: State['answer']) => one.conflicts.some((each) => each.home === home);
          expect(open(answer), where).toBe(false);
          if (row) expect(answer.values.get(home), where).toMatchObject({ value: row.run });
          const next = answer.steps.find((step) => step.home === home && step.ready);
          const result = answer.values.get(home);
          if (!next || next.made === next.of || !result?.ok || typeof result.value !== 'object') {
            continue;
          }
          const rank = result.made?.indexOf(undefined) ?? 0;
          const measured = Math.floor((result.value.marks[rank]?.at ?? 0) + allow);
          const press = { do: 'make', home, id: 'later', tape: 8000, rank, measured, now } as const;
          const made = act({ ...state, record, answer }, press);
          if (made.refused) continue;
          later += 1;
          expect(open(made.state.answer), where).toBe(false);
        }
      }
    }),
    { ...GARMENTS, numRuns: 60 },
  );
  expect(later).toBeGreaterThan(20);
});

test('a copy begins anew without conflicts, and what a cut hangs on is told', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const { record, answer } = begin(randomGarment(seed), KNOWN);
      const copy = copyAsNewStart(record, 'other', 'Second', now);
      expect(Object.keys(copy.facts)).toEqual([]);
      expect(workOut(copy, KNOWN).conflicts).toEqual([]);
      for (const { home } of answer.steps.slice(0, 2)) {
        const open = openBefore(answer, home);
        const made = open.filter((key) => {
          const result = answer.values.get(key);
          return result?.ok && result.state === 'made';
        });
        expect(made).toEqual([]);
      }
    }),
    GARMENTS,
  );
});
