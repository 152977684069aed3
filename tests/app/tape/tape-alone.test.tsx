import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { SCREEN_WORDS } from '#words/phone/home-words.ts';
import { newerWords } from '#words/phone/newer-words.ts';
import { TapeAlone } from '../../../src/app/tape/tape-alone.tsx';
import { stateOf } from '../../../src/calculation/parted.ts';
import { closures } from '../../../src/calculations/closures/closures.ts';
import { convert } from '../../../src/calculations/convert/convert.ts';
import { straight } from '../../camera/readings.ts';
import { benchOf } from '../../controls/helpers.ts';
import { hostHas, NEWER_PAGE } from '../../controls/host.ts';
import { bridge, button, choose, finger, takePhoto } from '../../screens/tape-setup.tsx';

const given = vi.hoisted(() => ({ photo: undefined as unknown, closures: vi.fn() }));
// The page of these tests has no canvas; opening real files is tried in the browser.
vi.mock('../../../src/camera/photo.ts', () => ({
  openPhoto: async () => ({ ok: true, value: given.photo }),
}));
vi.mock('../../../src/app/tape/tape-services.ts', async () => {
  const { services } = await import('../../screens/tape-setup.tsx');
  return { TAPE_SERVICES: services };
});
vi.mock('../../../src/app/start/registry.ts', () => ({
  loaderOf: (id: string) => (id === 'closures' ? given.closures : () => convert),
}));

const NO_CONNECTION = new TypeError('no connection');
const go = vi.fn();

beforeEach(() => {
  given.photo = takePhoto();
  given.closures.mockReset();
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

/** Reads a photo from home, after closures had asked for a tape. */
async function readAtHome() {
  const route = { screen: 'tape', mode: '', draft: {} };
  const address = { route, go, type: vi.fn(), flush: vi.fn() };
  const last = { closures: 'u=cm&taped=opening&count=5' };
  render(<TapeAlone address={address} bench={benchOf()} last={last} onHome={vi.fn()} />);
  await choose(straight({ tiltDegrees: 12 }));
  await screen.findByRole('slider', { name: 'Line' });
  finger('Down', 600);
  finger('Up', 600);
  await waitFor(() => expect(button('Use: Closures').disabled).toBe(false));
}

const read = () => screen.getByRole('status').textContent;

test('a calculation that can’t be fetched is said to be that, and the number stays', async () => {
  hostHas(NO_CONNECTION);
  given.closures.mockRejectedValue(NO_CONNECTION);
  await readAtHome();
  // It is said a moment after it is shown.
  await waitFor(() => expect(read()).not.toBe(''));
  const before = read();
  fireEvent.click(button('Use: Closures'));
  const said = await screen.findByRole('alert');
  expect(said.textContent).toBe(
    'Closures could not be fetched, so the number was not used; it stays here. Connect and press that again, or use it in “Inches and centimetres”.',
  );
  expect(read()).toBe(before);
  expect(go).not.toHaveBeenCalled();

  fireEvent.click(button('Use: Inches and centimetres'));
  await waitFor(() => expect(go).toHaveBeenCalledOnce());
  expect(go.mock.calls[0]?.[0]).toMatchObject({ screen: 'convert' });
  expect(go.mock.calls[0]?.[0].draft.length).toMatch(/^[\d.]+ ± [\d.]+ cm$/);
});

test('once it can be fetched the same press takes the number there', async () => {
  hostHas(NO_CONNECTION);
  given.closures.mockRejectedValue(NO_CONNECTION);
  await readAtHome();
  fireEvent.click(button('Use: Closures'));
  await screen.findByRole('alert');
  given.closures.mockResolvedValue({ ...closures, part: stateOf });
  fireEvent.click(button('Use: Closures'));
  await waitFor(() => expect(go).toHaveBeenCalledOnce());
  const { screen: to, draft } = go.mock.calls[0]?.[0] ?? {};
  expect(to).toBe('closures');
  expect(draft).toMatchObject({ count: '5', opening: expect.stringMatching(/ ± .* cm$/) });
});

test('where the host has a newer build, that is the cause, and where the number can go is said', async () => {
  hostHas(NEWER_PAGE);
  given.closures.mockRejectedValue(NO_CONNECTION);
  await readAtHome();
  fireEvent.click(button('Use: Closures'));
  const said = await screen.findByRole('alert');
  expect(said.textContent).toBe(`Closures: ${newerWords.use}`);
  expect(said.textContent).toContain(`“${SCREEN_WORDS.convert}”`);
});

test('what the number may go to is fetched before it is wanted', async () => {
  given.closures.mockResolvedValue({ ...closures, part: stateOf });
  await readAtHome();
  expect(given.closures).toHaveBeenCalled();
  expect(bridge.read).toHaveBeenCalledOnce();
});
