import { expect, test } from 'vitest';
import { at, edit, edited, inverse } from '../../src/garment/actions/slots.ts';
import { garmentOf } from './trial/garments.ts';

const record = garmentOf({
  works: { hem: { name: 'Hem', fields: { depth: '2' } }, gone: null, odd: 7 },
});

test('what is at a place of a record is found; where nothing leads there is nothing', () => {
  expect(at(record, ['works', 'hem', 'fields', 'depth'])).toBe('2');
  for (const id of ['gone', 'odd', 'none', 'toString']) {
    expect(at(record, ['works', id, 'fields', 'depth'])).toBeUndefined();
  }
});

test('edits are taken back in turn, the last one first', () => {
  const once = edit(record, ['works', 'hem', 'name'], 'Lower hem');
  const between = edited(record, [once]);
  const twice = edit(between, ['works', 'hem', 'name'], 'Back hem');
  const after = edited(record, [once, twice]);
  expect(after.works.hem).toMatchObject({ name: 'Back hem' });
  expect(edited(after, inverse([once, twice]))).toEqual(record);
  // A whole work that is added, and then something in it.
  const added = edit(record, ['works', 'cuff'], { name: 'Cuff' });
  const within = edit(edited(record, [added]), ['works', 'cuff', 'name'], 'Left cuff');
  const both = edited(record, [added, within]);
  expect(edited(both, inverse([added, within]))).toEqual(record);
});
