import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import type { Draft } from '../../src/calculation/calculation.ts';
import { type Output, type Outputs, STAGES } from '../../src/calculation/output.ts';
import { type Came, workOutputs } from '../../src/calculation/work-outputs.ts';
import { CALCULATIONS, OUTPUTS } from '../../src/calculations/list.ts';
import { benchOf } from '../controls/helpers.ts';
import { draftsNear } from './any-drafts.ts';

const every = await Promise.all(
  Object.entries(OUTPUTS).map(async ([id, load]) => {
    const page = await CALCULATIONS[id]?.();
    if (!page) throw new Error(`${id} gives something and has no page`);
    return { id, gives: await load(), page };
  }),
);

/** Calculations whose outputs are not declared yet. */
const STILL_WITHOUT = [
  'hem',
  'seam',
  'sizes',
  'corner',
  'centre',
  'buttonhole',
  'edging',
  'lacing',
  'crossing',
  'parts',
  'facing',
];

/** Every field an output reads, by itself or by what it takes. */
function readBy(output: Output, { outputs }: Outputs): Set<string> {
  const taken = outputs.filter(({ key }) => output.takes.includes(key));
  return new Set([
    ...output.reads,
    ...taken.flatMap((one) => [...readBy(one, { outputs } as Outputs)]),
  ]);
}

const came = (gives: Outputs, draft: Draft, bench: Bench) => workOutputs(gives, draft, bench);

/** What can be compared of it: functions of faults aside. */
function comparable(one: Came | undefined) {
  return JSON.parse(JSON.stringify(one ?? null)) as unknown;
}

test('every calculation but the plain length of the first page gives something', () => {
  const without = Object.keys(CALCULATIONS).filter((id) => !Object.hasOwn(OUTPUTS, id));
  expect(without.filter((id) => !STILL_WITHOUT.includes(id))).toEqual(['convert']);
});

describe.each(every)('$id', ({ id, gives, page }) => {
  const { fields, outputs } = gives;
  const known = new Set(Object.keys(fields.specs));

  test('names its outputs once, each after what it takes, of fields there are', () => {
    expect(gives.id).toBe(id);
    const keys = outputs.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const [i, one] of outputs.entries()) {
      const before = keys.slice(0, i);
      expect([...one.reads, ...one.decides].filter((key) => !known.has(key))).toEqual([]);
      expect([...one.takes, ...one.bentBy].filter((key) => !before.includes(key))).toEqual([]);
      for (const bent of one.bentBy) {
        expect(outputs.find(({ key }) => key === bent)?.step, `${bent} bends`).toBeDefined();
      }
      expect(one.name).toMatch(/\S/);
      if (one.step) expect(STAGES).toContain(one.step.stage);
    }
  });

  test('a field that an output doesn’t name never changes it', () => {
    const drafts = draftsNear(page);
    const other = fc.tuple(drafts, fc.constantFrom(...known));
    fc.assert(
      fc.property(drafts, other, (set, [from, key]) => {
        const bench = benchOf();
        const draft = { ...page.start(bench), ...set };
        const typed = { ...page.start(bench), ...from }[key] ?? '';
        const [before, after] = [
          came(gives, draft, bench),
          came(gives, { ...draft, [key]: typed }, bench),
        ];
        for (const one of outputs) {
          const reads = readBy(one, gives);
          if (reads.has(key) || absentBy(one, outputs, before, after).includes(key)) continue;
          expect(comparable(after.get(one.key)), one.key).toEqual(comparable(before.get(one.key)));
        }
      }),
      { numRuns: 300, seed: 1301 },
    );
  });

  test('a number never depends on the bench it is looked at', () => {
    fc.assert(
      fc.property(draftsNear(page), (set) => {
        const here = benchOf();
        const there = benchOf({ hand: 'left', metric: '0.5mm', inch: '1/8in', theme: 'night' });
        const draft = { ...page.start(here), ...set };
        for (const [key, one] of came(gives, draft, here)) {
          expect(comparable(came(gives, draft, there).get(key)), key).toEqual(comparable(one));
        }
      }),
      { numRuns: 100, seed: 1302 },
    );
  });

  test('gives the marks its page shows', () => {
    let shown = 0;
    fc.assert(
      fc.property(draftsNear(page), (set) => {
        const bench = benchOf();
        const draft = { ...page.start(bench), ...set };
        const work = page.work(draft, bench);
        if (!work.ok) return;
        shown += 1;
        const given = came(gives, draft, bench);
        const runs = outputs.flatMap(({ key, kind }) => {
          const one = given.get(key);
          return kind === 'run' && one?.state === 'here' && typeof one.value === 'object'
            ? [one.value.marks.map(({ at, label }) => ({ at, label }))]
            : [];
        });
        const onPage = work.answer.runs.filter(({ run }) => run.marks.length > 0);
        expect(runs.filter((marks) => marks.length > 0)).toEqual(
          onPage.map(({ run }) => run.marks.map(({ at, label }) => ({ at, label }))),
        );
      }),
      { numRuns: 150, seed: 1303 },
    );
    expect(shown).toBeGreaterThan(20);
  });
});

/** The fields that take an output, or what it takes, away in either state. */
function absentBy(
  output: Output,
  outputs: readonly Output[],
  ...states: readonly ReadonlyMap<string, Came>[]
): string[] {
  const chain = [output.key, ...output.takes];
  return states.flatMap((state) =>
    outputs
      .filter(({ key }) => chain.includes(key))
      .flatMap(({ key }) => {
        const one = state.get(key);
        return one?.state === 'absent' ? [one.by] : [];
      }),
  );
}
