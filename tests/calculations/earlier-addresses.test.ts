/**
 * Addresses as earlier builds wrote them, with what each answered then: `tests/fixtures` has
 * them by the commit that wrote them. A number that was meant to change since has what it is
 * now beside it, by the commit that changed it, and `reasons.json` says why.
 */
import { describe, expect, test } from 'vitest';
import { openingDraft } from '../../src/app/start/last.ts';
import { readRoute } from '../../src/app/start/route.ts';
import { recordOf } from '../../src/calculation/made.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import { shownText } from '../../src/lengths/show-length.ts';
import { benchOf } from '../controls/helpers.ts';
import { fixture, fixtures } from '../fixtures/fixture.ts';

interface Answered {
  headline: string;
  /** Of each run: label and place in 1/8000 mm. */
  marks: readonly string[];
}

interface Written extends Answered {
  unit: 'cm' | 'in';
  address: string;
  since?: readonly (Answered & { commit: string })[];
}

interface Followed {
  commit: string;
  address: string;
  made: Record<string, string>;
  at: string;
  refused: Record<string, Record<string, string>>;
}

const builds = fixtures('addresses-').map((name) =>
  fixture<{ commit: string; addresses: readonly Written[] }>(name),
);
const reasons = fixture<Record<string, string>>('reasons.json');

/** Those that came after the last of these builds have no older address. */
const YOUNGER: readonly string[] = [
  'pleats',
  'grouped',
  'piece',
  'repeat',
  'shares',
  'outline',
  'match',
  'curve',
  'fit',
  'opening',
  'vent',
  'gathers',
  'thread',
  'shrinkage',
  'elastic',
  'circle',
  'bias',
  'tucks',
  'darts',
  'band',
  'collar',
  'level',
  'slant',
  'zones',
  'tiers',
  'flare',
  'cord',
  'binding',
  'placket',
  'dart',
  'pocket',
];

/** An address as this build opens it. */
async function opened(address: string, unit: Written['unit']) {
  const { screen, draft } = readRoute(address);
  const calculation = await CALCULATIONS[screen]?.();
  if (!calculation) throw new Error(`no such calculation: ${screen}`);
  const bench = benchOf({ unit });
  const state = openingDraft(calculation, draft, undefined, bench);
  const work = calculation.work(state.draft, bench);
  if (!work.ok) throw new Error(`${address}: ${work.faults.map(({ field }) => field)}`);
  return { page: state.page, answer: work.answer };
}

async function answered({ address, unit }: Written): Promise<Answered> {
  const { answer } = await opened(address, unit);
  const { before, number, after } = answer.headline;
  const shown = typeof number === 'string' ? number : shownText(number, '.');
  return {
    headline: [before, shown, after].filter((part) => part !== undefined && part !== '').join(' '),
    marks: answer.runs.map(({ run }) =>
      run.marks.map(({ label, at }) => `${label} ${Math.round(at)}`).join(', '),
    ),
  };
}

test('there are addresses of every calculation, and a reason for every change', () => {
  const all = builds.flatMap(({ addresses }) => addresses);
  const ids = new Set(all.map(({ address }) => readRoute(address).screen));
  const without = Object.keys(CALCULATIONS).filter((id) => !ids.has(id));
  expect(without.filter((id) => !YOUNGER.includes(id))).toEqual([]);
  const changes = new Set(all.flatMap(({ since = [] }) => since.map(({ commit }) => commit)));
  expect([...changes].sort()).toEqual(Object.keys(reasons).sort());
});

describe.each(builds)('as $commit wrote it', ({ addresses }) => {
  test.each(addresses.map((one) => [one.address, one] as const))('%s', async (_, one) => {
    const { headline, marks } = one.since?.at(-1) ?? one;
    expect(await answered(one)).toEqual({ headline, marks });
  });
});

test.each(fixture<readonly Followed[]>('followed.json'))(
  'what was measured while following is there as $commit wrote it: $made',
  async ({ address, made, at, refused }) => {
    const { page, answer } = await opened(address, 'cm');
    const run = answer.runs[0]?.run;
    if (!run) throw new Error('no run');
    const record = recordOf(page, 0, run);
    expect(Object.fromEntries(record.made)).toEqual(made);
    expect(record.at).toBe(at);
    const others = [...record.refused].map(([plan, its]) => [plan, Object.fromEntries(its)]);
    expect(Object.fromEntries(others)).toEqual(refused);
  },
);
