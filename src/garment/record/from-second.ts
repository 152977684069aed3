import { stateOf } from '../../calculation/parted.ts';
import { readLengths } from '../../lengths/read-lengths.ts';
import { type BenchUnit, benchUnit } from '../../lengths/unit.ts';
import { inMm, placeOf } from '../as-made.ts';
import type { KeptRun, Kept as KeptWork, Garment as Second } from '../garment.ts';
import { homeOf } from './home.ts';
import type { Begun, Fact, Garment, Quantity, TextPart, Work } from './record.ts';

/** The unit of what is bare in a draft that doesn't say: that of a new bench. */
const UNSAID: BenchUnit = 'cm';
/** What a mark was made with isn't known: a tape of millimetres. */
const TAPE_UNSAID = 8000;

/** The key of a run that only its place among the runs of its calculation is known of, from 0. */
export function runKey(place: number): string {
  return `#${place}`;
}

/**
 * A garment of the second version as one of the third. No link is invented. What is made of a run
 * keeps the run's place for its key until its calculation has named it (`withKeys`). A length that
 * was kept for itself becomes a quantity.
 */
export function fromSecond(garment: Second): Garment {
  const { id, name, invented, changed, edits } = garment;
  const quantities: Record<string, Quantity> = {};
  const works: Record<string, Work> = {};
  const facts: Record<string, Fact> = {};
  const begun: Record<string, Begun> = {};
  const all = [...garment.kept, ...garment.takenOff];
  all.forEach((kept, i) => {
    const own = freeId(kept.id, { ...quantities, ...works });
    const off = i >= garment.kept.length;
    if (kept.calculation === LENGTH_ALONE && !off) {
      quantities[own] = quantityOf(kept, i + 1);
      return;
    }
    works[own] = { ...workOf(kept, i + 1), ...{ stage: kept.stage }, ...(off && { off: true }) };
    Object.assign(facts, factsOf(kept, own, changed));
    Object.assign(begun, begunIn(kept, own, changed));
  });
  const maps = { quantities, works, facts, begun, decisions: {} };
  return { version: 3, id, name, invented, changed, edits, ...maps };
}

/** Of what is typed and measured on the page of a calculation, the part that becomes a work. */
export type Typed = Pick<KeptWork, 'name' | 'calculation' | 'draft' | 'runs'>;

/** The calculation of one length: kept it is a quantity. */
export const LENGTH_ALONE = 'convert';

/** Ids stand in homes, and a list of the second version might hold one twice. */
function freeId(id: string, taken: object): string {
  let free = id.replaceAll('|', '/');
  while (Object.hasOwn(taken, free)) free = `${free.slice(0, 78)}+`;
  return free;
}

export function quantityOf({ name, draft }: Typed, rank: number): Quantity {
  const unit = benchUnit(draft.u) ?? UNSAID;
  return { name, kind: 'length', rank, parts: [{ text: draft.length ?? '', unit }] };
}

/** Its stage stays beside what is known: the steps have their own. */
export function workOf({ name, calculation, draft, runs }: Typed, rank: number): Work {
  const unit = benchUnit(draft.u) ?? UNSAID;
  const fields = Object.fromEntries(
    Object.entries(stateOf(draft).draft).map(([key, text]): [string, TextPart[]] => [
      key,
      [{ text: key === 'sewn' ? withoutMade(text, unit, runs[0]) : text, unit }],
    ]),
  );
  return { name, calculation, rank, fields, older: 2 };
}

/**
 * What is sewn, as typed, without what is also made: where a run was spaced anew its made places
 * stood in both, and once is right.
 */
function withoutMade(text: string, unit: BenchUnit, run: KeptRun | undefined): string {
  const places = run ? placesMade(run) : [];
  const left = text.split(';').filter((one) => {
    const read = readLengths(one, unit);
    const at = read.ok ? read.values[0] : undefined;
    const made = places.findIndex((place) => at !== undefined && Math.abs(place - at) <= 4000);
    if (made >= 0) places.splice(made, 1);
    return made < 0;
  });
  return left.join(';').trim();
}

function placesMade({ planned, made }: KeptRun): number[] {
  return Object.entries(made).flatMap(
    ([label, typed]) => (typed === '' ? planned[label] : placeOf(typed)) ?? [],
  );
}

/** What is made of its runs. */
export function factsOf({ runs }: Typed, own: string, when: number): Record<string, Fact> {
  const all = runs.flatMap((run, place) =>
    madeOf(run, homeOf(own, '', runKey(place)), when).map(
      (fact, j) => [`${own}-${place}-${j + 1}`, fact] as const,
    ),
  );
  return Object.fromEntries(all);
}

/** What its runs under way were planned as. */
export function begunIn({ runs }: Typed, own: string, when: number): Record<string, Begun> {
  const all = runs.flatMap((run, place) => {
    const home = homeOf(own, '', runKey(place));
    const made = madeOf(run, home, when);
    return made.length > 0 ? [[home, begunOf(made, Object.values(run.planned))] as const] : [];
  });
  return Object.fromEntries(all);
}

/** Its made marks, by where they were planned. */
function madeOf({ planned, made }: KeptRun, home: string, when: number): Fact[] {
  const labels = Object.keys(planned).sort((a, b) => (planned[a] ?? 0) - (planned[b] ?? 0));
  const beyond = Object.keys(made).filter((label) => !Object.hasOwn(planned, label));
  const all = [...labels, ...beyond];
  return all.flatMap((label, rank) => {
    const typed = Object.hasOwn(made, label) ? made[label] : undefined;
    if (typed === undefined) return [];
    const plan = (Object.hasOwn(planned, label) ? planned[label] : placeOf(typed)) ?? 0;
    const measured = placeOf(typed);
    // What can't be read is kept as it was said.
    const said = typed !== '' && measured === undefined ? { said: typed } : {};
    const mark = { rank, of: all.length, asked: plan };
    const shown = measured !== undefined && Math.abs(measured - plan) < 1 ? measured : plan;
    const stood = { shown: Math.round(shown), plan, tape: TAPE_UNSAID, rule: 1, read: '', when };
    const elsewhere = measured !== undefined && inMm(measured) !== inMm(stood.shown);
    return [{ home, ...stood, ...(elsewhere && { measured }), mark, ...said }];
  });
}

/** The places as they were planned last, around what is made. */
function begunOf(made: readonly Fact[], planned: readonly number[]): Begun {
  const places = [...planned].sort((a, b) => a - b);
  for (const { mark, measured } of made) {
    if (mark && mark.rank < places.length && measured !== undefined) places[mark.rank] = measured;
  }
  return { count: places.length, points: places.map((at, rank) => [rank, at]), by: {} };
}
