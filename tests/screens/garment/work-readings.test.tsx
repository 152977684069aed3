import { cleanup, fireEvent, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { begin } from '../../../src/garment/actions/state.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import type { Parts } from '../../../src/garment/record/record.ts';
import { endsSaid } from '../../../src/screens/garment/works/ends-said.ts';
import { openWork } from '../../../src/screens/garment/works/open-work.ts';
import { givesOf } from '../../../src/screens/garment/works/work-numbers.ts';
import { benchOf } from '../../controls/helpers.ts';
import { garmentOf, quantity, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';
import { openIn } from './work-hand.tsx';

afterEach(cleanup);

/** Invented: hooks an exact 5 cm apart; nine spaces fill 48.7 cm to the hair. */
const hooks = (opening: Parts) =>
  garmentOf({
    quantities: {
      front: {
        ...{ name: 'Front edge', kind: 'length', rank: 1, plusMinus: 16_000 },
        parts: typed('48.7 ± 0.2 cm'),
      },
    },
    works: {
      hooks: {
        ...{ name: 'Hooks', calculation: 'closures', rank: 2 },
        fields: {
          ...{ opening, pitch: typed('5'), top: typed('1.2'), bottom: typed('2.5') },
          ...{ by: typed('exact'), ends: typed('given'), item: typed('hook') },
        },
      },
    },
  });
const field = (label: string) =>
  screen.getByLabelText<HTMLInputElement>(new RegExp(`^${label}`), { selector: 'input' });
const said = () => screen.queryByText(/end of its ±/)?.textContent ?? undefined;

test('a length read into a field of a work says where an end of its ± makes another count', async () => {
  const held = await openIn(hooks(typed('48.7 ± 0.2 cm')), 'hooks');
  expect(said()).toBe(
    'Places of the closures: 10 as read; 9 if Opening is at the lower end of its ±.',
  );
  // Typed anew it is sure; and nothing alarms meanwhile.
  fireEvent.focus(field('Opening'));
  fireEvent.input(field('Opening'), { target: { value: '48.7' } });
  expect(said()).toBeUndefined();
  fireEvent.click(screen.getByRole('button', { name: 'Done' }));
  await waitFor(() => expect(held.state.record.pending).toBeUndefined());
  expect(said()).toBeUndefined();
});

test('the same of a number of the garment that was read, and of one that was measured', () => {
  const of = (garment: ReturnType<typeof hooks>) => {
    const { answer, ...state } = begin(garment, KNOWN);
    const open = openWork({ ...state, answer }, 'hooks', '', benchOf());
    return open && endsSaid({ answer, bench: benchOf(), here: 'hooks' }, givesOf(open, answer));
  };
  const linked = hooks([quantity('front')]);
  expect(of(linked)).toEqual([
    'Places of the closures: 10 as read; 9 if Front edge is at the lower end of its ±.',
  ]);
  const fact = {
    ...{ home: homeOf('front'), shown: 389_600 * 10, plan: 389_600 * 10, tape: 8000 },
    ...{ rule: 1, read: '', when: 1 },
  };
  expect(of({ ...linked, facts: { m: fact } })).toEqual([
    'Places of the closures: 10 as read; 9 if Front edge is at the lower end of its ±.',
  ]);
});
