import { exactLength, length } from '../../lengths/length.ts';
import type { Mark, MarkKind, Run } from '../../sewing/run.ts';

/** A made mark of a row, in the order they lie in. */
export interface MadeMark {
  id: string;
  /** Where it is. */
  at: number;
  /** Where it was to be when it was made. */
  plan: number;
  /** Which mark of how many it was, and where that one was asked. */
  rank: number;
  of: number;
  asked: number;
  /** How far it may be off and still be as asked: half a graduation of its tape. */
  slack: number;
}

/** A row: its marks, and which facts they are. */
export interface Row {
  run: Run;
  /** By rank: the fact of a mark that is made. */
  made: readonly (string | undefined)[];
}

/** Marks that stay where they are asked when the rest is spread. */
const FIXED: ReadonlySet<MarkKind> = new Set(['level', 'sewn', 'corner', 'centre', 'mitre']);

export function isFixed({ kind }: Mark): boolean {
  return FIXED.has(kind);
}

export function placesIn({ marks }: Run): number[] {
  return marks.map(({ at }) => at);
}

/** The least there may be from a mark to the next: half of the least that is asked. Ours, no source. */
export function leastApart(run: Run): number {
  const places = placesIn(run);
  const steps = places.slice(1).map((at, i) => at - (places[i] ?? 0));
  return steps.length === 0 ? 0 : steps.reduce((a, b) => Math.min(a, b)) / 2;
}

/** The run with its marks at these places; of another number of marks, numbered anew. */
export function runAt(
  run: Run,
  places: readonly number[],
  made: readonly (string | undefined)[],
): Row {
  const same = run.marks.length === places.length;
  const kind = run.marks.find((mark) => !isFixed(mark))?.kind ?? run.marks[0]?.kind ?? 'measure';
  const marks = places.map((place, rank): Mark => {
    const at = exactLength(place);
    const mark = same ? run.marks[rank] : undefined;
    if (!mark) return { at, label: String(rank + 1), kind };
    return mark.at === at ? mark : { ...mark, at };
  });
  const last = Math.max(run.length, Math.ceil(places.at(-1) ?? 0));
  return { run: { ...run, length: length(last), marks }, made };
}
