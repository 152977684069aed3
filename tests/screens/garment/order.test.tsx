import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test } from 'vitest';
import { act } from '../../../src/garment/actions/act.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import type { Garment } from '../../../src/garment/record/record.ts';
import { MadeToIt } from '../../../src/screens/garment/decision/made-to-it.tsx';
import { Order } from '../../../src/screens/garment/order/order.tsx';
import { benchOf } from '../../controls/helpers.ts';
import { garmentOf, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';

const hem = (name: string, rank: number) => ({
  ...{ name, calculation: 'hem', rank },
  fields: {
    ...{ depth: typed('2'), style: typed('unequal'), turn: typed('0.7') },
    edgeStitch: typed('0.2'),
  },
});
/** Invented: three hems. */
const SKIRT = garmentOf({
  works: { back: hem('Back hem', 1), front: hem('Front hem', 2), lining: hem('Lining hem', 3) },
});

const BENCH = benchOf();
let state: State;
const inHand: string[] = [];

const piece = (name: string, rank: number) => ({
  ...{ name, calculation: 'piece', rank },
  fields: {
    ...{ width: typed('40'), length: typed('60'), fold: typed('none'), count: typed('1') },
    ...{ angle: typed('90'), shrinksAcross: typed('0'), shrinksAlong: typed('0') },
  },
});
/** Invented: two pieces, and marks along the edges that are joined. */
const JOINED = garmentOf({
  works: {
    back: piece('Back', 1),
    front: piece('Front', 2),
    side: {
      ...{ name: 'Side seam', calculation: 'parts', rank: 3 },
      fields: { length: typed('60'), into: typed('quarters'), round: typed('open') },
    },
  },
});

function Screen({ start = SKIRT }: { start?: Garment }) {
  const [now, set] = useState(() => begin(start, KNOWN));
  state = now;
  return (
    <Order
      state={now}
      bench={BENCH}
      said={undefined}
      onAct={(action) => set((was) => act(was, action).state)}
      onInHand={(home) => inHand.push(home)}
      onNote={() => {}}
      onDone={() => {}}
    />
  );
}

afterEach(() => {
  inHand.length = 0;
  cleanup();
});

const works = () => screen.getAllByRole('heading', { level: 2 }).map((one) => one.textContent);
const press = (name: string | RegExp) =>
  fireEvent.click(screen.getByRole('button', { name }) as HTMLElement);

test('one press moves a work; the focus goes with it, and its place is said', () => {
  render(<Screen />);
  const later = screen.getByRole('button', { name: 'Back hem: later' });
  later.focus();
  fireEvent.click(later);
  expect(works()).toEqual(['Front hem', 'Back hem', 'Lining hem']);
  expect(document.activeElement?.getAttribute('aria-label')).toBe('Back hem: later');
  expect(screen.getByText('Back hem is 2 of 3 now.')).toBeTruthy();
  press('Back hem: later');
  expect(works()).toEqual(['Front hem', 'Lining hem', 'Back hem']);
  // Where it can go no further, the focus is at the way back.
  expect(document.activeElement?.getAttribute('aria-label')).toBe('Back hem: earlier');
  expect(state.answer.steps[0]?.home).toBe('front||first-press');
});

const steps = () =>
  state.answer.steps
    .map(({ home }) => home.split('|')[0])
    .filter((id, i, all) => id !== all[i - 1]);

test('a step is brought before those of another work, whatever their stage, and back', () => {
  render(<Screen start={JOINED} />);
  expect(steps()).toEqual(['back', 'front', 'side']);
  expect(screen.getByRole('button', { name: /^5\. Side seam: mark/i })).toBeTruthy();
  press(/Side seam: mark/i);
  press('Earlier: before Front (cut)');
  expect(steps()).toEqual(['back', 'side', 'front']);
  expect(screen.getByText('Side seam (join) comes before Front (cut) now.')).toBeTruthy();
  expect(
    screen.getByRole('button', { name: /^3\. Side seam: mark.*join, now at cut/i }),
  ).toBeTruthy();
  // First of all, there is only the way back: the focus is at the step then.
  press('Earlier: before Back (cut)');
  expect(steps()).toEqual(['side', 'back', 'front']);
  expect(screen.queryByRole('button', { name: /^Earlier:/ })).toBeNull();
  expect(document.activeElement?.textContent).toMatch(/Side seam: mark/i);
  press('Later: after Back (cut)');
  expect(steps()).toEqual(['back', 'side', 'front']);
  press('Back to where its stage has it');
  expect(steps()).toEqual(['back', 'front', 'side']);
  expect(state.record.works).toEqual(JOINED.works);
  expect(screen.queryByText('Back to where its stage has it')).toBeNull();
});

test('no button that moves a side turns round what is beside it', () => {
  const front = {
    ...{ ...(JOINED.works.front as object), name: 'Sleeve', sides: ['left', 'ri\u202eght'] },
  };
  render(<Screen start={{ ...JOINED, works: { ...JOINED.works, front } }} />);
  press(/^\d\. Sleeve, right: .*width/i);
  expect(screen.getByRole('button', { name: 'Move right by itself' })).toBeTruthy();
  expect(document.body.textContent).not.toContain('\u202e');
});

test('one side of a work is moved by itself, and goes with the other again', () => {
  const sides = { ...(JOINED.works.front as object), name: 'Sleeve', sides: ['left', 'right'] };
  render(<Screen start={{ ...JOINED, works: { ...JOINED.works, front: sides } }} />);
  const bySide = () =>
    state.answer.steps
      .map(({ home }) => home.split('|').slice(0, 2).join(' ').trim())
      .filter((one, i, all) => one !== all[i - 1]);
  expect(bySide()).toEqual(['back', 'front left', 'front right', 'side']);
  press(/^\d\. Sleeve, right: cut.*wide|^\d\. Sleeve, right: .*width/i);
  press('Later: after Side seam (join)');
  expect(bySide()).toEqual(['back', 'side', 'front left', 'front right']);
  press('Back to where its stage has it');
  press('Move right by itself');
  press('Later: after Side seam (join)');
  expect(bySide()).toEqual(['back', 'front left', 'side', 'front right']);
  expect(screen.getByText('Sleeve, right (cut) comes after Side seam (join) now.')).toBeTruthy();
  // It is apart now: nothing more is asked, and the other side stays.
  expect(screen.queryByRole('button', { name: 'Move right by itself' })).toBeNull();
  press('Earlier: before Side seam (join)');
  press('Back to the other sides');
  expect(bySide()).toEqual(['back', 'front left', 'front right', 'side']);
  expect(state.record.works.front).toEqual(sides);
  press('Move right by itself');
  press('Move all sides together');
  press('Earlier: before Back (cut)');
  expect(bySide()).toEqual(['front left', 'front right', 'back', 'side']);
});

test('a step is gone to, passed over and taken up again', () => {
  render(<Screen />);
  press(/Front hem: press the first turn/);
  press('Pass it over');
  expect(within(screen.getByRole('main')).getByText(/passed over/)).toBeTruthy();
  press('Take it up again');
  expect(state.record).not.toHaveProperty('passed');
  press('Go to it');
  expect(inHand).toEqual(['front||first-press']);
});

test('a step, and a whole work, was made before the app knew; each can be said not to be', () => {
  render(<Screen />);
  press('All of Back hem was made before the app knew');
  const made = state.answer.steps.filter((step) => step.made > 0).map(({ home }) => home);
  expect(made.every((home) => home.startsWith('back|'))).toBe(true);
  expect(made.length).toBe(3);
  press(/Back hem: press the first turn.*made before the app knew/);
  press('It isn’t made yet');
  expect(state.answer.steps.filter((step) => step.made > 0).length).toBe(2);
});

test('before a change is taken back that something was made to, what comes of it is shown', () => {
  const now = 5;
  const place = { work: 'back', field: 'turn' };
  const home = 'back||first-press';
  let held = act(begin(SKIRT, KNOWN), { do: 'choose', place, parts: typed('0.9'), now }).state;
  held = act(held, { do: 'make', home, id: 'f', tape: 8000, now }).state;
  const { refused } = act(held, { do: 'undo', change: held.log[0]?.id ?? 0, now });
  if (refused?.why !== 'made to it') throw new Error(refused?.why);
  const pressed: string[] = [];
  render(
    <MadeToIt
      state={held}
      bench={BENCH}
      asks={refused}
      onUndo={() => pressed.push('undo')}
      onLeave={() => pressed.push('leave')}
    />,
  );
  expect(screen.getByRole('alertdialog').textContent).toMatch(/Back hem.*0.2 cm more/);
  press('Leave it as it is');
  press('Take it back all the same');
  expect(pressed).toEqual(['leave', 'undo']);
});
