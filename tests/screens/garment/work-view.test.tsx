import { cleanup, fireEvent, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { act } from '../../../src/garment/actions/act.ts';
import { begin } from '../../../src/garment/actions/state.ts';
import { pendingOf } from '../../../src/garment/actions/typing.ts';
import { homeOf, readHome } from '../../../src/garment/record/home.ts';
import { mm } from '../../../src/lengths/length.ts';
import { benchOf } from '../../controls/helpers.ts';
import { garmentOf, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';
import { openIn, skirt } from './work-hand.tsx';

afterEach(cleanup);

const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));
const found = async (name: string | RegExp) =>
  fireEvent.click(await screen.findByRole('button', { name }));
const key = (name: string) => {
  const pad = screen.getByRole('group', { name: 'Number pad' });
  fireEvent.pointerDown(within(pad).getByRole('button', { name }), { button: 0 });
};
const answer = () => screen.getByRole('region', { name: 'What it gives' }).textContent ?? '';
const numberOf = (
  { state }: { state: { answer: { values: ReadonlyMap<string, unknown> } } },
  home: string,
) => state.answer.values.get(home) as { ok: boolean; value: number };
const field = (label: string) =>
  screen.getByLabelText<HTMLInputElement>(new RegExp(`^${label}`), { selector: 'input' });

describe('a work opened in place', () => {
  test('its dimensions are its fields: one is touched, typed, and settles with Next', async () => {
    const held = await openIn(skirt, 'hem');
    press(/^Depth, finished, 3 cm: change it/);
    key('4');
    expect(pendingOf(held.state.record)).toMatchObject({ parts: typed('4') });
    expect(numberOf(held, homeOf('hem', '', 'allowance')).value).toBe(4 * 80_000);
    expect(held.state.log).toEqual([]);
    key('decimal mark');
    key('5');
    press('next field');
    expect(held.state.record.pending).toBeUndefined();
    expect(held.state.record.works.hem).toMatchObject({ fields: { depth: typed('4.5') } });
    expect(held.state.log).toHaveLength(1);
  });

  test('typing 6, 63, 63. and 63.0 never alarms; once it settles it may', async () => {
    await openIn(skirt, 'close');
    fireEvent.focus(field('First, from the top'));
    for (const one of ['6', '3', 'decimal mark', '0']) {
      key(one);
      expect(document.querySelector('.warning'), one).toBeNull();
    }
    press('Done');
    await waitFor(() => expect(document.querySelector('.warning')).not.toBeNull());
  });

  test('the number above is never the one just typed', async () => {
    await openIn(skirt, 'hem');
    expect(answer()).toMatch(/^1 cm Press the first turn, from the raw edge/);
    press(/^First turn, 1 cm: change it/);
    key('2');
    expect(answer()).not.toMatch(/^2 cm Press the first turn/);
    expect(answer()).toMatch(/^\d/);
  });

  test('what hangs on it elsewhere is shown before and after, once the hand rests', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    try {
      await openIn(skirt, 'hem');
      press(/^Depth, finished/);
      key('4');
      expect(screen.queryByRole('region', { name: 'When this settles' })).toBeNull();
      await vi.advanceTimersByTimeAsync(299);
      expect(screen.queryByRole('region', { name: 'When this settles' })).toBeNull();
      await vi.advanceTimersByTimeAsync(40);
      const told = screen.getByRole('region', { name: 'When this settles' });
      expect(told.textContent).toMatch(/Lining hem · Hem line\s*3 → 4 cm/);
      expect(told.textContent).toMatch(/and \d more/);
    } finally {
      vi.useRealTimers();
    }
  });

  test('it settles when another field is gone to, and when the page is hidden', async () => {
    const held = await openIn(skirt, 'hem');
    press(/^Depth, finished/);
    key('4');
    fireEvent.focus(field('Cloth thick'));
    expect(held.state.record.pending).toBeUndefined();
    expect(held.state.record.works.hem).toMatchObject({ fields: { depth: typed('4') } });
    press('Done');
    press(/^Depth, finished/);
    key('5');
    vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden');
    fireEvent(document, new Event('visibilitychange'));
    vi.restoreAllMocks();
    expect(held.state.record.works.hem).toMatchObject({ fields: { depth: typed('5') } });
    cleanup();
  });

  test('the last change is taken back where it was made', async () => {
    const held = await openIn(skirt, 'hem');
    press(/^Depth, finished/);
    key('4');
    press('Done');
    press('Undo');
    expect(held.state.record.works.hem).toEqual(skirt.works.hem);
    expect(screen.queryByRole('button', { name: 'Undo' })).toBeNull();
  });
});

