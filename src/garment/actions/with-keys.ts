import type { Bench } from '../../calculation/bench.ts';
import type { Outputs } from '../../calculation/output.ts';
import { type BenchUnit, benchUnit } from '../../lengths/unit.ts';
import { homeOf } from '../record/home.ts';
import { runKey } from '../record/made-in-second.ts';
import type { Fact, Fields, Garment, Kept, TextPart, Work } from '../record/record.ts';
import { soundOf } from '../record/sound.ts';
import { absentBy, type Known, type SeenWork, seenWork } from '../work-out/seen-work.ts';

/** What a field starts with depends on a bench's unit, and on nothing else of it. */
const ANY_BENCH: Bench = {
  hand: 'right',
  unit: 'cm',
  metric: '1mm',
  inch: '1/16in',
  theme: 'phone',
  voice: 'off',
  decimalMark: '.',
  keys: 'pad',
};

/**
 * A garment of the second version once its calculations are known: fields that were left hold
 * what they began with, in the unit of those beside them; what is made of a run that only its
 * place was known of gets the run's key. What isn't known yet stays as it is for another time.
 */
export function withKeys(garment: Garment, known: Known): Garment {
  const works: Record<string, unknown> = { ...garment.works };
  const homes = new Map<string, string>();
  for (const [id, work] of soundOf(garment).works) {
    const gives = known.get(work.calculation);
    if (work.older === undefined || typeof gives !== 'object') continue;
    const { older: _, ...filled } = { ...work, fields: withStart(work, gives) };
    const seen = seenWork(filled, known, new WeakMap());
    // With an option no build up to this one knows, which runs there are isn't known yet, either.
    if (!seen.outputs) continue;
    works[id] = filled;
    for (const [from, to] of homesOf(id, seen, seen.outputs)) homes.set(from, to);
  }
  if (Object.keys(works).every((id) => works[id] === garment.works[id])) return garment;
  const facts = Object.entries(garment.facts).map(([id, fact]): [string, unknown] => {
    const home = homes.get(String((fact as Partial<Fact> | null)?.home));
    return [id, home === undefined ? fact : { ...(fact as Fact), home }];
  });
  const begun = rehomed(garment.begun, homes);
  return { ...garment, works, facts: Object.fromEntries(facts), begun };
}

function rehomed(kept: Kept, homes: ReadonlyMap<string, string>): Kept {
  return Object.fromEntries(
    Object.entries(kept).map(([home, one]) => [homes.get(home) ?? home, one]),
  );
}

function withStart({ fields }: Work, gives: Outputs): Fields {
  const texts = Object.values(fields).flatMap((parts) => parts.filter((one) => 'text' in one));
  const unit: BenchUnit = benchUnit((texts[0] as TextPart | undefined)?.unit) ?? ANY_BENCH.unit;
  const start = gives.fields.asked.start({ ...ANY_BENCH, unit });
  const left = Object.entries(start).filter(([key]) => !Object.hasOwn(fields, key));
  return {
    ...fields,
    ...Object.fromEntries(left.map(([key, text]) => [key, [{ text, unit }]])),
  };
}

/** By the home of a run's place that of its key: the runs there are, in the order they are declared. */
function homesOf(id: string, seen: SeenWork, { outputs }: Outputs): [string, string][] {
  const [side] = seen.sides;
  const runs = outputs.filter(
    ({ kind, key }) => kind === 'run' && side && absentBy(seen, side, key) === undefined,
  );
  return runs.map(({ key }, place) => [homeOf(id, '', runKey(place)), homeOf(id, '', key)]);
}
