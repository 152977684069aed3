import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { TapeError } from '../../src/camera/tape-fault.ts';
import type { Bench } from '../../src/controls/bench.ts';
import { Live } from '../../src/screens/tape/live.tsx';
import type { LiveReading } from '../../src/tape/protocol.ts';
import { liveWords } from '../../src/words/live-words.ts';
import { photoFaultWords } from '../../src/words/photo-words.ts';
import { scaleAt, straight } from '../camera/readings.ts';
import { benchOf } from '../controls/helpers.ts';

// The page of these tests has neither camera nor canvas; both are tried in the browser.
vi.mock('../../src/camera/live-camera.ts', () => ({
  openCamera: async () => ({ ok: true, value: { getTracks: () => [] } }),
  stopCamera: () => undefined,
  frameTaker: () => () => ({ width: 1601, height: 1201, pixels: new Uint8Array(1) }),
}));

/** From the answer to one frame until the next is taken. */
const FRAME_MS = 60;

const frame = vi.fn<() => Promise<LiveReading>>();
const speak = vi.fn();
const unasked = vi.fn();
const bridge = {
  frame,
  read: unasked,
  snap: unasked,
  touch: unasked,
  warm: unasked,
  close: unasked,
};

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
  vi.clearAllMocks();
  HTMLMediaElement.prototype.play = async () => undefined;
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

/** What the eye sees from now on: so many mm under the cross, which stands at 100 mm of its scale. */
function sees(mm: number) {
  // Its numbers are so many graduations further on.
  const scale = scaleAt({ anchorValue: (mm - 100) / 10 });
  frame.mockResolvedValue({ held: true, reading: straight({ scales: [scale] }) });
}

const losesIt = () => frame.mockResolvedValue({ held: false, reading: straight() });

async function open(set: Partial<Bench> = {}) {
  const services = { bridge, speak, keepAwake: () => () => undefined };
  render(<Live bench={benchOf(set)} services={services} onFreeze={unasked} onLeave={unasked} />);
  await pass(2);
}

/** So many frames, each looked at and shown. */
async function pass(frames: number) {
  for (let i = 0; i < frames; i++) {
    await act(async () => {
      await vi.advanceTimersByTimeAsync(FRAME_MS);
    });
  }
}

/** Long enough for a number to be said again. */
const A_WHILE = 50;
const shown = () => document.querySelector('.number strong')?.textContent;
const said = () => speak.mock.calls.map(([words]) => String(words));

test('the number is spoken when the tape is first held, with its ±, and not at every frame', async () => {
  sees(100);
  await open({ voice: 'on' });
  expect(shown()).toBe('10 cm');
  expect(said()).toEqual(['10 centimetres, plus or minus 0.01 centimetres']);
  await pass(A_WHILE);
  expect(frame.mock.calls.length).toBeGreaterThan(A_WHILE);
  expect(said()).toHaveLength(1);
});

test('it is spoken again when it has changed, and once', async () => {
  sees(100);
  await open({ voice: 'on' });
  await pass(A_WHILE);
  sees(112);
  await pass(1);
  expect(said().slice(1)).toEqual(['11.2 centimetres, plus or minus 0.01 centimetres']);
  await pass(A_WHILE);
  expect(said()).toHaveLength(2);
});

test('a hand that trembles is not spoken of, though the number shown follows it', async () => {
  sees(100);
  await open({ voice: 'on' });
  for (let i = 0; i < 2 * A_WHILE; i++) {
    sees(100 + 0.4 * Math.sin(i));
    await pass(1);
  }
  expect(shown()).not.toBe('10 cm');
  expect(said()).toHaveLength(1);
});

test('while it is still moving, words don’t pile up; where it comes to rest is said', async () => {
  sees(100);
  await open({ voice: 'on' });
  for (let i = 1; i <= 20; i++) {
    sees(100 + i);
    await pass(1);
  }
  expect(said()).toHaveLength(1);
  await pass(A_WHILE);
  expect(said().slice(1)).toEqual(['12 centimetres, plus or minus 0.01 centimetres']);
});

test('nothing is spoken of a tape that isn’t held, or of a place off its scale', async () => {
  losesIt();
  await open({ voice: 'on' });
  await pass(A_WHILE);
  expect(screen.getByRole('status').textContent).toBe(liveWords.looking);
  frame.mockResolvedValue({ held: false, reading: straight({ outcome: 'ask' }) });
  await pass(A_WHILE);
  expect(screen.getByRole('status').textContent).toBe(liveWords.asks);
  expect(shown()).toBe('—');
  frame.mockResolvedValue({
    held: true,
    reading: straight({ scales: [scaleAt({ stretches: [{ from: 10, to: 60 }] })] }),
  });
  await pass(A_WHILE);
  expect(screen.getByRole('status').textContent).toBe(liveWords.aim);
  frame.mockRejectedValue(new TapeError('engine-failed'));
  await pass(A_WHILE);
  expect(screen.getByRole('status').textContent).toBe(photoFaultWords['engine-failed']);
  expect(shown()).toBe('—');
  expect(said()).toEqual([]);
});

test('held again after it was lost, only another number is spoken', async () => {
  sees(100);
  await open({ voice: 'on' });
  losesIt();
  await pass(A_WHILE);
  sees(100.1);
  await pass(A_WHILE);
  expect(said()).toHaveLength(1);
  losesIt();
  await pass(A_WHILE);
  sees(130);
  await pass(1);
  expect(said().slice(1)).toEqual(['13 centimetres, plus or minus 0.01 centimetres']);
});

test('with the voice off it is silent; the key speaks what is shown, when there is something', async () => {
  losesIt();
  await open({ voice: 'off' });
  const key = screen.getByRole<HTMLButtonElement>('button', { name: liveWords.say });
  expect(key.disabled).toBe(true);
  sees(100);
  await pass(A_WHILE);
  expect(said()).toEqual([]);
  fireEvent.click(key);
  expect(said()).toEqual(['10 centimetres, plus or minus 0.01 centimetres']);
});

test('on a bench of inches it is spoken in inches', async () => {
  sees(100);
  await open({ voice: 'on', unit: 'in' });
  expect(said()[0]).toMatch(/^3\.937 inches, plus or minus 0\.\d+ inches$/);
});
