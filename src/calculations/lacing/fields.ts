import { lacingWords as words } from '#words/calculations/lacing-words.ts';
import {
  choice,
  count,
  given,
  length,
  maybeCount,
  maybeLength,
  not,
  text,
} from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import { hasTwoStrands, type LacingKind } from '../../sewing/lacing/lacing-kinds.ts';
import { isStep, stepChoices } from './step-choices.ts';

const KINDS = Object.keys(words.kind) as LacingKind[];

const kind = choice(words.kind);
const own = text(words.ownHint, {
  start: '0 1 front; 1 0 front; 1 0 back; 1 1 back; 1 1 front',
  when: kind.is('own'),
});
const holes2 = maybeCount(words.oneRow);

/** What is asked of a lacing, for the kind chosen. */
export const lacingFields = schema(words.labels, {
  kind,
  own,
  holes: count({ start: '50', usual: 'holes' }),
  pitch: length({ start: { cm: '0.8', mm: '8', in: '5/16' }, usual: 'holePitch' }),
  holes2,
  pitch2: maybeLength(words.asFirst, { when: given(holes2) }),
  margin: length({ start: { cm: '0.5', mm: '5', in: '3/16' }, usual: 'holeMargin' }),
  thickness: length({ start: { cm: '0.3', mm: '3', in: '1/8' }, usual: 'layers' }),
  outside: length({
    start: { cm: '0.2', mm: '2', in: '1/16' },
    when: kind.is('outside'),
    usual: 'outside',
  }),
  lace: maybeLength(words.asMargin, { usual: 'lace' }),
  start: choice(words.start, { when: not(kind.is(...KINDS.filter(hasTwoStrands))) }),
  tail: length({ start: { cm: '10', mm: '100', in: '4' }, usual: 'tail', givesWay: true }),
  longest: length({ start: '2 yd', usual: 'lacePiece' }),
  step: choice<string>(
    (ask) =>
      stepChoices(
        KINDS.find((one) => kind.is(one)(ask)),
        ask(own),
      ),
    { known: isStep },
  ),
});

/** What was read of the fields. */
export type LacingAsked = InputOf<(typeof lacingFields)['specs']>;
