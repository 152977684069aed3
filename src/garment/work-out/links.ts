import type { Kind, Outputs } from '../../calculation/output.ts';
import { homeOf } from '../record/home.ts';
import type { Link, LinkPart, PutPart, Quantity } from '../record/record.ts';
import type { Gone, Value } from './result.ts';
import { absentBy, type SeenWork } from './seen-work.ts';

/** What a link takes. */
export interface Source {
  kind: Kind;
  /** The numbers it is taken from: of several all agree, or all are added. */
  keys: readonly string[];
  total: boolean;
  /** What was put in a link's place. */
  put?: PutNumber;
}

/** A number that stands in a field itself, and how sure it is. */
export interface PutNumber {
  value: Value;
  plusMinus: number;
  /** Names what is in doubt: the same for every number that reads the field. */
  reading: string;
}

/** Why a link takes nothing. */
export type NoSource = { gone: Gone; for: string } | { gone: undefined };

export interface Places {
  quantities: ReadonlyMap<string, Quantity>;
  works: ReadonlyMap<string, SeenWork>;
}

/**
 * Where a link of one side of a work leads; a quantity has no side.
 * @param reading names what is in doubt of a number that was put in a link's place
 */
export function sourceOf(
  part: LinkPart | PutPart,
  side: string,
  places: Places,
  reading = '',
): Source | NoSource {
  if (!('link' in part)) {
    const { kind, put: value, plusMinus = 0 } = part;
    return { kind, keys: [], total: false, put: { value, plusMinus, reading } };
  }
  const { link } = part;
  if (!('quantity' in link)) return outputOfWork(link, side, places);
  const key = homeOf(link.quantity);
  const kind = places.quantities.get(link.quantity)?.kind;
  return kind ? { kind, keys: [key], total: false } : { gone: { why: 'gone' }, for: key };
}

function outputOfWork(
  { work: id, output: key, of }: Extract<Link, { work: string }>,
  side: string,
  { works }: Places,
): Source | NoSource {
  const seen = works.get(id);
  const not = (gone: Gone): NoSource => ({ gone, for: homeOf(id, '', key) });
  if (!seen) return not({ why: 'gone' });
  if (seen.work.off) return not({ why: 'taken off' });
  const output = outputIn(seen.outputs, key);
  if (!output) return not({ why: seen.state === 'here' ? 'newer' : seen.state });
  const wanted = sidesFor(seen, side, of);
  if (wanted.length === 0) return not({ why: 'no such side' });
  for (const one of wanted) {
    const by = absentBy(seen, one, key);
    if (by !== undefined) return not({ why: 'absent', by });
  }
  const total = of === 'total';
  if (total && !output.adds) return { gone: undefined };
  return { kind: output.kind, keys: wanted.map((one) => homeOf(id, one.side, key)), total };
}

/** The side that is named, else the same one, else all of them. */
function sidesFor({ sides }: SeenWork, side: string, of: string | undefined) {
  if (of === 'total') return sides;
  const named = sides.filter((one) => one.side === (of ?? side));
  return named.length > 0 || of !== undefined ? named : sides;
}

function outputIn(outputs: Outputs | undefined, key: string) {
  return outputs?.outputs.find((one) => one.key === key);
}
