import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { PhotoOutcome } from '../../src/camera/photo.ts';
import { TapeError } from '../../src/camera/tape-fault.ts';
import type { Bench } from '../../src/controls/bench.ts';
import { TapeScreen } from '../../src/screens/tape/tape-screen.tsx';
import type { TapeReading } from '../../src/tape/read-at.ts';
import { cannotWords, photoFaultWords } from '../../src/words/photo-words.ts';
import { PX, scaleAt, straight } from '../camera/readings.ts';
import { benchOf } from '../controls/helpers.ts';

const opened = vi.hoisted(() => ({ outcome: undefined as unknown }));
// The page of these tests has no canvas; opening real files is tried in the browser.
vi.mock('../../src/camera/photo.ts', () => ({ openPhoto: async () => opened.outcome }));

const onUse = vi.fn();
const onLeave = vi.fn();
const bridge = {
  read: vi.fn(),
  frame: vi.fn(),
  snap: vi.fn(),
  touch: vi.fn(),
  warm: vi.fn(),
  close: vi.fn(),
};
const services = { bridge, speak: vi.fn(), keepAwake: () => () => undefined };

beforeEach(() => {
  vi.clearAllMocks();
  const picture = document.createElement('canvas');
  picture.getContext = () => null;
  const image = { width: 1600, height: 1200, pixels: new Uint8Array(1) };
  opened.outcome = { ok: true, value: { picture, image } } satisfies PhotoOutcome;
  HTMLCanvasElement.prototype.getContext = () => null;
  bridge.snap.mockImplementation(async (at) => at);
  // A photo as it is: one px of it for one of the screen.
  vi.stubGlobal(
    'DOMPoint',
    class {
      x: number;
      y: number;
      constructor(x: number, y: number) {
        this.x = x;
        this.y = y;
      }
      matrixTransform() {
        return this;
      }
    },
  );
  Object.defineProperty(SVGElement.prototype, 'getScreenCTM', {
    configurable: true,
    value: () => ({ inverse: () => ({ a: 1 }) }),
  });
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

function open(set: Partial<Bench> = {}, shared?: () => Promise<Blob | undefined>) {
  return render(
    <TapeScreen
      bench={benchOf(set)}
      field="Opening"
      uses={[{ name: 'Opening', onUse }]}
      shared={shared}
      services={services}
      onLeave={onLeave}
    />,
  );
}

/** Chooses a photo of which this is read. */
async function choose(reading: TapeReading | Promise<never>) {
  bridge.read.mockReturnValue(Promise.resolve(reading));
  pick();
  await waitFor(() => expect(bridge.read).toHaveBeenCalled());
}

function pick() {
  const file = new File(['photo'], 'photo.jpg', { type: 'image/jpeg' });
  fireEvent.change(screen.getByLabelText('Choose a photo'), { target: { files: [file] } });
}

const use = () => screen.getByRole<HTMLButtonElement>('button', { name: 'Use: Opening' });
const button = (name: string) => screen.getByRole<HTMLButtonElement>('button', { name });

test('worker and engine are started while the photo is taken, and let go on leaving', async () => {
  const { unmount } = open();
  await waitFor(() => expect(bridge.warm).toHaveBeenCalledOnce());
  expect(screen.getByRole('heading').textContent).toBe('Opening: from a photo');
  fireEvent.click(button('Back'));
  expect(onLeave).toHaveBeenCalledOnce();
  unmount();
  await waitFor(() => expect(bridge.close).toHaveBeenCalledOnce());
});

test('the number goes to the field that asked, with its ±; both units are shown', async () => {
  open();
  await choose(straight({ tiltDegrees: 21.4 }));
  const line = await screen.findByRole('slider', { name: 'Line' });
  expect(line.getAttribute('aria-valuetext')).toMatch(/^10 centimetres, plus or minus 0.01 cent/);
  const said = document.querySelector('.told')?.textContent ?? '';
  expect(said).toMatch(/^10 cm± 0\.01 cmfrom zero/);
  expect(said).toMatch(/3\.937 in; nearest mark 3 /);
  expect(said).toMatch(/Seen 21° from square on: hold the phone square on/);
  expect(said).toMatch(/3 mm above it/);
  expect(said).toMatch(/0\.5 mm \(class II\) or 1 mm \(class III\)/);
  fireEvent.click(use());
  expect(onUse).toHaveBeenCalledExactlyOnceWith('10 ± 0.01 cm');
});

test('on a bench of inches it is told in inches, and typed so', async () => {
  open({ unit: 'in', decimalMark: ',' });
  await choose(straight());
  await screen.findByRole('slider');
  fireEvent.click(use());
  expect(onUse).toHaveBeenCalledWith('3,937 ± 0,003 in');
});

test('keys move the line: by a tenth of a millimetre, a centimetre, to the ends', async () => {
  open();
  await choose(straight());
  const line = await screen.findByRole('slider', { name: 'Line' });
  const told = () => line.getAttribute('aria-valuetext')?.split(',')[0];
  for (const [key, after] of [
    ['ArrowRight', '10.01 centimetres'],
    ['ArrowDown', '10 centimetres'],
    ['PageUp', '11 centimetres'],
    ['End', '19 centimetres'],
    ['ArrowUp', '19 centimetres'],
    ['Home', '1 centimetres'],
  ] as const) {
    fireEvent.keyDown(line, { key });
    expect(told(), key).toBe(after);
  }
  expect(line.getAttribute('aria-valuenow')).toBe('0');
  fireEvent.keyDown(line, { key: 'Tab' });
  expect(told()).toBe('1 centimetres');
  fireEvent.click(button('Line on a little'));
  expect(told()).toBe('1.01 centimetres');
});

test('a screen reader is told politely, once the line is at rest', async () => {
  open();
  await choose(straight());
  const line = await screen.findByRole('slider');
  fireEvent.keyDown(line, { key: 'PageUp' });
  expect(screen.getByRole('status').textContent).toBe('');
  await waitFor(() =>
    expect(screen.getByRole('status').textContent).toMatch(/^11 centimetres, plus or minus/),
  );
});

test('two lines tell what lies between them', async () => {
  open();
  await choose(straight());
  await screen.findByRole('slider');
  fireEvent.click(button('Difference'));
  expect(screen.getAllByRole('slider')).toHaveLength(2);
  expect(document.querySelector('.told')?.textContent).toMatch(
    /^4\.5 cm± 0\.01 cmfrom line to line/,
  );
  fireEvent.keyDown(screen.getByRole('slider', { name: 'Second line' }), { key: 'PageUp' });
  fireEvent.click(use());
  expect(onUse).toHaveBeenCalledWith('5.5 ± 0.01 cm');
  fireEvent.click(button('From zero'));
  expect(screen.getAllByRole('slider')).toHaveLength(1);
});

test('a finger calls the line, then moves it finely', async () => {
  open();
  await choose(straight());
  await screen.findByRole('slider');
  const picture = screen.getByRole('group', { name: /^The photo/ });
  const line = () => screen.getByRole('slider').getAttribute('aria-valuetext');
  const finger = (kind: 'Down' | 'Move' | 'Up', x: number) =>
    fireEvent[`pointer${kind}`](picture, { clientX: x, clientY: 600, button: 0 });
  finger('Down', 50 * PX);
  finger('Up', 50 * PX);
  expect(line()).toMatch(/^5 centimetres/);
  finger('Down', 50 * PX + 20);
  expect(line()).toMatch(/^5 centimetres/);
  expect(document.querySelector('.lens')).toBeTruthy();
  finger('Move', 50 * PX + 60);
  // 40 px of the finger are 14 px, 1.75 mm, of the line.
  expect(line()).toMatch(/^5\.18 centimetres/);
  finger('Up', 50 * PX + 60);
  expect(line()).toMatch(/^5\.18 centimetres/);
  // A press without a drag brings the line to the finger, however near it stands.
  finger('Down', 50 * PX);
  finger('Up', 50 * PX);
  expect(line()).toMatch(/^5 centimetres/);
  expect(document.querySelector('.lens')).toBeNull();
});

test('numbers and scales found are drawn where they are', async () => {
  open();
  await choose(straight());
  await screen.findByRole('slider');
  const drawn = [...document.querySelectorAll('.scale text')].map((text) => text.textContent);
  expect(drawn).toEqual(['4', '12']);
  expect(document.querySelector('.scale polygon')?.getAttribute('points')).toMatch(/^80,580 /);
});

test('where the line can’t be read, it says why, and gives no number', async () => {
  const narrow = scaleAt({ stretches: [{ from: 10, to: 100 }] });
  open();
  await choose(straight({ scales: [narrow] }));
  await screen.findByRole('slider');
  const picture = screen.getByRole('group', { name: /^The photo/ });
  fireEvent.pointerDown(picture, { clientX: 150 * PX, clientY: 600, button: 0 });
  fireEvent.pointerUp(picture);
  expect(document.querySelector('.told .warning')?.textContent).toMatch(/Beyond the numbers/);
  expect(use().disabled).toBe(true);
});

test('while a question is open, no number is told; the picture shows where it is asked', async () => {
  const question = { kind: 'line', scale: 0, x: 320, y: 600, value: 4, unit: 'cm' } as const;
  open();
  const scales = [scaleAt({ sure: false, doubts: ['line'] })];
  await choose(straight({ outcome: 'ask', question, scales }));
  expect(await screen.findByText('Is the line marked in the picture 4 cm?')).toBeTruthy();
  expect(use().disabled).toBe(true);
  expect(document.querySelector('.told strong')).toBeNull();
  expect(document.querySelector('.asked circle')?.getAttribute('cx')).toBe('320');
  fireEvent.click(button('No, it is another'));
  expect(screen.getByLabelText(/^What is printed there/)).toBeTruthy();
});

test.each(['no-tape', 'too-blurred', 'few-numbers'] as const)(
  'a picture that can’t be read says why and offers to touch two lines: %s',
  async (reason) => {
    open();
    await choose(straight({ outcome: 'cannot', reason, scales: [] }));
    expect((await screen.findByRole('alert')).textContent).toBe(cannotWords[reason]);
    fireEvent.click(button('Touch two lines'));
    expect(await screen.findByText(/^Touch a long line/)).toBeTruthy();
  },
);

test('two lines touched and their numbers typed make a reading', async () => {
  open();
  await choose(straight({ outcome: 'cannot', reason: 'no-numbers', scales: [] }));
  fireEvent.click(await screen.findByRole('button', { name: 'Touch two lines' }));
  await screen.findByText(/^Touch a long line/);
  const picture = screen.getByRole('group', { name: /^The photo/ });
  bridge.snap.mockResolvedValueOnce({ x: 320.4, y: 600 });
  fireEvent.pointerDown(picture, { clientX: 322, clientY: 600, button: 0 });
  fireEvent.pointerUp(picture);
  fireEvent.input(await screen.findByLabelText(/^Line 1/), { target: { value: '4' } });
  expect(button('Done').disabled).toBe(true);
  fireEvent.pointerDown(picture, { clientX: 960, clientY: 600, button: 0 });
  fireEvent.pointerUp(picture);
  fireEvent.input(await screen.findByLabelText(/^Line 2/), { target: { value: '4 in' } });
  bridge.touch.mockResolvedValueOnce({ ok: false, reason: 'same-value' });
  fireEvent.click(button('Done'));
  expect(await screen.findByText(/Two different lines can’t have the same number/)).toBeTruthy();
  expect(bridge.touch.mock.lastCall?.[0]).toEqual([
    { x: 320.4, y: 600, value: 4, unit: 'cm' },
    { x: 960, y: 600, value: 4, unit: 'inch' },
  ]);
  bridge.touch.mockResolvedValueOnce({ ok: true, value: straight() });
  fireEvent.click(button('Done'));
  await screen.findByRole('slider');
  expect(use().disabled).toBe(false);
});

test.each(['not-a-picture', 'damaged', 'strange', 'too-large'] as const)(
  'a file that gives no photo is said, and another can be chosen: %s',
  async (fault) => {
    opened.outcome = { ok: false, fault };
    open();
    pick();
    expect((await screen.findByRole('alert')).textContent).toBe(photoFaultWords[fault]);
    expect(bridge.read).not.toHaveBeenCalled();
    expect(screen.getByLabelText('Choose a photo')).toBeTruthy();
  },
);

test.each(['engine-missing', 'engine-refused', 'reader-failed', 'reader-slow'] as const)(
  'a reader that fails is said, and two lines can be touched: %s',
  async (fault) => {
    open();
    await choose(Promise.reject(new TapeError(fault)));
    expect((await screen.findByRole('alert')).textContent).toBe(photoFaultWords[fault]);
    expect(button('Touch two lines')).toBeTruthy();
    fireEvent.click(button('Another photo'));
    expect(screen.getByLabelText('Take a photo')).toBeTruthy();
  },
);

test('reading can be stopped: what comes late is not shown', async () => {
  let late: (reading: TapeReading) => void = () => undefined;
  const slow = new Promise<TapeReading>((done) => {
    late = done;
  });
  open();
  bridge.read.mockReturnValue(slow);
  pick();
  const [, signal, progress] = await waitFor(() => {
    expect(bridge.read).toHaveBeenCalled();
    return bridge.read.mock.lastCall as [unknown, AbortSignal, (done: number) => void];
  });
  progress(0.42);
  expect(await screen.findByText('Reading the tape… 42 %')).toBeTruthy();
  fireEvent.click(button('Stop'));
  expect(signal.aborted).toBe(true);
  late(straight());
  await new Promise((done) => setTimeout(done));
  expect(screen.queryByRole('slider')).toBeNull();
});

test('a shared photo is read at once; one that got lost is said', async () => {
  bridge.read.mockResolvedValue(straight());
  const { unmount } = open({}, async () => new Blob(['photo']));
  await screen.findByRole('slider');
  unmount();
  open({}, async () => undefined);
  expect((await screen.findByRole('alert')).textContent).toBe(photoFaultWords['not-shared']);
});

test('no camera is said, and the way back leads to the photos', async () => {
  open();
  fireEvent.click(button('Live'));
  expect(await screen.findByText(/There is no camera this browser can use/)).toBeTruthy();
  fireEvent.click(button('Back'));
  expect(screen.getByLabelText('Choose a photo')).toBeTruthy();
});
