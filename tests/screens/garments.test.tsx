import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { previewOf } from '../../src/garment/backup/backup-preview.ts';
import { listedOf } from '../../src/garment/record/listed.ts';
import { newGarment, renamed } from '../../src/garment/record/new-garment.ts';
import type { Fact } from '../../src/garment/record/record.ts';
import type { GarmentDeeds } from '../../src/screens/garments/deeds.ts';
import { type GarmentsProps, GarmentsScreen } from '../../src/screens/garments/garments.tsx';
import { KeepScreen } from '../../src/screens/garments/keep.tsx';
import { RestorePreview } from '../../src/screens/garments/restore-preview.tsx';
import { hooks, withWork } from '../storage/coats.ts';

afterEach(cleanup);

function deedsOf(set: Partial<GarmentDeeds> = {}): GarmentDeeds {
  const none = () => undefined;
  return {
    make: none,
    demo: none,
    open: none,
    rename: none,
    copy: none,
    putAway: none,
    bringBack: none,
    backup: none,
    share: none,
    putOffBackup: none,
    restore: none,
    saveSetAside: none,
    saveCleared: none,
    putBackCleared: none,
    leave: none,
    ...set,
  };
}

const NOTHING: Omit<GarmentsProps, 'deeds'> = {
  garments: [],
  deleted: [],
  setAside: { damaged: 0, newer: 0 },
  cleared: [],
  lastBackup: undefined,
  due: undefined,
  said: undefined,
  undo: undefined,
  hand: 'right',
};

test('an empty bench says how to begin, and that there is no backup', () => {
  render(<GarmentsScreen {...NOTHING} deeds={deedsOf()} />);
  expect(screen.getByText(/Nothing is kept yet/)).toBeTruthy();
  expect(screen.getByText(/No backup yet/)).toBeTruthy();
  expect(screen.queryByRole('button', { name: 'Not now' })).toBeNull();
});

test('a garment needs a name', () => {
  const make = vi.fn();
  render(<GarmentsScreen {...NOTHING} deeds={deedsOf({ make })} />);
  fireEvent.input(screen.getByLabelText(/A new garment/), { target: { value: '  ' } });
  fireEvent.click(screen.getByRole('button', { name: 'Make' }));
  expect(make).not.toHaveBeenCalled();
  expect(screen.getByText(/Name: give it one/)).toBeTruthy();
  fireEvent.input(screen.getByLabelText(/A new garment/), { target: { value: 'Coat' } });
  fireEvent.click(screen.getByRole('button', { name: 'Make' }));
  expect(make).toHaveBeenCalledWith('Coat');
});

const coats = (...names: string[]) => names.map((name) => listedOf(newGarment(name, name, 1)));
const articles = () =>
  screen.queryAllByRole('article', { name: /./ }).map((one) => one.getAttribute('aria-label'));

test('a garment is opened by a press on its name, which says what is on it and made', () => {
  const open = vi.fn();
  const facts = { a: 1, b: 2 };
  const coat = { ...withWork(newGarment('g', 'Coat', 1), 'k', 2), facts };
  const off = { ...coat, works: { ...coat.works, off: hooks({ off: true }) } };
  render(<GarmentsScreen {...NOTHING} garments={[listedOf(off)]} deeds={deedsOf({ open })} />);
  fireEvent.click(screen.getByRole('button', { name: 'Coat1 work, 2 made' }));
  expect(open).toHaveBeenCalledWith('g');
});

test('what else is done with a garment folds out of one at a time', () => {
  const [rename, copy, putAway] = [vi.fn(), vi.fn(), vi.fn()];
  const [coat, hat] = coats('Coat', 'Hat');
  const deeds = deedsOf({ rename, copy, putAway });
  render(<GarmentsScreen {...NOTHING} garments={coats('Coat', 'Hat')} deeds={deeds} />);
  const more = (name: string) =>
    fireEvent.click(screen.getByRole('button', { name: `More with ${name}` }));
  const press = (name: string) => fireEvent.click(screen.getByRole('button', { name }));
  expect(screen.queryByRole('button', { name: 'Put away' })).toBeNull();
  more('Coat');
  more('Hat');
  expect(screen.getAllByRole('button', { name: 'Put away' })).toHaveLength(1);
  press('Put away');
  expect(putAway).toHaveBeenCalledWith(hat);
  more('Coat');
  press('Copy as a new start');
  expect(copy).toHaveBeenCalledWith(coat);
  more('Coat');
  press('Rename');
  fireEvent.input(screen.getByLabelText('Name'), { target: { value: 'Cloak' } });
  press('Rename');
  expect(rename).toHaveBeenCalledWith(coat, 'Cloak');
});

