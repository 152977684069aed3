import fc from 'fast-check';
import { expect, test } from 'vitest';
import { act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { previewOf } from '../../src/garment/actions/typing.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Garment, Parts } from '../../src/garment/record/record.ts';
import { type Answer, workOut } from '../../src/garment/work-out/work-out.ts';
import { timesTried } from '../thorough.ts';
import { alike, frozen } from './trial/compare.ts';
import { dice } from './trial/dice.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { linkedGarment } from './trial/linked-garment.ts';
import { randomAction } from './trial/random-action.ts';
import { randomGarment } from './trial/random-garment.ts';

/** In the gate; `npm run laws` tries as many as it is asked to. */
const WALKS = { numRuns: timesTried(25), seed: 1430 };
const now = 9;

/** Beside values and what is said: which numbers there are, in which order, and what each reads. */
function readings({ nodes, sources }: Answer) {
  return [...nodes.keys()].map((key) => [key, sources(key)]);
}

function expectAsAnew(record: Garment, answer: Answer, where: string): void {
  const anew = workOut(record, KNOWN);
  expect(alike(answer, anew), where).toBe(true);
  expect(readings(answer), where).toEqual(readings(anew));
}

test('worked out part by part a garment is as worked out anew, along walks of random actions', () => {
  let kept = 0;
  fc.assert(
    fc.property(fc.nat(1_000_000), (seed) => {
      const d = dice(seed * 6037);
      let state = begin(frozen(randomGarment(seed)), KNOWN);
      for (let k = 0; k < 30; k++) {
        const action = randomAction(d, state);
        const next = act(state, action).state;
        const where = `${seed} step ${k} ${JSON.stringify(action)}`;
        expectAsAnew(next.record, next.answer, where);
        const typedIn = previewOf(next);
        expectAsAnew(act(next, { do: 'settle', now }).state.record, typedIn, `${where} typed`);
        kept += [...next.answer.memory.blocks].filter(
          ([id, block]) => state.answer.memory.blocks.get(id) === block,
        ).length;
        state = next;
      }
    }),
    WALKS,
  );
  expect(kept).toBeGreaterThan(timesTried(1000));
});

test('an answer that is left behind is a memory as good as the last one', () => {
  fc.assert(
    fc.property(fc.nat(1_000_000), (seed) => {
      const d = dice(seed * 8087);
      const states: State[] = [begin(randomGarment(seed), KNOWN)];
      for (let k = 0; k < 12; k++) {
        const from = d.of(states);
        const next = act(from, randomAction(d, from)).state;
        const memory = d.of(states).answer.memory;
        expectAsAnew(next.record, workOut(next.record, KNOWN, memory), `${seed} step ${k}`);
        states.push(next);
      }
    }),
    { ...WALKS, numRuns: timesTried(15) },
  );
});

/** Works that read each other in a row: a, which is read by b, by c. */
function inARow() {
  const mm = (n: number) => typed(String(n), 'mm');
  const hem = (rank: number, depth: Parts) => ({
    ...{ name: `Hem ${rank}`, calculation: 'toy-hem', rank },
    fields: { depth, turned: typed('once'), turn: mm(3) },
  });
  return garmentOf({
    quantities: {
      q: { name: 'q', kind: 'length', rank: 1, parts: mm(20) },
      r: { name: 'r', kind: 'length', rank: 2, parts: mm(5) },
    },
    works: {
      a: hem(1, [quantity('q')]),
      b: hem(2, [output('a', 'allowance')]),
      c: hem(3, [output('b', 'allowance')]),
      d: hem(4, [quantity('r')]),
    },
  });
}

test('what comes, goes and comes back reaches what reads it, near and far, and nothing else', () => {
  const state = begin(inARow(), KNOWN);
  const off = act(state, { do: 'take off', work: 'a', leave: 'wait', now }).state;
  const c = homeOf('c', '', 'allowance');
  expect(off.answer.values.get(c)).toMatchObject({ ok: false, trouble: { kind: 'waits' } });
  const { blocks } = off.answer.memory;
  expect(blocks.get('d')).toBe(state.answer.memory.blocks.get('d'));
  expect(blocks.get('c')).not.toBe(state.answer.memory.blocks.get('c'));
  const { a: _, ...works } = state.record.works;
  const without = workOut({ ...state.record, works }, KNOWN, state.answer.memory);
  expectAsAnew({ ...state.record, works }, without, 'a is gone');
  const back = workOut(state.record, KNOWN, without.memory);
  expectAsAnew(state.record, back, 'a is back');
});

test('a step passed over is said anew, and no number is worked out for it', () => {
  const state = begin(inARow(), KNOWN);
  const [step] = state.answer.steps;
  const over = act(state, { do: 'pass', home: step?.home ?? '', over: true, now }).state;
  expect(over.answer.steps[0]).toMatchObject({ home: step?.home, passed: true });
  expect(over.answer.evaluated).toBe(0);
  const again = act(over, { do: 'pass', home: step?.home ?? '', over: false, now }).state;
  expect(again.answer.steps).toEqual(state.answer.steps);
});

test('of 500 works a press on a hole leaves all others as they are', () => {
  const state = begin(linkedGarment(500), KNOWN);
  const home = homeOf('w3', '', 'holes');
  const press = { do: 'make', home, id: 'p', tape: 8000, now } as const;
  const made = act(state, press).state.answer;
  const others = [...made.memory.blocks].filter(
    ([id, block]) => state.answer.memory.blocks.get(id) !== block,
  );
  expect(others.map(([id]) => id)).toEqual(['w3', 'w5']);
  expect(made.evaluated).toBeLessThanOrEqual(6);
});
