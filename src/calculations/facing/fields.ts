import { facingWords as words } from '#words/calculations/facing-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { choice, given, length, lengthOrNone, maybeLength } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

const finished = maybeLength(turned.notGiven, { usual: 'garmentLength' });

/** What is asked of a faced hem: what always matters first. */
export const facingFields = schema(words.labels, {
  depth: length({ start: { cm: '4', mm: '40', in: '1 1/2' }, usual: 'hemDepth', givesWay: true }),
  kind: choice(words.kind),
  seam: length({ start: { cm: '1', mm: '10', in: '3/8' }, usual: 'seamAllowance', givesWay: true }),
  turn: length({ start: { cm: '0.6', mm: '6', in: '1/4' }, usual: 'turn', givesWay: true }),
  edgeStitch: length({ start: { cm: '0.2', mm: '2', in: '1/8' }, usual: 'edgeStitch' }),
  thickness: lengthOrNone(turned.notGiven),
  radius: maybeLength(turned.notGiven, { usual: 'curveRadius' }),
  finished,
  otherEnd: maybeLength(turned.otherEndHint, { when: given(finished) }),
  left: maybeLength(turned.notGiven, { usual: 'hemDepth' }),
  edge: maybeLength(turned.notGiven, { usual: 'around' }),
});

/** What was read of the fields. */
export type FacingAsked = InputOf<(typeof facingFields)['specs']>;
