import { act } from '../../../src/garment/actions/act.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import type { Garment, Parts, Quantity, Work } from '../../../src/garment/record/record.ts';
import { type Dice, dice } from './dice.ts';
import { garmentOf, output, quantity, typed } from './garments.ts';
import { KNOWN } from './known.ts';
import { randomAction, type Weights } from './random-action.ts';
import { GIVES, givesOf, randomParts, randomWork, takeable } from './random-work.ts';

/** The shapes garments are tried in: half made rows, long chains, one number feeding all, circles… */
export const SHAPES = [
  'mixed',
  'mixed',
  'half made',
  'half made',
  'rows',
  'rows',
  'sides',
  'chain',
  'fan',
  'diamond',
  'circle',
  'unknown',
  'absent',
] as const;
export type Shape = (typeof SHAPES)[number];

/** How many works a long shape has: as many as a whole garment, in `npm run laws`; fewer in the gate. */
const LONG = process.env.LAWS ? 60 : 24;

interface Draft {
  quantities: Record<string, Quantity>;
  works: Record<string, Work>;
}

const shapeOf = (seed: number): Shape => SHAPES[seed % SHAPES.length] ?? 'mixed';

/** A garment of a shape, the same for a seed. */
export function randomGarment(seed: number, shape = shapeOf(seed)): Garment {
  const d = dice(seed);
  if (shape === 'rows') return underWay(d);
  const draft: Draft = { quantities: randomQuantities(d), works: {} };
  const long = shape === 'chain' || shape === 'fan';
  const size = long ? LONG : d.int(3, 12);
  for (let i = 1; i <= size; i++) draft.works[`w${i}`] = workFor(d, shape, draft, i);
  if (shape === 'circle') {
    addRing(d, draft);
    relink(d, draft, d.int(8, 40));
  }
  if (shape === 'unknown') makeUnknown(d, draft);
  if (d.chance(0.5)) {
    const parts: Parts = [quantity('q1'), { text: ' + 1', unit: 'cm' }];
    draft.quantities.q9 = { name: 'Sum', kind: 'length', rank: 90, parts };
  }
  const garment = garmentOf(draft);
  return shape === 'half made' ? made(d, garment, d.int(3, 25), HALF) : garment;
}

const HALF: Weights = [
  ['make', 6],
  ['up to', 1],
  ['measure', 2],
  ['again', 2],
  ['type', 1],
  ['decide', 2],
  ['before', 2],
  ['pass', 1],
  ['together', 1],
];
const PRESSES: Weights = [
  ['make', 4],
  ['up to', 4],
  ['decide', 1],
];

function randomQuantities(d: Dice): Record<string, Quantity> {
  const all = Array.from({ length: d.int(1, 5) }, (_, i): [string, Quantity] => {
    const kind = i === 0 || d.chance(0.8) ? 'length' : 'count';
    const parts = typed(String(kind === 'length' ? d.int(20, 700) : d.int(2, 12)), 'mm');
    const sure = kind === 'length' && d.chance(0.3) && { plusMinus: 8000 * d.int(1, 4) };
    return [`q${i + 1}`, { name: `Number ${i}`, kind, rank: i, parts, ...sure }];
  });
  return Object.fromEntries(all);
}

function workFor(d: Dice, shape: Shape, draft: Draft, i: number): Work {
  const toy = (id: string) => GIVES.find((one) => one.id === id);
  const from = takeable(draft);
  if (shape === 'chain') {
    const link = i === 1 ? quantity('q1') : output(`w${i - 1}`, 'allowance');
    return randomWork(d, [[link.link, 'length']], i, toy('toy-hem'), 0.95);
  }
  if (shape === 'fan') return randomWork(d, from.slice(0, 1), i, undefined, 0.9);
  if (shape === 'diamond') return randomWork(d, from.slice(-d.int(2, 8)), i, undefined, 0.85);
  const changing = shape === 'absent' ? toy(d.of(['toy-strip', 'toy-hem', 'hem'])) : undefined;
  const work = randomWork(d, from, i, changing);
  return shape === 'sides' && d.chance(0.5) ? withSides(d, work) : work;
}

function withSides(d: Dice, work: Work): Work {
  const sides = ['left', 'right'];
  const specs = Object.entries(givesOf(work)?.fields.specs ?? {});
  const [key, spec] = d.of(specs);
  if (spec.kind === 'choice' || d.chance(0.5)) return { ...work, sides };
  return { ...work, sides, own: { left: { [key]: randomParts(d, spec, [], 0) } } };
}

