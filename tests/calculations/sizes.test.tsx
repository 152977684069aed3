import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { buttonhole } from '../../src/calculations/buttonhole/buttonhole.ts';
import { sizes } from '../../src/calculations/sizes/sizes.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';

afterEach(cleanup);

// 25.4 mm ÷ 12 = 2.117 mm (stashbandit.net, a teaching page, worked).
// An inch is 25.4 mm by definition; the uniform manual's table only says how many stitches are used.
test('the stitch formula is credited to the definition, not to the table of stitches in use', () => {
  const [working] = answerTo(sizes, { what: 'stitch' }).workings;
  expect(working?.source).toBe('By definition: an inch is 25.4 mm, a centimetre 10 mm.');
});

test('12 stitches to the inch are 2.12 mm long', async () => {
  open(sizes, { stitch: '12', stitchBy: 'in' });
  expect(await answer()).toMatch(/^2\.12.* mm/);
});

test('one stitch to the inch is one', () => {
  expect(answerTo(sizes, { stitch: '25.4' }).sentence).toMatch(/: 1 stitch to the inch\.$/);
});

test('a stitch of 2 mm is 12.7 to the inch', async () => {
  open(sizes, { stitch: '2' });
  expect(await answer()).toMatch(/^12\.7/);
});

// US 12 = metric 80: (12 − 8) × 5 + 60 (apparelscience.com, a trade page, worked).
test('a US 12 needle is metric 80, and the sources’ conflict is said', async () => {
  open(sizes, { what: 'needle', needle: '12', needleBy: 'us' });
  const said = await answer();
  expect(said).toMatch(/^80/);
  expect(said).toContain('Sources differ');
});

test('a needle between two sizes is said to be so', async () => {
  open(sizes, { what: 'needle', needle: '85' });
  expect(await answer()).toContain('Between two sizes: metric 80 (US 12) and 90 (US 14)');
});

test('a needle no one makes is out of range', async () => {
  open(sizes, { what: 'needle', needle: '500' });
  expect(await answer()).toMatch(/Needle size: .*65.*160/);
});

test('a button of 15 mm is near 24 lines', async () => {
  open(sizes, { what: 'button', button: '15 mm' });
  expect(await answer()).toContain('Nearest size sold: 24 lines, 15.24 mm, 0.24 mm wider.');
});

// 1 in across, 1/4 in thick: 1 1/4 in, 1/8 past the centre line (sewing.about.com, aa060399).
test('a buttonhole for a 1 in button 1/4 in thick', async () => {
  open(buttonhole, { diameter: '1', thickness: '1/4' }, benchOf({ unit: 'in' }));
  const said = await answer();
  expect(said).toMatch(/^1 1\/4.* in long/);
  expect(said).toMatch(/Start 1\/8.* in past the centre line toward the edge; 1 1\/8/);
  expect(said).toContain('The published rules differ');
});

// 7/16 + 3/32 in is 17/32, less 1/8 is 13/32: 6 1/2 sixteenths, so that the button passes 7. By hand.
test('its other end is said as its mark is put on the tape: up, without decimals', async () => {
  open(buttonhole, { diameter: '7/16', thickness: '3/32' }, benchOf({ unit: 'in' }));
  expect(await answer()).toMatch(/^9\/16.* in long.*; 7\/16.* in lies the other way/);
});

test('a button over 1 1/4 in is no small part; a smaller one is cautioned', async () => {
  open(buttonhole, { diameter: '1.5 in' });
  expect(await answer()).not.toContain('choke');
  cleanup();
  open(buttonhole, { diameter: '20 L' });
  expect(await answer()).toContain('choke');
});

const WRONG_HOLE: [string, Record<string, string>, RegExp][] = [
  ['no button', { diameter: '0' }, /^—?Button across: give more than nothing\./],
  ['less than flat', { thickness: '1 − 2' }, /^—?Button thick: give more than nothing\./],
  [
    'unreadable',
    { diameter: '1/0' },
    /^—?Button across: the fraction .*nothing below the stroke. Write 2/,
  ],
];

test.each(WRONG_HOLE)('a buttonhole for %s is refused, with the mend', async (_, set, said) => {
  open(buttonhole, set);
  expect(await answer()).toMatch(said);
});
