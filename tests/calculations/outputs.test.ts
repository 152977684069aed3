import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import type { Draft } from '../../src/calculation/calculation.ts';
import { type Output, type Outputs, STAGES } from '../../src/calculation/output.ts';
import { CALCULATIONS, OUTPUTS } from '../../src/calculations/list.ts';
import { type ExactLength, exactLength } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { timesTried } from '../thorough.ts';
import { draftsNear } from './any-drafts.ts';
import { type Came, workOutputs } from './work-outputs.ts';

const every = await Promise.all(
  Object.entries(OUTPUTS).map(async ([id, load]) => {
    const page = await CALCULATIONS[id]?.();
    if (!page) throw new Error(`${id} gives something and has no page`);
    return { id, gives: await load(), page };
  }),
);

/** Every field an output reads, by itself or by what it takes. */
function readBy(output: Output, gives: Outputs): Set<string> {
  return new Set(withTaken(output, gives).flatMap(({ reads }) => reads));
}

/** Every step that bends it, or what it takes. */
function bentBy(output: Output, gives: Outputs): Set<string> {
  return new Set(withTaken(output, gives).flatMap((one) => one.bentBy));
}

/** An output and all it takes, directly or not. */
function withTaken(output: Output, gives: Outputs): Output[] {
  const taken = gives.outputs.filter(({ key }) => output.takes.includes(key));
  return [output, ...taken.flatMap((one) => withTaken(one, gives))];
}

const came = (gives: Outputs, draft: Draft, bench: Bench) => workOutputs(gives, draft, bench);

/** What can be compared of it: functions of faults aside. */
function comparable(one: Came | undefined) {
  return JSON.parse(JSON.stringify(one ?? null)) as unknown;
}

/** That both came to the same. Most do, and a text says so a hundred times quicker than a matcher. */
function expectSame(one: Came | undefined, other: Came | undefined, key: string) {
  if (JSON.stringify(one) !== JSON.stringify(other)) {
    expect(comparable(one), key).toEqual(comparable(other));
  }
}

test('every calculation but the plain length of the first page gives something', () => {
  const without = Object.keys(CALCULATIONS).filter((id) => !Object.hasOwn(OUTPUTS, id));
  expect(without).toEqual(['convert']);
});

describe.each(every)('$id', ({ id, gives, page }) => {
  const { fields, outputs } = gives;
  const known = new Set(Object.keys(fields.specs));
  const reading = new Map(outputs.map((one) => [one, readBy(one, gives)]));
  const bending = new Map(outputs.map((one) => [one, bentBy(one, gives)]));

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

  test('the key tells each row of it from the others', () => {
    const rows = outputs.filter(({ kind, step }) => kind === 'run' && step);
    const said = rows.map(({ step }) => `${step?.do}, ${step?.datum}`);
    expect(new Set(said).size, said.join('; ')).toBe(said.length);
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
          if (reading.get(one)?.has(key) || absentBy(one, outputs, before, after).includes(key))
            continue;
          expectSame(after.get(one.key), before.get(one.key), one.key);
        }
      }),
      { numRuns: timesTried(300), seed: 1301 },
    );
  });

  test('a number never depends on the bench it is looked at', () => {
    fc.assert(
      fc.property(draftsNear(page), (set) => {
        const here = benchOf();
        const there = benchOf({ hand: 'left', metric: '0.5mm', inch: '1/8in', theme: 'night' });
        const draft = { ...page.start(here), ...set };
        const elsewhere = came(gives, draft, there);
        for (const [key, one] of came(gives, draft, here)) {
          expectSame(elsewhere.get(key), one, key);
        }
      }),
      { numRuns: timesTried(100), seed: 1302 },
    );
  });

  // Marks that are alike are a run's; a few different lines are each a length with its own step.
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
        const onPage = work.answer.runs.flatMap(({ run }) =>
          run.marks.length > 0 ? [run.marks.map(({ at, label }) => ({ at, label }))] : [],
        );
        const runs = runsOf(given);
        if (runs.length > 0) {
          expect(runs).toEqual(onPage);
          return;
        }
        const places = outputs.flatMap(({ key, step }) => (step ? lengthOf(given.get(key)) : []));
        for (const { at } of onPage.flat()) expect(places).toContain(at);
      }),
      { numRuns: timesTried(150), seed: 1303 },
    );
    expect(shown).toBeGreaterThan(timesTried(150) / 10);
  });

  test('a step made just as planned bends nothing, and one made otherwise what names it', () => {
    const bends = new Set<string>();
    const there = new Set<string>();
    fc.assert(
      fc.property(draftsNear(page), fc.integer({ min: 800, max: 8000 }), (set, off) => {
        const bench = benchOf();
        const draft = { ...page.start(bench), ...set };
        const planned = came(gives, draft, bench);
        for (const [key, { state }] of planned) if (state === 'here') there.add(key);
        const steps = outputs.flatMap(({ key, step }) =>
          step ? lengthOf(planned.get(key)).map((at) => [key, at] as const) : [],
        );
        const asPlanned = workOutputs(gives, draft, bench, { steps: Object.fromEntries(steps) });
        for (const { key } of outputs) expectNear(asPlanned.get(key), planned.get(key), key);
        for (const [key, at] of steps) {
          const made = { [key]: exactLength(at + off) };
          // Alone, and with all else made as planned: some bend only what is marked at both ends.
          const alone = workOutputs(gives, draft, bench, { steps: made });
          const rest = { steps: { ...Object.fromEntries(steps), ...made } };
          const among = workOutputs(gives, draft, bench, rest);
          for (const one of outputs) {
            const same = planned.get(one.key);
            if (!bending.get(one)?.has(key)) expectSame(alone.get(one.key), same, one.key);
            const bent = differs(alone, planned, one) || differs(among, asPlanned, one);
            if (one.bentBy.includes(key) && bent) bends.add(`${one.key} by ${key}`);
          }
        }
      }),
      { numRuns: 150, seed: 1304 },
    );
    // No draft tried turns so many corners that a strip has all its sides.
    for (const { key, bentBy } of outputs.filter((one) => there.has(one.key))) {
      for (const by of bentBy) expect(bends).toContain(`${key} by ${by}`);
    }
  });
});

type All = ReadonlyMap<string, Came>;

function differs(one: All, other: All, { key }: Output): boolean {
  return JSON.stringify(one.get(key)) !== JSON.stringify(other.get(key));
}

/** The places and labels of every run with marks. */
function runsOf(given: ReadonlyMap<string, Came>) {
  return [...given.values()].flatMap((one) =>
    one.state === 'here' && typeof one.value === 'object' && one.value.marks.length > 0
      ? [one.value.marks.map(({ at, label }) => ({ at, label }))]
      : [],
  );
}

/** The length it came to, if it did. */
function lengthOf(one: Came | undefined): ExactLength[] {
  return one?.state === 'here' && typeof one.value === 'number' ? [one.value as ExactLength] : [];
}

/** The same, to a thousandth of a millimetre: what was made is whole units. */
function expectNear(one: Came | undefined, other: Came | undefined, key: string) {
  const [here, there] = [lengthOf(one)[0], lengthOf(other)[0]];
  if (here === undefined || there === undefined) {
    expectSame(one, other, key);
  } else if (Math.abs(here - there) >= 8) expect.fail(`${key}: ${here} and ${there}`);
}

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