describe('from the garment', () => {
  test('one press opens the list, one takes; the link is a block with its name and number', async () => {
    const held = await openIn(skirt, 'close');
    fireEvent.focus(field('One must be at'));
    press('From the garment');
    await found(/^Back hem · Hem allowance\s*4 cm/);
    const link = { link: { work: 'hem', output: 'allowance' } };
    const fields = (held.state.record.works.close as { fields: Record<string, unknown> }).fields;
    expect(fields.level).toEqual([link]);
    expect(held.state.record.pending).toBeUndefined();
    const block = document.querySelector('.tile.now .block');
    expect(block?.textContent).toBe('Back hem · Hem allowance 4 cm');
  });

  test('in a sum it goes on after +; erase takes it whole; a digit replaces it', async () => {
    const held = await openIn(skirt, 'lining');
    const parts = () =>
      pendingOf(held.state.record)?.parts ??
      (held.state.record.works.lining as { fields: { depth: unknown } }).fields.depth;
    const link = { link: { work: 'hem', output: 'depth' } };
    press(/^Depth, finished, 2 cm/);
    key('erase');
    expect(parts()).toEqual(typed(''));
    press('From the garment');
    await found(/^Back hem · Depth, finished/);
    expect(parts()).toEqual([link]);
    key('plus');
    key('1');
    expect(parts()).toEqual([link, { text: ' + 1', unit: 'cm' }]);
    key('erase');
    key('erase');
    expect(parts()).toEqual([link, { text: '', unit: 'cm' }].slice(0, 1));
    key('erase');
    expect(parts()).toEqual(typed(''));
  });
});

describe('a link', () => {
  test('that would close a circle is not offered; one that came otherwise is said, with its way', async () => {
    await openIn(skirt, 'hem');
    press(/^Depth, finished/);
    press('From the garment');
    expect(await screen.findByRole('button', { name: /^Front · Widest space/ })).toBeTruthy();
    expect(screen.queryByRole('button', { name: /Lining hem/ })).toBeNull();
  });

  test('“typed” puts today’s number in its place', async () => {
    const held = await openIn(skirt, 'lining');
    press(/^Depth, finished, 2 cm/);
    press('Typed');
    const { fields } = held.state.record.works.lining as { fields: { depth: unknown[] } };
    expect(fields.depth[0]).toMatchObject({ put: 3 * 80_000, was: { work: 'hem' } });
  });

  test('a keyboard types at its end in a text field, where it is read out by its name', async () => {
    const held = await openIn(skirt, 'lining');
    const input = field('Depth, finished');
    expect(input.value).toBe('‹Back hem · Depth, finished 3 cm› − 1');
    fireEvent.input(input, { target: { value: `${input.value}5` } });
    const link = { link: { work: 'hem', output: 'depth' } };
    expect(pendingOf(held.state.record)?.parts).toEqual([link, { text: ' − 15', unit: 'cm' }]);
    // Backspace into the block takes it whole.
    fireEvent.input(input, { target: { value: '‹Back hem · Depth, finished 3 cm' } });
    expect(pendingOf(held.state.record)?.parts).toEqual(typed(''));
  });
});

