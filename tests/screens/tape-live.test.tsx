import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { liveWords } from '#words/tape/live-words.ts';
import { photoFaultWords } from '#words/tape/photo-words.ts';
import type { Bench } from '../../src/calculation/bench.ts';
import { TapeError } from '../../src/camera/tape-fault.ts';
import { Live } from '../../src/screens/tape/live.tsx';
import type { LiveReading } from '../../src/tape/protocol.ts';
import type { TapeReading } from '../../src/tape/scales/tape-reading.ts';
import { PX, scaleAt, straight } from '../camera/readings.ts';
import { benchOf } from '../controls/helpers.ts';
import { rowFrame } from '../tape/made/plain-places.ts';

const track = vi.hoisted(() => new EventTarget());
/** With a pixel in its very middle. */
const SIZE = vi.hoisted(() => ({ width: 1601, height: 1201 }));
// The page of these tests has neither camera nor canvas; both are tried in the browser.
vi.mock('../../src/camera/live-camera.ts', () => ({
  openCamera: async () => ({ ok: true, value: { getTracks: () => [track] } }),
  stopCamera: () => undefined,
  frameTaker: () => () => ({ ...SIZE, pixels: new Uint8Array(1) }),
}));

const frozen = vi.hoisted(() => vi.fn());
vi.mock('../../src/camera/drawn.ts', () => ({ photoOf: frozen }));

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
  frame.mockResolvedValue({ held: true, reading: inFrame([scale]) });
}

const inFrame = (scales: TapeReading['scales']) => straight({ ...SIZE, scales });

const losesIt = () => frame.mockResolvedValue({ held: false, asks: false });

async function open(set: Partial<Bench> = {}) {
  const services = {
    bridge,
    speak,
    keepAwake: () => () => undefined,
    holdPage: () => () => undefined,
  };
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
  expect(said()).toEqual(['10 centimetres, plus or minus 0.06 centimetres']);
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
  expect(said().slice(1)).toEqual(['11.2 centimetres, plus or minus 0.06 centimetres']);
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
  expect(said().slice(1)).toEqual(['12 centimetres, plus or minus 0.06 centimetres']);
});

test('nothing is spoken of a tape that isn’t held, or of a place off its scale', async () => {
  losesIt();
  await open({ voice: 'on' });
  await pass(A_WHILE);
  expect(screen.getByRole('status').textContent).toBe(liveWords.looking);
  frame.mockResolvedValue({ held: false, asks: true });
  await pass(A_WHILE);
  expect(screen.getByRole('status').textContent).toBe(liveWords.asks);
  expect(shown()).toBe('—');
  frame.mockResolvedValue({
    held: true,
    reading: inFrame([scaleAt({ stretches: [{ from: 10, to: 60 }] })]),
  });
  await pass(A_WHILE);
  expect(screen.getByRole('status').textContent).toBe(liveWords.aim);
  frame.mockRejectedValue(new TapeError('engine-failed'));
  await pass(A_WHILE);
  expect(screen.getByRole('status').textContent).toBe(photoFaultWords['engine-failed']);
  expect(shown()).toBe('—');
  expect(said()).toEqual([]);
});

test('that the tape is lost is said at once, and once; held again, the number is', async () => {
  sees(100);
  await open({ voice: 'on' });
  losesIt();
  await pass(1);
  expect(shown()).toBe('—');
  expect(screen.getByRole('status').textContent).toBe(liveWords.looking);
  expect(said().slice(1)).toEqual([liveWords.lost]);
  await pass(A_WHILE);
  expect(said()).toHaveLength(2);
  sees(100.1);
  await pass(A_WHILE);
  expect(said().slice(2)).toEqual(['10.01 centimetres, plus or minus 0.06 centimetres']);
});

test('a tape lost and found over and over is not chattered about', async () => {
  sees(100);
  await open({ voice: 'on' });
  for (let i = 0; i < A_WHILE; i++) {
    if (i % 2 === 0) losesIt();
    else sees(100);
    await pass(1);
  }
  // Three seconds: the number, that it is lost, the number again when that may be said, lost again.
  expect(said().length).toBeLessThanOrEqual(4);
});

test('a number is not left standing when the phone takes the camera away', async () => {
  sees(100);
  await open({ voice: 'on' });
  expect(shown()).toBe('10 cm');
  await act(async () => {
    track.dispatchEvent(new Event('ended'));
  });
  expect(shown()).toBe('—');
  expect(screen.getByRole('status').textContent).toBe(liveWords.faults.busy);
  expect(said().slice(1)).toEqual([liveWords.lost]);
});

describe('the outline', () => {
  /** The straight scale, and the other edge of its tape 12 mm below with numbers of its own. */
  function seesTwo(under: { down: number }) {
    const one = scaleAt();
    const lower = {
      geometry: { ...one.geometry, frame: rowFrame([0, 600 + 12 * PX], 0) },
      outline: one.outline.map(({ x, y }) => ({ x, y: y + 12 * PX })),
      numbers: one.numbers.map(({ x, y, value }) => ({ x, y: y + 12 * PX, value: value + 50 })),
    };
    const scales = [one, scaleAt({ ...lower, anchorValue: 50 })].map((scale) => {
      const { frame } = scale.geometry;
      const moved = rowFrame([frame.origin[0], frame.origin[1] + under.down], 0);
      return { ...scale, geometry: { ...scale.geometry, frame: moved } };
    });
    frame.mockResolvedValue({ held: true, reading: inFrame(scales) });
  }
  const outlines = () => document.querySelectorAll('.outlined polygon').length;
  const numbers = () => [...document.querySelectorAll('.outlined text')].map((n) => n.textContent);

  test('is round the edge that is read, with the numbers read there', async () => {
    seesTwo({ down: 0 });
    await open();
    expect(shown()).toBe('10 cm');
    expect([outlines(), ...numbers()]).toEqual([1, '4', '12']);
    seesTwo({ down: -12 * PX });
    await pass(1);
    expect(shown()).toBe('60 cm');
    expect([outlines(), ...numbers()]).toEqual([1, '54', '62']);
  });

  test('is round every edge found while the cross is on none, and gone with the tape', async () => {
    seesTwo({ down: 40 * PX });
    await open();
    expect(screen.getByRole('status').textContent).toBe(liveWords.aim);
    expect(outlines()).toBe(2);
    losesIt();
    await pass(1);
    expect(outlines()).toBe(0);
  });
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
  expect(said()).toEqual(['10 centimetres, plus or minus 0.06 centimetres']);
});

test('what is frozen is aimed where its cross was only while the tape was held under it', async () => {
  losesIt();
  await open();
  const freeze = screen.getByRole('button', { name: liveWords.freeze });
  fireEvent.click(freeze);
  expect(frozen.mock.lastCall?.[1]).toBe(false);
  sees(100);
  await pass(1);
  fireEvent.click(freeze);
  expect(frozen.mock.lastCall?.[1]).toBe(true);
});

test('on a bench of inches it is spoken in inches', async () => {
  sees(100);
  await open({ voice: 'on', unit: 'in' });
  expect(said()[0]).toMatch(/^3\.937 inches, plus or minus 0\.\d+ inches$/);
});
