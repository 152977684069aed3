import { lacingWords as words } from '#words/calculations/lacing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { Laced } from '../../sewing/lacing/lacing.ts';
import type { LacingDoubt } from '../../sewing/lacing/lacing-doubts.ts';
import type { LacingInput } from '../../sewing/lacing/lacing-input.ts';
import { publishedTimes, timesText } from './lines.ts';

/** What is doubtful about the lace of one row. */
export function warningsOf(
  { kind }: LacingInput,
  { doubts, geometry, factor }: Laced,
  offHoles: readonly number[],
  bench: Bench,
): string[] {
  const said = (doubt: LacingDoubt) => {
    switch (doubt.kind) {
      case 'cut-short':
        return words.cutShort(doubt.advance, doubt.stitches);
      case 'beyond':
        return words.beyond(timesText(doubt.by, bench), doubt.end);
      case 'off-published':
        return words.offPublished(
          words.timesIs(timesText(factor, bench), exactly(geometry, bench)),
          Math.round(doubt.off * 100),
          publishedTimes(kind, bench),
          doubt.less,
        );
    }
  };
  return [...doubts.map(said), ...(offHoles.length > 0 ? [words.offHoles(offHoles)] : [])];
}
