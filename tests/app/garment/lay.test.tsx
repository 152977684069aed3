import {
  cleanup,
  fireEvent,
  render,
  screen,
  act as settled,
  waitFor,
  within,
} from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LayPlace } from '../../../src/app/garment/lay-place.tsx';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import type { State } from '../../../src/garment/actions/state.ts';
import { type HeldPiece, isSamePlace, layIn } from '../../../src/garment/record/cloth-lay.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import { faultsOf } from '../../../src/lay/check-lay.ts';
import { problemOf } from '../../../src/lay/problem.ts';
import type { FromLayWorker, ToLayWorker } from '../../../src/lay/protocol.ts';
import { solve } from '../../../src/lay/solve.ts';
import { benchOf } from '../../controls/helpers.ts';
import { garment, one, work } from '../../garment/materials/garments.ts';

/** Looks as the worker does, for so many rounds, when it is told to. */
class StandIn extends EventTarget {
  static all: StandIn[] = [];
  asked: ToLayWorker | undefined;
  ended = false;
  constructor() {
    super();
    StandIn.all.push(this);
  }
  postMessage(asked: ToLayWorker) {
    this.asked = asked;
  }
  terminate() {
    this.ended = true;
  }
  say(data: FromLayWorker) {
    this.dispatchEvent(new MessageEvent('message', { data }));
  }
  look(rounds = 300, ends = true) {
    const { task, seed, from } = this.asked!;
    let spent = 0;
    const lay = solve(problemOf(task), {
      ...{ seed, seconds: rounds, elapsed: () => spent++ },
      ...(from && faultsOf(task, from).length === 0 && { from }),
      onBetter: (better) => {
        if (faultsOf(task, better).length === 0) this.say({ kind: 'better', lay: better });
      },
    });
    if (ends) this.say({ kind: 'done', fits: lay !== undefined });
  }
}

beforeEach(() => {
  StandIn.all = [];
  vi.stubGlobal('Worker', StandIn);
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

/** Cut 43 × 65.5 and 30 × 50, two of each; on cloth of 140 the rows take 115.5. */
const front = work('piece', 'width=40&length=60&top=1.5&bottom=4&side=1.5&count=2', {
  name: 'Front',
});
const sleeve = work('piece', 'width=30&length=50&top=0&bottom=0&side=0&count=2', {
  name: 'Sleeve',
});
const cloth = { width: 80_000 * 140, unit: 80_000 * 10 };
const FRONT = homeOf('front', '', 'count');

function show(first: State, bench = benchOf()) {
  let latest = first;
  const to = vi.fn();
  const done = vi.fn();
  let again: () => void = () => undefined;
  const onAct = (action: Action) => {
    latest = act(latest, action).state;
    again();
  };
  function Hand() {
    const [, look] = useState({});
    again = () => look({});
    const hand = { act: onAct } as unknown as Parameters<typeof LayPlace>[0]['hand'];
    const rest = { to, hand, bench, said: undefined, cloth: undefined, onDone: done, id: 'g' };
    const unused = {} as Pick<Parameters<typeof LayPlace>[0], 'store' | 'address' | 'onLeave'>;
    return <LayPlace {...unused} {...rest} state={latest} />;
  }
  const { unmount } = render(<Hand />);
  return {
    state: () => latest,
    onAct: (one: Action) => then(() => onAct(one)),
    to,
    done,
    unmount,
  };
}

const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));
const text = () => document.body.textContent;
const running = () => StandIn.all.filter(({ ended }) => !ended);
/** Does something, and lets what it promised come. */
const then = (deed: () => void = () => undefined) =>
  settled(async () => {
    deed();
    for (let i = 0; i < 20; i++) await Promise.resolve();
  });
/** Begins to look, once what looks is fetched. */
async function begin(name: string | RegExp = 'Find a lay') {
  press(name);
  await vi.waitFor(() => expect(running()).not.toEqual([]));
}
/** Lets all that look find what they find. */
const look = (rounds?: number) =>
  then(() => {
    for (const each of running()) each.look(rounds);
  });
/** Opens a part that is fetched, and waits for what it shows. */
async function open(name: string, shows: RegExp) {
  press(name);
  await waitFor(() => expect(text()).toMatch(shows));
}
/** What is in the way is said once its words are fetched. */
const says = (what: RegExp) => waitFor(() => expect(text()).toMatch(what));
const places = () => open('Place by place', /Next piece|First piece/);
/** The drawing is fetched with the first lay. */
const drawn = () => waitFor(() => expect(pieces()).not.toEqual([]));
const pieces = () =>
  [...document.querySelectorAll('[data-piece] title')].map((it) => it.textContent);
