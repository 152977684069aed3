import { expect, test } from 'vitest';
import { laysTaken } from '../../../src/garment/materials/lays-taken.ts';
import type { Quantity } from '../../../src/garment/record/record.ts';
import { typed } from '../trial/garments.ts';

const of = (quantity: string) => ({ link: { quantity } });
const number = (more: Partial<Quantity>): Quantity => ({
  ...{ name: 'a', kind: 'length', rank: 0, parts: [] },
  ...more,
});
const taken = (all: Readonly<Record<string, Quantity>>, ...ids: string[]) =>
  laysTaken({ quantities: new Map(Object.entries(all)) }, ids.map(of));

const LAID = number({ lay: 'cloth' });

test('the lay of a number that is taken, also by way of others; each once', () => {
  const half = number({ parts: [of('laid')] });
  const both = number({ parts: [of('laid'), of('half'), of('lining')] });
  const all = { laid: LAID, half, both, lining: number({ lay: 'lining' }) };
  expect(taken(all, 'laid')).toEqual(['cloth']);
  expect(taken(all, 'half')).toEqual(['cloth']);
  expect(taken(all, 'both', 'laid')).toEqual(['cloth', 'lining']);
});

test('none where none is taken: typed, of a work, gone, or numbers that take each other', () => {
  const [one, other] = [number({ parts: [of('other')] }), number({ parts: [of('one')] })];
  expect(taken({ laid: LAID, one, other }, 'one', 'gone')).toEqual([]);
  expect(laysTaken({ quantities: new Map([['laid', LAID]]) }, typed('3'))).toEqual([]);
});
