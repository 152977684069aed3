import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { act } from '../../../src/garment/actions/act.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { withKeys } from '../../../src/garment/actions/with-keys.ts';
import type { Garment } from '../../../src/garment/record/record.ts';
import { GarmentHome } from '../../../src/screens/garment/home/home.tsx';
import type { HomeWay } from '../../../src/screens/garment/home/home-way.ts';
import { benchOf } from '../../controls/helpers.ts';
import { garment as cloth, work } from '../../garment/materials/garments.ts';
import { garmentOf, output, quantity, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';

/** Invented: a double hem, hooks on an edge, and a buttonhole that is cut. */
const JACKET = garmentOf({
  quantities: { edge: { name: 'Front edge', kind: 'length', rank: 1, parts: typed('11') } },
  works: {
    hem: {
      name: 'Back hem',
      calculation: 'hem',
      rank: 2,
      fields: {
        depth: typed('2'),
        style: typed('unequal'),
        turn: typed('0.7'),
        edgeStitch: typed('0.2'),
      },
    },
    hooks: {
      name: 'Hooks',
      calculation: 'closures',
      rank: 1,
      fields: {
        opening: [quantity('edge')],
        count: typed('3'),
        top: typed('1'),
        bottom: typed('1'),
        by: typed('count'),
        ends: typed('given'),
      },
    },
  },
});

const BENCH = benchOf();
let state: State;
const ways: HomeWay[] = [];

function Home({ of }: { of: Garment }) {
  const [now, set] = useState(() => begin(of, KNOWN));
  const [inHand, setInHand] = useState<string>();
  state = now;
  return (
    <GarmentHome
      {...{ state: now, inHand }}
      bench={BENCH}
      waiting={0}
      onAgain={undefined}
      said={undefined}
      missing={() => 'Front edge: give a number.'}
      drawing={null}
      onAct={(action) => set((was) => act(was, action).state)}
      onInHand={setInHand}
      onGo={(way) => ways.push(way)}
      onSpeak={() => {}}
    />
  );
}

const made = () => screen.getByRole('button', { name: 'Made' });
const key = () => screen.getByRole('region', { name: 'The next step' });

let clock = 0;
/** A finger on a key for a moment, once its words have stood long enough. */
function tap(button: HTMLElement, { after = 500, slide = 0, second = false } = {}) {
  clock += after;
  const at = { clientX: 5, clientY: 5, button: 0, pointerId: second ? 2 : 1, isPrimary: !second };
  fireEvent.pointerDown(button, at);
  fireEvent.pointerUp(button, { ...at, clientX: 5 + slide });
  fireEvent.click(button, { detail: 1 });
}

beforeEach(() => {
  clock = 1000;
  ways.length = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => clock);
  vi.spyOn(Event.prototype, 'timeStamp', 'get').mockImplementation(() => clock);
});
afterEach(() => {
  vi.restoreAllMocks();
  cleanup();
});

test('the next number stands on the key, and a press makes it', () => {
  render(<Home of={JACKET} />);
  expect(
    within(key()).getByRole('button', { name: /Back hem: press the first turn/ }),
  ).toBeTruthy();
  expect(key().textContent).toContain('0.7 cm');
  tap(made());
  expect(key().textContent).toContain('2.7 cm');
  expect(screen.getByText(/made 0.7 cm/)).toBeTruthy();
  expect(Object.keys(state.record.facts).length).toBe(1);
  fireEvent.click(screen.getByRole('button', { name: 'back one' }));
  expect(key().textContent).toContain('0.7 cm');
  expect(state.record.facts).toEqual({});
});

test('two taps within 100 ms are one fact; a slide, or a second finger, is none', () => {
  render(<Home of={JACKET} />);
  tap(made(), { slide: 30 });
  tap(made(), { second: true });
  expect(state.record.facts).toEqual({});
  tap(made());
  tap(made(), { after: 80 });
  expect(Object.keys(state.record.facts).length).toBe(1);
  tap(made());
  expect(Object.keys(state.record.facts).length).toBe(2);
});

