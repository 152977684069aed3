import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { previewBackup } from '../../src/garment/backup.ts';
import { demoGarment } from '../../src/garment/demo.ts';
import { newGarment, renamed } from '../../src/garment/garment.ts';
import { type GarmentDeeds, GarmentsScreen } from '../../src/screens/garments/garments.tsx';
import { KeepScreen } from '../../src/screens/garments/keep.tsx';
import { RestorePreview } from '../../src/screens/garments/restore-preview.tsx';

afterEach(cleanup);

function deedsOf(set: Partial<GarmentDeeds> = {}): GarmentDeeds {
  const none = () => undefined;
  return {
    make: none,
    demo: none,
    rename: none,
    copy: none,
    remove: none,
    bringBack: none,
    openKept: none,
    takeOff: none,
    backup: none,
    restore: none,
    saveSetAside: none,
    leave: none,
    ...set,
  };
}

const NOTHING = {
  garments: [],
  deleted: [],
  setAside: 0,
  lastBackup: undefined,
  said: undefined,
  undo: undefined,
  hand: 'right' as const,
};

test('an empty bench says how to begin, and asks gently for a backup', () => {
  render(<GarmentsScreen {...NOTHING} deeds={deedsOf()} />);
  expect(screen.getByText(/Nothing is kept yet/)).toBeTruthy();
  expect(screen.getByText(/No backup yet/)).toBeTruthy();
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

test('what is kept stands in the order of the work; the demo says it is invented', () => {
  render(<GarmentsScreen {...NOTHING} garments={[demoGarment('d', 1)]} deeds={deedsOf()} />);
  expect(screen.getByText(/\(invented\)/)).toBeTruthy();
  const stages = screen.getAllByText(/^(Join|Turn up|Close|Edge)$/).map((one) => one.textContent);
  expect(stages).toEqual(['Join', 'Turn up', 'Turn up', 'Close', 'Edge']);
});

test('a deleted garment is had back by one press, and from the bin', () => {
  const coat = newGarment('g', 'Coat', 1);
  const bringBack = vi.fn();
  render(
    <GarmentsScreen {...NOTHING} deleted={[coat]} undo={coat} deeds={deedsOf({ bringBack })} />,
  );
  fireEvent.click(screen.getByRole('button', { name: 'Undo: bring back Coat' }));
  fireEvent.click(screen.getByRole('button', { name: 'Bring back' }));
  expect(bringBack).toHaveBeenCalledTimes(2);
});

test('records set aside are said, and can be saved', () => {
  const saveSetAside = vi.fn();
  render(<GarmentsScreen {...NOTHING} setAside={2} deeds={deedsOf({ saveSetAside })} />);
  expect(screen.getByText(/2 records could not be read and are set aside/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Save what was set aside' }));
  expect(saveSetAside).toHaveBeenCalledOnce();
});

test('a restore is chosen garment by garment; one that differs is left unless taken', () => {
  const here = newGarment('g', 'Coat', 5);
  const previews = previewBackup([here], [renamed(here, 'Cloak', 9), newGarment('h', 'Hat', 1)]);
  const onRestore = vi.fn();
  const rejected = [
    { place: 3, name: '<b>Boot</b>', damage: { kind: 'damaged' as const, part: 'kept' } },
  ];
  render(
    <RestorePreview
      previews={previews}
      rejected={rejected}
      onRestore={onRestore}
      onCancel={() => undefined}
    />,
  );
  expect(screen.getByText(/Garment 3 of the file \(<b>Boot<\/b>\) can’t be taken/)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Restore what is chosen' }));
  expect(onRestore.mock.calls[0]?.[0].map(({ choice }: { choice: string }) => choice)).toEqual([
    'skip',
    'take',
  ]);
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
