import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { type Making, shownOn } from '../../src/garment/actions/make.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { type Next, nextOf } from '../../src/garment/next/next.ts';
import type { Fact } from '../../src/garment/record/record.ts';
import { dice } from './trial/dice.ts';
import { FactBook } from './trial/fact-book.ts';
import { KNOWN } from './trial/known.ts';
import { randomAction } from './trial/random-action.ts';
import { randomGarment } from './trial/random-garment.ts';

/** A few thousand presses in the gate; `npm run laws` makes as many as it is asked for. */
const PRESSES = 50;
const WALKS = { numRuns: 60, seed: 2117 };

const TAPES = [8000, 4000, 12_700];

/** What a press on the key does, as home sends it. */
function keyPress({ answer }: State, next: Next, tape: number, id: string, now: number) {
  if (next.kind !== 'step') return undefined;
  const shown = shownOn(tape, answer.nodes.get(next.step.home), next.value);
  return { do: 'make', home: next.step.home, id, tape, shown, now } as const satisfies Action;
}

/** The key says something, and what it says is there. */
function expectKey({ answer }: State, next: Next, where: string): void {
  switch (next.kind) {
    case 'step':
      expect(Number.isFinite(next.value), where).toBe(true);
      expect(next.step.ready, where).toBe(true);
      return;
    case 'decide':
      expect(
        answer.conflicts.map(({ home }) => home),
        where,
      ).toContain(next.home);
      return;
    case 'missing':
      expect(next.trouble.kind, where).toBeTruthy();
      return;
    case 'all made':
      expect(
        answer.steps.every(({ made, of }) => made >= (of ?? Number.POSITIVE_INFINITY)),
        where,
      ).toBe(true);
      return;
    case 'nothing yet':
      expect(answer.steps, where).toEqual([]);
  }
}

/** What was made is what stood on the key, and nothing else is. */
function expectMade(before: State, { record }: State, press: Making, where: string): void {
  const made = record.facts[press.id] as Fact | undefined;
  expect(made, where).toMatchObject({
    home: press.home,
    shown: press.shown,
    tape: made?.tape === 0 ? 0 : press.tape,
  });
  expect(Object.keys(record.facts).length, where).toBe(Object.keys(before.record.facts).length + 1);
}

test('on walks over the whole garment the key is never empty, makes what it shows, and no fact moves but by its maker', () => {
  const met = { presses: 0, made: 0, refused: 0, kinds: new Set<string>() };
  const walk = (seed: number, presses: number) => {
    const d = dice(seed * 104_729);
    let state = begin(randomGarment(seed), KNOWN);
    let inHand: string | undefined;
    const book = new FactBook(state);
    for (let k = 0; k < presses; k++) {
      const next = nextOf(state.answer, inHand);
      met.kinds.add(next.kind);
      const id = `k${seed}-${k}`;
      const press = d.chance(0.35) ? keyPress(state, next, d.of(TAPES), id, k) : undefined;
      const action = press ?? randomAction(d, state);
      const where = `${seed} press ${k} ${JSON.stringify(action)}`;
      expectKey(state, next, where);
      const pending = state.record.pending !== undefined;
      const done = act(state, action);
      met.presses += 1;
      if (done.refused) met.refused += 1;
      if (press && !pending) {
        expect(done.refused, where).toBeUndefined();
        expectMade(state, done.state, press, where);
        met.made += 1;
      }
      if (press) inHand = press.home;
      else if (d.chance(0.1)) inHand = d.of([...state.answer.steps.map(({ home }) => home), 'x']);
      expect(book.faultsAfter(action, done, state), where).toEqual([]);
      state = done.state;
    }
  };
  fc.assert(
    fc.property(fc.nat(1_000_000), (seed) => walk(seed, PRESSES)),
    WALKS,
  );
  expect(met.made).toBeGreaterThan(met.presses / 20);
  expect(met.refused).toBeGreaterThan(met.presses / 20);
  // A garment without a step, rarely met here, has a test of its own (next.test.ts).
  met.kinds.delete('nothing yet');
  expect(met.kinds).toEqual(new Set(['step', 'decide', 'missing', 'all made']));
});
