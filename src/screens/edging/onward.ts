import type { Bench } from '../../controls/bench.ts';
import type { Draft } from '../../controls/calculation.ts';
import { readDraft } from '../../controls/draft.ts';
import { exactly } from '../../controls/tape-text.ts';
import { exactLength } from '../../lengths/length.ts';
import { stripHoles } from '../../sewing/strip-holes.ts';
import { edgingInput } from './read.ts';

/** The first row as it is worked out; undefined while there is no answer. */
function firstRow(draft: Draft, bench: Bench) {
  const input = edgingInput(readDraft(draft, bench), draft, bench);
  const outcome = input && stripHoles(input.strip);
  return outcome?.ok ? outcome.value.rows[0] : undefined;
}

/** Counting begins with the strip's own count, pitch and length: one that was punched can be checked. */
export function toCentre(draft: Draft, bench: Bench): Draft {
  const row = firstRow(draft, bench);
  const [run] = row?.runs ?? [];
  const marks = run?.marks ?? [];
  const span = exactLength((marks.at(-1)?.at ?? 0) - (marks[0]?.at ?? 0));
  const pitch = row?.pitches[0];
  if (!row || pitch === undefined || marks.length < 2) return {};
  return {
    u: bench.unit,
    count: String(marks.length),
    pitch: exactly(pitch, bench),
    measured: exactly(span, bench),
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

/** Lace for the first row. */
export function toLacing(draft: Draft, bench: Bench): Draft {
  const { margin = '', width = '' } = draft;
  const row = firstRow(draft, bench);
  const pitch = row?.pitches[0];
  if (!row || pitch === undefined) return {};
  return {
    u: bench.unit,
    holes: String(row.count),
    pitch: exactly(pitch, bench),
    margin,
    strip: width,
  };
}
