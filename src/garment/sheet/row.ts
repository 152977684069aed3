import type { Step } from '../../calculation/output.ts';
import { exactLength, mm } from '../../lengths/length.ts';
import type { Mark, Run } from '../../sewing/run.ts';
import { type KnownFact, numberOf } from '../record/sound.ts';

/** A mark of a row as it is put on paper. */
export interface SheetMark extends Pick<Mark, 'at' | 'across' | 'label' | 'kind'> {
  made: boolean;
}

/** A row of marks on the sheet. */
export interface SheetRow {
  datum: Step['datum'];
  /** In 1/8000 mm from the datum. */
  length: number;
  marks: readonly SheetMark[];
  /** The places among `marks` that have a box of their own: all, or of a long row some. */
  ticks: readonly number[];
  /** How far apart the marks between those boxes lie, where a long row has fewer boxes than marks. */
  between: { least: number; most: number } | undefined;
}

/** So many marks have a box each; of a longer row every tenth has, and each where it isn't even. */
const MOST_BOXES = 40;
const EVERY = 10;

/** Spaces that differ by less are one space: nobody marks finer. */
const SAME = mm(0.05);

/** @param onlyMade what is to come isn't decided */
export function rowOf(
  run: Run,
  made: readonly (string | undefined)[] | undefined,
  onlyMade: boolean,
): SheetRow {
  const all = run.marks.map(
    ({ at, across, label, kind }, rank): SheetMark => ({
      ...{ at, label, kind, made: made?.[rank] !== undefined },
      ...(across !== undefined && { across }),
    }),
  );
  return rowWith(run, onlyMade ? all.filter((mark) => mark.made) : all);
}

/** What is made of a row that can't be worked out now: where each mark was measured. */
export function madeRow(facts: readonly KnownFact[], datum: Step['datum']): SheetRow | undefined {
  if (facts.length === 0) return undefined;
  const marks = facts.map(({ fact }, i): SheetMark => {
    const label = String((fact.mark?.rank ?? i) + 1);
    return { at: exactLength(numberOf(fact)), label, kind: 'measure', made: true };
  });
  return rowWith({ datum, length: marks.at(-1)?.at ?? 0 }, marks);
}

function rowWith(
  { datum, length }: Pick<SheetRow, 'datum' | 'length'>,
  marks: readonly SheetMark[],
): SheetRow {
  const ticks = ticksOf(marks);
  const few = ticks.length < marks.length;
  return {
    ...{ datum, length, marks, ticks },
    between: few ? spacesBetween(marks, new Set(ticks)) : undefined,
  };
}

function ticksOf(marks: readonly SheetMark[]): number[] {
  const all = marks.map((_, rank) => rank);
  return marks.length <= MOST_BOXES ? all : all.filter((rank) => hasBox(marks, rank));
}

function hasBox(marks: readonly SheetMark[], rank: number): boolean {
  const [before, mark, next] = [marks[rank - 1], marks[rank], marks[rank + 1]];
  if (!before || !mark || !next || (rank + 1) % EVERY === 0) return true;
  const turns = mark.made !== next.made || mark.kind !== next.kind || mark.across !== next.across;
  return turns || Math.abs(next.at - mark.at - (mark.at - before.at)) > SAME;
}

/** The spaces from a mark without a box to the next. */
function spacesBetween(marks: readonly SheetMark[], boxes: ReadonlySet<number>) {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (let rank = 1; rank < marks.length; rank++) {
    if (boxes.has(rank) && boxes.has(rank - 1)) continue;
    const space = (marks[rank]?.at ?? 0) - (marks[rank - 1]?.at ?? 0);
    least = Math.min(least, space);
    most = Math.max(most, space);
  }
  return { least, most };
}
