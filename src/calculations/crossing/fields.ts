import { crossingWords as words } from '#words/calculations/crossing-words.ts';
import { holeWords } from '#words/common/hole-words.ts';
import { choice, length, lengthOrNone, number } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { Crossed } from '../../sewing/crossing/crossing-holes.ts';

/** Both strips begin alike. */
const PITCH = { start: { cm: '0.8', mm: '8', in: '5/16' }, usual: 'holePitch' } as const;
const WIDTH = { start: { cm: '2', mm: '20', in: '3/4' }, usual: 'stripWidth' } as const;
const MARGIN = { start: { cm: '0.5', mm: '5', in: '3/16' }, usual: 'holeMargin' } as const;

/** What is asked of two crossing strips: what always matters first. */
export const crossingFields = schema(words.labels, {
  angle: number({ start: '90', usual: 'cornerAngle' }),
  hole: length({ start: { cm: '0.2', mm: '2', in: '1/16' }, usual: 'punch' }),
  pitch: length(PITCH),
  upperPitch: length(PITCH),
  width: length(WIDTH),
  upperWidth: length(WIDTH),
  margin: length(MARGIN),
  upperMargin: length(MARGIN),
  rows: choice(holeWords.rows, { start: 'level' }),
  upperRows: choice(holeWords.rows, { start: 'level' }),
  phase: lengthOrNone(words.nothing),
  upperPhase: lengthOrNone(words.nothing),
});

/** Each strip by itself. */
export function crossedOf(asked: InputOf<(typeof crossingFields)['specs']>): Crossed {
  const { angle, hole, pitch, width, margin, rows, phase } = asked;
  const upper = {
    pitch: asked.upperPitch,
    width: asked.upperWidth,
    margin: asked.upperMargin,
    rows: asked.upperRows,
    phase: asked.upperPhase,
  };
  return { lower: { pitch, width, margin, rows, phase }, upper, angle, hole };
}
