import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { STAGES } from '../../src/calculation/output.ts';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { movedPast, movedWith, stepGroups } from '../../src/garment/actions/move.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { nextOf } from '../../src/garment/next/next.ts';
import { homeOf, readHome } from '../../src/garment/record/home.ts';
import { sharedGarment } from '../../src/garment/share/shared.ts';
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
const WISH = { bodies: false, notes: false, times: false, goOn: false };
const past = (
  state: State,
  work: string,
  stage: (typeof STAGES)[number],
  by: -1 | 1,
  side?: string,
): State => {
  const moving = movedPast(state, { work, stage, side }, by);
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

test('between two that stand as near as numbers can there is room again, and nothing else moves', () => {
  const near = 1 + Number.EPSILON;
  const works = {
    ...two.works,
    front: piece('Front', near),
    side: { ...(two.works.side as object), moved: { join: { stage: 'cut', rank: 7 } } },
    cuff: { ...piece('Cuff', 1), movedSides: { '': { cut: { stage: 'cut', rank: near } } } },
  };
  const start = begin(garmentOf({ works }), KNOWN);
  const order = (state: State) => stepGroups(state.answer).map(({ work }) => work);
  const before = order(start);
  expect(before.slice(-1)).toEqual(['side']);
  const once = past(start, 'side', 'join', -1);
  // Two stand at one place there: it goes past both, and no farther.
  const twice = past(once, 'back', 'cut', 1);
  expect(order(once)).not.toEqual(before);
  expect(order(once).filter((work) => work !== 'side')).toEqual(
    before.filter((work) => work !== 'side'),
  );
  expect(order(once)[1]).toBe('side');
  expect(twice).not.toBe(once);
  const change = once.log.at(-1)?.id ?? 0;
  expect(act(once, { do: 'undo', change, now: 4 }).state.record.works).toEqual(start.record.works);
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

/** Invented: two sleeves and a body, and marks along the edges that join each of them. */
const sleeves = garmentOf({
  works: {
    body: piece('Body', 1),
    sleeve: { ...piece('Sleeve', 2), sides: ['left', 'right'] },
    seam: { ...(two.works.side as object), name: 'Sleeve seam', sides: ['left', 'right'] },
  },
});
const sideOf = (home: string) => home.split('|').slice(0, 2).join(' ').trim();
const bySide = (state: State) =>
  homes(state)
    .map(sideOf)
    .filter((one, i, all) => one !== all[i - 1]);

test('one sleeve is made whole before the other is cut; together again by one press each', () => {
  const start = begin(sleeves, KNOWN);
  const together = ['body', 'sleeve left', 'sleeve right', 'seam left', 'seam right'];
  expect(bySide(start)).toEqual(together);
  const step = start.answer.steps.find(({ home }) => home.startsWith('seam|left'));
  if (!step) throw new Error('no seam');
  // Both sides go together until one is asked for by itself.
  expect(movedWith(start.answer, step)).toMatchObject({ work: 'seam', side: undefined });
  expect(bySide(past(start, 'seam', 'join', -1))).toEqual([
    ...['body', 'seam left', 'seam right', 'sleeve left', 'sleeve right'],
  ]);
  const right = past(start, 'sleeve', 'cut', 1, 'right');
  expect(bySide(right)).toEqual(['body', 'sleeve left', 'seam left', 'seam right', 'sleeve right']);
  const whole = past(right, 'seam', 'join', 1, 'right');
  const apart = ['body', 'sleeve left', 'seam left', 'sleeve right', 'seam right'];
  expect(bySide(whole)).toEqual(apart);
  expect(whole.record.works.seam).toMatchObject({ movedSides: { right: { join: {} } } });
  const own = whole.answer.steps.find(({ home }) => home.startsWith('seam|right'));
  expect(own && movedWith(whole.answer, own)).toMatchObject({ work: 'seam', side: 'right' });
  // Handed on it is the same; taken back there is no shell.
  const on = sharedGarment(whole, { ...WISH, knownOnly: true }, 'new', () => 'made');
  expect(bySide(begin(on, KNOWN))).toEqual(apart);
  const back = ['sleeve', 'seam'].reduce((so, work) => {
    const stage = work === 'seam' ? 'join' : 'cut';
    return act(so, { do: 'move', work, stage, side: 'right', to: undefined, now: 3 }).state;
  }, whole);
  expect(bySide(back)).toEqual(together);
  expect(back.record.works).toEqual(sleeves.works);
});

test('a side never passes its own steps; the other side’s it does', () => {
  const start = begin(sleeves, KNOWN);
  expect(movedPast(start, { work: 'sleeve', stage: 'cut', side: 'left' }, 1)?.past).toMatchObject({
    work: 'sleeve',
    sides: new Set(['right']),
  });
  const rightFirst = past(start, 'sleeve', 'cut', 1, 'left');
  expect(bySide(rightFirst)[1]).toBe('sleeve right');
  const seamFirst = past(
    past(rightFirst, 'seam', 'join', -1, 'right'),
    'seam',
    'join',
    -1,
    'right',
  );
  const order = bySide(seamFirst);
  expect(order.indexOf('sleeve right')).toBeLessThan(order.indexOf('seam right'));
  let state = start;
  for (let i = 0; i < 9; i++) state = past(state, 'sleeve', 'cut', 1, 'left');
  const cut = state.answer.steps.findIndex(({ home }) => home.startsWith('sleeve|left'));
  const seam = state.answer.steps.findIndex(({ home }) => home.startsWith('seam|left'));
  expect(cut).toBeGreaterThan(0);
  expect(seam).toBeGreaterThan(0);
});

test.each([
  [7],
  ['left'],
  [{ right: 7 }],
  [{ right: { cut: { stage: 'never', rank: 1 } } }],
  [{ gone: { cut: { stage: 'edge', rank: 9 } } }],
])('a side that stands nowhere stays with the others: %j', (movedSides) => {
  const works = { ...sleeves.works, sleeve: { ...(sleeves.works.sleeve as object), movedSides } };
  expect(homes(begin({ ...sleeves, works }, KNOWN))).toEqual(homes(begin(sleeves, KNOWN)));
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
      const own = (id: string) => homes(state).filter((home) => isOf(home, id));
      // Each side's own steps stay in their order; sides may pass each other.
      const ids = [
        ...new Set(homes(state).map((home) => homeOf(readHome(home).id, readHome(home).side))),
      ];
      const isOf = (home: string, id: string) => {
        const { id: work, side } = readHome(home);
        return homeOf(work, side) === id;
      };
      const [all, each] = [new Set(homes(state)), ids.map(own)];
      for (let i = 0; i < 6 && state.answer.steps.length > 0; i++) {
        const groups = stepGroups(state.answer);
        const { work, stage, side: apart, sides } = d.of(groups);
        const side = apart ?? (d.chance(0.4) ? d.of([...sides]) : undefined);
        const by = d.of([-1, 1] as const);
        const moving = movedPast(state, { work, stage, side }, by);
        const before = homes(state);
        state = past(state, work, stage, by, side);
        const now = homes(state);
        expect(new Set(now)).toEqual(all);
        expect(now).toHaveLength(before.length);
        expect(ids.map(own)).toEqual(each);
        if (!moving) continue;
        const isIt = (home: string) =>
          readHome(home).id === work && (side === undefined || readHome(home).side === side);
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