const kept = (state: State) => layIn(state.record, 'cloth').found;

test('found, kept, followed place by place; the materials have it', async () => {
  const { state, done } = show(garment({ front, sleeve }, { cloth }));
  expect(text()).toMatch(/No lay yet/);
  await begin();
  expect(text()).toMatch(/Looking/);
  await look();
  const found = kept(state());
  expect(found?.laid).toHaveLength(4);
  // Rows take 115.5. Beside two fronts there is room for one sleeve, and the other lies after it,
  // 50 + 50, where the fronts end at 65.5: there is no shorter one.
  expect(Math.abs(found!.length - 80_000 * 100)).toBeLessThan(8);
  expect(one(state(), 'cloth')).toMatchObject({ bound: false, net: found!.length });
  await drawn();
  await waitFor(() => expect(text()).toMatch(/Buy 100 cm \(1 m\)Takes 100 cm · 61.7 % used/));
  expect(document.querySelector('.to-buy strong')?.textContent).toBe('100 cm');
  expect(
    pieces()
      .map((name) => name?.replace(/\d /, ''))
      .sort(),
  ).toEqual(['Front', 'Front', 'Sleeve', 'Sleeve']);
  await places();
  expect(text()).toMatch(/1 .* 1 of 4Cut end: 0 cm to .*Selvedge: 0 cm to/);
  press('Next piece');
  expect(text()).toMatch(/2 of 4/);
  press('The one before');
  press('The one before');
  expect(text()).toMatch(/4 of 4/);
  press('First piece');
  expect(text()).toMatch(/1 of 4/);
  press('Back');
  press('Done');
  expect(done).toHaveBeenCalledOnce();
});

// The sleeve after the other's 50 begins at 72, three repeats on: 72 + 50, and one repeat, sold by 10.
test('on a pattern every piece begins alike in it, and a repeat more is bought; folded, that is said', async () => {
  const patterned = { ...cloth, repeat: 80_000 * 24 };
  const { state, onAct } = show(garment({ front, sleeve }, { cloth: patterned }));
  // Turned end for end its other end would be the one that begins: 120.
  await onAct({ do: 'lay', id: 'cloth', set: { nap: true }, now: 1 });
  await begin();
  await look();
  const found = kept(state());
  expect(Math.abs(found!.length - 80_000 * 122)).toBeLessThan(8);
  const begins = found!.laid.map(({ id, x }) => x - 40_000 * (id === FRONT ? 65.5 : 50));
  for (const at of begins)
    expect(Math.abs(at - 80_000 * 24 * Math.round(at / 1_920_000))).toBeLessThan(80);
  await waitFor(() => expect(text()).toMatch(/Buy 150 cm \(1.5 m\)Takes 122 cm/));
  expect(text()).toMatch(/one repeat of 24 cm more is bought, since the shop cuts anywhere in it/);
  expect(one(state(), 'cloth')).toMatchObject({ bound: false, net: found!.length + 80_000 * 24 });
  await onAct({ do: 'material', id: 'cloth', set: { folded: true }, now: 2 });
  await waitFor(() => expect(text()).toMatch(/Folded, the pattern of the layer below isn’t seen/));
});

test('bias strips are no pieces of the lay: what they are cut from is in the length to buy', async () => {
  const bound = work('seam', 'what=finish&given=1.5&finish=bound&edge=120', { name: 'Seam' });
  const serves = { [homeOf('bound', '', 'strip')]: true };
  const { state } = show(garment({ front, sleeve, bound }, { cloth: { ...cloth, serves } }));
  await begin();
  await look();
  expect(kept(state())?.laid).toHaveLength(4);
  const { bias, net } = one(state(), 'cloth');
  expect(bias).toBeGreaterThan(0);
  expect(net).toBe((kept(state())?.length ?? 0) + bias);
  await waitFor(() =>
    expect(text()).toMatch(/Bias strips are cut beyond the pieces, from [\d.]+ cm more/),
  );
});

test('stopped with the best so far, which is kept; a better one goes on from it', async () => {
  const { state } = show(garment({ front, sleeve }, { cloth }));
  await begin();
  await then(() => StandIn.all[0]!.look(1, false));
  await waitFor(() => expect(text()).toMatch(/% used/));
  press('Stop');
  await then();
  expect(running()).toEqual([]);
  expect(kept(state())).toBeDefined();
  await begin('Find a better one');
  expect(running()[0]?.asked?.from?.length).toBeCloseTo(kept(state())!.length / 8000, 3);
});