describe('numbers that are found and made', () => {
  test('a found one is named where it stands: a quantity that follows it', async () => {
    const held = await openIn(skirt, 'hem');
    press(/^Stitching, above the fold, 2.8 cm: name it/);
    fireEvent.input(await screen.findByLabelText('Its name'), {
      target: { value: 'Topstitching' },
    });
    press('Name it');
    expect(Object.values(held.state.record.quantities)).toContainEqual({
      ...{ name: 'Topstitching', kind: 'length', rank: 3 },
      parts: [{ link: { work: 'hem', output: 'stitch-up' } }],
    });
  });

  test('a made one shows its plan and its measure, is measured again, and taken back', async () => {
    const held = await openIn(skirt, 'close');
    const home = homeOf('close', '', 'marks');
    held.act({ do: 'make', home, id: 'f', tape: 8000, now: 1 });
    fireEvent.click(await screen.findByRole('button', { name: /^✓ 1.2 cm/ }));
    expect(await screen.findByText('planned 1.2 cm · shown 1.2 cm')).toBeTruthy();
    await found('Measure it');
    fireEvent.input(screen.getByLabelText(/where it really is/), { target: { value: '1.4' } });
    press('Keep this measure');
    expect(held.state.record.facts.f).toMatchObject({ measured: 1.4 * 80_000 });
    press(/^✓ 1.4 cm/);
    await found('Take it back');
    expect(held.state.record.facts).toEqual({});
  });
});

// By hand: 1.2 cm is 0.4724 in, 7.6 sixteenths; 1.4 cm is 0.5512, 8.8 of them.
test('on a bench of inches a made one is said as its tape shows it, never in decimals', async () => {
  const held = await openIn(skirt, 'close', { bench: benchOf({ unit: 'in' }) });
  const home = homeOf('close', '', 'marks');
  held.act({ do: 'make', home, id: 'f', tape: 8000, measured: mm(14), now: 1 });
  const made = await waitFor(() => {
    const one = document.querySelector('.garment-work .row button');
    if (!one?.textContent?.includes('✓')) throw new Error('not made yet');
    return one;
  });
  fireEvent.click(made);
  const said = await screen.findByText(/^planned /);
  const text = said.closest('p')?.textContent;
  expect(text).toMatch(/^planned 1\/2.* in · shown 1\/2.* in · measured 9\/16.* in$/);
  expect(text).not.toMatch(/\d\.\d/);
});

describe('sides, and taking off', () => {
  const paired = {
    ...skirt,
    works: { ...skirt.works, hem: { ...(skirt.works.hem as object), sides: ['left', 'right'] } },
  };

  test('one side gets a number of its own, and goes with the others again', async () => {
    const held = await openIn(paired, 'hem');
    press('right');
    press(/^Depth, finished/);
    press('Only right');
    key('5');
    press('Done');
    expect(held.state.record.works.hem).toMatchObject({
      fields: { depth: typed('3') },
      own: { right: { depth: typed('5') } },
    });
    expect(screen.getByRole('button', { name: /^Depth, finished, 5 cm/ })).toBeTruthy();
    press('left');
    expect(screen.getByRole('button', { name: /^Depth, finished, 3 cm/ })).toBeTruthy();
    press('right');
    press(/^Depth, finished/);
    press('As the other sides');
    expect(held.state.record.works.hem).not.toHaveProperty('own');
  });

  test('a work gets a name of its own and is done left and right, until something of it is made', async () => {
    const held = await openIn(skirt, 'hem');
    press('More');
    press('Name it, or do it several times');
    const name = await screen.findByLabelText<HTMLInputElement>('Its name');
    fireEvent.input(name, { target: { value: ' ' } });
    expect(screen.getByText('Name: give it one.')).toBeTruthy();
    fireEvent.input(name, { target: { value: 'Sleeve hem' } });
    expect(screen.getByRole('button', { name: 'Once' }).getAttribute('aria-pressed')).toBe('true');
    press('left and right');
    press('Keep');
    expect(held.state.record.works.hem).toMatchObject({
      name: 'Sleeve hem',
      sides: ['left', 'right'],
    });
    expect(held.state.log).toHaveLength(1);
    press('right');
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Sleeve hem');
    const step = held.state.answer.steps.find(({ home }) => home.startsWith('hem|left|'));
    held.act({ do: 'make', home: step?.home ?? '', id: 'f', tape: 8000, now: 1 });
    await found('Name it, or do it several times');
    expect(screen.queryByRole('button', { name: 'Once' })).toBeNull();
    expect(screen.getByText(/how often it is done stays/)).toBeTruthy();
  });

  test('before a work is taken off it is said who hangs on it, and what becomes of those is asked', async () => {
    const done = vi.fn();
    const held = await openIn(skirt, 'hem', { onDone: done });
    press('More');
    press('Take off this work');
    expect(await screen.findByText('Lining hem · Depth, finished')).toBeTruthy();
    await found(/^Today’s numbers in its place/);
    press('Take it off');
    expect(done).toHaveBeenCalled();
    expect(held.state.record.works.hem).toMatchObject({ off: true });
    const { fields } = held.state.record.works.lining as { fields: { depth: unknown[] } };
    expect(fields.depth[0]).toMatchObject({ put: 3 * 80_000 });
  });

  test('what is refused is said in words', async () => {
    await openIn(skirt, 'hem', { refused: { why: 'circle', path: [homeOf('hem', '', 'depth')] } });
    expect(screen.getByRole('alert').textContent).toMatch(/^Not done: each of these would need/);
  });

  test('what was typed when the page was left goes on where it was', async () => {
    const left = { place: { work: 'hem', field: 'depth' }, parts: typed('3.') };
    const held = await openIn({ ...skirt, pending: left }, 'hem');
    key('5');
    press('Done');
    expect(held.state.record.works.hem).toMatchObject({ fields: { depth: typed('3.5') } });
  });
});

