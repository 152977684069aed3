import { cleanup, fireEvent, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { loadNewer, newerWords } from '#words/phone/newer-words.ts';
import { cannotWords } from '#words/tape/cannot-words.ts';
import { photoFaultWords } from '#words/tape/photo-words.ts';
import { TapeError } from '../../src/camera/tape-fault.ts';
import type { TapeReading } from '../../src/tape/scales/tape-reading.ts';
import { PX, scaleAt, straight } from '../camera/readings.ts';
import { hostHas, NEWER_PAGE } from '../controls/host.ts';
import {
  bridge,
  button,
  choose,
  finger,
  holdPage,
  letGo,
  onLeave,
  onUse,
  open,
  pick,
  takePhoto,
  use,
} from './tape-setup.tsx';

const opened = vi.hoisted(() => ({ outcome: undefined as unknown }));
// The page of these tests has no canvas; opening real files is tried in the browser.
vi.mock('../../src/camera/photo.ts', () => ({ openPhoto: async () => opened.outcome }));

beforeEach(() => {
  opened.outcome = { ok: true, value: takePhoto() };
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

test('worker and engine are started while the photo is taken, and let go on leaving', async () => {
  const { unmount } = open();
  await waitFor(() => expect(bridge.warm).toHaveBeenCalledOnce());
  expect(screen.getByRole('heading').textContent).toBe('Opening: from a photo');
  fireEvent.click(button('Back'));
  expect(onLeave).toHaveBeenCalledOnce();
  unmount();
  await waitFor(() => expect(bridge.close).toHaveBeenCalledOnce());
});

test('as long as a photo is open the page is held, and no longer', async () => {
  bridge.read.mockResolvedValue(straight({ tiltDegrees: 12 }));
  open();
  expect(holdPage).not.toHaveBeenCalled();
  pick();
  await screen.findByRole('slider', { name: 'Line' });
  expect(holdPage).toHaveBeenCalledOnce();
  expect(letGo).not.toHaveBeenCalled();
  fireEvent.click(button('Another photo'));
  await waitFor(() => expect(letGo).toHaveBeenCalledOnce());
});

const MISSING: [string, () => void][] = [
  [
    'what opens photos',
    () => {
      opened.outcome = { ok: false, fault: 'unfetched' };
    },
  ],
  ['what reads numbers', () => bridge.read.mockRejectedValue(new TapeError('engine-missing'))],
  ['the reader', () => bridge.read.mockRejectedValue(new TapeError('reader-failed'))],
];

test.each(MISSING)(
  'where %s is gone from a host with a newer build, that is said',
  async (_, fail) => {
    hostHas(NEWER_PAGE);
    open();
    fail();
    pick();
    await screen.findByText(newerWords.photo);
    expect(button(loadNewer)).toBeTruthy();
    expect(screen.queryByText(/Connect once/)).toBeNull();
  },
);

test.each(MISSING)(
  'where %s can’t be fetched without a connection, that is said',
  async (_, fail) => {
    hostHas(new TypeError('no connection'));
    open();
    fail();
    pick();
    await screen.findByRole('alert');
    await waitFor(() => expect(fetch).toHaveBeenCalledOnce());
    expect(screen.getByRole('alert').textContent).toMatch(/Connect once|has failed/);
    expect(screen.queryByRole('button', { name: loadNewer })).toBeNull();
  },
);

test('a fault of the photo itself asks no host', async () => {
  hostHas(NEWER_PAGE);
  open();
  opened.outcome = { ok: false, fault: 'damaged' };
  pick();
  expect((await screen.findByRole('alert')).textContent).toBe(photoFaultWords.damaged);
  expect(fetch).not.toHaveBeenCalled();
});

/** A press where a number of mm is. */
function touch(mm: number) {
  finger('Down', mm * PX);
  finger('Up', mm * PX);
}

test.each([
  ['chosen', () => choose(straight({ tiltDegrees: 12 }))],
  ['shared', async () => undefined],
])('a photo %s shows no number before a place is touched', async (how, come) => {
  bridge.read.mockResolvedValue(straight({ tiltDegrees: 12 }));
  open({}, how === 'shared' ? async () => new Blob(['photo']) : undefined);
  await come();
  const line = await screen.findByRole('slider', { name: 'Line' });
  const said = () => document.querySelector('.told')?.textContent ?? '';
  expect(said()).toMatch(/^Touch the tape where it is to be read/);
  expect(document.querySelector('.told .warning, .number')).toBeNull();
  expect(said()).not.toMatch(/\d/);
  expect(line.getAttribute('aria-valuetext')).toBe('No number yet: move the line to its place.');
  expect(use().disabled).toBe(true);
  // What moves a line by a hair, or measures from it, waits for a place, too.
  for (const name of ['Line back a little', 'Line on a little', 'Difference'])
    expect(button(name).disabled, name).toBe(true);
  touch(100);
  expect(said()).toMatch(/^10 cm/);
  expect(use().disabled).toBe(false);
  expect(button('Difference').disabled).toBe(false);
});

test('keys that move the line to a place aim it, too', async () => {
  open();
  await choose(straight());
  fireEvent.keyDown(await screen.findByRole('slider'), { key: 'PageUp' });
  expect(document.querySelector('.told')?.textContent).toMatch(/^11 cm/);
});

test('the number goes to the field that asked, with its ±; both units are shown', async () => {
  open();
  await choose(straight({ tiltDegrees: 21.4 }));
  const line = await screen.findByRole('slider', { name: 'Line' });
  touch(100);
  expect(line.getAttribute('aria-valuetext')).toMatch(/^10 centimetres, plus or minus 0.06 cent/);
  const said = document.querySelector('.told')?.textContent ?? '';
  expect(said).toMatch(/^10 cm± 0\.06 cmfrom zero/);
  expect(said).toMatch(/3\.937 in; nearest mark 3 /);
  expect(said).toMatch(/Seen 21° from square on: hold the phone square on/);
  expect(said).toMatch(/3 mm above it/);
  expect(said).toMatch(/In the ±: 0\.1 mm from the photo, and 0\.5 mm .* class II .* III .* 1 mm/);
  fireEvent.click(use());
  expect(onUse).toHaveBeenCalledExactlyOnceWith('10 ± 0.06 cm');
});

// Largest errors of a new tape of class II: Directive 2014/32/EU, Annex X (MI-008), Table 1,
// ±(0.3 + 0.2 L) mm, L in metres rounded up: 0.5 mm up to 1 m, 0.7 up to 2 m.
test.each([
  [5, 0.5],
  [1000, 0.5],
  [1010, 0.7],
  [1490, 0.7],
])('the ± of %d mm is never below the tape’s own %d mm', async (mm, least) => {
  open({ unit: 'mm' });
  // The scale's numbers are so far on that this stands at 100 mm of it.
  await choose(straight({ scales: [scaleAt({ anchorValue: (mm - 100) / 10 })] }));
  await screen.findByRole('slider');
  touch(100);
  fireEvent.click(use());
  const [, value, within] = /^([\d.]+) ± ([\d.]+) mm$/.exec(onUse.mock.lastCall?.[0]) ?? [];
  expect(Number(value)).toBeCloseTo(mm, 6);
  expect(Number(within)).toBeGreaterThanOrEqual(least);
  expect(Number(within)).toBeLessThan(least + 0.2);
});

test('on a bench of inches it is told in inches, and typed so', async () => {
  open({ unit: 'in', decimalMark: ',' });
  await choose(straight());
  await screen.findByRole('slider');
  touch(100);
  fireEvent.click(use());
  expect(onUse).toHaveBeenCalledWith('3,937 ± 0,023 in');
});

test('keys move the line: by a tenth of a millimetre, a centimetre, to the ends', async () => {
  open();
  await choose(straight());
  const line = await screen.findByRole('slider', { name: 'Line' });
  const told = () => line.getAttribute('aria-valuetext')?.split(',')[0];
  line.focus();
  expect(document.activeElement).toBe(line);
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
  touch(100);
  fireEvent.click(button('Difference'));
  expect(screen.getAllByRole('slider')).toHaveLength(2);
  // No one has said yet where the second is to stand.
  expect(document.querySelector('.told')?.textContent).toMatch(/^Touch the tape where the second/);
  expect(use().disabled).toBe(true);
  touch(55);
  expect(document.querySelector('.told')?.textContent).toMatch(
    /^4\.5 cm± 0\.06 cmfrom line to line/,
  );
  fireEvent.keyDown(screen.getByRole('slider', { name: 'Second line' }), { key: 'PageDown' });
  fireEvent.click(use());
  expect(onUse).toHaveBeenCalledWith('5.5 ± 0.06 cm');
  fireEvent.click(button('From zero'));
  expect(screen.getAllByRole('slider')).toHaveLength(1);
});

test('a finger calls the line, then moves it finely', async () => {
  open();
  await choose(straight());
  await screen.findByRole('slider');
  const line = () => screen.getByRole('slider').getAttribute('aria-valuetext');
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
  finger('Down', 150 * PX);
  finger('Up', 150 * PX);
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

test('a picture that can’t be read is looked at closely where it is touched', async () => {
  open();
  await choose(straight({ outcome: 'cannot', reason: 'few-numbers', scales: [] }));
  await screen.findByText(/^Or touch a long line/);
  bridge.read.mockResolvedValue(straight());
  finger('Down', 700, 610);
  finger('Up', 700, 610);
  expect(await screen.findByRole('slider', { name: 'Line' })).toBeTruthy();
  expect(bridge.read.mock.lastCall?.[3]).toEqual({ x: 700, y: 610 });
});

test('what can’t be read there either is the first of two lines by hand: six presses in all', async () => {
  open();
  const refused = straight({ outcome: 'cannot', reason: 'few-numbers', scales: [] });
  await choose(refused);
  await screen.findByText(/^Or touch a long line/);
  let presses = 0;
  const touch = (x: number) => {
    presses++;
    finger('Down', x, 610);
    finger('Up', x, 610);
  };
  const press = (name: string) => {
    presses++;
    fireEvent.click(button(name));
  };
  touch(300);
  expect(await screen.findByText(/^Not read there either/)).toBeTruthy();
  await waitFor(() => expect(bridge.snap.mock.lastCall?.[0]).toEqual({ x: 300, y: 610 }));
  press('4');
  touch(900);
  press('1');
  press('0');
  bridge.touch.mockResolvedValue({ ok: true, value: straight() });
  press('Done');
  expect(await screen.findByRole('slider', { name: 'Line' })).toBeTruthy();
  expect(bridge.touch.mock.lastCall?.[0]).toMatchObject([
    { x: 300, value: 4 },
    { x: 900, value: 10 },
  ]);
  expect(presses).toBeLessThanOrEqual(6);
});

test('back from there, the refusal is said, and the photo can be touched again', async () => {
  open();
  await choose(straight({ outcome: 'cannot', reason: 'few-numbers', scales: [] }));
  await screen.findByText(/^Or touch a long line/);
  finger('Down', 300, 610);
  finger('Up', 300, 610);
  await screen.findByText(/^Not read there either/);
  fireEvent.click(button('Back'));
  expect((await screen.findByRole('alert')).textContent).toBe(cannotWords['few-numbers']);
  expect(screen.getByText(/^Or touch a long line/)).toBeTruthy();
});

test('the rows of graduations whose numbers could not be read are pointed at', async () => {
  open();
  const unread = straight().scales.map(({ geometry }) => geometry);
  await choose(straight({ outcome: 'cannot', reason: 'no-numbers', scales: [], unread }));
  await screen.findByText(/^Or touch a long line/);
  expect(document.querySelectorAll('.photo polygon')).toHaveLength(unread.length);
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

test.each(['engine-missing', 'engine-failed', 'reader-failed'] as const)(
  'what may be over by now can be tried once more with the same photo: %s',
  async (fault) => {
    open();
    await choose(Promise.reject(new TapeError(fault)));
    bridge.read.mockResolvedValue(straight());
    fireEvent.click(await screen.findByRole('button', { name: 'Try once more' }));
    await screen.findByRole('slider');
    const [[first], [second]] = bridge.read.mock.calls as [[unknown], [unknown]];
    expect(second).toBe(first);
  },
);

test('what trying again can’t mend offers no such button', async () => {
  open();
  await choose(Promise.reject(new TapeError('engine-refused')));
  await screen.findByRole('alert');
  expect(screen.queryByRole('button', { name: 'Try once more' })).toBeNull();
});

test('the focus follows from step to step: to the reading, to what takes its place, and back', async () => {
  const question = { kind: 'line', scale: 0, x: 320, y: 600, value: 4, unit: 'cm' } as const;
  const scales = [scaleAt({ sure: false, doubts: ['line'] })];
  open();
  const focused = () => document.activeElement;
  screen.getByLabelText('Choose a photo').focus();
  await choose(straight({ outcome: 'ask', question, scales }));
  const yes = await screen.findByRole('button', { name: 'Yes' });
  await waitFor(() => expect(focused()?.getAttribute('aria-label')).toBe('Reading'));
  yes.focus();
  fireEvent.click(yes);
  expect(focused()?.getAttribute('aria-label')).toBe('Reading');
  button('Touch two lines').focus();
  fireEvent.click(button('Touch two lines'));
  await screen.findByText(/^Touch a long line/);
  expect(focused()?.tagName).toBe('MAIN');
  button('Back').focus();
  fireEvent.click(button('Back'));
  expect(focused()?.getAttribute('aria-label')).toBe('Reading');
  button('Another photo').focus();
  fireEvent.click(button('Another photo'));
  expect(focused()?.tagName).toBe('MAIN');
});

test('trying once more keeps the focus on the screen', async () => {
  open();
  await choose(Promise.reject(new TapeError('engine-failed')));
  const again = await screen.findByRole('button', { name: 'Try once more' });
  bridge.read.mockReturnValue(new Promise(() => undefined));
  again.focus();
  fireEvent.click(again);
  expect(document.activeElement?.tagName).toBe('MAIN');
  button('Stop').focus();
  expect(document.activeElement).toBe(button('Stop'));
});

test('a touch that can’t be cancelled is not asked to be', async () => {
  open();
  await choose(straight());
  await screen.findByRole('slider');
  const picture = screen.getByRole('group', { name: /^The photo/ });
  for (const cancelable of [true, false]) {
    const end = new Event('touchend', { bubbles: true, cancelable });
    const cancel = vi.spyOn(end, 'preventDefault');
    picture.dispatchEvent(end);
    expect(cancel).toHaveBeenCalledTimes(cancelable ? 1 : 0);
  }
});

test('a photo frozen live is read where its cross stood, and says so where it can’t be', async () => {
  opened.outcome = { ok: true, value: { ...takePhoto(), aimed: { x: 150 * PX, y: 600 } } };
  const narrow = scaleAt({ stretches: [{ from: 10, to: 100 }] });
  open();
  await choose(straight());
  expect((await screen.findByRole('slider')).getAttribute('aria-valuetext')).toMatch(/^15 cent/);
  cleanup();
  open();
  await choose(straight({ scales: [narrow] }));
  await screen.findByRole('slider');
  expect(document.querySelector('.told .warning')?.textContent).toMatch(/Beyond the numbers/);
  expect(document.querySelector('.hair circle')?.getAttribute('cx')).toBe(`${150 * PX}`);
  expect(use().disabled).toBe(true);
});

test('a second finger does not move the line', async () => {
  open();
  await choose(straight());
  await screen.findByRole('slider');
  const line = () => screen.getByRole('slider').getAttribute('aria-valuetext');
  finger('Down', 50 * PX, 600, 1);
  finger('Down', 150 * PX, 600, 2);
  finger('Move', 160 * PX, 600, 2);
  finger('Up', 160 * PX, 600, 2);
  expect(line()).toMatch(/^5 centimetres/);
  finger('Move', 60 * PX, 600, 1);
  finger('Cancel', 60 * PX, 600, 1);
  expect(line()).toMatch(/^6 centimetres/);
});

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

/** Comes to the screen from another address, and on to the step of touching lines. */
async function toTouchFromElsewhere() {
  history.pushState(null, '', '#/elsewhere');
  history.pushState(null, '', '#/tape');
  open();
  await choose(straight());
  await screen.findByRole('slider');
  fireEvent.click(button('Touch two lines'));
  await screen.findByText(/^Touch a long line/);
}

test('the phone’s Back leads to the step before, and from the first one away', async () => {
  await toTouchFromElsewhere();
  history.back();
  expect(await screen.findByRole('slider', { name: 'Line' })).toBeTruthy();
  history.back();
  const live = await screen.findByRole('button', { name: 'Live' });
  fireEvent.click(live);
  await screen.findByText(/There is no camera this browser can use/);
  history.back();
  await screen.findByLabelText('Choose a photo');
  expect(location.hash).toBe('#/tape');
  history.back();
  await waitFor(() => expect(location.hash).toBe('#/elsewhere'));
});

test('a step left by its own button leaves none behind in the history', async () => {
  await toTouchFromElsewhere();
  await waitFor(() => expect(history.state).toEqual({ step: 2 }));
  fireEvent.click(button('Back'));
  await waitFor(() => expect(history.state).toEqual({ step: 1 }));
  fireEvent.click(button('Another photo'));
  await waitFor(() => expect(history.state).toBeNull());
  history.back();
  await waitFor(() => expect(location.hash).toBe('#/elsewhere'));
});

test('no camera is said, and the way back leads to the photos', async () => {
  open();
  fireEvent.click(button('Live'));
  expect(await screen.findByText(/There is no camera this browser can use/)).toBeTruthy();
  fireEvent.click(button('Back'));
  expect(screen.getByLabelText('Choose a photo')).toBeTruthy();
});
