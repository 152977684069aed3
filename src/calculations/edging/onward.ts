import type { centreWords } from '#words/calculations/centre-words.ts';
import type { crossingWords } from '#words/calculations/crossing-words.ts';
import type { lacingWords } from '#words/calculations/lacing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Draft } from '../../calculation/calculation.ts';
import type { Typed } from '../../calculation/schema.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { exactLength } from '../../lengths/length.ts';
import { showExact, shownText } from '../../lengths/show-length.ts';
import type { HoleRow } from '../../sewing/edging/strip.ts';
import { stripHoles } from '../../sewing/edging/strip-holes.ts';
import { edgingFields } from './fields.ts';
import { stripOf } from './strip.ts';

/** The rows as they are worked out, and how they are fitted; undefined while there is no answer. */
function worked(draft: Draft, bench: Bench) {
  const read = edgingFields.read(draft, bench);
  if (!read.ok) return undefined;
  const strip = stripOf(read.value);
  const outcome = stripHoles(strip);
  const [row, second] = outcome.ok ? outcome.value.rows : [];
  return row && { fit: strip.fit, row, second };
}

/** A pitch so fine that times as many holes as there may be it is still the row's length. */
function pitchText(pitch: number, { unit, decimalMark }: Bench): string {
  return shownText(showExact(exactLength(pitch), unit, unit === 'mm' ? 4 : 5), decimalMark);
}

/**
 * Counting begins with the strip's own count, pitch and length: one that was punched
 * can be checked. Round corners there is no one pitch, nor a length to measure.
 */
export function toCentre(draft: Draft, bench: Bench): Draft | undefined {
  const row = worked(draft, bench)?.row;
  if (!row || row.count < 2) return undefined;
  const { count, pitches } = row;
  const pitch = pitches.length > 1 ? undefined : pitches[0];
  const typed: Typed<typeof centreWords.labels> = {
    count: String(count),
    pitch: pitch ? pitchText(pitch, bench) : '',
    measured: pitch ? exactly(exactLength((count - 1) * pitch), bench) : '',
  };
  return typed;
}

/** Both strips begin as this one. */
export function toCrossing(draft: Draft): Draft {
  const ask = edgingFields.asks(draft);
  const { specs } = edgingFields;
  const [width, margin] = [ask(specs.width), ask(specs.margin)];
  // Holes that follow others have no one pitch.
  const pitch = edgingFields.asksFor('pitch', ask) ? ask(specs.pitch) : '';
  const rows = ask(specs.rows);
  const typed: Typed<typeof crossingWords.labels> = {
    width,
    pitch,
    margin,
    hole: ask(specs.hole),
    rows,
    upperWidth: width,
    upperPitch: pitch,
    upperMargin: margin,
    upperRows: rows,
  };
  return typed;
}

/**
 * Lace for each row, never too short: round corners every stitch is taken for the
 * widest, and a loop has as many stitches as holes, so its first hole is laced twice.
 */
export function toLacing(draft: Draft, bench: Bench): Draft | undefined {
  const found = worked(draft, bench);
  if (!found) return undefined;
  const { fit, row, second } = found;
  const holes = ({ count }: HoleRow) => String(count + (fit === 'loop' ? 1 : 0));
  const pitch = ({ pitches }: HoleRow) => pitchText(Math.max(...pitches), bench);
  // A row of one hole has no lace.
  const laced = second && second.count > 1 ? second : undefined;
  const typed: Typed<typeof lacingWords.labels> = {
    holes: holes(row),
    pitch: pitch(row),
    holes2: laced ? holes(laced) : '',
    pitch2: laced ? pitch(laced) : '',
    margin: edgingFields.asks(draft)(edgingFields.specs.margin),
  };
  return typed;
}
