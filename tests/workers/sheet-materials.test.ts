import { expect, test } from 'vitest';
import { sheetText } from '../../src/screens/garment/sheet/sheet-as-text.ts';
import { garment, work } from '../garment/materials/garments.ts';
import { pageFaults } from './sheet-faults.ts';
import { saidOf, sheetOn } from './sheets.ts';

/** Invented: two fronts of cloth 140 cm wide, and seven hooks that are there. */
const { record } = garment(
  {
    hooks: work('closures', 'opening=46.3&count=7&top=1.2&bottom=2.5', { name: 'Hooks' }),
    front: work('piece', 'width=40&length=60&top=1.5&bottom=4&side=1.5&count=2', { name: 'Front' }),
  },
  { cloth: { width: 11_200_000 }, 'closure|hooks||count': { there: 7 } },
);
const SAID = saidOf(record);
const materials = SAID.blocks.flatMap((block) =>
  block.kind === 'materials' ? block.materials : [],
);

test('what is to be had at hand is on the sheet, cloth in rows said to be an upper bound', () => {
  // Two of 60 + 1.5 + 4 long lie beside each other in 140: 65.5 cm.
  expect(materials[0]).toMatchObject({ name: 'Cloth', amount: 'at most 65.5 cm', there: false });
  expect(materials[0]?.notes.join(' ')).toContain('upper bound');
});

test('what is there is ticked, on paper and as text', () => {
  expect(materials[1]).toMatchObject({ name: 'Hooks', amount: '7', there: true });
  const text = sheetText(SAID);
  expect(text).toContain('[ ] Cloth: at most 65.5 cm');
  expect(text).toContain('[x] Hooks: 7');
  const ticks = (job: typeof SAID) =>
    sheetOn(job, {}).flatMap(({ shapes }) =>
      shapes.filter((one) => one.kind === 'path' && one.weight === 0.6 && one.points.length === 3),
    ).length;
  const open = SAID.blocks.map((block) =>
    block.kind === 'materials'
      ? { ...block, materials: materials.map((one) => ({ ...one, there: false })) }
      : block,
  );
  expect(ticks(SAID) - ticks({ ...SAID, blocks: open })).toBe(1);
});

test('however many and long they are, they lie on nothing', () => {
  const long = { there: true, name: 'Lining of '.repeat(9), amount: '12 '.repeat(30) };
  const many = Array.from({ length: 60 }, (_, i) => ({
    ...long,
    notes: [`Wanted besides: ${i}. `.repeat(i)],
  }));
  const blocks = [{ kind: 'materials', materials: many } as const, ...SAID.blocks];
  for (const page of sheetOn({ ...SAID, blocks }, {})) expect(pageFaults(page, 10)).toEqual([]);
});