test('it goes through the whole garment, row and all, and is never empty', () => {
  render(<Home of={JACKET} />);
  const shown: string[] = [];
  for (let i = 0; i < 6; i++) {
    shown.push(within(key()).getByRole('button', { name: /:/ }).textContent ?? '');
    tap(made());
  }
  expect(shown.map((one) => /\d[\d.]* cm/.exec(one)?.[0])).toEqual([
    '0.7 cm',
    '2.7 cm',
    '4.5 cm',
    '1 cm',
    '5.5 cm',
    '10 cm',
  ]);
  expect(key().textContent).toContain('All is made.');
  expect(screen.getByText('4 of 4 made')).toBeTruthy();
  expect(screen.getByText(/2 works done/)).toBeTruthy();
});

test('what was measured otherwise in a row asks how to go on, and the key leads there', () => {
  render(<Home of={JACKET} />);
  for (let i = 0; i < 3; i++) tap(made());
  fireEvent.click(within(key()).getByRole('button', { name: /Hooks/ }));
  fireEvent.click(screen.getByRole('button', { name: 'Made elsewhere' }));
  for (const digit of ['1', 'decimal mark', '4']) {
    fireEvent.pointerDown(screen.getByRole('button', { name: digit }), { button: 0 });
  }
  fireEvent.click(screen.getByRole('button', { name: 'Keep this measure' }));
  expect(key().textContent).toContain('Made otherwise than asked: Hooks');
  tap(screen.getByRole('button', { name: 'See the ways' }));
  expect(ways).toEqual([{ to: 'decide', home: 'hooks||marks' }]);
});

test('what is passed over is come back to', () => {
  render(<Home of={JACKET} />);
  fireEvent.click(within(key()).getByRole('button', { name: /Back hem/ }));
  fireEvent.click(screen.getByRole('button', { name: 'Pass over' }));
  expect(key().textContent).toContain('2.7 cm');
  for (let i = 0; i < 5; i++) tap(made());
  expect(key().textContent).toContain('0.7 cm');
});

test('it is passed over in the record: said at its line, and taken up again there', () => {
  render(<Home of={JACKET} />);
  fireEvent.click(within(key()).getByRole('button', { name: /Back hem/ }));
  fireEvent.click(screen.getByRole('button', { name: 'Pass over' }));
  expect(screen.getByRole('button', { name: /^Back hem ?passed over/ })).toBeTruthy();
  cleanup();
  render(<Home of={state.record} />);
  expect(key().textContent).toContain('2.7 cm');
  fireEvent.click(screen.getByRole('button', { name: /^Take it up again: Back hem: press/ }));
  expect(key().textContent).toContain('0.7 cm');
  expect(screen.queryByText('passed over')).toBeNull();
});

test('a work that lacks one of its numbers says so, beside the number it still has', () => {
  const older = 2;
  const front = (finish: string) => {
    const side = {
      ...{ name: 'Side seam', calculation: 'seam', rank: 1, older },
      fields: { finish: typed(finish) },
    };
    const piece = {
      ...{ name: 'Front', calculation: 'piece', rank: 2, older },
      fields: { width: typed('30'), length: typed('50'), side: [output('side', 'lower')] },
    };
    return withKeys(garmentOf({ works: { side, piece } }), KNOWN);
  };
  const line = () =>
    [...document.querySelectorAll('.works button')]
      .map(({ textContent }) => textContent)
      .find((said) => said?.includes('Front'));
  render(<Home of={front('felled')} />);
  expect(line()).toMatch(/cm$/);
  cleanup();
  render(<Home of={front('plain')} />);
  expect(line()).toMatch(/5\d(\.\d)? cm.*waits for a number/);
});

