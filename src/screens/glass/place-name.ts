import { glassWords as words } from '#words/paper/glass-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { NamedRun } from '../../calculation/calculation.ts';
import { exactly, onTape } from '../../calculation/tape-text.ts';
import type { GlassPlace } from '../../drawing/glass.ts';
import { exactLength, settled, UNITS_PER_MM } from '../../lengths/length.ts';

/** What a place is called where one is told to lay a line on it. */
export function placeName(place: GlassPlace, named: NamedRun, bench: Bench): string {
  if (place.kind === 'mark') return words.mark(markLabel(place, named));
  if (place.kind === 'overlap') return words.overlapMark(onTape(lengthOf(place), bench));
  return placeLabel(place, named, bench);
}

/** What stands beside its line: a mark has its label alone, and at zero the datum with it. */
export function placeLabel(place: GlassPlace, named: NamedRun, bench: Bench): string {
  switch (place.kind) {
    case 'mark': {
      const label = markLabel(place, named);
      return Math.abs(place.mm) < 1e-6 ? `${label} · ${words.datum(named.run.datum)}` : label;
    }
    case 'datum':
      return words.datum(named.run.datum);
    case 'overlap':
      return words.overlap(onTape(lengthOf(place), bench));
    case 'end':
      return words.end(exactly(lengthOf(place), bench));
  }
}

function markLabel({ mark }: GlassPlace, { run }: NamedRun): string {
  return run.marks[mark ?? 0]?.label ?? '';
}

const lengthOf = ({ mm }: GlassPlace) => settled(exactLength(mm * UNITS_PER_MM));
