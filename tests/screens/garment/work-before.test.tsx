import { cleanup, fireEvent, screen, within } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { act } from '../../../src/garment/actions/act.ts';
import { begin } from '../../../src/garment/actions/state.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import { KNOWN } from '../../garment/trial/known.ts';
import { openIn, skirt } from './work-hand.tsx';

afterEach(cleanup);

const TURN = homeOf('hem', '', 'first-press');
const ROW = homeOf('close', '', 'marks');
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));

/** The skirt with steps that were made before the app knew. */
const before = (...homes: string[]) =>
  act(begin(skirt, KNOWN), { do: 'make before', homes, id: 'b', now: 5 }).state.record;

test('an open work says of a step that it was made before the app knew, and takes it back', async () => {
  const held = await openIn(before(TURN), 'hem');
  expect(held.state.answer.sound.before.has(TURN)).toBe(true);
  expect(screen.getByRole('banner').textContent).toMatch(/ made, 1 of them before the app knew/);
  press('More');
  const gives = screen.getByRole('region', { name: 'It gives' });
  // What only follows from it isn't made: of those it is not said.
  const said = within(gives).getByText('made before the app knew');
  fireEvent.click(said.closest('button') as HTMLElement);
  const panel = await screen.findByText(/Its number was never taken/);
  expect(panel.textContent).toContain('the plan stands in for it');
  press('It isn’t made yet');
  expect(held.state.answer.sound.before.size).toBe(0);
  expect(screen.getByRole('banner').textContent).not.toContain('before the app knew');
});

test('a row made before the app knew is said as one, with no mark taken for measured', async () => {
  const held = await openIn(before(ROW), 'close');
  const row = screen.getByRole('region', { name: /Places|places|Row|row/ });
  expect(row.textContent).toMatch(/^Made before the app knew/);
  expect(within(row).getAllByRole('button')).toHaveLength(1);
  fireEvent.click(within(row).getByRole('button'));
  await screen.findByText(/Its number was never taken/);
  press('It isn’t made yet');
  expect(held.state.answer.sound.before.size).toBe(0);
});
