import { expect, test } from 'vitest';
import { benchSaid, isOf, lastHomeIn, withLastHome } from '../../../src/app/garment/last-homes.ts';
import type { LastHome } from '../../../src/screens/garment/home/last-home.tsx';
import { benchOf } from '../../controls/helpers.ts';

const BENCH = benchOf();
const last = (garment: string): LastHome => ({
  ...{ garment, name: 'Coat', made: '3 of 9 made', above: 'Hem', number: '2 cm', below: '' },
  ...{ hand: 'right', bench: benchSaid(BENCH), changed: 5, edits: 2 },
});

test('what homes last said is kept of each garment, of the twenty latest', () => {
  let kept: unknown;
  for (let i = 1; i <= 22; i++) kept = withLastHome(kept, `g${i}`, last(`g${i}`));
  expect(lastHomeIn(kept, 'g2', BENCH)).toBeUndefined();
  expect(lastHomeIn(kept, 'g3', BENCH)).toEqual(last('g3'));
  kept = withLastHome(kept, 'g3', { ...last('g3'), number: '3 cm' });
  kept = withLastHome(kept, 'g23', last('g23'));
  expect(lastHomeIn(kept, 'g3', BENCH)?.number).toBe('3 cm');
  expect(lastHomeIn(kept, 'g4', BENCH)).toBeUndefined();
  kept = withLastHome(kept, 'g3', undefined);
  expect(lastHomeIn(kept, 'g3', BENCH)).toBeUndefined();
});

test('on another tape it is not shown, nor what an earlier build kept; in the other hand it is', () => {
  const kept = withLastHome({ garment: 'g', name: 'Coat' }, 'g', last('g'));
  expect(lastHomeIn(kept, 'g', benchOf({ unit: 'in' }))).toBeUndefined();
  expect(lastHomeIn(kept, 'g', benchOf({ decimalMark: ',' }))).toBeUndefined();
  expect(lastHomeIn(kept, 'g', benchOf({ hand: 'left' }))?.hand).toBe('left');
  expect(lastHomeIn({ ...last('g') }, 'g', BENCH)).toBeUndefined();
  expect(lastHomeIn(undefined, 'g', BENCH)).toBeUndefined();
});

test('of a garment that was changed since it is not', () => {
  expect(isOf(last('g'), { changed: 5, edits: 2 })).toBe(true);
  expect(isOf(last('g'), { changed: 6, edits: 2 })).toBe(false);
  expect(isOf(last('g'), { changed: 5, edits: 3 })).toBe(false);
});
