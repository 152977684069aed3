import { paperWords as words } from '#words/paper/paper-words.ts';
import type { NamedRun } from '../../calculation/calculation.ts';
import type { PaperRow, PaperStrip } from '../../drawing/paper-job.ts';
import { toMm } from '../../lengths/length.ts';

/** What can be put on paper of an answer's runs: rows of one strip lie on one template. */
export function stripsOf(runs: readonly NamedRun[]): PaperStrip[] {
  const strips: PaperStrip[] = [];
  let before: NamedRun | undefined;
  for (const named of runs) {
    const { strip, run, name } = named;
    const rows = rowsOf(named);
    const last = strips.at(-1);
    if (last && before && onOneStrip(before, named)) {
      strips[strips.length - 1] = {
        ...last,
        name: `${last.name}, ${name}`,
        rows: [...last.rows, ...rows],
      };
    } else {
      strips.push({
        name,
        datum: words.datum(run.datum),
        length: toMm(run.length),
        width: strip && toMm(strip.width),
        hole: strip && toMm(strip.hole),
        rows,
      });
    }
    before = named;
  }
  return strips;
}

/** One row, but for marks that each say how far across they lie. */
function rowsOf({ strip, run }: NamedRun): PaperRow[] {
  const own = strip ? toMm(strip.across) : 0;
  const marks = run.marks.map(({ at, label }) => ({ at: toMm(at), label }));
  const across = run.marks.map((mark) => (mark.across === undefined ? own : toMm(mark.across)));
  if (across.every((one) => one === own)) return [{ across: own, marks }];
  return [...new Set(across)].map((one) => ({
    across: one,
    marks: marks.filter((_, i) => across[i] === one),
  }));
}

/** Rows of one straight strip: as long, and measured from the same end. */
function onOneStrip(one: NamedRun, other: NamedRun): boolean {
  return (
    one.strip !== undefined &&
    other.strip !== undefined &&
    one.strip.width === other.strip.width &&
    one.strip.across !== other.strip.across &&
    one.run.length === other.run.length &&
    one.run.datum === 'cut-end' &&
    other.run.datum === 'cut-end'
  );
}