test('many are searched by name, whatever is capital or has an accent', () => {
  const all = coats('Grey waistcoat', 'Été, robe', 'Coat', 'Hat', 'Cape', 'Grey coat');
  const { rerender } = render(
    <GarmentsScreen {...NOTHING} garments={all.slice(1)} deeds={deedsOf()} />,
  );
  expect(screen.queryByLabelText('Search by name')).toBeNull();
  rerender(<GarmentsScreen {...NOTHING} garments={all} deeds={deedsOf()} />);
  const seek = (value: string) => {
    fireEvent.input(screen.getByLabelText('Search by name'), { target: { value } });
    return articles();
  };
  expect(seek('')).toHaveLength(6);
  expect(seek(' COAT grey')).toEqual(['Grey waistcoat', 'Grey coat']);
  expect(seek('ete')).toEqual(['Été, robe']);
  expect(seek('shoe')).toEqual([]);
  expect(screen.getByText('No garment is called “shoe”.')).toBeTruthy();
});

test('a backup is asked for in a quiet line, and can be put off', async () => {
  const backup = vi.fn();
  const putOffBackup = vi.fn();
  render(
    <GarmentsScreen
      {...NOTHING}
      lastBackup="1 May"
      due={{ garments: 3, made: 88, changes: 120, days: 8 }}
      deeds={deedsOf({ backup, putOffBackup })}
    />,
  );
  expect(
    await screen.findByText(
      'Only on this phone: 3 garments, 88 made, 120 changes in 8 days since the last backup.',
    ),
  ).toBeTruthy();
  fireEvent.click(screen.getAllByRole('button', { name: 'Save a backup' })[0] as HTMLElement);
  fireEvent.click(screen.getByRole('button', { name: 'Not now' }));
  expect(backup).toHaveBeenCalledOnce();
  expect(putOffBackup).toHaveBeenCalledOnce();
});

test('a garment put away is had back by one press, and from what is put away', async () => {
  const coat = newGarment('g', 'Coat', 1);
  const bringBack = vi.fn();
  const undo = { words: 'Undo: bring back Coat', deed: () => bringBack(listedOf(coat)) };
  render(
    <GarmentsScreen
      {...NOTHING}
      deleted={[listedOf(coat)]}
      undo={undo}
      deeds={deedsOf({ bringBack })}
    />,
  );
  fireEvent.click(screen.getByRole('button', { name: 'Undo: bring back Coat' }));
  fireEvent.click(await screen.findByRole('button', { name: 'Bring back' }));
  expect(bringBack).toHaveBeenCalledTimes(2);
});