test('left in the midst of it, what was found is kept, and is there on coming back', async () => {
  const first = show(garment({ front, sleeve }, { cloth }));
  await begin();
  await then(() => StandIn.all[0]!.look());
  await then(first.unmount);
  expect(running()).toEqual([]);
  cleanup();
  show(first.state());
  await drawn();
  expect(pieces()).toHaveLength(4);
  expect(text()).toMatch(/% used/);
});

test('a piece that was moved stays, and the search goes round it; over another, it is said', async () => {
  const { state } = show(garment({ front, sleeve }, { cloth }));
  await begin();
  await look();
  await places();
  press('Keep it here');
  const [held] = layIn(state().record, 'cloth').held ?? [];
  expect(held?.folded).toBe(false);
  const isLaid = (one: HeldPiece | undefined) =>
    one && kept(state())?.laid.some((laid) => isSamePlace(laid, one));
  expect(isLaid(held)).toBe(true);
  expect(text()).toMatch(/You put it here/);
  // Down onto what lies after it, or beside it.
  for (let i = 0; i < 12; i++) press(/Away from the cut end/);
  expect(layIn(state().record, 'cloth').held).toHaveLength(1);
  const [moved] = layIn(state().record, 'cloth').held ?? [];
  expect(moved?.id).toBe(held?.id);
  expect(moved!.x - held!.x).toBeCloseTo(12 * 8 * 8000, -2);
  press('Back');
  await begin(/^Find/);
  expect(running()[0]?.asked?.task.laid).toMatchObject([{ id: held?.id }]);
  await look();
  expect(isLaid(moved)).toBe(true);
  expect(one(state(), 'cloth')).toMatchObject({ bound: false });
  await places();
  while (!text()?.includes('You put it here')) press(/Next piece|First piece/);
  press('Let it go');
  expect(layIn(state().record, 'cloth').held).toBeUndefined();
});

test('a piece put over another says which, and no length is told', async () => {
  const { state } = show(garment({ front }, { cloth }));
  await begin();
  await look();
  await places();
  for (let i = 0; i < 10; i++) press(/To the right edge/);
  await says(/Front lies over Front: find a lay around it, or let it go/);
  press('Back');
  expect(text()).not.toMatch(/% used/);
  expect(one(state(), 'cloth').bound).toBe(true);
});

test('sizes that change make it stale in words, and it is not shown where it breaks a rule', async () => {
  const { state, onAct } = show(garment({ front, sleeve }, { cloth }));
  await begin();
  await look();
  const parts = [{ text: '60', unit: 'cm' as const }];
  const place = { work: 'front', field: 'width' };
  await onAct({ do: 'choose', place, parts, now: 9 });
  await says(/was found for other sizes \(Front\): lay the pieces again/);
  expect(pieces()).toEqual([]);
  expect(one(state(), 'cloth').bound).toBe(true);
});

test('what can’t be laid is said: no width, too wide a piece, folded, hundreds of pieces', async () => {
  const { onAct } = show(garment({ front }, { cloth: {} }));
  await says(/Say how wide the cloth is/);
  expect(screen.getByRole<HTMLButtonElement>('button', { name: 'Find a lay' }).disabled).toBe(true);
  await onAct({ do: 'material', id: 'cloth', set: { width: 80_000 * 42 }, now: 1 });
  await says(/Front is 1 cm wider than the cloth is here: take wider cloth/);
  await onAct({ do: 'material', id: 'cloth', set: { width: 80_000 * 80, folded: true }, now: 1 });
  await says(/Front is 3 cm wider than the cloth folded in two: lay the cloth open/);
  cleanup();
  const many = work('piece', 'width=4&length=6&top=0&bottom=0&side=0&count=100', { name: 'Patch' });
  const six = Object.fromEntries([...'abcdef'].map((id) => [id, many]));
  show(garment(six, { cloth }));
  await says(/600 pieces are more than can be laid at once: at most 500/);
});

test('a garment without pieces says what to do', () => {
  show(garment({}));
  expect(text()).toMatch(/Nothing is laid on cloth yet: add a piece/);
  // Of no cloth nothing can be said: a press there led to a screen with nothing on it.
  expect(screen.getByRole<HTMLButtonElement>('button', { name: 'Cloth, nap' }).disabled).toBe(true);
});

