/**
 * One garment's pleats, wherever they are looked at: on their page, in the garment at home, in their work and
 * its list, on the sheet. The numbers are of Dress Making, Trade Practical 2 (teaching book, Government of
 * India, 2024), page 203: 92 cm in pleats of 5, 4 deep are 236 of strip, 18 pleats, 5.111 each.
 */
import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { pleats } from '../../../src/calculations/pleats/pleats.ts';
import { begin } from '../../../src/garment/actions/state.ts';
import { listedOf } from '../../../src/garment/record/listed.ts';
import { GarmentHome } from '../../../src/screens/garment/home/home.tsx';
import { GarmentSheet } from '../../../src/screens/garment/sheet/sheet.tsx';
import { benchOf } from '../../controls/helpers.ts';
import { garmentOf, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';
import { answer, open } from '../helpers.tsx';
import { openIn } from './work-hand.tsx';

const SET = { finished: '92', depth: '4', seam: '0' };
const STRIP = '236 cm';
const EACH = '5.111 cm';
const draft: Record<string, string> = { ...pleats.start(benchOf()), ...SET };
const fields = Object.entries(draft).filter(([, text]) => text !== '');
const skirt = garmentOf({
  works: {
    pleats: {
      ...{ name: 'Skirt pleats', calculation: 'pleats', rank: 1 },
      fields: Object.fromEntries(fields.map(([key, text]) => [key, typed(text)])),
    },
  },
});

const all = () => document.body.textContent ?? '';
const nothing = () => undefined;

beforeEach(() => {
  document.body.replaceChildren();
});
afterEach(cleanup);

test('on its own page', async () => {
  open(pleats, SET);
  const said = await answer();
  expect(said).toContain(`${STRIP} of strip to cut`);
  expect(said).toContain('18 knife pleats');
  expect(said).toContain(`one every ${EACH}`);
});

test('at home the key asks for that strip, and the garment has one work in the list', () => {
  render(
    <GarmentHome
      {...{
        state: begin(skirt, KNOWN),
        inHand: undefined,
        bench: benchOf(),
        waiting: 0,
        onAgain: undefined,
      }}
      {...{ said: undefined, missing: () => '', drawing: null, onAct: nothing }}
      {...{ onInHand: nothing, onGo: nothing, onSpeak: nothing }}
    />,
  );
  expect(screen.getByRole('region', { name: 'The next step' }).textContent).toContain(STRIP);
  expect(listedOf(skirt)).toMatchObject({ works: 1, facts: 0 });
});

test('in its work: on the drawing, in the answer, and in the list of all it gives', async () => {
  await openIn(skirt, 'pleats');
  expect(document.querySelector('.garment-work')?.textContent).toContain(STRIP);
  fireEvent.click(screen.getByRole('button', { name: 'More' }));
  const numbers = [...document.querySelectorAll('.gives button')].map((one) => one.textContent);
  expect(numbers.some((one) => one?.includes(STRIP))).toBe(true);
  expect(numbers.some((one) => one?.includes(EACH))).toBe(true);
});

test('on the sheet, as it is printed and as text', () => {
  render(
    <GarmentSheet
      {...{ state: begin(skirt, KNOWN), bench: benchOf(), day: '8 May 2026', missing: false }}
      {...{ drawings: new Map(), onLeave: nothing }}
      services={{ makePdf: async () => new Blob(), save: async () => undefined, share: undefined }}
    />,
  );
  expect(screen.getByRole('img', { name: /^Page 1/ }).textContent).toContain(STRIP);
  fireEvent.click(screen.getByText('Read it as text'));
  const text = document.querySelector('pre')?.textContent ?? '';
  expect(text).toContain(STRIP);
  expect(text).toContain(EACH);
  expect(all()).not.toContain('NaN');
});
