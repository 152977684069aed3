import { describe, expect, test } from 'vitest';
import type { Given, Output } from '../../src/calculation/output.ts';
import { MOST_ROW } from '../../src/garment/record/limits.ts';
import type { Fact } from '../../src/garment/record/record.ts';
import {
  evaluateBefore,
  evaluateFact,
  evaluatePlan,
  givenOf,
} from '../../src/garment/work-out/evaluate.ts';
import type { BeforeNode, FactNode, PlanNode } from '../../src/garment/work-out/node.ts';
import { type Here, nothing, type Result, type Value } from '../../src/garment/work-out/result.ts';
import { exactLength, LONGEST, length, mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';

/*
 * Numbers of an invented work, each asked for straight: what its calculation gives is said here, and
 * what the numbers before it came to.
 */

const size = (value: Value) => ({ ok: true, value }) as ReturnType<Output['of']>;
const output = (of: Output['of']): Output => ({
  ...{ key: 'n', name: 'N', kind: 'length', reads: [], readsNow: () => [], takes: [] },
  ...{ bentBy: [], adds: false, decides: [], absent: () => undefined, of },
});
const BASE = { key: 'w||n', id: 'w', side: '', kind: 'length', sources: [], own: [] } as const;
const plan = (of: Output['of'], more: Partial<PlanNode> = {}): PlanNode => ({
  ...{ ...BASE, form: 'plan', output: output(of), plusMinus: 0, fields: [], takes: [] },
  ...{ bends: [], early: [], begun: undefined, asked: false },
  ...more,
});
const here = (value: Value, more: Partial<Here> = {}): Here => ({
  ...{ ok: true, value, ends: {}, state: 'planned' },
  ...more,
});
const absent = (field: string) => nothing({ kind: 'absent', field });
const waits = (more: object) => ({ ok: false, trouble: { kind: 'waits', ...more } });
const from =
  (all: Readonly<Record<string, Result>> = {}) =>
  (key: string) =>
    all[key];
const fact = (id: string, shown: number, tape: number = mm(1)) => ({
  id,
  fact: { ...{ home: '', shown, plan: shown, tape, rule: 1, read: '', when: 1 } } as Fact,
});
const run = (marks: number, last: number, long: number): Run => ({
  ...{ datum: 'zero', length: length(long) },
  marks: Array.from({ length: marks }, (_, i) => ({
    ...{ at: exactLength(i === marks - 1 ? last : 0), label: '', kind: 'hole' },
  })),
});

describe('what a calculation gives', () => {
  const troubleOf = (of: Output['of']) => {
    const result = evaluatePlan(plan(of), from());
    return result.ok ? undefined : result.trouble;
  };

  test('that is no number is said as it is given', () => {
    const faults = [{ field: 'own', why: { of: 'words', words: 'odd' } }] as never;
    expect(troubleOf(() => ({ ok: false, faults }))).toEqual({ kind: 'unread', faults });
    expect(troubleOf(() => ({ ok: false, absent: 'turn' }))).toEqual({
      kind: 'absent',
      field: 'turn',
    });
    const problems = [{ kind: 'too-few', field: 'turn', least: 1, given: 0 }] as never;
    expect(troubleOf(() => ({ ok: false, problems }))).toEqual({ kind: 'impossible', problems });
  });

  test('when it fails takes no other number away', () => {
    const failing = () => {
      throw new Error('nothing under a root');
    };
    expect(troubleOf(failing)).toEqual({ kind: 'broken', message: 'Error: nothing under a root' });
  });

  test.each<[string, Value, string | undefined]>([
    ['a kilometre', LONGEST, undefined],
    ['one backwards', -LONGEST, undefined],
    ['more', LONGEST + 1, 'too large'],
    ['more backwards', -LONGEST - 1, 'too large'],
    ['a row that is too long', run(1, 5, LONGEST + 1), 'too large'],
    ['one with a mark too far away', run(3, LONGEST + 1, 5), 'too large'],
    ['one without a mark that is too long', run(0, 0, LONGEST + 1), 'too large'],
    ['one as long as may be', run(2, LONGEST, LONGEST), undefined],
    ['one of as many marks as may be', run(MOST_ROW, 5, 5), undefined],
    ['one of more', run(MOST_ROW + 1, 5, 5), 'too many marks'],
    ['one of more that is too long as well', run(MOST_ROW + 1, 5, LONGEST + 1), 'too many marks'],
  ])('can be made where a fact can hold it: %s', (_, value, kind) => {
    expect(troubleOf(() => size(value))).toEqual(kind === undefined ? undefined : { kind });
  });
});

describe('what a number is worked out from', () => {
  const TAKES = [
    ['first', 'w||first'],
    ['second', 'w||second'],
  ] as const;
  const given = (node: PlanNode, all: Readonly<Record<string, Result>>) => givenOf(node, from(all));
  const all = { 'w||first': here(3), 'w||second': here(4) };
  const lone = { ...all, 'w||first': absent('turn') };

  test('of other outputs what is there; what was taken away is left out, of all the first says why', () => {
    const node = plan(() => size(1), { takes: TAKES });
    expect(given(node, all)?.takes).toEqual({ first: 3, second: 4 });
    expect(given(node, lone)?.takes).toEqual({ second: 4 });
    expect(evaluatePlan(node, from({ ...lone, 'w||second': absent('style') }))).toEqual(
      absent('turn'),
    );
  });

  test('and what is made of the steps that bend it, unless they were taken away', () => {
    const bend = (step: string, made: number) => ({
      ...{ step, fact: fact(step, made), asked: `w||${step}?asked` },
    });
    const bends = [bend('press', 70), bend('cut', 90)];
    const node = plan(() => size(1), { takes: TAKES, bends });
    expect(given(node, all)).toMatchObject({
      ...{ takes: { first: 3, second: 4 }, made: { press: 70, cut: 90 } },
    });
    const gone = { ...lone, 'w||press?asked': absent('turn') };
    expect(given(node, gone)).toMatchObject({ takes: { second: 4 } });
    expect(given(node, gone)?.made).toEqual({ cut: 90 });
    const state = (more: Partial<PlanNode>, its: Readonly<Record<string, Result>> = {}) => {
      const result = evaluatePlan(
        plan(() => size(1), more),
        from(its),
      );
      return result.ok && result.state;
    };
    expect(state({})).toBe('planned');
    expect(state({ bends: bends.slice(0, 1) })).toBe('partly made');
    expect(state({ bends: bends.slice(0, 1) }, gone)).toBe('planned');
    expect(state({ early: ['w||cut'] })).toBe('made before');
    expect(state({ bends, early: ['w||cut'] })).toBe('partly made');
  });

  test('is kept beside what is asked for of something made, and only there', () => {
    const result = (more: Partial<PlanNode>) =>
      evaluatePlan(
        plan(() => size(1), more),
        from(),
      );
    const its: Given = { fields: {}, takes: {}, made: {}, count: undefined };
    expect(result({ asked: true })).toEqual({ ...here(1), given: its });
    expect(result({})).toEqual(here(1));
    expect(result({})).not.toHaveProperty('given');
  });

  test('where one of it has no number there is none, and it says for which and what that waits for', () => {
    const node = plan(() => size(1), { takes: TAKES });
    const why = (first?: Result) =>
      evaluatePlan(node, from({ 'w||second': here(4), ...(first && { 'w||first': first }) }));
    const at = { field: 'first', for: 'w||first' };
    expect(why()).toEqual(waits({ ...at, root: 'w||first' }));
    expect(why(nothing({ kind: 'undecided' }))).toEqual(waits({ ...at, root: 'w||first' }));
    const behind = nothing({ kind: 'waits', field: '', for: 'q||', root: 'r||' });
    expect(why(behind)).toEqual(waits({ ...at, root: 'r||' }));
    expect(given(node, { 'w||second': here(4) })).toBeUndefined();
    // One that is linked to has to be there: what took it away is said.
    const read = () => ({ ok: true, value: 1 }) as const;
    const source = { kind: 'length', keys: ['v||turn'], total: false } as const;
    const text = {
      text: '',
      how: { unit: 'cm', decimalMark: '.' },
      taken: [],
      starts: [],
    } as const;
    const linked = plan(() => size(1), {
      fields: [{ key: 'depth', text, read, sources: [source] }],
    });
    const its = { field: 'depth', for: 'v||turn', root: 'v||turn' };
    expect(evaluatePlan(linked, from())).toEqual(waits(its));
    expect(evaluatePlan(linked, from({ 'v||turn': absent('turns') }))).toEqual(
      waits({ ...its, gone: { why: 'absent', by: 'turns' } }),
    );
  });
});

describe('what is made', () => {
  const node = (tape: number): FactNode => ({ ...BASE, form: 'fact', fact: fact('f', 800, tape) });

  test('is known to half its tape’s graduation either way; a count is what it is', () => {
    expect(evaluateFact(node(mm(1)), undefined)).toEqual({
      ...here(800, { state: 'made', ends: { 'f:f': [800 - 4000, 800 + 4000] } }),
    });
    expect(evaluateFact(node(0), undefined)).toEqual(here(800, { state: 'made' }));
  });

  test('stands whatever is asked, unless nothing of the kind is', () => {
    expect(evaluateFact(node(0), nothing({ kind: 'undecided' }))).toMatchObject({ value: 800 });
    expect(evaluateFact(node(0), absent('turn'))).toEqual(absent('turn'));
  });

  const before: BeforeNode = {
    ...BASE,
    ...{ form: 'before', output: output(() => size(1)), sources: ['w||n?asked'] },
    fact: { id: 'b', fact: { home: 'w||n', before: true, when: 1 } },
  };

  test('before the app knew is as planned, each mark of a row by the one fact', () => {
    const ends = { r: [3, 5] } as const;
    const number = evaluateBefore(before, here(4, { ends }));
    expect(number).toEqual(here(4, { ends, state: 'made before' }));
    expect(number).not.toHaveProperty('undecided');
    const row = evaluateBefore(before, here(run(3, 5, 5), { undecided: true }));
    expect(row).toMatchObject({ made: ['b', 'b', 'b'], state: 'made before', undecided: true });
  });

  test('before the app knew has no number where the plan has none, and waits for one that goes round', () => {
    const plan = 'w||n?asked';
    const round = waits({ field: '', for: plan, root: plan });
    expect(evaluateBefore(before, undefined)).toEqual(round);
    expect(evaluateBefore(before, nothing({ kind: 'circle', path: [plan] }))).toEqual(round);
    expect(evaluateBefore(before, absent('turn'))).toEqual(absent('turn'));
    const behind = nothing({ kind: 'waits', field: 'depth', for: 'q||', root: 'r||' });
    expect(evaluateBefore(before, behind)).toEqual(behind);
  });
});
