import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { STAGES } from '../../src/calculation/output.ts';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { movedPast, stepGroups } from '../../src/garment/actions/move.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { nextOf } from '../../src/garment/next/next.ts';
import { readHome } from '../../src/garment/record/home.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import { dice as diceOf } from './trial/dice.ts';
import { garmentOf, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { randomGarment } from './trial/random-garment.ts';

const piece = (name: string, rank: number) => ({
  ...{ name, calculation: 'toy-piece', rank },
  fields: { length: typed('60'), width: typed('40'), bottom: typed('2') },
});
/** Invented: two pieces to cut, and marks along the edges that join them. */
const two = garmentOf({
  works: {
    back: piece('Back', 1),
    front: piece('Front', 2),
    side: {
      ...{ name: 'Side seam', calculation: 'parts', rank: 3 },
      fields: { length: typed('60'), into: typed('quarters'), round: typed('open') },
    },
  },
});

const homes = ({ answer }: Pick<State, 'answer'>) => answer.steps.map(({ home }) => home);
const past = (state: State, work: string, stage: (typeof STAGES)[number], by: -1 | 1): State => {
  const moving = movedPast(state, { work, stage }, by);
  if (!moving) return state;
  const { past: _, ...to } = moving;
  return act(state, { do: 'move', ...to, now: 1 }).state;
};

test('the seam is joined before the next piece is cut: one press, past one group of steps', () => {
  const start = begin(two, KNOWN);
  const [back, front] = ['back', 'front'].map((id) => [`${id}||cut-width`, `${id}||cut-length`]);
  expect(homes(start)).toEqual([...back!, ...front!, 'side||marks']);
  const once = past(start, 'side', 'join', -1);
  expect(homes(once)).toEqual([...back!, 'side||marks', ...front!]);
  expect(once.record.works.side).toMatchObject({ moved: { join: { stage: 'cut', rank: 1.5 } } });
  // The key goes as the maker said: with the back cut, the seam is next.
  const cut = (home: string): Action => ({ do: 'make', home, id: home, tape: 8000, now: 2 });
  const made = back!.reduce((so, home) => act(so, cut(home)).state, once);
  expect(nextOf(made.answer)).toMatchObject({ step: { home: 'side||marks' } });
  // Back to where its stage has it, and taken back as one change.
  const again = act(once, { do: 'move', work: 'side', stage: 'join', to: undefined, now: 3 }).state;
  expect(again.record.works).toEqual(two.works);
  const change = once.log.at(-1)?.id ?? 0;
  expect(act(once, { do: 'undo', change, now: 4 }).state.record.works).toEqual(two.works);
});

test('steps of one work never pass each other: they are in the order in which it can be made', () => {
  const strip = {
    ...{ name: 'Strip', calculation: 'edging', rank: 1 },
    fields: {
      ...{ length: typed('20'), pitch: typed('0.8'), rows: typed('one'), fit: typed('fill') },
      ...{ middle: typed('any'), width: typed('2'), margin: typed('0.5'), hole: typed('0.2') },
    },
  };
  const state = begin(garmentOf({ works: { strip } }), KNOWN);
  const before = homes(state);
  expect(stepGroups(state.answer).map(({ stage }) => stage)).toEqual(['cut', 'edge']);
  for (const { work, stage } of stepGroups(state.answer)) {
    for (const by of [-1, 1] as const)
      expect(movedPast(state, { work, stage }, by)).toBeUndefined();
  }
  // By a file, or another tab: the later steps go along.
  const far = { ...strip, moved: { cut: { stage: 'edge', rank: 9 } } };
  expect(homes(begin(garmentOf({ works: { strip: far } }), KNOWN))).toEqual(before);
});

test.each([
  [{ join: { stage: 'never', rank: 1 } }],
  [{ join: { stage: 'cut', rank: 'first' } }],
  [{ join: 7 }],
  [[]],
  ['cut'],
])('what is no place moves nothing: %j', (moved) => {
  const works = { ...two.works, side: { ...(two.works.side as object), moved } };
  expect(homes(begin({ ...two, works }, KNOWN))).toEqual(homes(begin(two, KNOWN)));
});

test('law: moves leave every step once, each work’s own in their order, and a press moves just one group', () => {
  fc.assert(
    fc.property(fc.nat(1_000_000), fc.nat(1_000_000), (seed, dice) => {
      const d = diceOf(dice);
      let state = begin(randomGarment(seed), KNOWN);
      const own = (id: string) => homes(state).filter((home) => readHome(home).id === id);
      const ids = [...state.answer.works.keys()];
      const [all, each] = [new Set(homes(state)), ids.map(own)];
      for (let i = 0; i < 6 && state.answer.steps.length > 0; i++) {
        const groups = stepGroups(state.answer);
        const { work, stage } = d.of(groups);
        const by = d.of([-1, 1] as const);
        const moving = movedPast(state, { work, stage }, by);
        const before = homes(state);
        state = past(state, work, stage, by);
        const now = homes(state);
        expect(new Set(now)).toEqual(all);
        expect(now).toHaveLength(before.length);
        expect(ids.map(own)).toEqual(each);
        if (!moving) continue;
        const isIt = (home: string) => readHome(home).id === work;
        expect(now.filter((home) => !isIt(home))).toEqual(before.filter((home) => !isIt(home)));
        expect(now).not.toEqual(before);
        // What can't be made isn't shown as if it could, wherever it stands.
        const next = nextOf(state.answer);
        if (next.kind === 'step') expect(next.step.ready).toBe(true);
        // The order is the record's: worked out anew, with or without memory, it is the same.
        expect(homes({ answer: workOut(state.record, KNOWN) })).toEqual(now);
      }
    }),
    { numRuns: 25, seed: 1423 },
  );
});