test('a search that fails, or in which nothing fits, says so', async () => {
  show(garment({ front }, { cloth }));
  await begin();
  await then(() => {
    for (const each of running()) each.dispatchEvent(new Event('error'));
  });
  await says(/The search stopped by itself/);
  await begin();
  await then(() => running()[0]!.say({ kind: 'done', fits: false }));
  await says(/The pieces fit nowhere/);
});

test('an odd piece through both layers leaves its twin over, which is nothing used', async () => {
  const single = work('piece', 'width=40&length=60&top=1.5&bottom=4&side=1.5&count=1', {
    name: 'Back',
  });
  const folded = { ...cloth, width: 80_000 * 86, folded: true };
  show(garment({ single }, { cloth: folded }));
  await begin();
  await look();
  // 43 × 65.5 of 86 × 65.5: the half of it.
  await says(/50 % used/);
  await says(/An odd one through two layers leaves its twin over: Back/);
});

test('cloth, fold, nap and distance are said there; folded, what is cut is through both layers', async () => {
  const { state } = show(garment({ front, sleeve }, { cloth }));
  await open('Cloth, nap', /Usable width/);
  press(/^Cut from folded cloth/);
  press(/^All pieces lie the same way/);
  press(/^Least distance/);
  fireEvent.input(screen.getByRole('textbox'), { target: { value: '1' } });
  press('Keep it');
  expect(text()).toMatch(/Least distance between pieces: 1 cm/);
  press('Done');
  await begin();
  expect(running()[0]?.asked?.task).toMatchObject({ width: 700, gap: 10 });
  expect(running()[0]?.asked?.task.pieces.map(({ count, turns }) => [count, turns])).toEqual([
    [1, [0]],
    [1, [0]],
  ]);
  await look();
  await places();
  expect(text()).toMatch(/Fold: 0 cm.*Through both layers/);
  expect(kept(state())?.of).toMatchObject({ folded: true, nap: true, gap: 80_000 });
});

const type = (value: string, then: string) => {
  fireEvent.input(screen.getByRole('textbox'), { target: { value } });
  press(then);
};

