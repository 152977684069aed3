import { laySheetWords as words } from '#words/garment/lay-sheet-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { onTape } from '../../../calculation/tape-text.ts';
import type { LayPaperWords } from '../../../drawing/lay-job.ts';
import { upToGraduation } from '../../../lengths/graduation.ts';
import { exactLength, mm } from '../../../lengths/length.ts';
import { shownNumber } from '../../../lengths/show-length.ts';

/** What is written on the pages, in the unit of the bench. */
export function layPaperWords(bench: Bench): LayPaperWords {
  const at = (of: number) => onTape(exactLength(mm(of)), bench);
  const long = (of: number) => onTape(exactLength(mm(of)), bench, upToGraduation);
  return {
    scale: (times) => words.scale(shownNumber(times, 1, bench.decimalMark)),
    edges: (width, folded) => (folded ? words.edgesFolded : words.edgesOpen)(at(width)),
    mark: (place) => at(place).replace(new RegExp(` ${bench.unit}$`), ''),
    long: (of) => words.long(long(of)),
    unnumbered: words.unnumbered,
    pageOf: words.pageOf,
  };
}
