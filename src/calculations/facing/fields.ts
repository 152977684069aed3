import { facingWords as words } from '#words/facing-words.ts';
import { turnedWords as turned } from '#words/turned-words.ts';
import type { Draft, Field } from '../../calculation/calculation.ts';
import type { DraftReader } from '../../calculation/draft.ts';
import { fieldsCalled, isGiven } from '../../calculation/fields.ts';
import { ZERO } from '../../lengths/length.ts';
import type { FacingInput } from '../../sewing/hem-facing.ts';

const { length, optional, choice } = fieldsCalled(words.labels);

export function facingFields(draft: Draft): Field[] {
  return [
    length('depth'),
    choice('kind', words.kind),
    length('seam'),
    length('turn'),
    length('edgeStitch'),
    optional('thickness', turned.notGiven),
    optional('radius', turned.notGiven),
    optional('finished', turned.notGiven),
    ...(isGiven(draft, 'finished') ? [optional('otherEnd', turned.otherEndHint)] : []),
    optional('left', turned.notGiven),
  ];
}

/** What is faced; undefined when something of it could not be read. */
export function facingInput(read: DraftReader, draft: Draft): FacingInput | undefined {
  const depth = read.length('depth');
  const seam = read.length('seam');
  const turn = read.length('turn');
  const edgeStitch = read.length('edgeStitch');
  const thickness = read.maybeLength('thickness') ?? ZERO;
  const radius = read.maybeLength('radius');
  const finished = read.maybeLength('finished');
  const otherEnd = isGiven(draft, 'finished') ? read.maybeLength('otherEnd') : undefined;
  const left = read.maybeLength('left');
  if (depth === undefined || seam === undefined || turn === undefined || edgeStitch === undefined) {
    return undefined;
  }
  return { depth, seam, turn, edgeStitch, thickness, radius, finished, otherEnd, left };
}
