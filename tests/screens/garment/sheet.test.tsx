import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { DRAWINGS } from '../../../src/calculations/list.ts';
import type { PaperServices } from '../../../src/controls/paper-services.ts';
import { begin } from '../../../src/garment/actions/state.ts';
import { GarmentSheet } from '../../../src/screens/garment/sheet/sheet.tsx';
import { benchOf } from '../../controls/helpers.ts';
import { KNOWN } from '../../garment/trial/known.ts';
import { waistcoat } from '../../garment/trial/waistcoat.ts';

const PDF = new Blob(['%PDF-'], { type: 'application/pdf' });
const makePdf = vi.fn<PaperServices['makePdf']>();
const save = vi.fn<PaperServices['save']>();
const share = vi.fn<NonNullable<PaperServices['share']>>();
const drawing = await DRAWINGS.closures?.();

beforeEach(() => {
  vi.resetAllMocks();
  makePdf.mockResolvedValue(PDF);
  save.mockResolvedValue();
  share.mockResolvedValue('shared');
});
afterEach(cleanup);

/** @param more works like the hooks, by name */
function open(missing = false, more: readonly string[] = []) {
  const { front } = waistcoat.quantities as { front: object };
  const garment = {
    ...waistcoat,
    quantities: { ...waistcoat.quantities, front: { ...front, body: true } },
    works: { ...waistcoat.works, ...Object.fromEntries(more.map(likeHooks)) },
  };
  render(
    <GarmentSheet
      state={begin(garment, KNOWN)}
      bench={benchOf()}
      day="8 May 2026"
      drawings={new Map(drawing ? [['closures', drawing]] : [])}
      missing={missing}
      services={{ makePdf, save, share }}
      onLeave={() => undefined}
    />,
  );
}

function likeHooks(name: string, i: number) {
  const { hooks } = waistcoat.works as { hooks: object };
  return [name, { ...hooks, name, rank: 10 + i }];
}

const pages = () => screen.getAllByRole('img', { name: /^Page \d of \d$/ });

test('the pages are seen before they are printed, as they will be', () => {
  open();
  expect(pages().length).toBeGreaterThan(0);
  const [first] = pages();
  expect(first?.getAttribute('viewBox')).toBe('0 0 210 297');
  expect(first?.textContent).toContain('Waistcoat (invented)');
  expect(first?.textContent).toContain('0 of 78 made');
  fireEvent.click(screen.getByLabelText('Letter'));
  expect(pages()[0]?.getAttribute('viewBox')).toBe('0 0 215.9 279.4');
});

test('a page is made large by a press, and small again by another', () => {
  open();
  const key = pages()[0]?.closest('button') as HTMLElement;
  fireEvent.click(key);
  expect(key.getAttribute('aria-pressed')).toBe('true');
  fireEvent.click(key);
  expect(key.getAttribute('aria-pressed')).toBe('false');
});

test('where there is more on it than two pages hold, that is said', () => {
  open();
  expect(screen.getByRole('status').textContent).toMatch(/^(One page|2 pages)\./);
  cleanup();
  open(
    false,
    Array.from({ length: 40 }, (_, i) => `Hooks ${i}`),
  );
  expect(screen.getByRole('status').textContent).toMatch(/^\d+ pages: there is more/);
});

test('long rows are put at true size in parts where that is wanted', () => {
  open();
  expect(document.body.textContent).not.toContain('Measure this: 50 mm');
  fireEvent.click(screen.getByLabelText('at true size, in parts'));
  expect(document.body.textContent).toContain('Measure this: 50 mm');
  expect(document.body.textContent).toMatch(/true size, from the cut end; part 1 of 4/);
});

test('measures of a body are left out where that is wanted', () => {
  open();
  expect(pages()[0]?.textContent).toContain('Front edge (body)');
  fireEvent.click(screen.getByLabelText('left out'));
  expect(pages()[0]?.textContent).not.toContain('Front edge');
});

test('the very pages that are shown are written, then saved or shared', async () => {
  open();
  fireEvent.click(screen.getByText('Make the PDF'));
  fireEvent.click(await screen.findByText('Share the PDF'));
  expect(share).toHaveBeenCalledWith('Waistcoat (invented).pdf', PDF);
  expect(makePdf.mock.calls[0]?.[1]).toHaveLength(pages().length);
});

test('as text it says the same, here and in a file', async () => {
  open();
  fireEvent.click(screen.getByText('Read it as text'));
  const text = document.querySelector('pre')?.textContent ?? '';
  expect(text).toContain('Hooks: sew on, at its middle, from the top edge: 0 of 7 made');
  expect(text).toContain('[ ] 2: 8.3 cm');
  fireEvent.click(screen.getByText('Save as text'));
  await waitFor(() => expect(save).toHaveBeenCalled());
  const [name, file] = save.mock.calls[0] ?? [];
  expect(name).toBe('Waistcoat (invented).txt');
  expect(file?.type).toBe('text/plain');
  expect(file?.size).toBe(new TextEncoder().encode(text).length);
  save.mockRejectedValue(new Error('full'));
  fireEvent.click(screen.getByText('Save as text'));
  expect(await screen.findByText(/The text could not be written/)).toBeTruthy();
});

test('drawings that could not be fetched are said to be lacking', () => {
  open(true);
  expect(screen.getByRole('status').textContent).toContain('Drawings are lacking');
});
