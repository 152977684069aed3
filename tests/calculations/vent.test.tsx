import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { ventOutputs } from '../../src/calculations/vent/outputs.ts';
import { vent } from '../../src/calculations/vent/vent.ts';
import { mm } from '../../src/lengths/length.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

/** An invented jacket, worked by hand: 105 needed; from 108 to 100 over 20 cm it is 105 at 7.5 cm. */
const jacket = { hip: '100', ease: '5', seat: '108', hem: '100', down: '20', long: '40' };

test('a vent begins where the garment is as wide as hip and ease', async () => {
  open(vent, jacket);
  type('Ease wanted', '5');
  const said = await answer();
  expect(said).toContain('12.5 cm of vent, at least');
  expect(said).toContain('It begins 27.5 cm from the top edge');
  expect(said).toContain('100 cm + 5 cm = 105 cm.');
  expect(said).toContain('40 cm − 27.5 cm = 12.5 cm.');
});

test('what is lacking at the hip is said first, and where the vent begins if it can be told', () => {
  const tight = answerTo(vent, { ...jacket, seat: '101' });
  expect(tight.headline.after).toBe('lacking at the hip');
  expect(tight.sentence).toContain('begin the vent above the hip');
  const known = answerTo(vent, { ...jacket, seat: '101', top: '90', bodyTop: '80' });
  expect(known.headline.after).toBe('of vent, at least');
  expect(known.warnings.join(' ')).toContain('4 cm is lacking: the vent stands open there');
  expect(known.warnings.join(' ')).toContain('the body may be fuller');
  expect(answerTo(vent, { ...jacket, seat: '98' }).warnings[0]).toBe(
    'At the hip it is 2 cm smaller than the body.',
  );
});

test('wide enough all the way down, none is needed', () => {
  const wide = answerTo(vent, { ...jacket, hem: '110' });
  expect(wide.headline.after).toBe('of ease at the hip: no vent is needed');
  expect(givenBy(ventOutputs, { ...jacket, hem: '110' })).toEqual({
    ...{ needs: 1050, ease: 80, lacks: -30 },
    ...{ begins: 'absent by hem', vent: 'absent by hem' },
  });
});

test('outputs: room, where the vent begins, how long it is; by where it was marked', () => {
  expect(givenBy(ventOutputs, jacket)).toEqual({
    ...{ needs: 1050, ease: 80, lacks: -30, begins: 275, vent: 125 },
  });
  const made = { steps: { begins: mm(260) } };
  expect(givenBy(ventOutputs, jacket, made)).toMatchObject({ begins: 275, vent: 140 });
  expect(givenBy(ventOutputs, { ...jacket, seat: '101' })).toMatchObject({
    ...{ lacks: 40, begins: ['seat'], vent: ['seat'] },
  });
});

test('what is wrong names its field', () => {
  const work = workOn(vent, { ...jacket, long: '20' });
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(['long']);
});
