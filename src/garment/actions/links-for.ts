import type { Field } from '../../calculation/calculation.ts';
import type { FieldSpec } from '../../calculation/field-spec.ts';
import { type Kind, type Output, STAGES } from '../../calculation/output.ts';
import { homeOf } from '../record/home.ts';
import type { Link } from '../record/record.ts';
import type { PlanNode } from '../work-out/node.ts';
import type { Value } from '../work-out/result.ts';
import { absentBy, type SeenSide, type SeenWork } from '../work-out/seen-work.ts';
import type { Answer } from '../work-out/work-out.ts';
import { todays } from './put.ts';
import type { State } from './state.ts';
import type { FieldPlace } from './typing.ts';

/** Something of the garment that a field can take. */
export interface Offered {
  link: Link;
  kind: Kind;
  /** Of the quantity, or of the work. */
  name: string;
  /** What of the work it is. */
  output?: string;
  /** Where it may be no less, or no more. */
  bound?: NonNullable<Output['bound']>;
  /** Of one side, or all together. */
  of?: string;
  /** What it is now; undefined while it waits. Lengths are in 1/8000 mm. */
  value?: Value;
  plusMinus: number;
}

/** What is taken by each kind of field. */
const FITS: Readonly<Record<Field['kind'] | 'run', readonly Kind[]>> = {
  length: ['length'],
  lengths: ['length'],
  count: ['count'],
  number: ['number', 'count'],
  run: ['run'],
  text: [],
  choice: [],
};

/** What a length may be taken so many times by. */
const FACTORS: readonly Kind[] = ['count', 'number'];

/**
 * All that a field can take of the garment: quantities, and what other works give, that are of its kind
 * and don't come from it themselves. For the edge of a piece what works take there comes first; else
 * nearest first by the stage of the work, then by name.
 *
 * @param factor whether a count is wanted beside a length
 */
export function linksFor(state: State, place: FieldPlace, factor = false): Offered[] {
  const { answer } = state;
  const spec = specOf(answer, place);
  const kind = kindOf(answer, place, spec);
  const fits = kind ? [...FITS[kind], ...(factor && kind === 'length' ? FACTORS : [])] : [];
  if (fits.length === 0) return [];
  const behind = behindPlace(answer, place);
  const own = 'work' in place ? answer.works.get(place.work) : undefined;
  const here = own ? stageOf(own) : 0;
  const all = [...ofQuantities(state, place), ...ofWorks(state, place)];
  return all
    .filter((one) => fits.includes(one.kind) && !one.keys.some((key) => behind.has(key)))
    .map((one) => ({ one, far: Math.abs(one.stage - here) }))
    .sort((a, b) => firstOf(a.one, b.one, spec) || a.far - b.far || byName(a.one, b.one))
    .map(({ one: { keys: _, stage: _stage, edge: _edge, ...offered } }) => offered);
}

interface Candidate extends Offered {
  keys: readonly string[];
  stage: number;
  edge?: true | undefined;
}

function specOf({ works }: Answer, place: FieldPlace): FieldSpec<unknown> | undefined {
  if ('quantity' in place) return undefined;
  const specs = works.get(place.work)?.outputs?.fields.specs ?? {};
  return Object.hasOwn(specs, place.field) ? specs[place.field] : undefined;
}

function kindOf(
  { sound }: Answer,
  place: FieldPlace,
  spec: FieldSpec<unknown> | undefined,
): keyof typeof FITS | undefined {
  if ('quantity' in place) return sound.quantities.get(place.quantity)?.kind;
  return spec?.takesRun ? 'run' : spec?.kind;
}

/** At the edge of a piece, what an edge takes. */
function firstOf(a: Candidate, b: Candidate, spec: FieldSpec<unknown> | undefined): number {
  return spec?.edge ? Number(b.edge ?? false) - Number(a.edge ?? false) : 0;
}

function byName(a: Offered, b: Offered): number {
  const of = ({ name, output = '', of: side = '' }: Offered) => `${name} ${output} ${side}`;
  return of(a) < of(b) ? -1 : 1;
}