test('what is left to make was passed over, and the key says so', () => {
  render(<Home of={JACKET} />);
  fireEvent.click(within(key()).getByRole('button', { name: /Back hem/ }));
  fireEvent.click(screen.getByRole('button', { name: 'Pass over' }));
  for (let i = 0; i < 5; i++) tap(made());
  expect(key().textContent).toContain('passed over');
  tap(made());
  expect(key().textContent).toContain('All is made.');
});

test('a step is said to be made before the app knew, and taken back', () => {
  render(<Home of={JACKET} />);
  fireEvent.click(within(key()).getByRole('button', { name: /Back hem/ }));
  fireEvent.click(screen.getByRole('button', { name: 'Made before the app knew' }));
  expect(key().textContent).toContain('2.7 cm');
  expect(screen.getByText('1 of 4 made')).toBeTruthy();
  expect(screen.getByText(/made before the app knew/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'back one' }));
  expect(key().textContent).toContain('0.7 cm');
});

test('back one takes the last press back whatever was changed since, and goes on to the one before', () => {
  render(<Home of={JACKET} />);
  tap(made());
  tap(made());
  fireEvent.click(within(key()).getByRole('button', { name: /Back hem/ }));
  fireEvent.click(screen.getByRole('button', { name: 'Pass over' }));
  fireEvent.click(screen.getByRole('button', { name: 'back one' }));
  expect(screen.getByText(/made 0.7 cm/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'back one' }));
  expect(state.record.facts).toEqual({});
});

const CUFFS = garmentOf({
  works: {
    cuffs: {
      ...{ name: 'Cuffs', calculation: 'toy-piece', rank: 1, sides: ['left', 'right'] },
      fields: { length: typed('24'), bottom: typed('1'), width: typed('9') },
    },
  },
});

test('left and right that are cut together are checked once, and made with one press', () => {
  render(<Home of={CUFFS} />);
  const first = within(key()).getByRole('button', { name: /Cuffs, left/ });
  fireEvent.click(first);
  fireEvent.click(screen.getByRole('button', { name: 'Made together: left and right' }));
  expect(key().textContent).toContain('Cuffs, left and right');
  tap(screen.getByRole('button', { name: 'Check' }));
  tap(made());
  expect(Object.keys(state.record.facts).length).toBe(2);
  fireEvent.click(screen.getByRole('button', { name: 'back one' }));
  expect(state.record.facts).toEqual({});
});

test('what was checked of the left isn’t asked again of the right', () => {
  const work = { ...(CUFFS.works.cuffs as object), sides: ['left', 'right'] };
  render(<Home of={{ ...CUFFS, works: { cuffs: work } }} />);
  tap(screen.getByRole('button', { name: 'Check' }));
  tap(made());
  const left = Object.keys(state.record.facts).length;
  while (!key().textContent?.includes('right')) {
    tap(screen.queryByRole('button', { name: 'Check' }) ?? made());
  }
  expect(screen.queryByRole('alert')).toBeNull();
  tap(made());
  expect(Object.keys(state.record.facts).length).toBeGreaterThan(left);
});

test('a quantity that is missing can be typed, or read off a tape', () => {
  const { edge } = JACKET.quantities as { edge: object };
  const works = { hooks: (JACKET.works as { hooks: object }).hooks };
  render(<Home of={{ ...JACKET, works, quantities: { edge: { ...edge, parts: typed('') } } }} />);
  tap(screen.getByRole('button', { name: 'Read it' }));
  tap(screen.getByRole('button', { name: 'Type it' }));
  expect(ways).toEqual([
    { to: 'missing', step: 'hooks||marks', read: true },
    { to: 'missing', step: 'hooks||marks' },
  ]);
});

test('a line says a number that no tape makes as exactly as its page does', () => {
  const stitch = {
    ...{ name: 'Topstitching', calculation: 'sizes', rank: 1 },
    fields: { what: typed('stitch'), stitchBy: typed('mm'), stitch: typed('2.5') },
  };
  render(<Home of={{ ...JACKET, works: { stitch } }} />);
  expect(screen.getByRole('button', { name: /^Topstitching ?0\.25 cm$/ })).toBeTruthy();
});

