import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Calculation, Draft } from '../../src/calculation/calculation.ts';
import { type Held, heldOf } from '../../src/calculation/page.ts';
import { stateOf } from '../../src/calculation/parted.ts';
import { corner } from '../../src/calculations/corner/corner.ts';
import { crossing } from '../../src/calculations/crossing/crossing.ts';
import { edging } from '../../src/calculations/edging/edging.ts';
import { facing } from '../../src/calculations/facing/facing.ts';
import { hem } from '../../src/calculations/hem/hem.ts';
import { seam } from '../../src/calculations/seam/seam.ts';
import { sizes } from '../../src/calculations/sizes/sizes.ts';
import type { PaperServices } from '../../src/controls/paper-services.ts';
import { Paper } from '../../src/screens/paper/paper.tsx';
import { stripsOf } from '../../src/screens/paper/strips.ts';
import { benchOf } from '../controls/helpers.ts';
import { answerTo, workOn } from './helpers.tsx';

const PDF = new Blob(['%PDF-'], { type: 'application/pdf' });
const makePdf = vi.fn<PaperServices['makePdf']>();
const save = vi.fn<PaperServices['save']>();
let draft: Held = {};

beforeEach(() => {
  vi.resetAllMocks();
  makePdf.mockResolvedValue(PDF);
  save.mockResolvedValue();
});
afterEach(cleanup);

function Shown({
  calculation,
  set,
  share,
}: {
  calculation: Calculation;
  set: Held;
  share: PaperServices['share'];
}) {
  const [state, setState] = useState(stateOf(set));
  draft = heldOf(state);
  const work = workOn(calculation, state.draft);
  return (
    <Paper
      title={calculation.title}
      name={calculation.title}
      answer={work.ok ? work.answer : undefined}
      bench={benchOf()}
      page={state.page}
      services={{ makePdf, save, share }}
      onPage={(page) => setState({ ...state, page })}
      onLeave={() => undefined}
    />
  );
}

function open(
  calculation: Calculation = edging,
  set: Held = {},
  share: PaperServices['share'] = undefined,
) {
  render(<Shown calculation={calculation} set={set} share={share} />);
}

const press = (name: RegExp | string) => fireEvent.click(screen.getByRole('button', { name }));

test('the pages are counted before anything is made, for the paper there is', () => {
  open(edging, { length: '200', margin: '0.5' });
  expect(screen.getByRole('status').textContent).toMatch(/^2 pages\. Print at actual size/);
  fireEvent.click(screen.getByLabelText('Letter'));
  expect(draft.paper).toBe('letter');
  fireEvent.click(screen.getByLabelText('15 mm'));
  expect(draft['paper-margin']).toBe('15');
  // The strip has a margin of its own, which is none of the paper's business.
  expect(draft.margin).toBe('0.5');
  expect(screen.getByRole('status').textContent).toMatch(/pages/);
});

test('the PDF is made when it is asked for, and saved under its name', async () => {
  open();
  fireEvent.input(screen.getByLabelText('Name on the pages'), { target: { value: 'Coat, front' } });
  press('Make the PDF');
  fireEvent.click(await screen.findByRole('button', { name: 'Save the PDF' }));
  expect(save).toHaveBeenCalledWith('Coat, front.pdf', PDF);
  expect(makePdf.mock.calls[0]?.[0]).toBe('Coat, front');
  expect(JSON.stringify(makePdf.mock.calls[0]?.[1])).toContain('Coat, front');
  // Another paper is another file.
  fireEvent.click(screen.getByLabelText('Letter'));
  expect(screen.getByRole('button', { name: 'Make the PDF' })).toBeTruthy();
});

test('a PDF of other numbers is not kept, nor one that is being written', async () => {
  const shown = (length: string) => (
    <Paper
      title="Edging"
      name="Coat"
      answer={answerTo(edging, { length })}
      bench={bench}
      page={typed}
      services={{ makePdf, save, share: undefined }}
      onPage={() => undefined}
      onLeave={() => undefined}
    />
  );
  const [bench, typed] = [benchOf(), {}];
  const { rerender } = render(shown('40'));
  press('Make the PDF');
  await screen.findByRole('button', { name: 'Save the PDF' });
  rerender(shown('41'));
  expect(screen.queryByRole('button', { name: 'Save the PDF' })).toBeNull();
  makePdf.mockReturnValue(new Promise(() => undefined));
  press('Make the PDF');
  await screen.findByText(/^Writing the PDF/);
  rerender(shown('42'));
  expect(screen.getByRole('button', { name: 'Make the PDF' })).toBeTruthy();
  expect(makePdf.mock.lastCall?.[2].signal.aborted).toBe(true);
});

