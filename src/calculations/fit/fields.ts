import { fitWords as words } from '#words/calculations/fit-words.ts';
import {
  all,
  choice,
  given,
  length,
  lengthOrNone,
  maybeCount,
  maybeLength,
} from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { PiecesInput } from '../../sewing/wearer/fit.ts';

const pieces = maybeLength(words.notCut, { usual: 'around' });
const known = given(pieces);
const seams = maybeCount(words.notGiven, { when: known, usual: 'seams' });
const darts = maybeCount(words.notGiven, { when: known, usual: 'seams' });

/** What is asked of a fit: the body and its ease, then what the pieces give. */
export const fitFields = schema(words.labels, {
  body: length({ start: { cm: '92', mm: '920', in: '36' }, usual: 'around' }),
  of: choice(words.of),
  ease: length({
    start: { cm: '6.5', mm: '65', in: '2 1/2' },
    usual: 'wearingEase',
    givesWay: true,
  }),
  cloth: choice(words.cloth),
  pieces,
  allowances: lengthOrNone(words.finishedWidths, { when: known }),
  taken: lengthOrNone(words.nothing, { when: known }),
  seams,
  edge: maybeLength(words.asCut, { when: all(known, given(seams)) }),
  darts,
  dart: maybeLength(words.asCut, { when: all(known, given(darts)) }),
});

/** What was read of the fields. */
export type FitAsked = InputOf<(typeof fitFields)['specs']>;

/** What the girth of the pieces is worked out from. */
export const GIRTH_FIELDS = [
  'pieces',
  'allowances',
  'taken',
  'seams',
  'edge',
  'darts',
  'dart',
] as const satisfies readonly (keyof FitAsked)[];

/** The same as it is worked with; asked only where the pieces are given. */
export function piecesInput(read: Pick<FitAsked, (typeof GIRTH_FIELDS)[number]>): PiecesInput {
  return { ...read, ...needed({ pieces: read.pieces }) };
}
