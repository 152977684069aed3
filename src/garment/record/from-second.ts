import { stateOf } from '../../calculation/parted.ts';
import { readLengths } from '../../lengths/read-lengths.ts';
import { type BenchUnit, benchUnit } from '../../lengths/unit.ts';
import { placeOf } from '../as-made.ts';
import type { KeptRun, Kept as KeptWork, Garment as Second } from '../garment.ts';
import { begunIn, factsOf } from './made-in-second.ts';
import type { Begun, Fact, Garment, Quantity, TextPart, Work } from './record.ts';

/** The unit of what is bare in a draft that doesn't say: that of a new bench. */
const UNSAID: BenchUnit = 'cm';

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

/** Ids stand in homes, and a list of the second version might hold one many times. */
function freeId(id: string, taken: object): string {
  const own = id.replaceAll('|', '/');
  let free = own;
  for (let n = 2; Object.hasOwn(taken, free); n++) free = `${own.slice(0, 70)}+${n}`;
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
