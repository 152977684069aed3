import { expect, test } from 'vitest';
import { MATERIALS } from '../../src/calculation/material.ts';
import { OUTPUTS } from '../../src/calculations/list.ts';

const every = await Promise.all(Object.values(OUTPUTS).map((load) => load()));
const taken = every.flatMap((gives) =>
  gives.outputs.flatMap((output) =>
    output.material ? [{ gives, output, material: output.material }] : [],
  ),
);

test('what takes a material adds up over sides, or is how wide a strip is as long as its edge', () => {
  for (const { gives, output, material } of taken) {
    const where = `${gives.id} ${output.key}`;
    expect(Object.keys(MATERIALS), where).toContain(material.kind);
    expect(['length', 'count'], where).toContain(output.kind);
    expect(output.adds, where).toBe(material.edge !== true);
    const form = MATERIALS[material.kind];
    if (form === 'count')
      expect([output.kind, material.along], where).toEqual(['count', undefined]);
    if (form === 'laid') expect(material.across ?? material.edge, where).toBeTruthy();
    if (output.kind === 'count' && form !== 'count') expect(material.along, where).toBeDefined();
  }
});

test('the sizes of a piece are lengths of the same calculation', () => {
  for (const { gives, material } of taken) {
    for (const size of [material.along, material.across]) {
      if (!size) continue;
      expect(gives.outputs).toContain(size);
      expect(size.kind).toBe('length');
    }
  }
});

test('works take cloth, strips, lace and closures of themselves', () => {
  const all = taken.map(
    ({ gives, output, material }) => `${gives.id} ${output.key}: ${material.kind}`,
  );
  expect(all).toEqual(
    expect.arrayContaining([
      'piece count: cloth',
      'pleats cloth: cloth',
      'edging cut-strip: strip',
      'facing facing-deep: strip',
      'seam strip: bias',
      'lacing lace-all: lace',
      'closures count: closure',
    ]),
  );
});
