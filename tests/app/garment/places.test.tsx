import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test } from 'vitest';
import { DecisionPlace } from '../../../src/app/garment/decision-place.tsx';
import type { HandProps } from '../../../src/app/garment/hand-props.ts';
import { MeasuresPlace } from '../../../src/app/garment/measures-place.tsx';
import { NotePlace } from '../../../src/app/garment/note-place.tsx';
import { act } from '../../../src/garment/actions/act.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import type { Garment } from '../../../src/garment/record/record.ts';
import { mm } from '../../../src/lengths/length.ts';
import { type Store, StoreError } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';
import { garmentOf, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';

afterEach(cleanup);

const HOOKS = 'hooks||marks';
/** Invented: three hooks along an edge of 11 cm. */
const COAT = garmentOf({
  quantities: { edge: { name: 'Front edge', kind: 'length', rank: 1, parts: typed('11') } },
  works: {
    hooks: {
      ...{ name: 'Hooks', calculation: 'closures', rank: 1 },
      fields: {
        ...{ opening: [{ link: { quantity: 'edge' } }], count: typed('3') },
        ...{ top: typed('1'), bottom: typed('1'), by: typed('count'), ends: typed('given') },
      },
    },
  },
});

let state: State;
const went: object[] = [];

/** A place with a garment in hand, as it is given one; what it doesn't ask for isn't there. */
function show(first: State, Place: (props: HandProps) => unknown) {
  state = first;
  function Hand() {
    const [now, set] = useState(first);
    state = now;
    const hand = {
      act: (action: Parameters<typeof act>[1]) => set((was) => act(was, action).state),
    };
    const props = { state: now, bench: benchOf(), hand, said: undefined } as unknown as HandProps;
    return <>{Place(props)}</>;
  }
  render(<Hand />);
}

const to = (draft: object) => went.push(draft);
const onDone = () => went.push({});

/** The first hook is made 4 mm lower than asked. */
const lower = (record: Garment) =>
  act(begin(record, KNOWN), {
    ...{ do: 'make', home: HOOKS, id: 'f', tape: 8000, measured: mm(14), now: 1 },
  }).state;

test('it was made otherwise leads to that mark, where its measure is typed, and back', () => {
  show(lower(COAT), (props) => <DecisionPlace {...{ ...props, to, onDone }} home={HOOKS} />);
  fireEvent.click(screen.getByRole('button', { name: /^It was made otherwise/ }));
  expect(screen.getByRole('heading', { name: /^Hooks · .+, 1$/ })).toBeTruthy();
  const field = screen.getByRole('textbox') as HTMLInputElement;
  expect(field.value).toBe('1.4 cm');
  for (const digit of ['1', 'decimal mark', '2']) {
    fireEvent.pointerDown(screen.getByRole('button', { name: digit }), { button: 0 });
  }
  fireEvent.click(screen.getByRole('button', { name: 'Keep this measure' }));
  expect(state.record.facts.f).toMatchObject({ measured: mm(12) });
  expect(screen.getByRole('button', { name: /^It was made otherwise/ })).toBeTruthy();
});

test('a number is read off a tape from the key, and from the list of them', async () => {
  show(begin(COAT, KNOWN), (props) => (
    <MeasuresPlace {...{ ...props, onDone }} first="edge" read={true} />
  ));
  expect(await screen.findByLabelText('Choose a photo')).toBeTruthy();
  cleanup();
  show(begin(COAT, KNOWN), (props) => (
    <MeasuresPlace {...{ ...props, onDone }} first={undefined} read={false} />
  ));
  fireEvent.click(screen.getByRole('button', { name: /^Front edge/ }));
  fireEvent.click(screen.getByRole('button', { name: 'Read it off a tape' }));
  expect(await screen.findByLabelText('Choose a photo')).toBeTruthy();
});

test('a photo at a work that storage does not give is not said to be missing', async () => {
  const noted = { ...COAT, notes: { hooks: { text: 'nap', photo: 'p1' } } };
  const store = { load: () => Promise.reject(new StoreError('slow')) } as unknown as Store;
  show(begin(noted, KNOWN), (props) => <NotePlace {...{ ...props, store, onDone }} home="hooks" />);
  expect(
    await screen.findByText(/^There is a photo here, but storage does not answer/),
  ).toBeTruthy();
  cleanup();
  const without = { load: () => Promise.resolve(undefined) } as unknown as Store;
  show(begin(noted, KNOWN), (props) => (
    <NotePlace {...{ ...props, store: without, onDone }} home="hooks" />
  ));
  expect(await screen.findByText(/it isn’t on this phone/)).toBeTruthy();
});
