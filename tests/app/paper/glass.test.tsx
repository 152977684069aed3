import { act, cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { glassWords } from '#words/paper/glass-words.ts';
import { checkScale } from '../../../src/app/paper/glass-place.tsx';
import { App } from '../../../src/app/start/app.tsx';
import { readRoute } from '../../../src/app/start/route.ts';
import { type Store, StoreError } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';

const kept = new Map<string, unknown>();
const store: Store = {
  load: async (key) => kept.get(key),
  transact: async () => Promise.reject(new StoreError('refused')),
  change: async (key, by) => void kept.set(key, by(kept.get(key))),
};

/** Height of what shows true sizes: there is no layout here. */
let high = 0;

beforeEach(() => {
  kept.clear();
  high = 700;
  vi.stubGlobal('screen', { width: 390, height: 844 });
  vi.spyOn(HTMLElement.prototype, 'clientHeight', 'get').mockImplementation(() => high);
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

function start(hash: string, with_: Store = store) {
  history.replaceState(null, '', hash);
  return render(<App store={with_} bench={benchOf()} last={{}} storeFault={undefined} />);
}

const press = async (name: string | RegExp) =>
  fireEvent.click(await screen.findByRole('button', { name }));

/** Moves the line by whole pixels, as thumbs would: twenty at a time, then one. */
async function move(px: number) {
  for (let left = Math.abs(px); left > 0; left -= left >= 20 ? 20 : 1) {
    const by = left >= 20 ? 20 : 1;
    await press(px < 0 ? glassWords.card.by(-by) : glassWords.card.by(by));
  }
}

const STRIP = '#/edging/glass?length=40&pitch=0.8';
const SCALE = {
  pxPerMm: 6,
  devicePixelRatio: 1,
  longer: 844,
  shorter: 390,
  checked: '2026-01-02T03:04:05.000Z',
};

/** From where the line begins to where a card lies on a screen of six pixels to a millimetre. */
const LONG_FIRST = Math.round(85.6 * 6) - Math.round(85.6 * 4.5);
const SHORT_FIRST = Math.round(53.98 * 6) - Math.round(53.98 * 4.5);
const SHORT_SECOND = Math.round(53.98 * 6) - Math.round(53.98 * 3.5);

test('nothing is shown before the screen was measured twice; then it is, and stays so', async () => {
  start(STRIP);
  expect(await screen.findByText(/Nothing is shown at true size/)).toBeTruthy();
  expect(screen.queryByText(/^Stretch/)).toBeNull();
  await move(LONG_FIRST);
  await press('It matches');
  expect(screen.getByText(/turn the card/)).toBeTruthy();
  await move(SHORT_SECOND);
  await press('It matches');
  expect(await screen.findByText(/^Stretch 1 of/)).toBeTruthy();
  const record = kept.get('glass') as typeof SCALE;
  expect(record.pxPerMm).toBeCloseTo(6, 1);
  expect(record).toMatchObject({ devicePixelRatio: 1, longer: 844, shorter: 390 });
  expect(record.checked).toMatch(/^\d{4}-\d\d-\d\dT/);
  cleanup();
  start(STRIP);
  expect(await screen.findByText(/^Stretch 1 of/)).toBeTruthy();
});

test('measured anew it is another; left again it is as it was', async () => {
  kept.set('glass', SCALE);
  start(STRIP);
  await press('Measure anew');
  expect(screen.getByText(/Nothing is shown at true size/)).toBeTruthy();
  await press('Leave it as it was');
  expect(screen.getByText(/^Stretch 1 of/)).toBeTruthy();
  expect(kept.get('glass')).toBe(SCALE);
  await press('Measure anew');
  await move(LONG_FIRST + 40);
  await press('It matches');
  await move(SHORT_SECOND + 25);
  await press('It matches');
  expect(await screen.findByText(/^Stretch 1 of/)).toBeTruthy();
  expect((kept.get('glass') as typeof SCALE).pxPerMm).toBeCloseTo(6.47, 1);
});

test('two measurements that don’t agree are refused, and begun again', async () => {
  start(STRIP);
  await move(LONG_FIRST);
  await press('It matches');
  await move(SHORT_SECOND + 12);
  await press('It matches');
  expect((await screen.findByRole('alert')).textContent).toMatch(/differ by 3\.\d %/);
  expect(screen.getByText(/its long side up and down/)).toBeTruthy();
  expect(kept.get('glass')).toBeUndefined();
});

test('a line that was not moved was not measured', async () => {
  start(STRIP);
  await press('It matches');
  expect((await screen.findByRole('alert')).textContent).toBe(glassWords.card.unmoved);
  await move(LONG_FIRST);
  await press('It matches');
  expect(screen.queryByRole('alert')).toBeNull();
  await press('It matches');
  expect(screen.getByRole('alert').textContent).toBe(glassWords.card.unmoved);
  expect(kept.get('glass')).toBeUndefined();
});

test.each([
  ['the screen is short', 500],
  ['the maker says so', 700],
])('where %s the card’s short side serves, from both ends', async (_, height) => {
  high = height;
  start(STRIP);
  await screen.findByRole('heading');
  if (height > 600) await press('Card too long');
  expect(screen.getByText(/its short side up and down/)).toBeTruthy();
  expect(screen.queryByRole('button', { name: 'Card too long' })).toBeNull();
  await move(SHORT_FIRST);
  await press('It matches');
  expect(screen.getByText(/the lower edge of the card on the lower line/)).toBeTruthy();
  await move(SHORT_SECOND);
  await press('It matches');
  expect(await screen.findByText(/^Stretch 1 of/)).toBeTruthy();
  expect((kept.get('glass') as typeof SCALE).pxPerMm).toBeCloseTo(6, 1);
});

test('a run longer than the screen is stepped through, and a reload comes back to the stretch', async () => {
  kept.set('glass', SCALE);
  start(STRIP);
  expect(await screen.findByText(/Lay the phone on the work/)).toBeTruthy();
  expect(screen.getByText('0, from the cut end')).toBeTruthy();
  expect(screen.getByText(/Check one distance with the tape/)).toBeTruthy();
  await press('Next stretch');
  const said = screen.getByText(/the top line lies on mark \d+, which you made/).textContent;
  // Where it begins, in mm: holes lie at 4, 12, 20 … mm.
  const mark = Number(/mark (\d+)/.exec(said ?? '')?.[1]);
  const begins = String(4 + 8 * (mark - 1));
  await waitFor(() => expect(readRoute(location.hash).draft.stretch).toBe(begins));
  cleanup();
  start(location.hash);
  expect((await screen.findByText(/the top line lies on mark/)).textContent).toBe(said);
  await press('Back one');
  expect(screen.getByText(/Lay the phone on the work/)).toBeTruthy();
});

test('turned on its side the screen shows the place it showed, and turned back the same stretch', async () => {
  kept.set('glass', SCALE);
  start(STRIP);
  await press('Next stretch');
  await press('Next stretch');
  const upright = screen.getByText(/the top line lies on mark/).textContent ?? '';
  const markOf = (said: string) => Number(/mark (\d+)/.exec(said)?.[1]);
  await waitFor(() => expect(Number(readRoute(location.hash).draft.stretch)).toBeGreaterThan(100));
  cleanup();
  high = 330;
  start(location.hash);
  const { textContent } = await screen.findByText(/the top line lies on mark/);
  // It begins at that mark or less than the shorter glass of 47 mm before it.
  expect(markOf(textContent ?? '')).toBeLessThanOrEqual(markOf(upright));
  expect(markOf(textContent ?? '')).toBeGreaterThan(markOf(upright) - 47 / 8);
  cleanup();
  high = 700;
  start(location.hash);
  expect((await screen.findByText(/the top line lies on mark/)).textContent).toBe(upright);
});

test('every mark is named on some stretch, and the last one shows the end', async () => {
  kept.set('glass', SCALE);
  const { container } = start(STRIP);
  const named = new Set<string>();
  const note = () => {
    for (const one of container.querySelectorAll('.of-mark')) named.add(one.textContent ?? '');
  };
  const text = (await screen.findByText(/^Stretch 1 of/)).textContent ?? '';
  const count = Number(/of (\d+)/.exec(text)?.[1]);
  // 400 mm on (700 − 24 − 20) / 6 mm of glass at a time.
  expect(count).toBe(4);
  for (let i = 1; i < count; i++) {
    note();
    await press('Next stretch');
  }
  note();
  expect(screen.getByText('40 cm, end')).toBeTruthy();
  const next = screen.getByRole<HTMLButtonElement>('button', { name: 'Next stretch' });
  expect(next.disabled).toBe(true);
  // Holes at 4, 12 … 396 mm.
  expect(named.size).toBe(50);
});

test.each([384, 391, 398, 405, 700])(
  'on glass %d px high every number stands right under its own line',
  async (height) => {
    high = height;
    kept.set('glass', { ...SCALE, pxPerMm: 6.3 });
    for (const pitch of ['0.4', '0.45', '0.55', '0.6', '0.65', '0.8', '0.95']) {
      const { container } = start(`#/edging/glass?length=40&pitch=${pitch}&u=cm`);
      await screen.findByText(/^Stretch 1 of/);
      const lines = [...container.querySelectorAll('.ruled .mark')];
      const spans = [...container.querySelectorAll<HTMLElement>('.ruled .of-mark')];
      for (const span of spans) {
        const top = Number.parseFloat(span.style.top);
        // All lines over it, its own the lowest of them: it is named by how many there are.
        const over = lines.filter((line) => Number(line.getAttribute('y1')) < top);
        expect(span.textContent, `${pitch} cm`).toBe(String(over.length));
        // And all of it is on the glass: 14 px high letters, as long as nothing is laid out.
        expect(top + 14 * 1.25).toBeLessThanOrEqual(height);
      }
      expect(spans.at(-1)?.textContent).toBe(String(lines.length));
      cleanup();
    }
  },
);

test('where no mark is near the end of the glass, an overlap mark is told to be made', async () => {
  kept.set('glass', SCALE);
  // Two hooks half a metre apart.
  start('#/closures/glass?opening=50&count=2&top=0&bottom=0');
  expect(await screen.findByText(/Make the overlap mark further on too/)).toBeTruthy();
  // 656 px at 6 to a millimetre are 109.3 mm; 10 mm before that, on a whole millimetre.
  expect(screen.getByText('9.9 cm, overlap')).toBeTruthy();
  await press('Next stretch');
  expect(screen.getByText(/top line lies on the overlap mark at 9\.9 cm/)).toBeTruthy();
});

test('another row is one press away, from its beginning', async () => {
  kept.set('glass', SCALE);
  start('#/edging/glass?length=40&pitch=0.8&rows=level');
  await press('Next stretch');
  const others = (await screen.findAllByRole('button')).map((one) => one.textContent);
  const other = others.find((one) => /row/i.test(one ?? ''))!;
  await press(other);
  expect(await screen.findByText(/^Stretch 1 of/)).toBeTruthy();
  expect(screen.getByRole('heading').textContent).toContain(other);
  await waitFor(() => expect(readRoute(location.hash).draft).toMatchObject({ run: '1' }));
});

test('a screen whose pixels have changed is measured anew', async () => {
  kept.set('glass', { ...SCALE, devicePixelRatio: 2 });
  start(STRIP);
  expect((await screen.findByRole('alert')).textContent).toBe(glassWords.changed);
});

test.each([
  ['as many device pixels to one', { width: 384, height: 832 }],
  ['the same length', { width: 412, height: 844 }],
])('another screen of %s is measured anew; this one turned is not', async (_, other) => {
  kept.set('glass', SCALE);
  vi.stubGlobal('screen', other);
  start(STRIP);
  expect((await screen.findByRole('alert')).textContent).toBe(glassWords.changed);
  cleanup();
  vi.stubGlobal('screen', { width: 844, height: 390 });
  start(STRIP);
  expect(await screen.findByText(/^Stretch 1 of/)).toBeTruthy();
});

test('a scale kept before screens were told apart is asked for anew', async () => {
  const { longer: _, shorter: __, ...old } = SCALE;
  kept.set('glass', old);
  start(STRIP);
  expect(await screen.findByText(glassWords.card.why)).toBeTruthy();
});

test('a page that is pinched larger shows nothing, and nothing is measured on it', async () => {
  const viewport = Object.assign(new EventTarget(), { scale: 1 });
  vi.stubGlobal('visualViewport', viewport);
  kept.set('glass', SCALE);
  start(STRIP);
  await screen.findByText(/^Stretch 1 of/);
  const pinch = (scale: number) =>
    act(() => {
      viewport.scale = scale;
      viewport.dispatchEvent(new Event('resize'));
    });
  await pinch(1.4);
  expect(screen.getByRole('alert').textContent).toBe(glassWords.zoomed);
  await pinch(1);
  await press('Measure anew');
  await pinch(0.9);
  expect(screen.getByRole('alert').textContent).toBe(glassWords.zoomed);
});

test('no answer has nothing to show, and a stretch that is not there is the nearest', async () => {
  kept.set('glass', SCALE);
  start('#/edging/glass?length=40&pitch=0');
  expect((await screen.findByRole('alert')).textContent).toBe(glassWords.nothing);
  cleanup();
  start(`${STRIP}&stretch=9999`);
  expect(await screen.findByText(/^Stretch (\d+) of \1\./)).toBeTruthy();
  for (const nonsense of ['-3', 'x', '1e400', '0.5']) {
    cleanup();
    start(`${STRIP}&stretch=${nonsense}`);
    expect(await screen.findByText(/^Stretch \d+ of \d+\./)).toBeTruthy();
  }
});

test('an answer without marks is not called no answer', async () => {
  kept.set('glass', SCALE);
  start('#/sizes/glass');
  expect((await screen.findByRole('alert')).textContent).toBe(glassWords.noMarks);
});

test('where a card finds no room at all, that is said before anything is measured', async () => {
  high = 380;
  start(STRIP);
  expect(await screen.findByText(glassWords.card.noRoom)).toBeTruthy();
  cleanup();
  high = 430;
  start(STRIP);
  await screen.findByText(/its short side up and down/);
  expect(screen.queryByText(glassWords.card.noRoom)).toBeNull();
});

test.each([
  ['no room for its short side', 360, 300],
  ['just too little for it on this screen', 400, 300],
])('a line at its stop measured no card: %s', async (_, height, by) => {
  high = height;
  start(STRIP);
  await screen.findByRole('heading');
  for (let i = 0; i < 2; i++) {
    await move(by);
    await press('It matches');
    expect(screen.getByRole('alert').textContent).toBe(glassWords.card.noRoom);
  }
  expect(screen.getAllByText(glassWords.card.noRoom)).toHaveLength(1);
  expect(screen.getByText(/its short side up and down/)).toBeTruthy();
  expect(kept.get('glass')).toBeUndefined();
  // Back from the stop it can be measured, where the card is small enough on this screen.
  await move(-60);
  await press('It matches');
  expect(screen.getByText(/lower down/)).toBeTruthy();
});

test('a line at its stop is no long side of a card either; the short one is offered', async () => {
  start(STRIP);
  await move(300);
  await press('It matches');
  expect((await screen.findByRole('alert')).textContent).toBe(glassWords.card.atStop);
  expect(screen.getByText(/its long side up and down/)).toBeTruthy();
  await press('Card too long');
  expect(screen.getByText(/its short side up and down/)).toBeTruthy();
});

test('a screen too short for anything says so', async () => {
  high = 150;
  kept.set('glass', SCALE);
  start(STRIP);
  expect((await screen.findByRole('alert')).textContent).toBe(glassWords.small);
});

test('storage that refuses is said, and the scale holds as long as the page', async () => {
  const refusing: Store = {
    ...store,
    change: async () => Promise.reject(new StoreError('refused')),
  };
  start(STRIP, refusing);
  await move(LONG_FIRST);
  await press('It matches');
  await move(SHORT_SECOND);
  await press('It matches');
  expect(await screen.findByText(new RegExp(glassWords.notKept))).toBeTruthy();
  expect(screen.getByText(/Stretch 1 of/)).toBeTruthy();
});

test('what was kept is looked at before it is believed', () => {
  expect(checkScale(SCALE)).toEqual({
    pxPerMm: 6,
    devicePixelRatio: 1,
    longer: 844,
    shorter: 390,
  });
  const others = [
    { pxPerMm: '6' },
    { pxPerMm: Number.NaN },
    { pxPerMm: 1e9 },
    { devicePixelRatio: 0 },
    { devicePixelRatio: Number.POSITIVE_INFINITY },
    { longer: undefined },
    { longer: 300 },
    { shorter: '390' },
    { shorter: 0 },
    { checked: undefined },
    { checked: 'lately' },
  ].map((wrong) => ({ ...SCALE, ...wrong }));
  for (const nonsense of [undefined, null, 6, 'x', {}, ...others]) {
    expect(checkScale(nonsense)).toBeUndefined();
  }
});
