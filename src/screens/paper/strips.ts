import type { NamedRun } from '../../controls/calculation.ts';
import type { PaperStrip } from '../../drawing/paper-job.ts';
import { toMm } from '../../lengths/length.ts';
import { paperWords as words } from '../../words/paper-words.ts';

/** What can be put on paper of an answer's runs: rows of one strip lie on one template. */
export function stripsOf(runs: readonly NamedRun[]): PaperStrip[] {
  const strips: PaperStrip[] = [];
  let before: NamedRun | undefined;
  for (const named of runs) {
    const { strip, run, name } = named;
    const row = {
      across: strip ? toMm(strip.across) : 0,
      marks: run.marks.map(({ at, label }) => ({ at: toMm(at), label })),
    };
    const last = strips.at(-1);
    if (last && before && onOneStrip(before, named)) {
      strips[strips.length - 1] = {
        ...last,
        name: `${last.name}, ${name}`,
        rows: [...last.rows, row],
      };
    } else {
      strips.push({
        name,
        datum: words.datum(run.datum),
        length: toMm(run.length),
        width: strip && toMm(strip.width),
        hole: strip && toMm(strip.hole),
        rows: [row],
      });
    }
    before = named;
  }
  return strips;
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