test('what must be decided before the next cut is listed while that is further on', () => {
  const hem = (JACKET.works as { hem: object }).hem;
  const strip = { ...(STRIP.strip as object), rank: 9 };
  render(<Home of={{ ...JACKET, works: { hem, strip } }} />);
  // The strip is cut, hems are pressed, then it is punched.
  expect(screen.queryByRole('button', { name: /^Before the next cut/ })).toBeNull();
  while (!key().textContent?.includes('press the first turn')) {
    tap(screen.queryByRole('button', { name: 'Check' }) ?? made());
  }
  fireEvent.click(screen.getByRole('button', { name: /^Before the next cut \(Armhole strip\)/ }));
  expect(screen.getByText('Front edge')).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'These numbers are final' }));
  expect(state.record.quantities.edge).toMatchObject({ final: true });
});

test('several of a row are said to be made at once, in one press', () => {
  render(<Home of={JACKET} />);
  for (let i = 0; i < 3; i++) tap(made());
  fireEvent.click(within(key()).getByRole('button', { name: /Hooks/ }));
  fireEvent.click(screen.getByRole('button', { name: 'Made up to here' }));
  fireEvent.click(screen.getByRole('button', { name: /^2 · 5.5 cm/ }));
  expect(key().textContent).toContain('10 cm');
  fireEvent.click(screen.getByRole('button', { name: 'back one' }));
  expect(key().textContent).toContain('1 cm');
});

test('a missing number is named on the key, which leads to it', () => {
  const { edge } = JACKET.quantities as { edge: object };
  const works = { hooks: (JACKET.works as { hooks: object }).hooks };
  render(<Home of={{ ...JACKET, works, quantities: { edge: { ...edge, parts: typed('') } } }} />);
  expect(key().textContent).toContain('Front edge: give a number.');
  tap(screen.getByRole('button', { name: 'Type it' }));
  expect(ways).toEqual([{ to: 'missing', step: 'hooks||marks' }]);
});

const STRIP = {
  strip: {
    name: 'Armhole strip',
    calculation: 'edging',
    rank: 1,
    fields: {
      ...{ length: [quantity('edge')], pitch: typed('8', 'mm'), rows: typed('one') },
      ...{ fit: typed('fill'), width: typed('2'), margin: typed('0.5'), hole: typed('0.2') },
    },
  },
};

test('before a cut it shows what to check, and the second press makes', () => {
  render(<Home of={{ ...JACKET, works: STRIP }} />);
  const cut = state.answer.steps.find(({ step }) => !step.undoable);
  expect(cut?.ready).toBe(true);
  tap(screen.getByRole('button', { name: 'Check' }));
  expect(screen.getByRole('alert').textContent).toContain('Front edge');
  expect(state.record.facts).toEqual({});
  tap(made());
  expect(Object.keys(state.record.facts).length).toBe(1);
});

test('a row that was checked is gone on with after a reload; a number it uses that changed is checked', () => {
  render(<Home of={{ ...JACKET, works: STRIP }} />);
  const isPunching = () => key().textContent?.includes('punch');
  while (!isPunching() || !key().textContent?.includes('2 of ')) {
    tap(screen.queryByRole('button', { name: 'Check' }) ?? made());
  }
  cleanup();
  render(<Home of={state.record} />);
  expect(isPunching()).toBe(true);
  expect(made()).toBeTruthy();
  cleanup();
  const { edge } = state.record.quantities as { edge: object };
  const longer = { edge: { ...edge, parts: typed('11.01') } };
  render(<Home of={{ ...state.record, quantities: longer }} />);
  expect(screen.queryByRole('button', { name: 'Made' })).toBeNull();
});

test('from where is said of marks, and of a number that has a place to be measured from', () => {
  render(<Home of={{ ...JACKET, works: STRIP }} />);
  expect(key().textContent).toMatch(/cut the strip to length ?11 cm/);
});