test('letters the paper cannot show are named before anything is made', () => {
  open();
  const call = (value: string) => {
    fireEvent.input(screen.getByLabelText('Name on the pages'), { target: { value } });
    return screen.getByRole('status').textContent;
  };
  expect(call('Жакет, Café')).toMatch(/The pages can’t show “Жакет”: each is a “\?” on them\.$/);
  expect(call('Cafe\u0301 – crème')).not.toMatch(/can’t show/);
});

test('how far it is is said, and it can be called off', async () => {
  let progress: (done: number) => void = () => undefined;
  let signal: AbortSignal | undefined;
  makePdf.mockImplementation((_, __, options) => {
    progress = options.onProgress;
    signal = options.signal;
    return new Promise(() => undefined);
  });
  open();
  press('Make the PDF');
  progress(0.4);
  expect(await screen.findByText('Writing the PDF: 40 %')).toBeTruthy();
  press('Call it off');
  expect(signal?.aborted).toBe(true);
  expect(screen.getByRole('button', { name: 'Make the PDF' })).toBeTruthy();
});

test('a PDF that could not be written says so, and can be tried again', async () => {
  makePdf.mockRejectedValueOnce(new Error('no worker'));
  open();
  press('Make the PDF');
  expect((await screen.findByRole('alert')).textContent).toMatch(/could not be written/);
  press('Make the PDF');
  expect(await screen.findByRole('button', { name: 'Save the PDF' })).toBeTruthy();
});

test('a PDF that could not be handed over says so, and can be made again', async () => {
  save.mockRejectedValue(new Error('refused'));
  open();
  press('Make the PDF');
  fireEvent.click(await screen.findByRole('button', { name: 'Save the PDF' }));
  expect((await screen.findByRole('alert')).textContent).toMatch(/could not be written/);
  expect(screen.getByRole('button', { name: 'Make the PDF' })).toBeTruthy();
});

test('where the phone shares files the PDF can be shared; one that refuses does no harm', async () => {
  const share = vi.fn().mockRejectedValue(new Error('called off'));
  open(edging, {}, share);
  press('Make the PDF');
  fireEvent.click(await screen.findByRole('button', { name: 'Share the PDF' }));
  await waitFor(() => expect(share).toHaveBeenCalledWith('Edging: holes along a strip.pdf', PDF));
  expect(screen.queryByRole('alert')).toBeNull();
});

test('every run and every drawing can be had as SVG', async () => {
  open(corner);
  press('SVG: Corner, flat, wrong side up');
  await waitFor(() => expect(save).toHaveBeenCalledTimes(1));
  const [name, file] = save.mock.calls[0] ?? [];
  expect(name).toBe('Corner, flat, wrong side up.svg');
  expect(file?.type).toBe('image/svg+xml');
  press('SVG: Along the bottom');
  await waitFor(() => expect(save).toHaveBeenCalledTimes(2));
  expect(save.mock.calls[1]?.[0]).toBe('Along the bottom.svg');
});

test('what goes on paper is chosen: all marks, one run, or a drawing', async () => {
  open(corner);
  const asked = () => JSON.stringify(makePdf.mock.lastCall?.[1]);
  const parts = screen.getByRole('group', { name: 'What goes on paper' });
  expect(within(parts).getAllByRole('radio')).toHaveLength(5);
  press('Make the PDF');
  expect(asked()).toContain('Along the bottom: ');
  expect(asked()).toContain('Up the side: ');
  fireEvent.click(within(parts).getByLabelText('Up the side'));
  press('Make the PDF');
  expect(asked()).not.toContain('Along the bottom: ');
  expect(asked()).toContain('Up the side: ');
  fireEvent.click(within(parts).getByLabelText('Corner, flat, wrong side up'));
  press('Make the PDF');
  expect(asked()).not.toContain('Up the side: ');
  expect(asked()).toContain('"kind":"path"');
  expect(await screen.findByRole('button', { name: 'Save the PDF' })).toBeTruthy();
});

test('an answer that has drawings alone can be put on paper too', () => {
  // Every hole is shared, so that there is none to punch.
  const one = { rows: 'one', margin: '1', pitch: '3' };
  open(crossing, {
    ...one,
    upperRows: 'one',
    upperMargin: '1',
    upperPitch: '3',
  });
  expect(screen.queryByRole('group', { name: 'What goes on paper' })).toBeNull();
  press('Make the PDF');
  expect(JSON.stringify(makePdf.mock.lastCall?.[1])).toContain('"kind":"circle"');
});

