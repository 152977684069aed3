import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import { typed } from '../garment/trial/garments.ts';
import { KNOWN } from '../garment/trial/known.ts';
import { linkedGarment } from '../garment/trial/linked-garment.ts';
import { median } from './press.ts';

/**
 * `npm run bench:work-out`: how long a linked garment of 60 and of 500 works takes to work out,
 * and a change of it. Milliseconds are this machine's; what counts is how much less a change
 * takes than the whole, and how many numbers it works out.
 */
const rows: Record<string, Record<string, string | number>> = {};

for (const works of [60, 500]) {
  const times = works === 60 ? 100 : 15;
  const garment = linkedGarment(works);
  const first = timed(() => workOut(structuredClone(garment), KNOWN));
  const whole = middle(times, () => workOut(structuredClone(garment), KNOWN));
  note(works, 'everything, no memory', whole, whole, workOut(garment, KNOWN).evaluated, first);
  changes(works, times, garment, whole);
}
console.table(rows);

function changes(works: number, times: number, garment: Garment, whole: number): void {
  let state: State = begin(garment, KNOWN);
  const change = (what: string, action: (i: number) => Action) => {
    let [evaluated, i] = [0, 0];
    const ms = middle(times, () => {
      i += 1;
      const typing = act(state, action(i)).state;
      state = act(typing, { do: 'settle', now: i }).state;
      evaluated = Math.max(evaluated, state.answer.evaluated);
    });
    note(works, what, ms, whole, evaluated);
  };
  const type = (place: { quantity: string } | { work: string; field: string }, text: string) =>
    ({ do: 'type', place, parts: typed(text, 'mm'), now: 1 }) as const;
  change('a quantity all pieces read', (i) => type({ quantity: 'front' }, String(463 + (i % 9))));
  change('the armhole all strips read', (i) => type({ quantity: 'round' }, String(624 + (i % 9))));
  change('one hem', (i) => type({ work: 'w0', field: 'depth' }, String(20 + (i % 5))));
  change('one Made press on a hole', (i) => {
    const home = homeOf(`w${3 + 6 * (Math.floor(i / 70) % Math.floor(works / 6))}`, '', 'holes');
    return { do: 'make', home, id: `p${works}-${i}`, tape: 8000, now: i };
  });
}

function note(works: number, what: string, ms: number, whole: number, n: number, first = ms): void {
  rows[`${works} works: ${what}`] = {
    ms: ms.toFixed(1),
    first: first.toFixed(1),
    'of the whole': (ms / whole).toFixed(2),
    'worked out': n,
  };
}

function timed(work: () => unknown): number {
  const from = performance.now();
  work();
  return performance.now() - from;
}

function middle(times: number, work: () => unknown): number {
  return median(Array.from({ length: times }, () => timed(work)));
}