test('records set aside are said, each for its cause, and can be saved', async () => {
  const saveSetAside = vi.fn();
  const setAside = { damaged: 2, newer: 1 };
  render(<GarmentsScreen {...NOTHING} setAside={setAside} deeds={deedsOf({ saveSetAside })} />);
  expect(await screen.findByText(/2 records could not be read and are set aside/)).toBeTruthy();
  expect(screen.getByText(/One record is from a newer version of this app/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Save what was set aside' }));
  expect(saveSetAside).toHaveBeenCalledOnce();
});

test('a restore is chosen garment by garment; one that differs is left unless taken', () => {
  const here = newGarment('g', 'Coat', 5);
  const previews = [
    previewOf(here, renamed(here, 'Cloak', 9), false),
    previewOf(undefined, newGarment('h', 'Hat', 1), false),
  ];
  const onRestore = vi.fn();
  const rejected = [
    {
      place: 3,
      name: '<b>Boot</b>',
      damage: { kind: 'damaged' as const, part: 'kept' as const },
      text: '{"id":"boot"',
    },
  ];
  render(
    <RestorePreview
      previews={previews}
      rejected={rejected}
      setAside={[]}
      lacks={4}
      onRestore={onRestore}
      onCancel={() => undefined}
    />,
  );
  expect(screen.getByText(/Garment 3 of the file \(<b>Boot<\/b>\) can’t be taken/)).toBeTruthy();
  expect(screen.getByText('{"id":"boot"')).toBeTruthy();
  expect(screen.getByText(/written with 4 garments, and 2 can be read/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Restore what is chosen' }));
  expect(onRestore.mock.calls[0]?.[0].map(({ choice }: { choice: string }) => choice)).toEqual([
    'skip',
    'take',
  ]);
});

test('a damaged garment is looked at, and taken only when that is chosen', () => {
  const fact: Fact = {
    ...{ home: 'k||marks', shown: 664_000, plan: 664_000, tape: 8000, rule: 1, read: '', when: 1 },
    ...{ measured: 720_000, mark: { rank: 1, of: 7, asked: 664_000 } },
  };
  const typed = (text: string) => [{ text, unit: 'cm' as const }];
  const linked = { opening: typed('96.3'), count: [{ link: { quantity: 'n' } }] };
  const coat = {
    ...withWork(newGarment('g', 'Coat', 1), 'k', 2, hooks({ fields: linked })),
    facts: { f: fact },
  };
  const onRestore = vi.fn();
  render(
    <RestorePreview
      previews={[previewOf(undefined, coat, true)]}
      rejected={[]}
      setAside={[]}
      lacks={undefined}
      onRestore={onRestore}
      onCancel={() => undefined}
    />,
  );
  const choice = () => onRestore.mock.calls.at(-1)?.[0][0].choice;
  expect(screen.getByText(/^Damaged: something in it was changed/)).toBeTruthy();
  expect(screen.getByText('opening 96.3 · count (from the garment)')).toBeTruthy();
  expect(screen.getByText('made: 90 mm')).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Restore what is chosen' }));
  expect(choice()).toBe('skip');
  fireEvent.click(screen.getByLabelText('Take the file’s'));
  fireEvent.click(screen.getByRole('button', { name: 'Restore what is chosen' }));
  expect(choice()).toBe('take');
});

test('a long list of names is cut, so that the choice stays in sight', () => {
  const works = Object.fromEntries(
    Array.from({ length: 500 }, (_, i) => [`k${i}`, hooks({ name: `N${i}` })]),
  );
  const coat = { ...newGarment('g', 'Coat', 1), works };
  render(
    <RestorePreview
      previews={[previewOf(undefined, coat, false)]}
      rejected={[]}
      setAside={[{ key: 'garment:x', raw: 1 }]}
      lacks={undefined}
      onRestore={() => undefined}
      onCancel={() => undefined}
    />,
  );
  expect(screen.getByText(/N11 and 488 more/)).toBeTruthy();
  expect(screen.getByText(/One record in it could not be read/)).toBeTruthy();
});

test('what the browser cleared is in memory, and is saved or put back', async () => {
  const deeds = deedsOf({ saveCleared: vi.fn(), putBackCleared: vi.fn() });
  const cleared = [newGarment('g', 'Coat', 1), newGarment('h', 'Hat', 1)];
  render(<GarmentsScreen {...NOTHING} cleared={cleared} deeds={deeds} />);
  expect((await screen.findByRole('alert')).textContent).toContain('in its memory: Coat, Hat');
  fireEvent.click(screen.getByRole('button', { name: 'Save it to a file' }));
  fireEvent.click(screen.getByRole('button', { name: 'Put it back' }));
  expect(deeds.saveCleared).toHaveBeenCalledOnce();
  expect(deeds.putBackCleared).toHaveBeenCalledOnce();
});

test('a calculation is kept under a name, on a new garment', () => {
  const onKeep = vi.fn();
  const first = { name: 'Hem', garment: '', newName: '' };
  render(
    <KeepScreen
      garments={[]}
      first={first}
      hand="right"
      said={undefined}
      sides={[]}
      onKeep={onKeep}
      onLeave={() => undefined}
    />,
  );
  const keep = screen.getByRole('button', { name: 'Keep it' });
  expect(keep).toHaveProperty('disabled', true);
  fireEvent.input(screen.getAllByLabelText('A new garment').at(-1) as HTMLElement, {
    target: { value: 'Coat' },
  });
  fireEvent.click(keep);
  expect(onKeep).toHaveBeenCalledWith({ ...first, newName: 'Coat' });
});

test('a name is taken as it stands in the field, even where it was not drawn again since it was typed', async () => {
  const deeds = deedsOf({ make: vi.fn() });
  render(<GarmentsScreen {...NOTHING} deeds={deeds} />);
  const field = screen.getByLabelText<HTMLInputElement>(/A new garment/);
  // As a program that fills a form in does: typed and sent in one go.
  field.value = 'Cloak';
  field.dispatchEvent(new Event('input', { bubbles: true }));
  field.form?.dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
  expect(deeds.make).toHaveBeenCalledWith('Cloak');
});

test('which side was measured is never taken silently: nothing is kept before it is said', () => {
  const onKeep = vi.fn();
  const first = { name: 'Hooks', garment: 'g', newName: '' };
  render(
    <KeepScreen
      garments={[newGarment('g', 'Coat', 1)]}
      first={first}
      hand="right"
      said={undefined}
      sides={['left', 'right']}
      onKeep={onKeep}
      onLeave={() => undefined}
    />,
  );
  const keep = screen.getByRole('button', { name: 'Keep it' });
  expect(keep).toHaveProperty('disabled', true);
  expect(screen.getByText('Say which side was measured; nothing is kept before.')).toBeTruthy();
  const [left, right] = ['left', 'right'].map((name) => screen.getByRole('radio', { name }));
  expect([left, right].map((one) => (one as HTMLInputElement).checked)).toEqual([false, false]);
  fireEvent.click(right as HTMLElement);
  expect(keep).toHaveProperty('disabled', false);
  fireEvent.click(keep);
  expect(onKeep).toHaveBeenCalledWith({ ...first, side: 'right' });
});

test('under another name it is a new work, of which no side is asked', () => {
  const onKeep = vi.fn();
  const first = { name: 'Hooks', garment: 'g', newName: '' };
  render(
    <KeepScreen
      garments={[newGarment('g', 'Coat', 1)]}
      first={first}
      hand="right"
      said={undefined}
      sides={['left', 'right']}
      onKeep={onKeep}
      onLeave={() => undefined}
    />,
  );
  fireEvent.click(screen.getByRole('radio', { name: 'left' }));
  fireEvent.input(screen.getByLabelText('Name'), { target: { value: 'Eyes' } });
  expect(screen.queryByRole('radio')).toBeNull();
  fireEvent.click(screen.getByRole('button', { name: 'Keep it' }));
  expect(onKeep).toHaveBeenCalledWith({ ...first, name: 'Eyes' });
});
