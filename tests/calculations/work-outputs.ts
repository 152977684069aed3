import type { Bench } from '../../src/calculation/bench.ts';
import type { Draft, Fault } from '../../src/calculation/calculation.ts';
import type { MadeSteps, Output, Outputs, Values } from '../../src/calculation/output.ts';
import { faultsOf } from '../../src/calculation/problem-faults.ts';

/** What an output came to, or why there is nothing. */
export type Came =
  | { state: 'here'; value: Values[keyof Values] }
  /** The field that takes it away by what is chosen there. */
  | { state: 'absent'; by: string }
  | { state: 'faults'; faults: readonly Fault[] }
  /** What it takes of the same work is not here. */
  | { state: 'waits'; for: string };

/** What is made of a work already: steps, and how many marks its runs keep. */
export interface WorkMade {
  steps?: MadeSteps;
  counts?: Readonly<Record<string, number>>;
}

/**
 * A second road for what a garment works out by its own order and memory: no garment, no links.
 * Every output of a draft, by key: each from the fields it names, whatever the others hold.
 */
export function workOutputs(
  { fields, outputs }: Outputs,
  draft: Draft,
  bench: Bench,
  { steps = {}, counts = {} }: WorkMade = {},
): ReadonlyMap<string, Came> {
  const ask = fields.asks(draft);
  const came = new Map<string, Came>();
  for (const output of outputs) came.set(output.key, comesTo(output));
  return came;

  function comesTo(output: Output): Came {
    const by = output.absent(ask);
    if (by !== undefined) return { state: 'absent', by };
    const taken = output.takes.map((key) => [key, came.get(key)] as const);
    const takes: Record<string, Values[keyof Values]> = {};
    for (const [key, one] of taken) {
      if (one?.state === 'here') takes[key] = one.value;
      else if (one?.state !== 'absent') return { state: 'waits', for: key };
    }
    const [, first] = taken[0] ?? [];
    if (first?.state === 'absent' && Object.keys(takes).length === 0) return first;
    const read = fields.readSome(output.readsNow(ask), draft, bench);
    if (!read.ok) return { state: 'faults', faults: read.faults };
    const bent = output.bentBy.flatMap((key) => {
      const made = steps[key];
      // What was made of an earlier plan and isn't asked for any more bends nothing.
      const stands = made !== undefined && came.get(key)?.state !== 'absent';
      return stands ? [[key, made] as const] : [];
    });
    const made = Object.fromEntries(bent);
    const given = { fields: read.value, takes, made, count: counts[output.key] };
    const value = output.of(given);
    if (value.ok) return { state: 'here', value: value.value };
    if ('absent' in value) return { state: 'absent', by: value.absent };
    return { state: 'faults', faults: 'faults' in value ? value.faults : faultsOf(value.problems) };
  }
}
