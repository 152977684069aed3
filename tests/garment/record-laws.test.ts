import fc from 'fast-check';
import { expect, test } from 'vitest';
import { begin } from '../../src/garment/actions/state.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Decision, Fact, Garment, Quantity, Work } from '../../src/garment/record/record.ts';
import { placesOf } from '../../src/garment/rows/points.ts';
import { plusMinus } from '../../src/garment/work-out/doubt.ts';
import { askedKey } from '../../src/garment/work-out/node.ts';
import { same } from '../../src/garment/work-out/same.ts';
import { type Answer, workOut } from '../../src/garment/work-out/work-out.ts';
import { damaged, doubled, renamed } from './trial/changed-records.ts';
import { alike } from './trial/compare.ts';
import { dice } from './trial/dice.ts';
import { KNOWN } from './trial/known.ts';
import { randomGarment } from './trial/random-garment.ts';

/** In the gate; `npm run laws` tries as many as it is asked to. */
const GARMENTS = { numRuns: 40, seed: 1430 };
const seeds = fc.nat(1_000_000);

/** All that an answer says, in no order but that of the parts of a way. */
function said({ values, conflicts, earlier, unsound, troubles, steps }: Answer): unknown {
  const lists = [earlier, unsound, troubles.map(({ unknown: _, ...rest }) => rest), conflicts];
  const listed = lists.map((list) => list.map((one) => JSON.stringify(sorted(one))).sort());
  const all = [Object.fromEntries(values), listed, steps];
  return sorted(JSON.parse(JSON.stringify(all)));
}

function sorted(it: unknown): unknown {
  if (Array.isArray(it)) return it.map(sorted);
  if (typeof it !== 'object' || it === null) return it;
  const entries = Object.entries(it).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, value]) => [key, sorted(value)]));
}

test('law 4: other ids, other times and another order of what is kept by id change nothing else', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const record = randomGarment(seed);
      const { record: other, name } = renamed(record, dice(seed * 3));
      const one = name(JSON.stringify(said(workOut(record, KNOWN))));
      const two = said(workOut(other, KNOWN));
      expect(sorted(two)).toEqual(saidAgain(one));
    }),
    GARMENTS,
  );
});

/** Said once more in order: other names sort otherwise. */
function saidAgain(text: string): unknown {
  const [values, lists, steps] = JSON.parse(text) as [unknown, string[][], unknown];
  const listed = lists.map((list) =>
    list.map((one) => JSON.stringify(sorted(JSON.parse(one)))).sort(),
  );
  return sorted([values, listed, steps]);
}

test('law 6: every length doubled doubles what toys give, where no count is in it', () => {
  let compared = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const shape = (['chain', 'rows', 'mixed'] as const)[seed % 3];
      const record = randomGarment(seed, shape);
      const [one, two] = [workOut(record, KNOWN), workOut(doubled(record), KNOWN)];
      for (const [key, result] of one.values) {
        const other = two.values.get(key);
        if (!isOfLengths(one, key) || !result.ok || !other?.ok) continue;
        compared += 1;
        expect(lengthsOf(other.value), `${seed} ${key}`).toEqual(
          lengthsOf(result.value).map((at) => expect.closeTo(2 * at, 1) as number),
        );
      }
    }),
    GARMENTS,
  );
  expect(compared).toBeGreaterThan(100);
});

function lengthsOf(value: number | { marks: readonly { at: number }[] }): number[] {
  return typeof value === 'number' ? [value] : value.marks.map(({ at }) => at);
}

/** A number of a toy or a quantity, with nothing but lengths behind it. */
function isOfLengths({ nodes, sources, works }: Answer, key: string): boolean {
  const met = new Set([key]);
  for (const one of met) for (const next of sources(one)) met.add(next);
  return [...met].every((one) => {
    const node = nodes.get(one);
    const calculation = works.get(node?.id ?? '')?.work.calculation ?? 'toy';
    return node && /length|run/.test(node.kind) && /^toy-(?!lace)/.test(`${calculation}-`);
  });
}

test('law 8: no damage makes it throw, and what is damaged is the same with a memory', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const record = randomGarment(seed);
      const before = workOut(record, KNOWN);
      const read = readRecord(damaged(record, dice(seed * 5)));
      if (!read.ok) return;
      const answer = workOut(read.value, KNOWN);
      expect(alike(workOut(read.value, KNOWN, before.memory), answer)).toBe(true);
      expect(answer.evaluated).toBeLessThanOrEqual([...answer.nodes].length);
      begin(read.value, KNOWN);
    }),
    { ...GARMENTS, numRuns: 100 },
  );
});

test('a decision that answered other numbers is as good as none', () => {
  let lapsed = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const d = dice(seed * 7);
      const record = randomGarment(seed, 'rows');
      const other = withEdge(record, d.int(150, 700));
      const [one, none] = [workOut(other, KNOWN), workOut({ ...other, decisions: {} }, KNOWN)];
      for (const [home, kept] of Object.entries(record.decisions)) {
        const { asked, tolerance } = kept as Decision;
        const now = one.values.get(askedKey(home));
        if (!now?.ok || typeof now.value !== 'object' || plusMinus(now) > 0) continue;
        const then = typeof asked === 'object' ? placesOf(asked) : [];
        const places = now.value.marks.map(({ at }) => at);
        const moved = places.some((at, i) => Math.abs((then[i] ?? 0) - at) > tolerance + 1);
        if (then.length === places.length && !moved) continue;
        lapsed += 1;
        expect(same(conflictAt(one, home), conflictAt(none, home)), `${seed} ${home}`).toBe(true);
      }
    }),
    { ...GARMENTS, numRuns: 60 },
  );
  expect(lapsed).toBeGreaterThan(2);
});

function withEdge(record: Garment, mm: number): Garment {
  const q1 = {
    ...(record.quantities.q1 as Quantity),
    parts: [{ text: String(mm), unit: 'mm' as const }],
  };
  const facts = Object.entries(record.facts).filter(([, one]) => (one as Fact).home !== 'q1||');
  return { ...record, quantities: { ...record.quantities, q1 }, facts: Object.fromEntries(facts) };
}

const conflictAt = ({ conflicts }: Answer, home: string) =>
  conflicts.find((one) => one.home === home);

test('a work with several sides gives each its own number, and links take the same side', () => {
  let sided = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const record = randomGarment(seed, 'sides');
      const { nodes } = workOut(record, KNOWN);
      for (const [id, work] of Object.entries(record.works)) {
        const { sides } = work as Work;
        const mine = [...nodes.values()].filter((node) => node.id === id);
        if (!sides || mine.length === 0) continue;
        sided += 1;
        expect([...new Set(mine.map(({ side }) => side))].sort()).toEqual([...sides].sort());
      }
    }),
    GARMENTS,
  );
  expect(sided).toBeGreaterThan(10);
});
