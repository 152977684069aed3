import type { Bench } from '../../calculation/bench.ts';
import type { Draft } from '../../calculation/calculation.ts';
import { readDraft } from '../../calculation/draft.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { exactLength } from '../../lengths/length.ts';
import { showExact, shownText } from '../../lengths/show-length.ts';
import type { HoleRow } from '../../sewing/strip.ts';
import { stripHoles } from '../../sewing/strip-holes.ts';
import { edgingInput } from './read.ts';

/** The rows as they are worked out, and how they are fitted; undefined while there is no answer. */
function worked(draft: Draft, bench: Bench) {
  const input = edgingInput(readDraft(draft, bench), draft, bench);
  const outcome = input && stripHoles(input.strip);
  const [row, second] = outcome?.ok ? outcome.value.rows : [];
  return input && row && { fit: input.strip.fit, row, second };
}

/** A pitch so fine that times as many holes as there may be it is still the row's length. */
function pitchText(pitch: number, { unit, decimalMark }: Bench): string {
  return shownText(showExact(exactLength(pitch), unit, unit === 'mm' ? 4 : 5), decimalMark);
}

/**
 * Counting begins with the strip's own count, pitch and length: one that was punched
 * can be checked. Round corners there is no one pitch, nor a length to measure.
 */
export function toCentre(draft: Draft, bench: Bench): Draft {
  const row = worked(draft, bench)?.row;
  if (!row || row.count < 2) return {};
  const { count, pitches } = row;
  const pitch = pitches.length > 1 ? undefined : pitches[0];
  return {
    u: bench.unit,
    count: String(count),
    pitch: pitch ? pitchText(pitch, bench) : '',
    measured: pitch ? exactly(exactLength((count - 1) * pitch), bench) : '',
  };
}

/** Both strips begin as this one. */
export function toCrossing(draft: Draft, bench: Bench): Draft {
  const { width = '', pitch = '', margin = '', hole = '', rows = '' } = draft;
  return {
    u: bench.unit,
    width,
    pitch,
    margin,
    hole,
    rows,
    upperWidth: width,
    upperPitch: pitch,
    upperMargin: margin,
    upperRows: rows,
  };
}

/**
 * Lace for each row, never too short: round corners every stitch is taken for the
 * widest, and a loop has as many stitches as holes, so its first hole is laced twice.
 */
export function toLacing(draft: Draft, bench: Bench): Draft {
  const found = worked(draft, bench);
  if (!found) return {};
  const { fit, row, second } = found;
  const holes = ({ count }: HoleRow) => String(count + (fit === 'loop' ? 1 : 0));
  const pitch = ({ pitches }: HoleRow) => pitchText(Math.max(...pitches), bench);
  // A row of one hole has no lace.
  const laced = second && second.count > 1 ? second : undefined;
  return {
    u: bench.unit,
    holes: holes(row),
    pitch: pitch(row),
    holes2: laced ? holes(laced) : '',
    pitch2: laced ? pitch(laced) : '',
    margin: draft.margin ?? '',
  };
}
