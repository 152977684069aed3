import type { Bench } from '../../calculation/bench.ts';
import type { Drawing } from '../../calculation/drawing.ts';
import type { Dimensioned } from '../../drawing/dimension.ts';
import { drawChange, drawGirth } from './change-drawing.ts';
import { drawClips } from './clip-drawing.ts';
import { type SeamAsked, seamFields } from './fields.ts';
import { drawFinish } from './finish-drawing.ts';

const DRAWN: Readonly<
  Record<SeamAsked['what'], (asked: SeamAsked, bench: Bench) => Dimensioned | undefined>
> = {
  finish: drawFinish,
  change: drawChange,
  girth: drawGirth,
  curve: drawClips,
};

/** What is done with a seam allowance, on the allowance flat and on the finished seam. */
export const seamDrawing: Drawing = {
  id: 'seam',
  // A strip is as long as its edge: here it is seen across.
  unplaced: () => ['edge'],
  draw(draft, bench) {
    const read = seamFields.read(draft, bench);
    return read.ok ? DRAWN[read.value.what](read.value, bench) : undefined;
  },
};