test('what is made otherwise than asked is said, and leads to its decision', async () => {
  const decide = vi.fn();
  const held = await openIn(skirt, 'close', { onDecide: decide });
  const home = homeOf('close', '', 'marks');
  held.act({ do: 'make', home, id: 'f', tape: 8000, measured: 2 * 80_000, now: 1 });
  fireEvent.click(await screen.findByRole('button', { name: 'Decide' }));
  expect(decide).toHaveBeenCalledWith(home);
});

test('what is wholly made has nothing left to do above its number: it says that it is made', async () => {
  const held = await openIn(skirt, 'hem');
  const steps = held.state.answer.steps.filter(({ home }) => readHome(home).id === 'hem');
  expect(answer()).toMatch(/Press the first turn/);
  steps.forEach(({ home }, i) => {
    held.act({ do: 'make', home, id: `m${i}`, tape: 8000, now: i });
  });
  await waitFor(() => expect(answer()).toMatch(/^[\d.]+ cm [^,]*, made/));
  expect(answer()).not.toMatch(/Press the|Stitch the/);
});

test('a side is chosen, and given its own number, by a name that turns nothing round', async () => {
  const hem = { ...(skirt.works.hem as object), sides: ['le\u202eft', 'right'] };
  await openIn({ ...skirt, works: { ...skirt.works, hem } }, 'hem');
  press('left');
  press(/^Depth, finished/);
  expect(screen.getByRole('button', { name: 'Only left' })).toBeTruthy();
  expect(document.body.textContent).not.toContain('\u202e');
});

test('it opens on the side that was made otherwise', async () => {
  const sides = { sides: ['left', 'right'] };
  const hem = { ...(skirt.works.hem as object), ...sides };
  const both = { ...skirt, works: { hem } };
  const first = begin(both, KNOWN);
  const home = first.answer.steps.find((step) => readHome(step.home).side === 'right')?.home ?? '';
  const once = act(first, {
    ...{ do: 'make', home, id: 'm', tape: 8000, now: 1 },
    measured: mm(17),
  }).state;
  expect(once.answer.conflicts.map((one) => one.home)).toEqual([home]);
  await openIn(once.record, 'hem', { onDecide: () => undefined });
  expect(screen.getByRole('button', { name: 'right' }).getAttribute('aria-pressed')).toBe('true');
  expect(screen.getByRole('button', { name: 'Decide' })).toBeTruthy();
});

test('how many pieces come of a work that is done several times is said where that is chosen, and of what it gives', async () => {
  const cuff = {
    ...{ name: 'Cuff', calculation: 'piece', rank: 1 },
    fields: { width: typed('24'), length: typed('8'), count: typed('2') },
  };
  const held = await openIn(garmentOf({ works: { cuff } }), 'cuff');
  press('More');
  expect(screen.queryByText(/all together/)).toBeNull();
  press('Name it, or do it several times');
  await found('left and right');
  expect(screen.getByText('Pieces: 2 each time, 4 in all.')).toBeTruthy();
  press('Keep');
  expect(held.state.answer.works.get('cuff')?.sides).toHaveLength(2);
  expect(answer()).toMatch(/Pieces24 all together/);
});