test.each([hem, facing, seam])(
  'a section says that its layers are drawn apart: $id',
  async (one) => {
    open(one, { 'paper-what': 'drawing-1' });
    press('Make the PDF');
    expect(JSON.stringify(makePdf.mock.lastCall?.[1])).toMatch(/ection[^"]*, layers drawn apart/);
    press(/^SVG: .*section/i);
    await waitFor(() => expect(save).toHaveBeenCalledOnce());
    const svg = (await save.mock.calls[0]?.[1].text()) ?? '';
    expect(svg).toMatch(/<title>.*, layers drawn apart<\/title>/);
    expect(svg).not.toMatch(/true size/i);
  },
);

test('places are written in the unit of the bench, and its paper is offered first', () => {
  render(
    <Paper
      title="Edging"
      name="Coat"
      answer={answerTo(edging, {}, benchOf({ unit: 'in' }))}
      bench={benchOf({ unit: 'in' })}
      page={{}}
      services={{ makePdf, save, share: undefined }}
      onPage={() => undefined}
      onLeave={() => undefined}
    />,
  );
  expect(screen.getByLabelText<HTMLInputElement>('Letter').checked).toBe(true);
  press('Make the PDF');
  expect(JSON.stringify(makePdf.mock.lastCall?.[1])).toMatch(/: 0 in to .* of 16 in, measured/);
});

const MARGINS: [string, RegExp][] = [
  ['1/4 in', /^(One page|\d+ pages)\./],
  ['0', /^(One page|\d+ pages)\./],
  ['105', /These margins leave no room on the paper\. Give 58 mm at the most/],
  ['58', /^(One page|\d+ pages)\./],
  ['-2', /^Margin: give 0 or more/],
  ['wide', /^Margin: “wide” was not understood/],
  ['', /^Margin: give a number/],
];

test.each(MARGINS)('a margin of %j', (typed, words) => {
  open(edging);
  const field = screen.getByLabelText(/^Another margin/);
  fireEvent.input(field, { target: { value: typed } });
  expect(screen.getByRole('status').textContent).toMatch(words);
  const isMade = screen.queryByRole('button', { name: 'Make the PDF' }) !== null;
  expect(isMade).toBe(words.source.startsWith('^(One page'));
});

const WRONG: [string, Draft, RegExp][] = [
  ['too long', { length: '2100', pitch: '2' }, /longer than 2000 cm/],
  ['too wide', { width: '18' }, /wider than a page has room for: 14\.6 cm/],
  ['no answer', { pitch: '0' }, /There is nothing to put on paper/],
];

test.each(WRONG)('%s: it is said, and there is no key', (_, set, said) => {
  open(edging, set);
  expect(screen.getByRole('status').textContent).toMatch(said);
  expect(screen.queryByRole('button', { name: 'Make the PDF' })).toBeNull();
});

test('marks that each say how far across they lie are rows of one template', () => {
  const [strip, ...others] = stripsOf(answerTo(crossing, {}).runs);
  expect(others).toEqual([]);
  expect(strip?.width).toBe(20);
  const across = strip?.rows.map((row) => row.across) ?? [];
  expect(new Set(across).size).toBe(across.length);
  expect(across.length).toBeGreaterThan(1);
  expect(strip?.rows.flatMap(({ marks }) => marks)).toHaveLength(
    answerTo(crossing, {}).runs[0]?.run.marks.length ?? 0,
  );
});

test('an answer with nothing to mark or draw is not called no answer', () => {
  open(sizes);
  expect(screen.getByRole('status').textContent).toMatch(/has no marks and no drawing/);
});

test('a drawing that cannot be written is said', async () => {
  save.mockRejectedValue(new Error('refused'));
  open(corner);
  press('SVG: Along the bottom');
  expect((await screen.findByRole('alert')).textContent).toMatch(/could not be written/);
});

test('a drawing that takes thousands of pages is refused in words', () => {
  open(corner, { depth: '300', side: '300', 'paper-what': 'drawing-1' });
  const said = screen.getByRole('status').textContent;
  expect(said).toMatch(/^It would take \d{3,} pages, and 200 are the most\. Put less on paper/);
  expect(screen.queryByRole('button', { name: 'Make the PDF' })).toBeNull();
});

test('rows of one strip lie on one template; sides and bent rows each have their own', () => {
  const names = (set: Draft) =>
    stripsOf(answerTo(edging, set).runs).map(({ name, rows }) => [name, rows.length]);
  expect(names({ rows: 'staggered' })).toEqual([['Row 1, Row 2', 2]]);
  expect(names({ rows: 'level', radius: '30' })).toEqual([
    ['Row 1', 1],
    ['Row 2', 1],
  ]);
  expect(names({ corners: '20' })).toHaveLength(2);
});
