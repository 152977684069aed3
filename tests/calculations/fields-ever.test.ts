import { expect, test } from 'vitest';
import { fieldsEver } from '../../src/calculation/fields-ever.ts';
import { inUnitOf } from '../../src/calculation/other-unit.ts';
import { closures } from '../../src/calculations/closures/closures.ts';
import { CALCULATIONS, OUTPUTS } from '../../src/calculations/list.ts';
import { benchOf } from '../controls/helpers.ts';

test.each(Object.keys(OUTPUTS))(
  '%s: every field it ever asks for is found, those it asks for first',
  async (id) => {
    const [page, gives] = await Promise.all([CALCULATIONS[id]?.(), OUTPUTS[id]?.()]);
    if (!page || !gives) throw new Error(`${id} has no page or outputs`);
    const start = page.start(benchOf());
    const keys = fieldsEver(page, start).map(({ key }) => key);
    expect([...keys].sort()).toEqual(Object.keys(gives.fields.specs).sort());
    const asked = page.fields(start).map(({ key }) => key);
    expect(keys.slice(0, asked.length)).toEqual(asked);
  },
);

// The least gap is asked for only by number, where something is sewn and a width is known.
test('what three fields together bring keeps its unit while it isn’t asked for', () => {
  const draft = { ...closures.start(benchOf()), leastGap: '1', by: 'widest' };
  const other = inUnitOf(benchOf({ unit: 'in' }), closures, { draft, page: { u: 'cm' } });
  expect(other.draft.leastGap).toBe('1 cm');
});
