import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { PX, scaleAt, straight } from '../camera/readings.ts';
import { rowFrame } from '../tape/made/plain-places.ts';
import { button, choose, finger, onUse, open, takePhoto, use } from './tape-setup.tsx';

const opened = vi.hoisted(() => ({ outcome: undefined as unknown }));
vi.mock('../../src/camera/photo.ts', () => ({ openPhoto: async () => opened.outcome }));

beforeEach(() => {
  opened.outcome = { ok: true, value: takePhoto() };
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const doubted = (...doubts: ('line' | 'unit')[]) => scaleAt({ sure: false, doubts });
const question = { kind: 'line', scale: 0, x: 960, y: 600, value: 12, unit: 'cm' } as const;
const asking = () => straight({ outcome: 'ask', question, scales: [doubted('line')] });

/** A second tape, well below the first. */
const LOWER = { ...scaleAt().geometry, frame: rowFrame([0, 1000], 0) };

const told = () => document.querySelector('.told')?.textContent ?? '';
const drawn = () => [...document.querySelectorAll('.scale text')].map((text) => text.textContent);

function press(x: number, y: number) {
  finger('Down', x, y);
  finger('Up', x, y);
}

/** Says that something else is printed at the line asked about. */
async function correct(typed: string) {
  if (!screen.queryByLabelText(/^What is printed there/)) {
    fireEvent.click(await screen.findByRole('button', { name: 'No, it is another' }));
  }
  const field = await screen.findByLabelText<HTMLInputElement>(/^What is printed there/);
  fireEvent.input(field, { target: { value: typed } });
  fireEvent.keyDown(field, { key: 'Enter' });
  return field;
}

test('a line corrected shifts the numbers drawn with it', async () => {
  open();
  await choose(asking());
  await screen.findByText('Is the line marked in the picture 12 cm?');
  expect(drawn()).toEqual(['4', '12']);
  await correct('112');
  expect(drawn()).toEqual(['104', '112']);
  press(120 * PX, 600);
  expect(told()).toMatch(/^112 cm/);
});

test.each(['1e6', '-5', '47 1/2', '9.5', '3', '', '12000', 'twelve'])(
  'what can’t be printed there is said, kept, and nothing is read: %j',
  async (typed) => {
    open();
    await choose(asking());
    await screen.findByText('Is the line marked in the picture 12 cm?');
    const field = await correct(typed);
    const said = screen.getByRole('alert').textContent;
    expect(said).toContain(typed === '' ? 'Nothing is typed' : `“${typed}” can’t be printed there`);
    // Eight less than 12 is the 4 of its scale, and no number of a tape is below zero.
    expect(said).toContain('whole, from 8 to 10000');
    expect(field.value).toBe(typed);
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(use().disabled).toBe(true);
    await correct('13');
    expect(screen.queryByRole('alert')).toBeNull();
    expect(drawn()).toEqual(['5', '13']);
  },
);

test('on an edge that is doubted beside a sure one, its question is asked there', async () => {
  open();
  await choose(straight({ scales: [scaleAt(), { ...doubted('line', 'unit'), geometry: LOWER }] }));
  await screen.findByRole('slider');
  expect(screen.queryByText(/^Is the line/)).toBeNull();
  finger('Down', 50 * PX, 1000);
  expect(told()).toMatch(/^Not sure yet: answer the question/);
  // Not under the finger: it would take the place of what is touched.
  expect(screen.queryByText(/^Is the line/)).toBeNull();
  finger('Up', 50 * PX, 1000);
  expect(use().disabled).toBe(true);
  expect(await screen.findByText('Is the line marked in the picture 12 cm?')).toBeTruthy();
  expect(document.querySelector('.asked circle')?.getAttribute('cy')).toBe('1000');
  // Off that edge there is nothing to answer.
  press(50 * PX, 600);
  expect(told()).toMatch(/^5 cm/);
  expect(document.querySelector('.asking, .asked')).toBeNull();
  press(50 * PX, 1000);
  await correct('22');
  fireEvent.click(await screen.findByRole('button', { name: 'Inches' }));
  fireEvent.click(use());
  expect(onUse.mock.lastCall?.[0]).toMatch(/^38\.1 ± /);
  // The other edge tells what it told.
  press(50 * PX, 600);
  expect(told()).toMatch(/^5 cm/);
  expect(button('Difference')).toBeTruthy();
});

test('of two doubted edges, one that is asked about is read without the other', async () => {
  open();
  const scales = [doubted('line'), { ...doubted('line'), geometry: LOWER }];
  await choose(straight({ outcome: 'ask', question, scales }));
  await screen.findByText('Is the line marked in the picture 12 cm?');
  press(50 * PX, 1000);
  expect(document.querySelector('.asked circle')?.getAttribute('cy')).toBe('1000');
  fireEvent.click(button('Yes'));
  expect(told()).toMatch(/^5 cm/);
  press(50 * PX, 600);
  expect(told()).toMatch(/^Not sure yet/);
  expect(document.querySelector('.asked circle')?.getAttribute('cy')).toBe('600');
});
