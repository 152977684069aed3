import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { FindScreen } from '../../../src/screens/find/find.tsx';

const onOpen = vi.fn();
const onLeave = vi.fn();
beforeEach(() => {
  vi.clearAllMocks();
  render(<FindScreen hand="right" onOpen={onOpen} onLeave={onLeave} />);
});
afterEach(cleanup);

const look = (text: string) =>
  fireEvent.input(screen.getByRole('searchbox'), { target: { value: text } });
const shown = () =>
  within(screen.getByRole('navigation'))
    .getAllByRole('button')
    .map((button) => button.textContent);

test('calculations stand at their stage; one press opens', () => {
  const stage = screen.getByRole('region', { name: 'Turn up' });
  fireEvent.click(within(stage).getByRole('button', { name: 'Hem' }));
  expect(onOpen).toHaveBeenCalledWith('hem', 'Hem');
});

test('what is typed finds by name and by use', () => {
  look('how much ribbon');
  expect(shown()).toEqual(['Lacing']);
  look('drawstring');
  expect(shown()).toEqual(['Drawstring and its casing']);
  look('pin tucks');
  expect(shown()).toEqual(['Tucks']);
  look('frill');
  expect(shown()).toEqual(expect.arrayContaining(['Gathers and frills']));
  look('waistband');
  expect(shown()).toEqual(expect.arrayContaining(['Waistband and cuff']));
  look('collar');
  expect(shown()).toEqual(expect.arrayContaining(['Collar']));
  look('godet');
  expect(shown()).toEqual(expect.arrayContaining(['Flare, godets, another length']));
  look('uneven hem');
  expect(shown()).toEqual(expect.arrayContaining(['Hem levelled from the floor']));
  look('bust dart');
  expect(shown()).toEqual(expect.arrayContaining(['Darts between two girths', 'One dart']));
  look('');
  expect(shown().length).toBeGreaterThan(10);
});

/** What someone at a bench types, and what they mean: by the trade's name, and by what it is for. */
test.each([
  ['how much ribbon', 'Lacing'],
  ['frill', 'Gathers and frills'],
  ['ruffle for a skirt', 'Gathers and frills'],
  ['smocking', 'Gathers and frills'],
  ['tiered skirt', 'Tiers of frills'],
  ['gather only the middle', 'Gathers in zones'],
  ['waistband length', 'Waistband and cuff'],
  ['shirt cuff', 'Waistband and cuff'],
  ['sleeve placket', 'Placket and zip'],
  ['how long a zip', 'Placket and zip'],
  ['where do the buttons go', 'Closures'],
  ['poppers', 'Closures'],
  ['press studs', 'Closures'],
  ['double breasted', 'Closures'],
  ['buttonhole size', 'Buttonhole'],
  ['buttonholes in a row', 'Buttonhole'],
  ['belt loops', 'Groups, laps, loops'],
  ['jeans hem slanted', 'Slanted hem, left and right'],
  ['shorten trousers', 'Hem'],
  ['half circle skirt', 'Circles, flounces and gores'],
  ['peplum', 'Circles, flounces and gores'],
  ['kilt', 'Pleats'],
  ['kick pleat', 'Room at the hip, vent'],
  ['elastic waistband', 'Elastic and its casing'],
  ['hoodie cord', 'Drawstring and its casing'],
  ['quilt binding', 'Binding and piping'],
  ['piping a cushion', 'Binding and piping'],
  ['napkin corners', 'Mitred corner'],
  ['pre-wash fabric', 'Shrinkage'],
  ['serger thread', 'Thread'],
  ['match plaid', 'Stripes and checks'],
  ['sleeve cap ease', 'Matching two edges'],
  ['peter pan collar', 'Collar'],
  ['pocket height', 'Pocket and its place'],
  ['does it go over my head', 'Does it pass: head, hand, hips'],
  ['take in the waist', 'Darts between two girths'],
  ['rotate a dart', 'One dart'],
  ['french seam', 'Seam'],
  ['laced bodice', 'Lacing'],
  ['divide a neckline curve', 'Curves, slants, squaring'],
  ['scallops', 'Equal parts'],
  ['apron ties', 'Piece to cut'],
  ['fabric too narrow', 'Piece to cut'],
  ['toggle', 'Drawstring and its casing'],
  ['rickrack', 'Binding and piping'],
  ['fringe round a shawl', 'Binding and piping'],
  ['curtain', 'Gathers and frills'],
  ['curtain pleats', 'Pleats'],
  ['ironing', 'Hem'],
  ['thread weight', 'Thread'],
  ['cape', 'Circles, flounces and gores'],
  ['armscye', 'Matching two edges'],
  ['grommets', 'Edging strips'],
  ['buckle', 'Groups, laps, loops'],
  ['cushion', 'Piece to cut'],
  ['jersey', 'Fit: ease and girth'],
  ['dyeing', 'Shrinkage'],
  ['steaming wool', 'Shrinkage'],
  ['pintucks', 'Tucks'],
  ['gathering rows', 'Gathers and frills'],
  ['how much binding from this piece', 'Bias strips'],
  ['hem from the cloth there is', 'Hem'],
  ['denier', 'Thread'],
])('%s: %s is among the first three', (typed, wanted) => {
  look(typed);
  expect(shown().slice(0, 3)).toContain(wanted);
});

test('where nothing fits that is said, and all stay in reach', () => {
  look('anvil');
  expect(screen.getByRole('status').textContent).toMatch(/anvil/);
  expect(shown()).toContain('Hem');
  look('hem');
  expect(screen.getByRole('status').textContent).toBe('');
});

test('pressed, the field goes above the phone’s own keys and stays there', () => {
  const search = () => document.querySelector('search')?.dataset.searching;
  expect(search()).toBe('false');
  fireEvent.focus(screen.getByRole('searchbox'));
  expect(search()).toBe('true');
  fireEvent.blur(screen.getByRole('searchbox'));
  expect(search()).toBe('true');
});
