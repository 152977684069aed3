import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test } from 'vitest';
import { OutlinesPlace } from '../../../src/app/garment/outlines-place.tsx';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import type { State } from '../../../src/garment/actions/state.ts';
import { layIn, saidOfPiece } from '../../../src/garment/record/cloth-lay.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import type { PieceSaid } from '../../../src/garment/record/piece-said.ts';
import { benchOf } from '../../controls/helpers.ts';
import { doing, garment, one, work } from '../../garment/materials/garments.ts';

afterEach(cleanup);

/** Cut 43 × 65.5. */
const front = work('piece', 'width=40&length=60&top=1.5&bottom=4&side=1.5&count=2', {
  name: 'Front',
});
/** Half of it, 20 + 1.5, is cut on the fold. */
const back = work('piece', 'width=40&length=60&top=1.5&bottom=4&side=1.5&fold=side&count=1', {
  name: 'Back',
});
const cloth = { width: 80_000 * 140 };
const FRONT = homeOf('front', '', 'count');
const CM = 80_000;

function show(first: State) {
  let latest = first;
  let again: () => void = () => undefined;
  const onAct = (action: Action) => {
    latest = act(latest, action).state;
    again();
  };
  const bench = benchOf();
  function Place() {
    const [, look] = useState({});
    again = () => look({});
    const telling = { answer: latest.answer, bench };
    const lay = layIn(latest.record, 'cloth');
    const given = {
      telling,
      lay,
      said: undefined,
      onAgain: undefined,
      act: onAct,
      onBack: () => undefined,
    };
    return <OutlinesPlace {...given} one={one(latest, 'cloth')} />;
  }
  render(<Place />);
  return { said: (need = FRONT) => saidOfPiece(layIn(latest.record, 'cloth'), need) };
}

const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));
const text = () => document.body.textContent ?? '';
const says = (what: RegExp) => waitFor(() => expect(text()).toMatch(what));
async function open(name: RegExp) {
  press(name);
  await says(/May be turned end for end/);
}
async function type(value: string, then = 'Keep it') {
  fireEvent.input(await screen.findByRole('textbox'), { target: { value } });
  press(then);
}
async function entered(deed: RegExp, value: string) {
  press(deed);
  await type(value);
}
const corners = () => document.querySelector('polygon')?.getAttribute('points')?.split(' ').length;

test('tapered and curved: begun as it is cut, each size and bow typed, drawn, and what differs said', async () => {
  const { said } = show(garment({ front }, { cloth }));
  expect(text()).toMatch(/Front.*laid as the garment cuts it, 43 cm wide, 65.5 cm long/);
  await open(/^Front/);
  press(/^Tapered, or with curved sides/);
  const form = { kind: 'four', long: 65.5 * CM, top: 43 * CM, bottom: 43 * CM, slant: 'both' };
  expect(said().outline).toEqual({ form });
  await waitFor(() => expect(corners()).toBe(4));
  expect(text()).not.toMatch(/differs/);
  await entered(/^Width at the top/, '30');
  await entered(/^Length/, '66');
  await says(/43 cm wide, 66 cm long/);
  expect(text()).toMatch(/own size differs: this is 0.5 cm longer/);
  await entered(/^Bottom: straight/, '2');
  await says(/Bottom: bows out 2 cm/);
  press(/^Left side: straight/);
  await screen.findByRole('textbox');
  press('Inwards');
  await type('3');
  await says(/Left side: bows in 3 cm/);
  expect(said().outline?.form.bows).toEqual([-3 * CM, 2 * CM, 0, 0]);
  press(/^Only the right side slants/);
  expect(said().outline?.form).toMatchObject({ slant: 'right' });
  await waitFor(() => expect(corners()).toBeGreaterThan(8));
  press(/^Bottom: bows/);
  await type('40');
  expect(text()).toMatch(/No more than half of the side’s length/);
  press('Straight');
  await says(/Bottom: straight/);
  press(/^Lay it as the garment cuts it/);
  expect(said()).toEqual({});
});

test('what its edges take is cut outside it, or the same all round; else it is the line that is cut', async () => {
  const { said } = show(garment({ front }, { cloth }));
  await open(/^Front/);
  press(/^Tapered/);
  press(/^Cut outside it what its edges take.*left 1.5 cm, bottom 4 cm, right 1.5 cm, top 1.5 cm/);
  expect(said().outline?.adds).toBe('edges');
  // 43 + 3 across, 65.5 + 5.5 along.
  await says(/46 cm wide, 71 cm long/);
  expect(document.querySelector('.sewn')).not.toBeNull();
  await entered(/^Cut the same outside it all round/, '1');
  await says(/45 cm wide, 67.5 cm long/);
  press(/^This is the line that is cut/);
  await says(/43 cm wide, 65.5 cm long/);
  expect(said().outline).not.toHaveProperty('adds');
});

