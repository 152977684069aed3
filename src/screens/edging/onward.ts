import type { Bench } from '../../controls/bench.ts';
import type { Draft } from '../../controls/calculation.ts';
import { readDraft } from '../../controls/draft.ts';
import { exactly } from '../../controls/tape-text.ts';
import { exactLength } from '../../lengths/length.ts';
import { showExact, shownText } from '../../lengths/show-length.ts';
import { stripHoles } from '../../sewing/strip-holes.ts';
import { edgingInput } from './read.ts';

/** The first row as it is worked out, and how it is fitted; undefined while there is no answer. */
function worked(draft: Draft, bench: Bench) {
  const input = edgingInput(readDraft(draft, bench), draft, bench);
  const outcome = input && stripHoles(input.strip);
  const row = outcome?.ok ? outcome.value.rows[0] : undefined;
  return input && row && { fit: input.strip.fit, row };
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
 * Lace for the first row, never too short: round corners every stitch is taken for the
 * widest, and a loop has as many stitches as holes, so its first hole is laced twice.
 */
export function toLacing(draft: Draft, bench: Bench): Draft {
  const found = worked(draft, bench);
  if (!found) return {};
  const { fit, row } = found;
  return {
    u: bench.unit,
    holes: String(row.count + (fit === 'loop' ? 1 : 0)),
    pitch: pitchText(Math.max(...row.pitches), bench),
    margin: draft.margin ?? '',
  };
}
