import { mm } from '../../lengths/length.ts';
import type { BodyMeasureId } from '../../sewing/sources/body-measures.ts';
import type { ClothLay } from '../record/cloth-lay.ts';
import { homeOf } from '../record/home.ts';
import type { Material } from '../record/material.ts';
import type { PiecePlace, PieceSaid } from '../record/piece-said.ts';
import type { Fields, Garment, Link, Part, Quantity, Work } from '../record/record.ts';
import type { Known } from '../work-out/seen-work.ts';
import { act } from './act.ts';
import { begin, type State } from './state.ts';
import { withKeys } from './with-keys.ts';

/** Another tape may be in hand: every demo was made with one of millimetres. */
const TAPE = 8000;

/** A garment to look at: its own numbers, the works on it, and what of it is made. */
export interface Demo {
  quantities: Readonly<Record<string, Omit<Quantity, 'name'>>>;
  /** In their order; what is left of their fields is as each calculation begins (`withKeys`). */
  works: readonly DemoWork[];
  /** The cloth its pieces are cut from, what is said of laying them on it, and how they lay. */
  cloth?: { said: Material; lay: ClothLay };
  /** Works that are made to their last step. */
  made: readonly string[];
  /** A row that is begun: its first marks, each where it was measured, or as asked; what was said of that. */
  row?: { work: string; output: string; marks: readonly (number | undefined)[]; way: string };
}

interface DemoWork {
  id: string;
  calculation: string;
  fields: Fields;
  sides?: readonly string[];
}

/** What all of a demo is called, which is for the words to say: its name, and each number and work by its id. */
export type DemoNames = { readonly name: string } & Readonly<Record<string, string>>;

/** What is typed, also beside a number that is taken. */
export const text = (typed: string): Part => ({ text: typed, unit: 'cm' });

/** Fields as typed: `depth=2&turn=0.7`. */
export function typed(query: string): Fields {
  return Object.fromEntries(
    query.split('&').map((pair) => {
      const [key = '', value = ''] = pair.split('=');
      return [key, [text(value)]];
    }),
  );
}

/** A number of the garment itself, in centimetres. */
export const own = (rank: number, cm: string, more: Partial<Quantity> = {}) =>
  ({ kind: 'length', rank, parts: [text(cm)], ...more }) as const;

/** A measure of its wearer. */
export const ofBody = (rank: number, cm: string, measure: BodyMeasureId) =>
  own(rank, cm, { body: true, measure });

/** A field that takes numbers from elsewhere, parted where they are several. */
export function from(...links: readonly Link[]): readonly Part[] {
  return links.flatMap((link, i) => (i === 0 ? [{ link }] : [text('; '), { link }]));
}

/** A length of a cloth or a piece, in centimetres. */
export const cm = (long: number): number => mm(10 * long);

/** The needs by which pieces that works cut are said something of: by the id of the work. */
export function ofPieces(
  said: Readonly<Record<string, PieceSaid>>,
): NonNullable<ClothLay['pieces']> {
  return Object.fromEntries(
    Object.entries(said).map(([work, piece]) => [homeOf(work, '', 'count'), piece]),
  );
}

/**
 * The line a piece is cut along, in centimetres.
 * @param points down from its top and across from its left, each with how far the side to the next bows out
 */
export function cutAlong(
  ...points: readonly (readonly [down: number, across: number, bow?: number])[]
): Required<Pick<PieceSaid, 'outline'>> {
  const places = points.map(([down, across]): PiecePlace => [cm(down), cm(across)]);
  const bows = points.map(([, , bow = 0]) => cm(bow));
  return { outline: { form: { kind: 'points', points: places, bows } } };
}

/** The calculations that a demo holds, each once. */
export function calculationsOf({ works }: Demo): readonly string[] {
  return [...new Set(works.map(({ calculation }) => calculation))];
}

/**
 * A garment that is shown to whoever has none: invented, as is its wearer, and partly made.
 *
 * @param id given by the caller, so that each demo is a garment of its own
 * @param known what its calculations give
 */
export function demoGarment(
  demo: Demo,
  names: DemoNames,
  id: string,
  now: number,
  known: Known,
): Garment {
  const named = (key: string) => names[key] ?? key;
  const works = demo.works.map(({ id: key, ...work }, i): [string, Work] => [
    key,
    { name: named(key), rank: i + 1, ...work, older: 2 },
  ]);
  const quantities = Object.entries(demo.quantities).map(([key, one]): [string, Quantity] => [
    key,
    { ...one, name: named(key) },
  ]);
  const planned: Garment = {
    ...{ version: 3, id, name: names.name, invented: true },
    ...{ changed: now, edits: 0, quantities: Object.fromEntries(quantities) },
    ...{ works: Object.fromEntries(works), facts: {}, begun: {}, decisions: {} },
    ...(demo.cloth && { materials: { cloth: demo.cloth.said }, lays: { cloth: demo.cloth.lay } }),
  };
  let state = begin(withKeys(planned, known), known);
  for (const work of demo.made) state = made(state, work, now);
  // Nothing of it is anyone's work yet: no backup is asked for.
  return { ...rowBegun(state, demo, now).record, edits: 0 };
}

function rowBegun(state: State, { row }: Demo, now: number): State {
  if (!row) return state;
  const home = homeOf(row.work, '', row.output);
  const begun = row.marks.reduce<State>((before, measured) => {
    const id = `${row.work}-${Object.keys(before.record.facts).length + 1}`;
    const where = measured !== undefined && { measured };
    return act(before, { do: 'make', home, id, tape: TAPE, now, ...where }).state;
  }, state);
  return act(begun, { do: 'decide', home, way: row.way, now }).state;
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