test('a flaw is measured, kept, drawn and laid round; found before, the lay is stale; taken out again', async () => {
  const { state } = show(garment({ front, sleeve }, { cloth }));
  await begin();
  await look();
  const before = kept(state())!.length;
  await open('Cloth, nap', /Usable width/);
  press(/^Add a flaw/);
  type('0', 'Next');
  type('0', 'Next');
  expect(text()).toMatch(/more than 0 for its size/);
  type('30', 'Next');
  type('150', 'Next');
  expect(text()).toMatch(/beyond the other selvedge/);
  type('20', 'Next');
  type('10', 'Keep it');
  expect(text()).toMatch(/Flaw 30 cm long, 10 cm wide: 0 cm from the cut end, 20 cm from the left/);
  const flaw = { along: 0, long: 80_000 * 30, across: 80_000 * 20, wide: 80_000 * 10 };
  expect(layIn(state().record, 'cloth').flaws).toEqual([flaw]);
  press('Done');
  await says(/was found for other sizes \(the cloth/);
  await begin();
  const { task } = running()[0]!.asked!;
  expect(task.flaws).toHaveLength(1);
  await look();
  await drawn();
  expect(document.querySelectorAll('.flaw')).toHaveLength(1);
  const after = kept(state())!;
  expect(after.of.flaws).toEqual([flaw]);
  expect(after.length).toBeGreaterThanOrEqual(before);
  // By hand: no piece reaches into the first 30 cm from 20 to 30 cm off the selvedge.
  const size = (id: string) => (id.startsWith(FRONT) ? [65.5, 43] : [50, 30]);
  for (const { id, x, y } of after.laid) {
    const [long = 0, wide = 0] = size(id).map((of) => 40_000 * of);
    const clear =
      x - long >= flaw.long - 80 ||
      y + wide <= flaw.across + 80 ||
      y - wide >= flaw.across + flaw.wide - 80;
    expect(clear).toBe(true);
  }
  await open('Cloth, nap', /Flaw 30 cm/);
  press(/^Flaw 30 cm/);
  expect(layIn(state().record, 'cloth').flaws).toBeUndefined();
});

test('flaws that cover the cloth from its cut end on say how much of it they cost', async () => {
  const { onAct } = show(garment({ front }, { cloth }));
  const flaws = [{ along: 0, long: 80_000 * 80, across: 0, wide: 80_000 * 140 }];
  await onAct({ do: 'lay', id: 'cloth', set: { flaws }, now: 1 });
  await begin();
  await look(40);
  await says(/Flaws leave no room on the first 80 cm of the cloth/);
});

test('a piece put on a flaw says so', async () => {
  const first = garment({ front }, { cloth });
  const { state, onAct } = show(first);
  const flaws = [{ along: 80_000 * 70, long: 80_000 * 10, across: 0, wide: 80_000 * 140 }];
  await onAct({ do: 'lay', id: 'cloth', set: { flaws }, now: 1 });
  await begin();
  await look();
  expect(kept(state())).toBeDefined();
  await places();
  press('Next piece');
  for (let i = 0; i < 14; i++) press(/Away from the cut end/);
  await says(/Front lies on a flaw, or too near to it/);
});

test('what is cut stays where it is, and can’t be moved', async () => {
  const { state, onAct } = show(garment({ front, sleeve }, { cloth }));
  await begin();
  await look();
  const before = kept(state())!.laid.filter(({ id }) => id === FRONT);
  for (const key of ['cut-width', 'cut-length']) {
    await onAct({ do: 'make', home: homeOf('front', '', key), id: key, tape: 8000, now: 1 });
  }
  await begin('Find a better one');
  expect(running()[0]?.asked?.task.laid).toHaveLength(2);
  await look();
  expect(kept(state())!.laid.filter(({ id }) => id === FRONT)).toEqual(before);
  await places();
  expect(
    screen.getAllByRole('listitem').filter((it) => /Cut already · /.test(it.textContent ?? '')),
  ).not.toEqual([]);
  while (!text()?.includes('Cut already: its place stays')) press(/Next piece|First piece/);
  expect(screen.queryByText('Move it')).toBeNull();
});

test('what other cloth would take is looked for when it is asked, one after another', async () => {
  show(garment({ front, sleeve }, { cloth: { ...cloth, folded: true } }));
  await open('Other cloth', /What other cloth would take/);
  expect(running()).toEqual([]);
  press('Look for them');
  for (let i = 0; i < 4; i++) {
    await vi.waitFor(() => expect(running()).not.toEqual([]));
    await look(50);
  }
  const lines = within(screen.getByRole('list')).getAllByRole('listitem');
  expect(lines.map(({ textContent }) => textContent?.replace(/:.*/, ''))).toEqual([
    'This cloth',
    '115 cm wide',
    '150 cm wide',
    'Laid open',
  ]);
  expect(lines[3]?.textContent).toMatch(/(less|more|same)$/);
});

test('on paper: the same pieces and places, and what it takes; not while a piece lies where it may not', async () => {
  show(garment({ front, sleeve }, { cloth }));
  await begin();
  await look();
  await drawn();
  await open('PDF, on paper', /The lay on paper/);
  await says(/Press it to read it/);
  const page = () => document.querySelector('svg.page')?.textContent;
  expect(page()).toMatch(/Cloth 140 cm wide, washed and without its selvedges, laid open/);
  expect(page()).toMatch(/The lay takes 100 cm/);
  expect(page()).toMatch(/1 (Front|Sleeve)Cut end: 0 cm to .* · Selvedge: 0 cm to/);
  press('Back');
  await places();
  for (let i = 0; i < 10; i++) press(/To the right edge/);
  await says(/lies over/);
  expect(screen.getByRole<HTMLButtonElement>('button', { name: 'PDF, on paper' }).disabled).toBe(
    true,
  );
});

test('a shape that isn’t as large as the garment cuts the piece now is said', async () => {
  const { onAct } = show(garment({ front, sleeve }, { cloth }));
  const CM = 80_000;
  // As it is cut: 40 and seams of 1.5 wide, 60 with 1.5 above and 4 below.
  const sizes = { long: 65.5 * CM, top: 20 * CM, bottom: 43 * CM };
  const set = { outline: { form: { kind: 'four', ...sizes, slant: 'both' } } } as const;
  const wide = (cm: string) => {
    const parts = [{ text: cm, unit: 'cm' as const }];
    return onAct({ do: 'choose', place: { work: 'front', field: 'width' }, parts, now: 3 });
  };
  await wide('44');
  await onAct({ do: 'lay', id: 'cloth', piece: FRONT, set, now: 2 });
  await says(/isn’t as large as the garment cuts it now: Front\./);
  await wide('40');
  await waitFor(() => expect(text()).not.toMatch(/isn’t as large/));
});
