/**
 * The key of a garment and the page of its calculation show one number: a step's, rounded to the same side.
 * The rounding is listened to where it is done, so that no page has to be known here.
 */
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import { tapeStep } from '../../src/calculation/bench.ts';
import type { Calculation } from '../../src/calculation/calculation.ts';
import type { Outputs } from '../../src/calculation/output.ts';
import { CALCULATIONS, OUTPUTS } from '../../src/calculations/list.ts';
import { type ExactLength, exactLength, type Length } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { timesTried } from '../thorough.ts';
import { draftsNear } from './any-drafts.ts';
import { workOutputs } from './work-outputs.ts';

type Side = 'up' | 'down' | 'nearest';
const heard = vi.hoisted(() => [] as { x: number; side: 'up' | 'down' | 'nearest' }[]);

vi.mock('../../src/lengths/graduation.ts', async (original) => {
  const real = await original<typeof import('../../src/lengths/graduation.ts')>();
  const told =
    (side: Side, round: typeof real.toGraduation) => (exact: ExactLength, step: Length) => {
      if (step >= real.STEP['0.5mm']) heard.push({ x: exact, side });
      return round(exact, step);
    };
  return {
    ...real,
    upToGraduation: told('up', real.upToGraduation),
    downToGraduation: told('down', real.downToGraduation),
  };
});

vi.mock('../../src/lengths/show-length.ts', async (original) => {
  const real = await original<typeof import('../../src/lengths/show-length.ts')>();
  const { toGraduation } = await import('../../src/lengths/graduation.ts');
  return {
    ...real,
    showOnTape: (...[x, step, unit, round]: Parameters<typeof real.showOnTape>) => {
      if (round === undefined || round === toGraduation) heard.push({ x, side: 'nearest' });
      return real.showOnTape(x, step, unit, round);
    },
  };
});

/** Inches say beside a graduation what is over; a bench in millimetres rounds only what it rounds. */
const bench = benchOf({ unit: 'mm' });
const NEAR = 0.5;
const SIDE = { least: 'up', most: 'down', nearest: 'nearest' } as const;

/** Steps whose number the page rounds, and to another side than their key. */
function otherwise(page: Calculation, gives: Outputs, draft: Record<string, string>): string[] {
  heard.length = 0;
  const work = page.work(draft, bench);
  if (!work.ok) return [];
  const rounded = [...heard];
  const came = workOutputs(gives, draft, bench);
  return gives.outputs.flatMap(({ key, kind, step }) => {
    const one = came.get(key);
    if (!step || kind !== 'length' || one?.state !== 'here' || typeof one.value !== 'number') {
      return [];
    }
    const { value } = one;
    if (onTape(value, bench)) return [];
    const sides = rounded.filter(({ x }) => Math.abs(x - value) < NEAR).map(({ side }) => side);
    const own: Side = SIDE[step.bound ?? 'nearest'];
    return sides.length === 0 || sides.includes(own)
      ? []
      : [`${key}: ${own}, on the page ${[...new Set(sides)].join(', ')}`];
  });
}

function onTape(value: number, at: Bench): boolean {
  const over = Math.abs(exactLength(value)) % tapeStep(at);
  return Math.min(over, tapeStep(at) - over) < NEAR;
}

test.each(Object.keys(OUTPUTS))('%s: a key rounds as its page does', async (id) => {
  const [page, gives] = await Promise.all([CALCULATIONS[id]?.(), OUTPUTS[id]?.()]);
  if (!page || !gives) throw new Error(`${id} has no page or outputs`);
  const faults = new Map<string, number>();
  fc.assert(
    fc.property(draftsNear(page), (set) => {
      for (const f of otherwise(page, gives, { ...page.start(bench), ...set }))
        faults.set(f, (faults.get(f) ?? 0) + 1);
    }),
    { numRuns: timesTried(id === 'crossing' ? 60 : 300), seed: 1511 },
  );
  expect(Object.fromEntries(faults)).toEqual({});
});
