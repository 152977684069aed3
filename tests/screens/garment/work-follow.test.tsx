import { cleanup, fireEvent, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { homeOf } from '../../../src/garment/record/home.ts';
import { garmentOf, output, typed } from '../../garment/trial/garments.ts';
import { openIn, skirt } from './work-hand.tsx';

afterEach(cleanup);

const CM = 80_000;
const HOLES = homeOf('close', '', 'marks');
const BUTTONS = homeOf('buttons', '', 'marks');
const field = (label: string) =>
  screen.getByLabelText<HTMLInputElement>(new RegExp(`^${label}`), { selector: 'input' });

/** The other front of the invented skirt, as long; its buttons are to lie where the holes are. */
const fronts = {
  ...skirt,
  works: {
    ...skirt.works,
    buttons: {
      name: 'Other front',
      calculation: 'closures',
      rank: 4,
      fields: { opening: typed('46.3'), count: typed('5'), top: typed('1'), bottom: typed('1') },
    },
  },
};

test('buttons follow the buttonholes as cut: one press takes the row, and what moves there moves here', async () => {
  const held = await openIn(fronts, 'buttons');
  const places = () => {
    const row = held.state.answer.values.get(BUTTONS);
    return row?.ok && typeof row.value === 'object' ? row.value.marks.map(({ at }) => at / CM) : [];
  };
  expect(places()).toHaveLength(5);
  fireEvent.focus(field('Follows the places'));
  fireEvent.click(screen.getByRole('button', { name: 'From the garment' }));
  fireEvent.click(await screen.findByRole('button', { name: /^Front · Places of the closures/ }));
  expect(held.state.record.works.buttons).toMatchObject({
    fields: { follow: [output('close', 'marks')] },
  });
  const block = document.querySelector('.tile.now .block');
  expect(block?.textContent).toContain('7 marks');
  expect(places()).toHaveLength(7);
  expect(places()[2]).toBeCloseTo(15.4, 5);
  // What is spaced otherwise isn't asked of a row that follows.
  expect(screen.queryByLabelText(/^How many/, { selector: 'input' })).toBeNull();
  // The third hole is cut at 15.8: its button goes there, whatever becomes of the rest.
  for (const [i, measured] of [1.2, 8.3, 15.8].entries()) {
    const press = { do: 'make', home: HOLES, id: `h${i}`, tape: 8000, now: 1 } as const;
    held.act(i === 2 ? { ...press, measured: measured * CM } : press);
  }
  expect(places()[2]).toBeCloseTo(15.8, 5);
  held.act({ do: 'decide', home: HOLES, way: 'spread', now: 2 });
  expect(places()[3]).toBeCloseTo(22.8, 5);
  // Further down by so much, from the same edge.
  fireEvent.focus(field('Further down by'));
  fireEvent.input(field('Further down by'), { target: { value: '0.3' } });
  fireEvent.click(screen.getByRole('button', { name: 'Done' }));
  await waitFor(() => expect(places()[0]).toBeCloseTo(1.5, 5));
  expect(places()[2]).toBeCloseTo(16.1, 5);
});

test('a row that follows keeps no count: one more there is one more here, though some are sewn', async () => {
  const held = await openIn(
    {
      ...fronts,
      works: {
        ...fronts.works,
        buttons: {
          ...fronts.works.buttons,
          fields: { opening: typed('46.3'), follow: [output('close', 'marks')] },
        },
      },
    },
    'buttons',
  );
  held.act({ do: 'make', home: BUTTONS, id: 'b', tape: 8000, now: 1 });
  const place = { work: 'close', field: 'count' } as const;
  held.act({ do: 'choose', place, parts: typed('8'), now: 2 });
  const row = held.state.answer.values.get(BUTTONS);
  expect(row?.ok && typeof row.value === 'object' && row.value.marks.length).toBe(8);
});

test('places are typed as a list, parted by semicolons or by commas; one off the edge is said', async () => {
  const held = await openIn(fronts, 'buttons');
  const places = () => {
    const row = held.state.answer.values.get(BUTTONS);
    return row?.ok && typeof row.value === 'object' ? row.value.marks.map(({ at }) => at / CM) : [];
  };
  const type = (text: string) => {
    fireEvent.focus(field('Follows the places'));
    fireEvent.input(field('Follows the places'), { target: { value: text } });
    fireEvent.click(screen.getByRole('button', { name: 'Done' }));
  };
  type('1.2, 8.3, 15.8');
  expect(places()).toEqual([1.2, 8.3, 15.8]);
  type('15.8; 1.2; 8.3');
  expect(places()).toEqual([1.2, 8.3, 15.8]);
  type('1.2; 48');
  expect(await screen.findByText(/^Follows the places/, { selector: '.warning' })).toBeTruthy();
});

test('reading a tape is asked for the field in hand, on the side that is open', async () => {
  const read = vi.fn();
  await openIn(fronts, 'buttons', { onRead: read });
  fireEvent.focus(field('Opening'));
  fireEvent.click(screen.getByRole('button', { name: 'Read it' }));
  expect(read).toHaveBeenCalledWith({ work: 'buttons', field: 'opening' });
});

/** Invented: two strips that are laced together, and two edges that are sewn together. */
const laced = garmentOf({
  works: {
    first: {
      ...{ name: 'First strip', calculation: 'edging', rank: 1 },
      fields: {
        ...{ length: typed('20'), pitch: typed('0.8'), rows: typed('one'), fit: typed('fill') },
        ...{ middle: typed('any'), width: typed('2'), margin: typed('0.5'), hole: typed('0.2') },
        end: typed('0.4'),
      },
    },
    second: {
      ...{ name: 'Second strip', calculation: 'edging', rank: 2 },
      fields: {
        ...{ length: typed('22'), pitch: typed('1'), rows: typed('one'), fit: typed('fill') },
        ...{ middle: typed('any'), width: typed('2'), margin: typed('0.5'), hole: typed('0.2') },
      },
    },
    skirt: {
      ...{ name: 'Skirt', calculation: 'parts', rank: 3 },
      fields: { length: typed('96'), into: typed('quarters'), round: typed('closed') },
    },
    band: {
      ...{ name: 'Band', calculation: 'parts', rank: 4 },
      fields: { length: typed('96'), other: typed('72'), into: typed('halves') },
    },
  },
});

test.each([
  ['second', 'Follows the holes', /^First strip · /, homeOf('first', '', 'holes'), 'holes'],
  ['band', 'Follows the marks', /^Skirt · /, homeOf('skirt', '', 'marks'), 'marks'],
] as const)(
  '%s follows a row as it is made, by one press',
  async (work, label, offered, from, key) => {
    const held = await openIn(laced, work);
    const placesAt = (home: string) => {
      const row = held.state.answer.values.get(home);
      return row?.ok && typeof row.value === 'object'
        ? row.value.marks.map(({ at }) => at / CM)
        : [];
    };
    const own = homeOf(work, '', key);
    if (screen.queryByLabelText(new RegExp(`^${label}`), { selector: 'input' }) === null) {
      fireEvent.click(screen.getByRole('button', { name: 'More' }));
    }
    fireEvent.focus(field(label));
    fireEvent.click(screen.getByRole('button', { name: 'From the garment' }));
    fireEvent.click((await screen.findAllByRole('button', { name: offered }))[0] as HTMLElement);
    expect(placesAt(own)).toEqual(placesAt(from));
    // The second is made 2 mm off: there, too.
    for (const rank of [0, 1]) {
      const press = { do: 'make', home: from, id: `m${rank}`, tape: 8000, now: 1 } as const;
      const off = Math.round(((placesAt(from)[rank] ?? 0) + 0.2) * CM);
      held.act(rank === 1 ? { ...press, measured: off } : press);
    }
    held.act({ do: 'decide', home: from, way: 'spread', now: 2 });
    expect(placesAt(own)).toEqual(placesAt(from));
    expect(held.state.answer.nodes.get(own)).toMatchObject({ form: 'plan' });
    // Its own even spacing isn't asked for any more.
    expect(
      screen.queryByLabelText(/^(Hole to hole|How many parts)/, { selector: 'input' }),
    ).toBeNull();
  },
);
