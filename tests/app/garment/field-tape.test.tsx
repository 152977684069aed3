import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { FieldTape } from '../../../src/app/garment/field-tape.tsx';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import { begin } from '../../../src/garment/actions/state.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import { straight } from '../../camera/readings.ts';
import { benchOf } from '../../controls/helpers.ts';
import { KNOWN } from '../../garment/trial/known.ts';
import { HOOKS, waistcoat } from '../../garment/trial/waistcoat.ts';
import { button, choose, finger, takePhoto } from '../../screens/tape-setup.tsx';

const given = vi.hoisted(() => ({ photo: undefined as unknown }));
// The page of these tests has no canvas; opening real files is tried in the browser.
vi.mock('../../../src/camera/photo.ts', () => ({
  openPhoto: async () => ({ ok: true, value: given.photo }),
}));
vi.mock('../../../src/app/tape/tape-services.ts', async () => {
  const { services } = await import('../../screens/tape-setup.tsx');
  return { TAPE_SERVICES: services };
});

beforeEach(() => {
  given.photo = takePhoto();
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

test('what a tape reads stands in the field of the work, is one change, and its row follows', async () => {
  let state = begin(waistcoat, KNOWN);
  const done = vi.fn();
  const onAct = (action: Action) => {
    state = act(state, action).state;
  };
  const place = { work: 'hooks', field: 'opening' };
  render(<FieldTape {...{ state, place, onAct }} bench={benchOf()} onDone={done} />);
  await choose(straight({ tiltDegrees: 12 }));
  await screen.findByRole('slider', { name: 'Line' });
  finger('Down', 600);
  finger('Up', 600);
  const use = 'Use: Opening';
  await waitFor(() => expect(button(use).disabled).toBe(false));
  fireEvent.click(button(use));
  expect(done).toHaveBeenCalledOnce();
  const { fields } = state.record.works.hooks as { fields: { opening: { text: string }[] } };
  expect(fields.opening).toHaveLength(1);
  const text = fields.opening[0]?.text ?? '';
  expect(text).toMatch(/^[\d.]+( ± [\d.]+)? cm$/);
  expect(state.log).toHaveLength(1);
  const row = state.answer.values.get(HOOKS);
  const first = row?.ok && typeof row.value === 'object' ? row.value.length : 0;
  expect(first / 80_000).toBeCloseTo(Number.parseFloat(text), 2);
  expect(state.answer.values.get(homeOf('hooks', '', 'count'))).toMatchObject({
    ok: true,
    value: 7,
  });
});
