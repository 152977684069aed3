import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { mm } from '../../../src/lengths/length.ts';
import { doing, garment, one, work } from '../../garment/materials/garments.ts';
import { openIn } from './work-hand.tsx';

afterEach(cleanup);

const cm = (amount: number) => mm(10 * amount);
const now = 5;
const typed = (text: string) => [{ text, unit: 'cm' as const }];

/** Hooks along an opening as long as the lay, by a number that takes it. */
function hooksByLay() {
  const front = work('piece', 'width=40&length=60&top=0&bottom=0&side=0&count=2', {
    name: 'Front',
  });
  const hooks = work('closures', 'opening=30&count=5&top=1&bottom=2');
  const start = garment({ front, hooks }, { cloth: { width: cm(140) } });
  const found = { length: cm(64), laid: [], of: one(start, 'cloth').lay!.of! };
  const quantity = { id: 'laid', name: 'Length laid: Cloth' };
  const half = { name: 'Half of it', kind: 'length', rank: 2 } as const;
  return doing(
    start,
    { do: 'lay', id: 'cloth', found, quantity, now },
    {
      do: 'add',
      to: 'quantities',
      id: 'half',
      it: { ...half, parts: [{ link: { quantity: 'laid' } }] },
      now,
    },
    {
      do: 'link',
      place: { work: 'hooks', field: 'opening' },
      parts: [{ link: { quantity: 'half' } }],
      now,
    },
  );
}

test('a field says that the lay whose length it takes was found for other sizes, once it was', async () => {
  const held = await openIn(hooksByLay().record, 'hooks');
  expect(document.body.textContent).not.toMatch(/was found for/);
  held.act({ do: 'choose', place: { work: 'front', field: 'width' }, parts: typed('42'), now });
  const said = await screen.findAllByText(/The lay of 64 cm was found for other sizes \(Front\)/);
  // Where the work is read, and in the field itself, which a screen reader goes to.
  expect(said).toHaveLength(2);
  expect(said[0]?.textContent).toMatch(/^Opening/);
  held.act({ do: 'choose', place: { work: 'front', field: 'width' }, parts: typed('40'), now });
  await expect.poll(() => document.body.textContent).not.toMatch(/was found for/);
});