test('focus begins on the name, stays on Made, and only the key that has it is pressed by Enter', () => {
  render(<Home of={JACKET} />);
  const heading = screen.getByRole('heading', { name: 'Waistcoat (invented)' });
  expect(document.activeElement).toBe(heading);
  for (const key of ['Enter', ' ']) fireEvent.keyDown(heading, { key });
  expect(state.record.facts).toEqual({});
  made().focus();
  clock += 500;
  // What a browser sends for Enter, Space and a screen reader: a click that no pointer made.
  fireEvent.click(made(), { detail: 0 });
  expect(Object.keys(state.record.facts).length).toBe(1);
  expect(document.activeElement).toBe(made());
});

test('one polite line says what is next, and nothing else speaks', () => {
  const { container } = render(<Home of={JACKET} />);
  const lines = () => [...container.querySelectorAll('[aria-live], [role=status], [role=alert]')];
  const said = () => lines().map((line) => [line.getAttribute('aria-live'), line.textContent]);
  expect(said()).toEqual([['polite', 'Back hem: press the first turn, from the raw edge 0.7 cm']]);
  tap(made());
  expect(said()).toEqual([['polite', 'Back hem: press the hem line, from the raw edge 2.7 cm']]);
});

test('where what had the focus has gone, it is at the name again', () => {
  render(<Home of={JACKET} />);
  const heading = document.activeElement;
  tap(made());
  const back = screen.getByRole('button', { name: 'back one' });
  back.focus();
  fireEvent.click(back);
  expect(document.activeElement).toBe(heading);
  fireEvent.click(within(key()).getByRole('button', { name: /Back hem/ }));
  fireEvent.click(screen.getByRole('button', { name: 'Made otherwise' }));
  expect(screen.getByRole('heading', { name: /press the first turn/ })).toBeTruthy();
  // Of a row a place is asked for; of what stands alone, a measure.
  expect(screen.getByLabelText(/^Back hem: what it really measures/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Leave it' }));
  expect(document.activeElement).toBe(
    screen.getByRole('heading', { name: 'Waistcoat (invented)' }),
  );
});

test('what is cut stands on the key rounded up, as on its page, is made so, and said so', () => {
  const square = { angle: typed('90'), shrinksAcross: typed('0'), shrinksAlong: typed('0') };
  const sizes = { width: typed('40.05'), length: typed('60'), count: typed('1') };
  const fields = { ...square, ...sizes, fold: typed('side') };
  const panel = { name: 'Panel', calculation: 'piece', rank: 1, fields };
  render(<Home of={garmentOf({ works: { panel } })} />);
  // Half of 40.05 is 20.025.
  expect(key().textContent).toContain('20.1 cm');
  expect(key().textContent).toContain('then 60 cm');
  tap(screen.getByRole('button', { name: 'Check' }));
  tap(made());
  expect(screen.getByText(/made 20.1 cm/)).toBeTruthy();
  expect(state.answer.conflicts).toEqual([]);
});

test('the key says how many pieces are cut with one step, and of both sides at once all of them', () => {
  const cuff = (count: number) =>
    cloth({
      cuff: work('piece', `width=24&length=8&top=1&bottom=1&side=1&count=${count}`, {
        ...{ name: 'Cuff', sides: ['left', 'right'] },
      }),
    }).record;
  render(<Home of={cuff(2)} />);
  expect(key().textContent).toMatch(/Cuff, left: cut the piece to its width, .* · 2 pieces/);
  fireEvent.click(key().querySelector('.says') as HTMLElement);
  fireEvent.click(screen.getByRole('button', { name: 'Made together: left and right' }));
  expect(key().textContent).toMatch(/Cuff, left and right: cut the piece .* · 4 pieces/);
  cleanup();
  render(<Home of={cuff(1)} />);
  expect(key().textContent).toMatch(/cut the piece to its width/);
  expect(key().textContent).not.toMatch(/pieces/);
});
