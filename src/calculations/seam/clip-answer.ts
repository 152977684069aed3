import { seamWords as words } from '#words/calculations/seam-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer } from '../../calculation/calculation.ts';
import { saidAtMost } from '../../calculation/tape-said.ts';
import { byTape, exactly, numberAtMost } from '../../calculation/tape-text.ts';
import { type ExactLength, ZERO } from '../../lengths/length.ts';
import type { ClipInput, Clips } from '../../sewing/seams/seam-clips.ts';
import { CLIP_SHORT, CLIPS } from '../../sewing/sources/seams.ts';
import { NOTHING } from './nothing.ts';

/** Clips on a curved seam: the lesser of what the opening allows and what is published. */
export function clipAnswer(
  { spacing, byOpening, deep, differs, run }: Clips,
  { radius, allowance, opening }: ClipInput,
  bench: Bench,
): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const marked = run && [
    { label: words.clips, value: words.clipsOf(run.marks.length) },
    { label: words.differs, value: byTape(differs ?? ZERO, bench) },
  ];
  const lesser = byOpening > spacing ? words.publishedLesser : words.openingLesser;
  return {
    ...NOTHING,
    headline: { number: numberAtMost(spacing, bench), after: words.fromHere },
    sentence: words.clipSentence(show(CLIP_SHORT.value), lesser),
    lines: [
      { label: words.byOpening, value: saidAtMost(byOpening, bench) },
      { label: words.publishedClips, value: words.published(CLIPS) },
      { label: words.deep, value: saidAtMost(deep, bench) },
      ...(marked ?? []),
    ],
    runs: run ? [{ name: words.title, item: words.clip, run }] : [],
    workings: [
      {
        formula: words.clipFormula(show(opening), show(radius), show(allowance), show(byOpening)),
        source: words.derived,
      },
      { formula: words.published(CLIP_SHORT), source: '' },
    ],
  };
}