test('point by point, in turn: too few, along a line, crossing itself; each said with what to do', async () => {
  const { said } = show(garment({ front }, { cloth }));
  await open(/^Front/);
  press(/^Point by point/);
  await says(/One point is no outline yet: add points until there are 3/);
  press('Add a point');
  const points = [
    ['60', '0'],
    ['0', '40'],
    ['60', '40'],
  ];
  for (const [down, across] of points) {
    await type(down!, 'Next');
    await type(across!);
  }
  press('Leave it');
  expect(said().outline?.form).toMatchObject({ points: [[0, 0], [60 * CM, 0], [0, 40 * CM], {}] });
  await says(
    /point 2 on and the side from point 4 on meet where they shouldn’t, 30 cm down and 20/,
  );
  press(/^Point 4/);
  await screen.findByRole('textbox');
  press('Take it out');
  await waitFor(() => expect(corners()).toBe(3));
  expect(text()).toMatch(/40 cm wide, 60 cm long/);
  press(/^Turn it a quarter/);
  await says(/60 cm wide, 40 cm long/);
  press(/^Point 3/);
  await type('0', 'Next');
  await type('30');
  await says(/Its corners lie along one line/);
});

test('one way, off the grain, a pair, the place that falls on the pattern', async () => {
  const { said } = show(garment({ front, back }, { cloth }));
  await open(/^Front/);
  press(/^May be turned end for end/);
  press(/^Left and right/);
  await entered(/^May lie off the grain/, '3');
  press(/^Place that falls on the pattern/);
  await type('10', 'Next');
  await type('0');
  const all: PieceSaid = { oneWay: true, pair: true, tilt: 3, match: [10 * CM, 0] };
  expect(said()).toEqual(all);
  press(/^May lie off the grain/);
  await type('7');
  expect(text()).toMatch(/From 0 to 5 degrees, in whole ones/);
  await type('0');
  press(/^Falls on the pattern: 10 cm down, 0 cm across/);
  await screen.findByRole('textbox');
  press('Take it off');
  press(/^Left and right/);
  press(/^May be turned end for end/);
  expect(said()).toEqual({});
  press('Done');
  await open(/^Back.*21.5 cm wide on the fold/);
  expect(text()).not.toMatch(/off the grain|Left and right/);
  press(/^Tapered/);
  await says(/Its half, with the fold on the left/);
  await entered(/^Left side/, '1');
  await says(/no straight side along its left edge to be the fold/);
});

const SVG = `<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="300mm" viewBox="0 0 200 300">
  <path id="yoke" d="M0 0H200V100Q100 160 0 100Z"/><path id="line" d="M0 200h50"/></svg>`;
const file = (body: string, name = 'a.svg') => new File([body], name);
const choose = (one: File) =>
  fireEvent.change(document.querySelector('input[type=file]')!, { target: { files: [one] } });

test('from a file: its outlines by name, one taken; what is wrong with a file is said', async () => {
  const { said } = show(garment({ front }, { cloth }));
  await open(/^Front/);
  press(/^From a drawing in a file/);
  await says(/SVG or a DXF file with closed outlines/);
  choose(file('7 apples'));
  await says(/Neither an SVG nor a DXF file/);
  choose(file('<svg><path d="M0 0h9v9z"/></svg>'));
  await says(/doesn’t say how long its units are/);
  press('A centimetre');
  await says(/One outline was found/);
  choose(file('  0\nSECTION\n  2\nENTITIES\n  0\nSPLINE\n  8\nsleeve\n  0\nENDSEC\n  0\nEOF\n'));
  await says(/doesn’t say how long|sleeve is drawn as “SPLINE”, which can’t be read here/);
  choose(file(SVG));
  await says(/One outline was found.*One line doesn’t close/);
  press(/^yoke/);
  await says(/Turn it a quarter/);
  const { form } = said().outline!;
  expect(form.kind).toBe('points');
  // Its lowest place is half way to the control point, 130; simplified outwards by 1 mm at most.
  await says(/20 cm wide, 13.\d cm long/);
  press('Done');
  expect(text()).toMatch(/Front.*a shape of its own, 20 cm wide, 13.\d cm long/);
});

test('a cloth that nothing of is laid on, and a shape kept that can’t be laid, say so', () => {
  const outline = { form: { kind: 'points', points: [[0, 0]] } as const };
  const state = doing(garment({ front }, { cloth }), {
    ...({ do: 'lay', id: 'cloth', piece: FRONT, set: { outline }, now: 1 } as const),
  });
  show(state);
  expect(text()).toMatch(/Front.*(working it out|Working it out|can’t be laid yet)/);
});
