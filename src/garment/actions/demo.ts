import { mm } from '../../lengths/length.ts';
import type { BodyMeasureId } from '../../sewing/body-measures.ts';
import { homeOf } from '../record/home.ts';
import type { Fields, Garment, Part, Quantity, Work } from '../record/record.ts';
import type { Known } from '../work-out/seen-work.ts';
import { act } from './act.ts';
import { begin, type State } from './state.ts';
import { withKeys } from './with-keys.ts';

/** Another tape may be in hand: the demo was made with one of millimetres. */
const TAPE = 8000;

const text = (typed: string): Part => ({ text: typed, unit: 'cm' });

/** Fields as typed: `depth=2&turn=0.7`. */
function typed(query: string): Fields {
  return Object.fromEntries(
    query.split('&').map((pair) => {
      const [key = '', value = ''] = pair.split('=');
      return [key, [text(value)]];
    }),
  );
}

/** What all of it is called, which is for the words to say. */
export type DemoNames = Readonly<
  Record<'name' | keyof typeof QUANTITIES | (typeof WORKS)[number][0], string>
>;

const ofBody = (measure: BodyMeasureId) => ({ kind: 'length', body: true, measure }) as const;

const QUANTITIES = {
  front: { kind: 'length', rank: 1, parts: [text('46.3')] },
  round: {
    kind: 'length',
    rank: 2,
    parts: [text('62.4')],
    plusMinus: mm(2),
  },
  chest: { ...ofBody('chest-girth'), rank: 3, parts: [text('98')] },
  waist: { ...ofBody('natural-waist-girth'), rank: 4, parts: [text('88.5')] },
  nape: { ...ofBody('back-waist-length'), rank: 5, parts: [text('47')] },
} satisfies Readonly<Record<string, Omit<Quantity, 'name'>>>;

/** What is left of the fields is as each calculation begins (`withKeys`). */
const WORKS = [
  ['side', 'seam', typed('what=finish&given=1.5&finish=french')],
  ['fronts', 'hem', typed('depth=2&style=unequal&turn=0.7')],
  ['back', 'hem', typed('depth=2&turn=0.7&shape=rise&chord=40&rise=5')],
  [
    'hooks',
    'closures',
    { ...typed('count=7&top=1.2&bottom=2.5'), opening: [{ link: { quantity: 'front' } }] },
  ],
  [
    'strip',
    'edging',
    {
      ...typed('pitch=8 mm&rows=one&fit=fill&end=0.4'),
      length: [{ link: { quantity: 'round' } }],
    },
  ],
  [
    'lace',
    'lacing',
    {
      ...typed('kind=outside&pitch=8 mm&start=middle&tail=10'),
      holes: [{ link: { work: 'strip', output: 'count' } }],
      margin: [{ link: { work: 'strip', output: 'margin' } }],
    },
  ],
  ['fit', 'fit', { ...typed('of=shirt-chest&ease=8'), body: [{ link: { quantity: 'chest' } }] }],
] as const satisfies readonly (readonly [id: string, calculation: string, fields: Fields])[];

/** The calculations that the demo holds. */
export const DEMO_CALCULATIONS: readonly string[] = WORKS.map(([, calculation]) => calculation);

/**
 * The demo: a waistcoat for a village brass band. Invented, as is its wearer. Its side seams and
 * front hems are made, and three of its hooks: the third lower than asked, and the rest share it.
 * @param id given by the caller, so that each demo is a garment of its own
 * @param known what its calculations give
 */
export function demoGarment(names: DemoNames, id: string, now: number, known: Known): Garment {
  const works = WORKS.map(([own, calculation, fields], i): [string, Work] => [
    own,
    { name: names[own], calculation, rank: i + 1, fields, older: 2 },
  ]);
  const quantities = Object.fromEntries(
    Object.entries(QUANTITIES).map(([own, one]): [string, Quantity] => [
      own,
      { ...one, name: names[own as keyof typeof QUANTITIES] },
    ]),
  );
  const planned: Garment = {
    ...{ version: 3, id, name: names.name, invented: true },
    ...{ changed: now, edits: 0, quantities, works: Object.fromEntries(works) },
    ...{ facts: {}, begun: {}, decisions: {} },
  };
  let state = begin(withKeys(planned, known), known);
  for (const work of ['side', 'fronts']) state = made(state, work, now);
  for (const measured of [undefined, undefined, mm(158)]) state = hook(state, measured, now);
  const done = act(state, { do: 'decide', home: HOOKS, way: 'spread', now });
  // Nothing of it is anyone's work yet: no backup is asked for.
  return { ...done.state.record, edits: 0 };
}

const HOOKS = homeOf('hooks', '', 'marks');

function hook(state: State, measured: number | undefined, now: number): State {
  const id = `hook-${Object.keys(state.record.facts).length + 1}`;
  const where = measured !== undefined && { measured };
  return act(state, { do: 'make', home: HOOKS, id, tape: TAPE, now, ...where }).state;
}

/** Every step of a work, one after another, as the key shows them. */
function made(state: State, work: string, now: number): State {
  const step = state.answer.steps.find(
    ({ home, made: done, of, ready }) =>
      home.startsWith(`${work}|`) && ready && of !== undefined && done < of,
  );
  if (!step) return state;
  const id = `${work}-${Object.keys(state.record.facts).length + 1}`;
  const next = act(state, { do: 'make', home: step.home, id, tape: TAPE, now }).state;
  return next === state ? state : made(next, work, now);
}