/** The numbers that a field goes into, straight or through others. What is made takes nothing of what is asked. */
function behindPlace({ nodes }: Answer, place: FieldPlace): ReadonlySet<string> {
  const reached = new Set<string>();
  const next = new Map<string, string[]>();
  for (const node of nodes.values()) {
    if (node.form !== 'plan' && node.form !== 'before') continue;
    if (node.form === 'plan' && readsPlace(node, place)) reached.add(node.key);
    for (const from of node.sources) next.set(from, [...(next.get(from) ?? []), node.key]);
  }
  for (const key of reached) for (const to of next.get(key) ?? []) reached.add(to);
  return reached;
}

function readsPlace({ id, fields }: PlanNode, place: FieldPlace): boolean {
  if ('quantity' in place) return id === place.quantity;
  return id === place.work && fields.some(({ key }) => key === place.field);
}

function ofQuantities(state: State, place: FieldPlace): Candidate[] {
  const own = 'quantity' in place ? place.quantity : undefined;
  return [...state.answer.sound.quantities].flatMap(([id, { name, kind }]) =>
    id === own
      ? []
      : [{ ...today(state, { quantity: id }, place), kind, name, keys: [homeOf(id)], stage: 0 }],
  );
}

function ofWorks(state: State, place: FieldPlace): Candidate[] {
  const own = 'work' in place ? place.work : undefined;
  return [...state.answer.works].flatMap(([id, seen]) => {
    if (id === own || seen.work.off || !seen.outputs) return [];
    return seen.outputs.outputs.flatMap((output) => ofOutput(state, { id, seen, output }, place));
  });
}

interface Giving {
  id: string;
  seen: SeenWork;
  output: Output;
}

/** An output once, or once a side where the sides don't agree, and all together where they add up. */
function ofOutput(state: State, { id, seen, output }: Giving, place: FieldPlace): Candidate[] {
  const { key, kind, name, step, edge } = output;
  const bound = step?.bound ?? output.bound;
  const there = seen.sides.filter(
    (side) =>
      absentBy(seen, side, key) === undefined && !isNone(state.answer, homeOf(id, side.side, key)),
  );
  if (there.length === 0) return [];
  const stage = output.step ? STAGES.indexOf(output.step.stage) : stageOf(seen);
  const base = { kind, name: seen.work.name, output: name, stage, edge, ...(bound && { bound }) };
  const one = (sides: readonly SeenSide[], of?: string): Candidate => {
    const link = { work: id, output: key, ...(of !== undefined && { of }) };
    const keys = sides.map(({ side }) => homeOf(id, side, key));
    return { ...today(state, link, place), ...base, keys, ...(of !== undefined && { of }) };
  };
  const same = one(there);
  if (there.length < 2) return [same];
  const total = output.adds && there.length === seen.sides.length ? [one(there, 'total')] : [];
  const each = same.value === undefined ? there.map((side) => one([side], side.side)) : [same];
  return [...each, ...total];
}

/** A number in a field took it away, as three tiers do a fourth: a link to it would wait for ever. */
function isNone({ values }: Answer, key: string): boolean {
  const result = values.get(key);
  return result?.ok === false && result.trouble.kind === 'absent';
}

function today(
  state: State,
  link: Link,
  place: FieldPlace,
): Pick<Offered, 'link' | 'value' | 'plusMinus'> {
  const side = 'work' in place ? (place.side ?? '') : '';
  const now = todays(state, { link }, side);
  if (!('put' in now)) return { link, plusMinus: 0 };
  return { link, value: now.put, plusMinus: now.plusMinus ?? 0 };
}

/** When in the making a work comes: its first step, or else where things are measured. */
function stageOf({ outputs }: SeenWork): number {
  const steps = outputs?.outputs.flatMap(({ step }) => step ?? []) ?? [];
  const stages = steps.map(({ stage }) => STAGES.indexOf(stage));
  return Math.min(...stages, STAGES.length) % STAGES.length;
}