/** Hems each of which takes its depth from the next, the last from the first. */
function addRing(d: Dice, draft: Draft): void {
  const size = d.int(1, 5);
  for (let i = 0; i < size; i++) {
    const depth = [output(`w${901 + ((i + 1) % size)}`, 'allowance')];
    const fields = { depth, turned: typed(d.of(['once', 'twice'])) };
    const work = { name: 'Ring', calculation: 'toy-hem', rank: 901 + i, fields };
    draft.works[`w${901 + i}`] = work;
  }
}

function relink(d: Dice, draft: Draft, times: number): void {
  const all = takeable(draft);
  // In every other one the ring stays as it is, with others hanging on it.
  const kept = d.chance(0.5) ? 'w90' : 'none';
  const ids = Object.keys(draft.works).filter((id) => !id.startsWith(kept));
  for (let k = 0; k < times; k++) {
    const id = d.of(ids);
    const work = draft.works[id] as Work;
    const [key, spec] = d.of(Object.entries(givesOf(work)?.fields.specs ?? {}));
    if (spec.kind === 'choice') continue;
    draft.works[id] = { ...work, fields: { ...work.fields, [key]: randomParts(d, spec, all, 1) } };
  }
}

function makeUnknown(d: Dice, draft: Draft): void {
  const id = d.of(Object.keys(draft.works));
  const work = draft.works[id] as Work;
  const choice = Object.entries(givesOf(work)?.fields.specs ?? {}).find(
    ([, { kind }]) => kind === 'choice',
  );
  const fields = choice && d.chance(0.5) ? { [choice[0]]: typed('spiral') } : { braid: typed('1') };
  draft.works[id] = d.chance(0.5)
    ? { ...work, calculation: 'lattice' }
    : { ...work, fields: { ...work.fields, ...fields } };
}

/** A garment after so many actions; none of them settled is left pending. */
function made(d: Dice, garment: Garment, times: number, weights: Weights): Garment {
  let state = begin(garment, KNOWN);
  for (let k = 0; k < times; k++) state = act(state, randomAction(d, state, weights)).state;
  return act(state, { do: 'settle', now: 1 }).state.record;
}

/** Rows under way that follow each other, and a number behind them that changed since. */
function underWay(d: Dice): Garment {
  const mm = (n: number) => typed(String(n), 'mm');
  const work = (calculation: string, rank: number, fields: Work['fields']): Work => {
    return { name: calculation, calculation, rank, fields };
  };
  const long = d.int(300, 700);
  const sure = d.chance(0.3) && { plusMinus: 8000 };
  const level = d.chance(0.5) ? { level: mm(d.int(60, 240)) } : {};
  const works = {
    w1: work('toy-strip', 1, {
      length: [quantity('q1')],
      pitch: mm(d.int(6, 60)),
      end: mm(d.int(2, 9)),
      fit: typed(d.of(['fill', 'fill', 'keep'])),
      rows: typed(d.of(['one', 'two'])),
    }),
    w2: work('closures', 2, {
      opening: [quantity('q1')],
      count: mm(d.int(3, 9)),
      top: mm(d.int(5, 15)),
      bottom: mm(d.int(5, 25)),
      ...level,
    }),
    w3: work('toy-follow', 3, { row: [output('w2', 'marks')], by: mm(d.int(0, 9)) }),
    w4: work('toy-lace', 4, { holes: [output('w1', 'count')], gap: mm(7), tails: mm(100) }),
  };
  const q1 = { name: 'Edge', kind: 'length', rank: 0, parts: mm(long), ...sure };
  const begun = made(d, garmentOf({ quantities: { q1 }, works }), d.int(2, 12), PRESSES);
  const measured = Math.max(8000, 8000 * long + d.int(-160_000, 240_000));
  const again = { do: 'measure', quantity: 'q1', id: 'again', tape: 8000, now: 2 } as const;
  let state: State = begin(begun, KNOWN);
  state = d.chance(0.6)
    ? act(state, { ...again, measured }).state
    : act(
        state,
        randomAction(d, state, [
          ['type', 1],
          ['measure', 1],
        ]),
      ).state;
  if (d.chance(0.4)) state = act(state, randomAction(d, state, [['decide', 1]])).state;
  return act(state, { do: 'settle', now: 3 }).state.record;
}
