import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test, vi } from 'vitest';
import type { Handed } from '../../../src/garment/share/read-shared.ts';
import { Receive, type Received } from '../../../src/screens/garment/share/receive.tsx';
import { Share, type ShareChoice } from '../../../src/screens/garment/share/share.tsx';
import { waistcoat } from '../../garment/trial/waistcoat.ts';

afterEach(cleanup);

const NONE = { bodies: 0, typed: 0, notes: 0, photos: 0, facts: 0 };
const onLink = vi.fn(async () => undefined);
const onFile = vi.fn(async () => undefined);
let chosen: ShareChoice;

function Shown({ length = 100 }: { length?: number }) {
  const [choice, setChoice] = useState<ShareChoice>({
    ...{ bodies: false, notes: false, times: false, goOn: false },
  });
  chosen = choice;
  return (
    <Share
      name="Coat"
      hand="right"
      pending={true}
      has={{ ...NONE, bodies: 2, notes: 1, facts: 3 }}
      choice={choice}
      left={{ ...NONE, bodies: 2, typed: 2, photos: 1 }}
      link={{ address: 'x'.repeat(length), most: 8000 }}
      numbers={['Waist', ...Array.from({ length: 9 }, (_, i) => `Edge ${i}`)]}
      canShare={true}
      onChoice={setChoice}
      onLink={onLink}
      onFile={onFile}
      onLeave={() => undefined}
    />
  );
}

test('nothing of a body, no note and no time goes along unless it is ticked', () => {
  render(<Shown />);
  expect(chosen).toEqual({ bodies: false, notes: false, times: false, goOn: false });
  fireEvent.click(screen.getByLabelText('2 measures of a body, with names'));
  fireEvent.click(screen.getByLabelText('The note'));
  fireEvent.click(screen.getByLabelText('When each was done'));
  fireEvent.click(screen.getByLabelText('as made: the same garment, to go on'));
  expect(chosen).toEqual({ bodies: true, notes: true, times: true, goOn: true });
});

test('what is left out, and what stands in its place, is said', () => {
  render(<Shown />);
  expect(screen.getByText(/2 numbers that took measures of a body hold/)).toBeTruthy();
  expect(screen.getByText('Photos stay on this phone.')).toBeTruthy();
  expect(
    screen.getByText(/not said to be of a body go along: Waist, Edge 0, .*, and 2 more\./),
  ).toBeTruthy();
  expect(screen.getByText(/A number is still being typed/)).toBeTruthy();
});

test('a link is copied or shared; one that is too long leaves the file', async () => {
  const { unmount } = render(<Shown />);
  fireEvent.click(screen.getByText('Copy the link'));
  expect((await screen.findByRole('status')).textContent).toBe('The link is copied.');
  expect(onLink).toHaveBeenCalledWith('copy');
  unmount();
  render(<Shown length={9000} />);
  expect(screen.queryByText('Copy the link')).toBeNull();
  expect(screen.getByText(/it would have 9000 characters, and 8000 are the most/)).toBeTruthy();
  fireEvent.click(screen.getByText('Share the file'));
  expect(onFile).toHaveBeenCalledWith('share');
});

test('what could not be handed over is said', async () => {
  onFile.mockRejectedValueOnce(new Error('no'));
  render(<Shown />);
  fireEvent.click(screen.getByText('Save the file'));
  expect(await screen.findByText(/It could not be handed over/)).toBeTruthy();
});

const onKeep = vi.fn<(handed: Handed) => void>();
const received = (now: Received | undefined) =>
  render(
    <Receive
      hand="right"
      received={now}
      said={undefined}
      onKeep={onKeep}
      onLeave={() => undefined}
    />,
  );
const handed: Handed = { garment: waistcoat, left: { ...NONE, bodies: 1, facts: 3 } };

test('what was handed on is looked at first, and kept only on a press', () => {
  received({ ok: true, handed, damaged: false });
  expect(screen.getByRole('heading', { name: 'Waistcoat (invented)' })).toBeTruthy();
  expect(screen.getByText('3 works, 2 measures')).toBeTruthy();
  expect(screen.getByText('Armhole strip')).toBeTruthy();
  expect(screen.getByText('A measure of a body was left out.')).toBeTruthy();
  expect(screen.getByText('3 that were made are notes.')).toBeTruthy();
  expect(onKeep).not.toHaveBeenCalled();
  fireEvent.click(screen.getByText('Keep it as a new garment'));
  expect(onKeep).toHaveBeenCalledWith(handed);
});

test.each([
  ['newer', /newer version of this app. Update the app/],
  ['damaged', /cut off or damaged/],
  ['too-large', /more than a garment can be/],
  ['cant-unpack', /can’t unpack it/],
  ['none', /No garment came along/],
] as const)('why nothing can be taken is said: %s', (fault, said) => {
  received({ ok: false, fault });
  expect(screen.getByRole('alert').textContent).toMatch(said);
  expect(screen.queryByText('Keep it as a new garment')).toBeNull();
});

test('a file that was changed after it was written says so', () => {
  received({ ok: true, handed, damaged: true });
  expect(screen.getByText(/changed after it was written/)).toBeTruthy();
});
