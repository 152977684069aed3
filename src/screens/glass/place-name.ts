import type { Bench } from '../../controls/bench.ts';
import type { NamedRun } from '../../controls/calculation.ts';
import { exactly, onTape } from '../../controls/tape-text.ts';
import type { GlassPlace } from '../../drawing/glass.ts';
import { exactLength, settled, UNITS_PER_MM } from '../../lengths/length.ts';
import { glassWords as words } from '../../words/glass-words.ts';

/** What a place is called where one is told to lay a line on it. */
export function placeName({ mm, kind, mark }: GlassPlace, named: NamedRun, bench: Bench): string {
  const at = settled(exactLength(mm * UNITS_PER_MM));
  switch (kind) {
    case 'mark':
      return words.mark(named.run.marks[mark ?? 0]?.label ?? '');
    case 'datum':
      return words.datum(named.run.datum);
    case 'overlap':
      return words.overlap(onTape(at, bench));
    case 'end':
      return words.end(exactly(at, bench));
  }
}

/** What stands beside its line: a mark has its label alone, and at zero the datum with it. */
export function placeLabel(place: GlassPlace, named: NamedRun, bench: Bench): string {
  if (place.kind !== 'mark') return placeName(place, named, bench);
  const label = named.run.marks[place.mark ?? 0]?.label ?? '';
  return Math.abs(place.mm) < 1e-6 ? `${label} · ${words.datum(named.run.datum)}` : label;
}
