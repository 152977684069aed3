import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { demoWords } from '#words/demo-words.ts';
import { previewOf } from '../../src/garment/backup-preview.ts';
import { withKept } from '../../src/garment/changes.ts';
import { demoGarment } from '../../src/garment/demo.ts';
import { type Garment, type Kept, newGarment } from '../../src/garment/garment.ts';
import { renamed, withoutKept } from '../../src/garment/list-changes.ts';
import { listedOf } from '../../src/garment/listed.ts';
import type { GarmentDeeds } from '../../src/screens/garments/deeds.ts';
import { type GarmentsProps, GarmentsScreen } from '../../src/screens/garments/garments.tsx';
import { KeepScreen } from '../../src/screens/garments/keep.tsx';
import { RestorePreview } from '../../src/screens/garments/restore-preview.tsx';
import { benchOf } from '../controls/helpers.ts';

afterEach(cleanup);

function deedsOf(set: Partial<GarmentDeeds> = {}): GarmentDeeds {
  const none = () => undefined;
  return {
    make: none,
    demo: none,
    open: none,
    rename: none,
    copy: none,
    remove: none,
    bringBack: none,
    openKept: none,
    follow: none,
    takeOff: none,
    putBack: none,
    backup: none,
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
  open: undefined,
  opened: undefined,
  deleted: [],
  setAside: { damaged: 0, newer: 0 },
  cleared: [],
  lastBackup: undefined,
  due: undefined,
  said: undefined,
  undo: undefined,
  bench: benchOf(),
};

/** The list with one garment, which is open. */
function shown(garment: Garment): Pick<GarmentsProps, 'garments' | 'open' | 'opened'> {
  return { garments: [listedOf(garment)], open: garment.id, opened: garment };
}

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

test('one garment is open at a time; its stages stand in the order of the work', () => {
  const open = vi.fn();
  const demo = demoGarment(demoWords, 'd', 1);
  const coat = newGarment('g', 'Coat', 1);
  render(
    <GarmentsScreen
      {...NOTHING}
      garments={[coat, demo].map(listedOf)}
      open="d"
      opened={demo}
      deeds={deedsOf({ open })}
    />,
  );
  expect(screen.getByText(/^Invented/)).toBeTruthy();
  const stages = screen.getAllByRole('heading', { level: 3 }).map((one) => one.textContent);
  expect(stages).toEqual(['Join', 'Turn up', 'Close', 'Edge']);
  const [closed, opened] = screen
    .getAllByRole('button', { expanded: false })
    .concat(screen.getAllByRole('button', { expanded: true }));
  expect(closed?.textContent).toContain('Coat');
  fireEvent.click(closed as HTMLElement);
  expect(open).toHaveBeenLastCalledWith('g');
  fireEvent.click(opened as HTMLElement);
  expect(open).toHaveBeenLastCalledWith(undefined);
});

const CM = 80_000;
const hooks: Kept = {
  id: 'k',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: {},
  runs: [
    {
      planned: { '1': 1.2 * CM, '2': 8.3 * CM, '3': 15.4 * CM },
      made: { '1': '', '2': '9 cm', '4': '1 in', '5': 'nonsense' },
    },
    { planned: { A: 2 * CM }, made: { A: '1.5 cm' } },
  ],
};

test('planned stands beside as made with the difference, for every mark that was measured', async () => {
  const coat = withKept(newGarment('g', 'Coat', 1), hooks, 2);
  render(<GarmentsScreen {...NOTHING} {...shown(coat)} deeds={deedsOf()} />);
  expect(screen.getByText('3 of 4 made, and 2 more than asked for')).toBeTruthy();
  const fold = screen.getByRole('button', { name: '4 as made' });
  expect(screen.queryByText('Mark 2')).toBeNull();
  fireEvent.click(fold);
  await screen.findByText('Mark 2');
  const said = (mark: string) => screen.getByText(mark).parentElement?.textContent;
  expect(said('Mark 2')).toBe('Mark 2planned 8.3 cmas made 9 cm0.7 cm further on');
  expect(said('Mark A')).toBe('Mark Aplanned 2 cmas made 1.5 cm0.5 cm short of it');
  expect(said('Mark 4')).toBe('Mark 4no plan keptas made 2.54 cm');
  expect(said('Mark 5')).toMatch(/as made “nonsense”: measure it again/);
  expect(screen.queryByText('Mark 1')).toBeNull();
  expect(screen.getByRole('heading', { name: 'Run 2' })).toBeTruthy();
});

test('all marks are followed by one press, or those of one calculation', () => {
  const follow = vi.fn();
  const coat = withKept(newGarment('g', 'Coat', 1), hooks, 2);
  render(<GarmentsScreen {...NOTHING} {...shown(coat)} deeds={deedsOf({ follow })} />);
  fireEvent.click(screen.getByRole('button', { name: 'Follow all marks, in order' }));
  expect(follow).toHaveBeenLastCalledWith(coat);
  fireEvent.click(screen.getByRole('button', { name: 'Follow' }));
  expect(follow).toHaveBeenLastCalledWith(coat, coat.kept[0]);
});

test('what was taken off is put back', async () => {
  const putBack = vi.fn();
  const coat = withoutKept(withKept(newGarment('g', 'Coat', 1), hooks, 2), 'k', 3);
  render(<GarmentsScreen {...NOTHING} {...shown(coat)} deeds={deedsOf({ putBack })} />);
  fireEvent.click(await screen.findByRole('button', { name: 'Put back on' }));
  expect(putBack).toHaveBeenCalledWith(coat, hooks);
});

test('a backup is asked for in a quiet line, and can be put off', async () => {
  const backup = vi.fn();
  const putOffBackup = vi.fn();
  render(
    <GarmentsScreen
      {...NOTHING}
      lastBackup="1 May"
      due={{ changes: 3, days: 8 }}
      deeds={deedsOf({ backup, putOffBackup })}
    />,
  );
  expect(await screen.findByText('3 changes in 8 days since the last backup.')).toBeTruthy();
  fireEvent.click(screen.getAllByRole('button', { name: 'Save a backup' })[0] as HTMLElement);
  fireEvent.click(screen.getByRole('button', { name: 'Not now' }));
  expect(backup).toHaveBeenCalledOnce();
  expect(putOffBackup).toHaveBeenCalledOnce();
});

test('a deleted garment is had back by one press, and from the bin', async () => {
  const coat = newGarment('g', 'Coat', 1);
  const bringBack = vi.fn();
  const undo = { words: 'Undo: bring back Coat', deed: () => bringBack(coat) };
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
      damage: { kind: 'damaged' as const, part: 'kept' as const, place: 2 },
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
  expect(
    screen.getByText(/Garment 3 of the file \(<b>Boot<\/b>\) can’t be taken: its calculation 2 is/),
  ).toBeTruthy();
  expect(screen.getByText('{"id":"boot"')).toBeTruthy();
  expect(screen.getByText(/written with 4 garments, and 2 can be read/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Restore what is chosen' }));
  expect(onRestore.mock.calls[0]?.[0].map(({ choice }: { choice: string }) => choice)).toEqual([
    'skip',
    'take',
  ]);
});

test('a damaged garment is looked at, and taken only when that is chosen', () => {
  const coat = withKept(
    newGarment('g', 'Coat', 1),
    { ...hooks, draft: { u: 'cm', opening: '96.3' } },
    2,
  );
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
  expect(screen.getByText('opening 96.3')).toBeTruthy();
  expect(screen.getByText(/2 made 9 cm/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Restore what is chosen' }));
  expect(choice()).toBe('skip');
  fireEvent.click(screen.getByLabelText('Take the file’s'));
  fireEvent.click(screen.getByRole('button', { name: 'Restore what is chosen' }));
  expect(choice()).toBe('take');
});

test('a long list of names is cut, so that the choice stays in sight', () => {
  const many = Array.from({ length: 500 }, (_, i) => ({ ...hooks, id: `k${i}`, name: `N${i}` }));
  const coat = { ...newGarment('g', 'Coat', 1), kept: many };
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

test('a calculation is kept under a name, at its stage, on a new garment', () => {
  const onKeep = vi.fn();
  const first = { name: 'Hem', stage: 'turn-up' as const, garment: '', newName: '' };
  render(
    <KeepScreen
      garments={[]}
      first={first}
      hand="right"
      said={undefined}
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
