import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { zonesOutputs } from '../../src/calculations/zones/outputs.ts';
import { zones } from '../../src/calculations/zones/zones.ts';
import { mm } from '../../src/lengths/length.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

test('a back gathered only in its middle: what each zone takes, and how it was got', async () => {
  open(zones);
  const said = await answer();
  expect(said).toContain('62 cm of strip to cut, in one length');
  expect(said).toContain('Zone 2, 20 cmtakes 40 cm, 2 times');
  expect(said).toContain('10 cm + 2 × 20 cm + 10 cm + 2 × 1 cm = 62 cm.');
});

test('of the strip that is there: what lies flat first, the rest in proportion', () => {
  const { lines, workings } = answerTo(zones, { by: 'strip' });
  expect(lines[1]).toEqual({ label: 'Zone 2, 20 cm', value: 'takes 33 cm, 1.65 times' });
  expect(workings[0]?.formula).toBe('2 × (55 cm − 2 × 1 cm − 20 cm) ÷ (2 × 20 cm) = 1.65 times.');
});

test('nothing gathered, and hardly, is said', () => {
  expect(answerTo(zones, { ratios: '1; 1; 1' }).warnings).toEqual([
    expect.stringMatching(/^Every/),
  ]);
  expect(answerTo(zones, { ratios: '1; 1.1; 1' }).warnings).toEqual([expect.stringMatching(/1.2/)]);
});

test.each<[string, Record<string, string>, RegExp]>([
  ['two for three zones', { ratios: '1; 2' }, /Times as full, .*3/],
  ['a strip that is too short', { by: 'strip', strip: '41' }, /Strip there is: .*42 cm/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(zones, set);
  expect(await answer()).toMatch(said);
});

test('cut longer than planned, what is gathered takes it and flat zones keep their own', () => {
  expect(givenBy(zonesOutputs, {})).toMatchObject({
    strip: 620,
    marks: [110, 210, 310, 410, 510],
    'edge-marks': [100, 150, 200, 250, 300],
    edge: 400,
  });
  const made = givenBy(zonesOutputs, {}, { steps: { strip: mm(660) } });
  expect(made.marks).toEqual([110, 220, 330, 440, 550]);
  expect(givenBy(zonesOutputs, { by: 'strip' }).strip).toBe('absent by by');
});
